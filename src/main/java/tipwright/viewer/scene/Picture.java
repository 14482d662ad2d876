// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.List;
import java.util.Optional;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.PerspectiveCamera;
import javafx.scene.SceneAntialiasing;
import javafx.scene.SubScene;
import javafx.scene.layout.Pane;
import javafx.scene.transform.Rotate;
import javafx.scene.transform.Translate;
import org.jspecify.annotations.Nullable;
import tipwright.check.rule.Finding;
import tipwright.geometry.Vec2;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.editor.PartOfMachine;

/** The picture: the machine in three dimensions, with its lettering on top. Resizes with its parent. */
public final class Picture extends Pane {
    private final Group world = new Group();
    private final PerspectiveCamera lens = new PerspectiveCamera(true);
    private final Translate toTarget = new Translate();
    private final Rotate yaw = new Rotate(0, Rotate.Y_AXIS);
    private final Rotate pitch = new Rotate(0, Rotate.X_AXIS);
    private final Translate back = new Translate();
    private final SubScene space;
    private final SceneText lettering = new SceneText();
    private Theme theme;
    private Camera camera = new Camera(tipwright.geometry.Vec3.ZERO, 0, 0, 5);
    private @Nullable MachineScene machine;
    private @Nullable MachineState now;
    private List<Marked> marks = List.of();
    private boolean hoses = true;
    private Camera.@Nullable Place fittingFrom = Camera.Place.CORNER;
    private @Nullable Laid laid;

    /** An empty picture. */
    public Picture(Theme theme) {
        this.theme = theme;
        lens.setFieldOfView(Math.toDegrees(Camera.FIELD));
        lens.setNearClip(0.05);
        lens.setFarClip(200);
        lens.getTransforms().addAll(toTarget, yaw, pitch, back);
        space = new SubScene(new Group(world, lens), 100, 100, true, SceneAntialiasing.BALANCED);
        space.setCamera(lens);
        space.setMouseTransparent(true);
        getChildren().addAll(space, lettering);
        setTheme(theme);
    }

    /** Lays something over the machine and its lettering; it covers the whole picture. */
    public void lay(Pane over) {
        getChildren().add(over);
    }

    /** Whether the title is all the lettering there is. */
    public void setBrief(boolean only) {
        if (lettering.setBrief(only)) {
            letter();
        }
    }

    /** Changes the colours; the machine is to be set again. */
    public void setTheme(Theme other) {
        theme = other;
        space.setFill(other.back());
        lettering.setTheme(other);
    }

    /** Shows a dump in a load case; keeps the camera where it is, unless it fits itself. */
    public void setDump(DumpStates dump, String loadCase) {
        MachineScene built = new MachineScene(dump, loadCase, theme, lettering.units());
        built.mark(marks);
        built.seenFrom(camera);
        built.showHoses(hoses);
        machine = built;
        world.getChildren().setAll(built.root());
        if (fittingFrom != null) {
            lookFrom(fittingFrom);
        }
    }

    /** Letters as high as a window's text or a little higher, pixels. */
    public void setTextSize(double pixels) {
        if (lettering.setTextSize(pixels)) {
            letter();
        }
    }

    /** Shows hoses and cables, or takes them out of the picture. */
    public void setHoses(boolean on) {
        hoses = on;
        MachineScene m = machine;
        MachineState state = now;
        if (m != null) {
            m.showHoses(on);
            if (state != null) {
                m.show(state);
            }
        }
        letter();
    }

    /** Whether hoses and cables are shown. */
    public boolean hoses() {
        return hoses;
    }

    /** Units of the lettering and of the arrows' scale. */
    public void setUnits(UnitSystem units) {
        if (lettering.setUnits(units)) {
            MachineScene before = machine;
            MachineState state = now;
            if (before != null && state != null) {
                setDump(before.dump(), before.loadCase());
                show(state);
            }
            letter();
        }
    }

    /** Moves the machine to a tilt. */
    public void show(MachineState state) {
        now = state;
        if (machine != null) {
            machine.show(state);
        }
        letter();
    }

    /** Marks parts of the machine by paint and label, the worst first; they stay marked until other marks come. */
    public void mark(List<Marked> other) {
        if (marks.equals(other)) {
            // drawing all of it again would take the time that the checks need
            return;
        }
        marks = List.copyOf(other);
        MachineScene m = machine;
        MachineState state = now;
        if (m != null) {
            m.mark(marks);
            if (state != null) {
                m.showMarks(state);
            }
            letter();
        }
    }

    /** Marks what some findings are about. */
    public void markFindings(List<Finding> findings) {
        MachineScene m = machine;
        if (m != null) {
            mark(Marked.of(m.dump().analysis(), m.parts(), findings, lettering.units()));
        }
    }

    /** The part of the machine that is seen at a place in the picture, pixels. */
    public Optional<PartOfMachine> partAt(double x, double y) {
        MachineScene m = machine;
        MachineState state = now;
        return m == null || state == null
                ? Optional.empty()
                : m.partAt(camera.at(), camera.sight(new Vec2(x, y), getWidth(), getHeight()), state);
    }

    private void letter() {
        if (machine != null && now != null && getWidth() > 0) {
            lettering.show(machine, now, camera, getWidth(), getHeight());
        }
    }

    /** From where it is seen. */
    public Camera camera() {
        return camera;
    }

    /** Looks from elsewhere; it stays so when the window changes its size. */
    public void setCamera(Camera other) {
        fittingFrom = null;
        apply(other);
    }

    /** Looks from a named place so that everything fits, whatever the size of the window. */
    public void lookFrom(Camera.Place place) {
        fittingFrom = place;
        MachineScene m = machine;
        if (m != null && getHeight() > 0) {
            apply(Camera.fitting(place, m.points(), getWidth() / getHeight()));
        }
    }

    /** Fits everything, in the same direction. */
    public void fit() {
        MachineScene m = machine;
        if (m != null && getHeight() > 0) {
            apply(camera.fitted(m.points(), getWidth() / getHeight()));
        }
    }

    private void apply(Camera other) {
        camera = other;
        toTarget.setX(other.target().x());
        toTarget.setY(-other.target().y());
        toTarget.setZ(-other.target().z());
        yaw.setAngle(-Math.toDegrees(other.yaw()));
        pitch.setAngle(-Math.toDegrees(other.pitch()));
        back.setZ(-other.distance());
        MachineScene m = machine;
        if (m != null) {
            m.seenFrom(other);
        }
        letter();
    }

    /** The lettering, to be shown or not. */
    public SceneText lettering() {
        return lettering;
    }

    @Override
    protected void layoutChildren() {
        space.setWidth(getWidth());
        space.setHeight(getHeight());
        for (Node over : getChildren().subList(1, getChildren().size())) {
            over.resizeRelocate(0, 0, getWidth(), getHeight());
        }
        Laid now = new Laid(machine, getWidth(), getHeight());
        if (now.equals(laid)) {
            // something that lies over it has been laid out, and all of it is as it was
            return;
        }
        laid = now;
        if (fittingFrom != null) {
            lookFrom(fittingFrom);
        }
        letter();
    }

    /** What the fitting and the lettering depend on that nobody tells of. */
    private record Laid(@Nullable MachineScene machine, double width, double height) {}
}
