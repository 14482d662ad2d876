// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.AmbientLight;
import javafx.scene.DirectionalLight;
import javafx.scene.Group;
import javafx.scene.LightBase;
import javafx.scene.PointLight;
import javafx.scene.paint.Color;
import javafx.scene.transform.Rotate;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.Hoses;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachinePart;
import tipwright.outline.MachinePose;
import tipwright.outline.PartKind;
import tipwright.outline.ZRange;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.Lying;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.dump.Surroundings;
import tipwright.viewer.editor.PartOfMachine;

/** Everything that stands in the picture for one design, one load case and one theme. Opaque parts first, the wall last. */
public final class MachineScene {
    /** Largest distance of the drawn tank from the true one over the tank's size. */
    private static final double FINE = 1.0 / 400;

    private static final double[] LOOKS = {0, 0.5, 1};
    private static final double ALONG_AXLE = Math.cos(Math.toRadians(25));

    /** Name of the load case in which every door stays shut. */
    private static final String SHUT = "held";

    private final List<Vec3> points = new ArrayList<>();
    private final DumpStates dump;
    private final String loadCase;
    private final Surroundings room;
    private final GroundPart ground;
    private final ShadowPart shadow;
    private final WheelPart wheels;
    private final Sketch sketch;
    private final String hoseWords;
    private final Lying lying;
    private final YardPart yard;
    private final SolidPart solids;
    private final DrivePart drive;
    private final AssistPart assists;
    private final HosePart hoses;
    private final TankPart tank;
    private final DoorPart doors;
    private final SlurryPart slurry;
    private final ArrowPart arrows;
    private final PathPart path;
    private final MarkPart marks;
    private final MachineOutline machine;
    private final Sight sight;
    private final double newtonsPerMetre;
    private final Group root;

    /**
     * Builds the parts; {@link #show} puts them in place.
     *
     * @param units in which the scale of the arrows is a round number
     */
    public MachineScene(DumpStates dump, String loadCase, Theme theme, UnitSystem units) {
        this.dump = dump;
        this.loadCase = dump.loadCase(loadCase).name();
        Mesh inside = inside(dump);
        machine = new MachineOutline(dump.analysis());
        sight = new Sight(machine, inside);
        marks = new MarkPart(machine, theme);
        room = Surroundings.of(dump, machine);
        double size = room.radius();
        newtonsPerMetre = ArrowPart.scale(2.6 * Math.max(1e-3, dump.largestForce()) / size, units);
        lying = dump.lying(room);
        Hoses feed = Hoses.of(dump.analysis(), machine.room());
        hoses = new HosePart(feed, theme);
        hoseWords = feed == null ? "" : feed.words();
        sketch = Sketch.of(machine, lying);
        ground = new GroundPart(room, lying.place(), theme);
        shadow = new ShadowPart(machine, room.ground(), theme);
        yard = new YardPart(room, theme);
        wheels = new WheelPart(machine, theme);
        solids = new SolidPart(machine, dump.skeleton().bodies().size(), theme);
        drive = new DrivePart(dump.design().drive().actuators(), theme);
        assists = new AssistPart(dump.design(), dump.skeleton(), theme);
        tank = new TankPart(dump.design().tank(), shell(dump, machine, inside), theme);
        doors = new DoorPart(dump.design().tank(), dump.skeleton().tank(), theme);
        slurry = new SlurryPart(inside, lying, theme);
        arrows = new ArrowPart(dump.design(), 1 / newtonsPerMetre, size / 75, theme);
        path = new PathPart(dump, room, loadCase, theme);
        root = new Group(
                ground.node(),
                shadow.node(),
                yard.node(),
                wheels.solid(),
                solids.node(),
                drive.node(),
                assists.node(),
                hoses.node(),
                tank.rims(),
                doors.node(),
                marks.solid(),
                arrows.node(),
                path.node(),
                slurry.node(),
                marks.clear(),
                tank.wall(),
                wheels.clear());
        root.getTransforms().add(new Rotate(180, Rotate.X_AXIS));
        List<LightBase> lights = lights(room.middle(), size);
        // the ground shines by itself; without lamps it takes less time to draw, and most of the picture is ground
        lights.stream().filter(light -> !(light instanceof AmbientLight)).forEach(light -> light.getExclusionScope()
                .addAll(ground.flat(), shadow.node()));
        root.getChildren().addAll(lights);
    }

    /** The interior as drawn, watertight, m. */
    static Mesh inside(DumpStates dump) {
        double span = dump.contents().solid().extent(new Vec3(0, 1, 0)).span();
        return dump.contents().solid().mesh(Math.max(2e-4, FINE * span)).welded();
    }

    /** The tank's outside as drawn: its own outline from wall to wall where the design gives one, else the inside grown by the wall. */
    static Mesh shell(DumpStates dump, MachineOutline machine, Mesh inside) {
        return dump.design().tank().outline().isEmpty()
                ? TankPart.outside(inside, dump.design().tank())
                : Forms.joined(machine.parts().stream()
                                .filter(p -> p.kind() == PartKind.TANK)
                                .flatMap(p -> p.form().bodies(machine.across()).stream())
                                .toList())
                        .welded();
    }

    private static List<LightBase> lights(Vec3 middle, double size) {
        AmbientLight ambient = new AmbientLight(Color.gray(0.40));
        PointLight lamp = new PointLight(Color.gray(0.52));
        lamp.setTranslateX(middle.x() + 1.6 * size);
        lamp.setTranslateY(middle.y() + 3.2 * size);
        lamp.setTranslateZ(middle.z() + 3.4 * size);
        DirectionalLight sky = new DirectionalLight(Color.gray(0.22));
        sky.setDirection(new javafx.geometry.Point3D(0.5, -0.7, -0.4));
        return List.of(ambient, lamp, sky);
    }

    /** The nodes, in metres, y down as the graphics library has it. */
    public Group root() {
        return root;
    }

    /** The dump that it shows. */
    public DumpStates dump() {
        return dump;
    }

    /** The load case that it shows. */
    public String loadCase() {
        return loadCase;
    }

    /** Points around all that is to be seen of the machine at its first, middle and last tilt, m. */
    public List<Vec3> points() {
        if (points.isEmpty()) {
            points.addAll(around());
        }
        return points;
    }

    private List<Vec3> around() {
        List<MachinePose> poses = new ArrayList<>();
        for (double share : LOOKS) {
            poses.add(dump.at(loadCase, dump.first() + share * (dump.last() - dump.first()))
                    .configuration(false));
        }
        List<Vec3> all = new ArrayList<>();
        for (MachinePart part : machine.parts()) {
            if (part.kind().limit() || part.kind() == PartKind.GROUND || part.kind() == PartKind.RECEIVER) {
                continue;
            }
            ZRange z = part.form().z().orAcross(machine.across());
            List<Vec2> corners = part.form().reach();
            for (MachinePose pose : poses) {
                for (Vec2 p : corners) {
                    Vec2 at = pose.axes(part).place(p);
                    all.add(new Vec3(at.x(), at.y(), z.from()));
                    all.add(new Vec3(at.x(), at.y(), z.to()));
                }
            }
        }
        return all;
    }

    /** What of it is made up. */
    Sketch sketch() {
        return hoses.shown() && !hoseWords.isEmpty() ? sketch.with(hoseWords) : sketch;
    }

    /** Whether hoses and cables are to be seen. */
    void showHoses(boolean on) {
        hoses.setShown(on);
    }

    /** Tells from where one looks. */
    void seenFrom(Camera camera) {
        wheels.seenAlong(Math.abs(camera.forward().z()) > ALONG_AXLE);
    }

    /**
     * What the picture shows that the design does not give.
     *
     * @param words for a person, each of one thing
     */
    record Sketch(List<String> words) {
        Sketch with(String more) {
            List<String> all = new ArrayList<>(words);
            all.add(more);
            return new Sketch(List.copyOf(all));
        }

        private static Sketch of(MachineOutline machine, Lying lying) {
            List<String> words = new ArrayList<>();
            for (MachinePart part : machine.parts()) {
                boolean sketched = part.basis() == MachinePart.Basis.SKETCHED;
                String word =
                        switch (part.kind()) {
                            case STAND -> "stand";
                            case CRADLE -> "cradle";
                            case FRAME -> "brackets";
                            default -> "";
                        };
                if (sketched && !word.isEmpty() && !words.contains(word)) {
                    words.add(word);
                }
            }
            if (lying.place().walled()) {
                words.add("size of the pit");
            }
            return new Sketch(List.copyOf(words));
        }
    }

    /** How many newtons an arrow of a metre stands for. */
    public double newtonsPerMetre() {
        return newtonsPerMetre;
    }

    /** Moves everything to where it is. */
    public void show(MachineState now) {
        shadow.show(now);
        solids.show(now.bodies());
        drive.show(now);
        assists.show(now);
        hoses.show(now);
        tank.show(now.tank());
        doors.show(now, loadCase.equals(SHUT));
        slurry.show(now);
        arrows.show(now);
        path.show(now);
        marks.show(now);
    }

    /** Moves what is marked to where it is. */
    void showMarks(MachineState now) {
        marks.show(now);
    }

    /** Its parts, for what is to be marked. */
    public List<MachinePart> parts() {
        return machine.parts();
    }

    /** Paints what is marked, and takes the paint off the rest. */
    public void mark(List<Marked> marked) {
        marks.mark(marked);
    }

    /** What is labelled, and where, m. */
    List<MarkPart.Label> labels(MachineState now) {
        return marks.labels(now);
    }

    /** The part that a line of sight meets first. */
    Optional<PartOfMachine> partAt(Vec3 from, Vec3 way, MachineState now) {
        return sight.first(from, way, now);
    }

    /** Where labels belong, m: actuators' arrows, then bearings' arrows, then the centre of mass, then the metre bar. */
    public Anchors anchors(MachineState now) {
        return new Anchors(
                arrows.pushes(now).stream()
                        .map(a -> a.tail().plus(a.tip()).times(0.5))
                        .toList(),
                arrows.loads(now).stream().map(ArrowPart.Shaft::tip).toList(),
                path.mark(now),
                yard.barStart(),
                lying.place());
    }

    /**
     * Places of labels, m.
     *
     * @param pushes of each actuator's arrow, its middle
     * @param loads of each bearing's arrow, its tip
     * @param centroid of the mark of the centre of mass
     * @param bar start of the metre bar
     * @param pit where the load lies afterwards
     */
    public record Anchors(List<Vec3> pushes, List<Vec3> loads, Vec3 centroid, Vec3 bar, Lying.Place pit) {}
}
