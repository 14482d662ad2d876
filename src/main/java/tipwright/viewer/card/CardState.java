// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.FileField;
import tipwright.viewer.editor.DesignEditor;
import tipwright.viewer.editor.PartOfMachine;

/** What the fields of one card share: the design, what was typed and refused, which folds are open. */
final class CardState {
    private final PartOfMachine part;
    private final CardHost host;
    private final Runnable refresh;
    private final Map<String, FieldRow> rows = new LinkedHashMap<>();
    private final Map<String, String> typed = new HashMap<>();
    private final Map<String, List<String>> refused = new HashMap<>();
    private final Set<String> open = new HashSet<>();
    private final Set<String> shut = new HashSet<>();
    private Map<String, List<String>> wrong = Map.of();
    private double em = 14;
    /** The text in which something was last refused: a key that is held down does not ask again. */
    private String refusedIn = "";

    CardState(PartOfMachine part, CardHost host, Runnable refresh) {
        this.part = part;
        this.host = host;
        this.refresh = refresh;
    }

    PartOfMachine part() {
        return part;
    }

    CardHost host() {
        return host;
    }

    DesignEditor editor() {
        return host.editor();
    }

    Map<String, FieldRow> rows() {
        return rows;
    }

    void put(FieldRow row) {
        rows.put(row.path(), row);
    }

    /** Size of the text, px: what is drawn beside it goes by that. */
    double em() {
        return em;
    }

    /**
     * Sets the size of the text.
     *
     * @return whether it is another
     */
    boolean setEm(double size) {
        boolean other = Math.abs(size - em) > 0.5;
        em = size;
        return other;
    }

    /** Looks again at what is wrong. */
    void look() {
        wrong = editor().wrong();
    }

    /** What is wrong with a field, or with what was typed into it. */
    List<String> problems(String path) {
        List<String> all = new ArrayList<>(refused.getOrDefault(path, List.of()));
        all.addAll(wrong.getOrDefault(path, List.of()));
        return all;
    }

    /** What was typed into a field and refused; null: nothing. */
    @Nullable
    String typed(String path) {
        return typed.get(path);
    }

    /** Puts back what is written. */
    void putBack(String path) {
        typed.remove(path);
        refused.remove(path);
        update(path);
    }

    private void update(String path) {
        FieldRow row = rows.get(path);
        FileField field = editor().fields().find(path);
        if (row != null && field != null) {
            row.update(field);
        }
    }

    /** Writes a field as typed. */
    void write(String path, String value) {
        FileField now = editor().fields().find(path);
        if (now != null && now.text().equals(value.strip()) && !typed.containsKey(path)) {
            return;
        }
        String before = editor().sheet().text();
        if (value.equals(typed.get(path)) && before.equals(refusedIn)) {
            return;
        }
        List<String> why = editor().write(path, value);
        if (!why.isEmpty()) {
            refusedIn = before;
            typed.put(path, value);
            refused.put(path, why);
            update(path);
            host.say(why.get(0));
            return;
        }
        typed.remove(path);
        refused.remove(path);
        done(before);
    }

    /**
     * Changes how the file is built, such as one more entry of a list.
     *
     * @return whether it was done
     */
    boolean rebuild(UnaryOperator<String> edit) {
        String before = editor().sheet().text();
        String why = editor().rebuild(edit);
        if (why != null) {
            host.say(why);
            return false;
        }
        done(before);
        return true;
    }

    private void done(String before) {
        if (!editor().sheet().text().equals(before)) {
            host.changed();
        }
        refresh.run();
    }

    boolean isOpen(String key, boolean usually) {
        return open.contains(key) || (usually && !shut.contains(key));
    }

    void setOpen(String key, boolean is) {
        (is ? open : shut).add(key);
        (is ? shut : open).remove(key);
    }
}
