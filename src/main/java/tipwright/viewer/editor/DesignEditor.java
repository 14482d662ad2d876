// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.file.FieldEdit;
import tipwright.design.file.FileFields;
import tipwright.design.file.Reading;
import tipwright.design.file.TextEdit;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.quantity.UnitSystem;
import tipwright.report.WholeFile;

/** The design being worked on. Mutable; owned by one thread. */
public final class DesignEditor {
    private static final int MOST_UNDO = 500;

    private final Deque<String> undo = new ArrayDeque<>();
    private final Deque<String> redo = new ArrayDeque<>();
    private final @Nullable Keeper keeper;
    private @Nullable Path file;
    private String name;
    private String saved;
    private UnitSystem tape = UnitSystem.METRIC;
    private EditedDesign sheet;
    private List<Handle> handles = List.of();
    private List<String> byTape = List.of();
    private @Nullable Solved dragged;
    private @Nullable Solved good;
    private @Nullable FileFields fields;

    /**
     * Opens a design text for editing.
     *
     * @param name as shown
     * @param file where it is saved; null: not yet anywhere
     * @param recovery where unsaved work is kept; null: nowhere
     */
    public DesignEditor(String name, @Nullable Path file, String text, @Nullable Recovery recovery) {
        this.name = name;
        this.file = file;
        this.keeper = recovery == null ? null : new Keeper(recovery);
        this.saved = text;
        this.sheet = solve(text, reread(text));
    }

    private EditedDesign solve(String text, Reading reading) {
        if (reading instanceof Reading.Bad bad) {
            handles = List.of();
            byTape = List.of();
            return EditedDesign.bad(text, bad.problems());
        }
        Reading.Good read = (Reading.Good) reading;
        Design design = read.design();
        tape = read.units();
        handles = Handle.of(
                text, read.places(), design.drive().skeleton(design.pivot().at()));
        byTape = Handle.byTape(text, read.places());
        try {
            Solved before = good;
            Solved solved = before == null ? Solved.of(design) : before.edited(design);
            good = solved;
            return new EditedDesign(text, solved, List.of(), List.of(), read);
        } catch (CannotComputeException e) {
            return new EditedDesign(text, null, List.of(String.valueOf(e.getMessage())), List.of(), read);
        }
    }

    /** The text as it stands, and what came of it. */
    public EditedDesign sheet() {
        return sheet;
    }

    /** The numbers to show: those of the drag, or else of the text; null when there are none. */
    public @Nullable Solved solved() {
        return dragged == null ? sheet.solved() : dragged;
    }

    /** The last numbers that there were, though the text may have changed since; null when there never were any. */
    public @Nullable Solved lastGood() {
        return good;
    }

    /** All fields that the text has, and may have. */
    public FileFields fields() {
        FileFields now = fields;
        if (now == null || !now.text().equals(sheet.text())) {
            now = FileFields.of(sheet.text());
            fields = now;
        }
        return now;
    }

    /** What is wrong, by the path of the field that it belongs to; under "" what belongs to none. */
    public Map<String, List<String>> wrong() {
        return fields().beside(sheet.faults());
    }

    /**
     * Writes a field as typed; nothing typed takes it out where it may be left out. One step of undo.
     *
     * @return why not, in sentences; then nothing has changed. Empty when it was taken
     */
    public List<String> write(String path, String typed) {
        FileFields now = fields();
        return rewrite(path, text -> FieldEdit.set(now, path, typed));
    }

    /** The same by any change of the text that has to do with a field. */
    List<String> rewrite(String path, UnaryOperator<String> edit) {
        try {
            String text = edit.apply(sheet.text());
            Reading reading = reread(text);
            List<String> refused = reading instanceof Reading.Bad bad && bad.open() == null
                    ? Refusal.of(sheet.faults(), bad.problems(), path)
                    : List.of();
            if (refused.isEmpty()) {
                change(text, reading);
            }
            return refused;
        } catch (IllegalArgumentException e) {
            return List.of(String.valueOf(e.getMessage()));
        }
    }

    /**
     * Changes the text by one of {@link FieldEdit}, which may leave blanks to be filled in. One step of undo.
     *
     * @return why not; null when it was done
     */
    public @Nullable String rebuild(UnaryOperator<String> edit) {
        try {
            change(edit.apply(sheet.text()));
            return null;
        } catch (IllegalArgumentException e) {
            return String.valueOf(e.getMessage());
        }
    }

    /** What can be moved. */
    public List<Handle> handles() {
        return handles;
    }

    /** What cannot be moved, and why, in plain words. */
    public List<String> byTape() {
        return byTape;
    }

    /** What most lengths of the text are measured with. */
    public UnitSystem tape() {
        return tape;
    }

    /** As shown. */
    public String name() {
        return name;
    }

    /** Where it is saved; null: not yet anywhere. */
    public @Nullable Path file() {
        return file;
    }

    /** Whether there is work that is not saved. */
    public boolean unsaved() {
        return !sheet.text().equals(saved);
    }

    public boolean canUndo() {
        return !undo.isEmpty();
    }

    public boolean canRedo() {
        return !redo.isEmpty();
    }

    /** Takes the last change back. */
    public void undo() {
        step(undo, redo);
    }

    /** Makes the change again. */
    public void redo() {
        step(redo, undo);
    }

    private void step(Deque<String> from, Deque<String> to) {
        String text = from.poll();
        if (text != null) {
            to.push(sheet.text());
            set(text, reread(text));
        }
    }

    private void set(String text, Reading reading) {
        dragged = null;
        sheet = solve(text, reading);
        keep();
    }

    private void keep() {
        if (keeper != null) {
            keeper.keep(unsaved() ? sheet.text() : null);
        }
    }

    /** Takes in a text in place of the present one; it can be undone. */
    public void change(String text) {
        change(text, reread(text));
    }

    private void change(String text, Reading reading) {
        if (text.equals(sheet.text())) {
            dragged = null;
            return;
        }
        undo.push(sheet.text());
        while (undo.size() > MOST_UNDO) {
            undo.removeLast();
        }
        redo.clear();
        set(text, reading);
    }

    /**
     * Moves a point without writing it down yet.
     *
     * @param to m, stowed; it snaps to whole millimetres or sixteenths of an inch
     * @return what is wrong with it there; null when it could be solved
     */
    public @Nullable String drag(Handle handle, Vec2 to) {
        Solved before = solved();
        Solved drawn = sheet.solved(); // from where it is written each time, or what goes along would add up roundings
        Vec2 snapped = new Vec2(Mover.onTape(handle.x(), to.x()), Mover.onTape(handle.y(), to.y()));
        Design moved = drawn == null ? null : Mover.moved(drawn.design(), handle, snapped);
        try {
            if (before != null && moved != null) {
                dragged = before.moved(moved);
                return null;
            }
            Reading reading = reread(written(handle, snapped));
            if (reading instanceof Reading.Good good) {
                dragged = before == null ? Solved.of(good.design()) : before.moved(good.design());
                return null;
            }
            return ((Reading.Bad) reading).problems().get(0).text();
        } catch (CannotComputeException e) {
            return String.valueOf(e.getMessage());
        }
    }

    private Reading reread(String text) {
        return new Draft(name, text, file).read();
    }

    private String written(Handle handle, Vec2 to) {
        try {
            return TextEdit.point(
                    sheet.text(),
                    handle.path(),
                    Mover.rewritten(handle.x(), Mover.onTape(handle.x(), to.x())),
                    Mover.rewritten(handle.y(), Mover.onTape(handle.y(), to.y())));
        } catch (QuantityException e) {
            throw new IllegalStateException("a handle's place was read before", e);
        }
    }

    /** What became of that which holds a point when the point was moved: welds, bolts, a cross member, links that are drawn. */
    public enum Along {
        /** Nothing hangs on it. */
        NOTHING,
        /** It went along. */
        WENT,
        /** It stayed: its places are no plain numbers in the file. */
        STAYED
    }

    /** Ends a drag and writes the place down, and the places of what goes along with it, in one step. */
    public Along drop(Handle handle, Vec2 to) {
        String moved = written(handle, to);
        Reading.Good before = sheet.read();
        Reading reading = reread(moved);
        if (before == null || !(reading instanceof Reading.Good after)) {
            change(moved, reading);
            return Along.NOTHING;
        }
        Vec2 snapped = new Vec2(Mover.onTape(handle.x(), to.x()), Mover.onTape(handle.y(), to.y()));
        Design wanted = Mover.followed(before.design(), after.design(), handle, snapped);
        if (wanted.equals(after.design())) {
            change(moved, after);
            return Along.NOTHING;
        }
        String text = Draft.of(this).with(moved).changes(after).apply(wanted);
        if (text == null) {
            change(moved, after);
            return Along.STAYED;
        }
        change(text);
        return Along.WENT;
    }

    /** Gives a drag up. */
    public void letGo() {
        dragged = null;
    }

    /**
     * Writes a coordinate as typed, in any unit.
     *
     * @param axis 'x' or 'y'
     * @return what is wrong with it; null when it was taken
     */
    public @Nullable String type(Handle handle, char axis, String typed) {
        try {
            Quantities.parse(typed, Kind.LENGTH);
            change(TextEdit.replace(sheet.text(), handle.path() + "." + axis, typed.strip()));
            return null;
        } catch (QuantityException | IllegalArgumentException e) {
            return handle.label() + " " + axis + ": " + e.getMessage();
        }
    }

    /**
     * Saves.
     *
     * @param to where
     * @throws IOException when it cannot be written; the old file is as it was
     */
    public void save(Path to) throws IOException {
        byte[] bytes = sheet.text().getBytes(StandardCharsets.UTF_8);
        WholeFile.write(to, out -> out.write(bytes));
        boolean elsewhere = !to.equals(file);
        file = to;
        name = elsewhere ? to.toString() : name;
        saved = sheet.text();
        keep();
    }

    /** Takes the file as it is on the disk now; what was not saved can be had back by undo. */
    public void reload() throws IOException {
        Path f = file;
        if (f != null) {
            String text = Files.readString(f);
            saved = text;
            change(text);
            keep();
        }
    }

    /** Keeps the present text though the file on the disk is another: only saving will change the file. */
    public void stay(String onDisk) {
        saved = onDisk;
        keep();
    }

    /** Throws unsaved work away for good. */
    public void abandon() {
        if (keeper != null) {
            keeper.keep(null);
        }
    }

    /** Waits until unsaved work is where it outlives a crash. */
    public void settle() {
        if (keeper != null) {
            keeper.settle();
        }
    }

    /** Ends with the window; unsaved work is where it outlives a crash. */
    public void end() {
        if (keeper != null) {
            keeper.end();
        }
    }

    /** Whether the text is the one on the disk when it was last read or written. */
    public boolean isSaved(String onDisk) {
        return onDisk.equals(saved);
    }
}
