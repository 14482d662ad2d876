// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.drive.Drive;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.Shaft;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;
import tipwright.quantity.Kind;
import tipwright.quantity.Marks;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.report.Scale;

/** What to mark out by tape: every centre from the datum, and from centre to centre. */
final class WeldPoints {
    private final Analysis analysis;
    private final Design design;

    WeldPoints(Analysis analysis) {
        this.analysis = analysis;
        this.design = analysis.design();
    }

    private record Point(String name, Vec2 at, @Nullable Double pin) {
        String hole() {
            return pin == null ? "not given" : hole(UnitSystem.METRIC) + " (" + hole(UnitSystem.US) + ")";
        }

        String hole(UnitSystem units) {
            return pin == null ? "not given" : Quantities.show(pin, Kind.LENGTH, units);
        }
    }

    private static String mm(double m) {
        return Marks.bare(m, UnitSystem.METRIC);
    }

    private static String inch(double m) {
        return Marks.bare(m, UnitSystem.US);
    }

    /** The same in one system and in few columns. */
    void brief(Markup page, UnitSystem units) {
        String unit = units == UnitSystem.METRIC ? "mm" : "in";
        List<Point> points = points();
        FixedTable centres = new FixedTable(
                "Centres from the datum, tank stowed, " + unit + ": x towards the dump side, y up",
                FixedTable.Column.text("centre", 36),
                FixedTable.Column.number("x", 20),
                FixedTable.Column.number("y", 20),
                FixedTable.Column.text("pin or shaft", 24));
        points.forEach(p ->
                centres.row(p.name(), Marks.bare(p.at().x(), units), Marks.bare(p.at().y(), units), p.hole(units)));
        centres.styled("slim").to(page);
        FixedTable tape = new FixedTable(
                "Centre to centre: check with a tape",
                FixedTable.Column.text("from", 36),
                FixedTable.Column.text("to", 36),
                FixedTable.Column.number(unit, 28));
        pairs(
                points,
                (a, b) -> tape.row(
                        a.name(), b.name(), Marks.bare(a.at().minus(b.at()).norm(), units)));
        tape.to(page);
        FixedTable across = new FixedTable(
                "Along the pivot, and stops", FixedTable.Column.text("what", 60), FixedTable.Column.number(unit, 40));
        across((name, z) -> across.row("z of " + name, Marks.bare(z, units)));
        ends().forEach(pose -> across.row(
                "pin to pin of the actuator at " + Scale.angle().show(pose.tilt()), Marks.bare(pose.length(), units)));
        across.to(page);
    }

    private static void pairs(List<Point> points, BiConsumer<Point, Point> each) {
        for (int i = 0; i < points.size(); i++) {
            for (int j = i + 1; j < points.size(); j++) {
                each.accept(points.get(i), points.get(j));
            }
        }
    }

    private List<Pose> ends() {
        List<Pose> poses = analysis.poses();
        return List.of(poses.get(0), poses.get(poses.size() - 1));
    }

    void to(Markup page) {
        List<Point> points = points();
        FixedTable centres = new FixedTable(
                "Centres from the datum, tank stowed: x towards the dump side, y up",
                FixedTable.Column.text("centre", 28),
                FixedTable.Column.number("x, mm", 12),
                FixedTable.Column.number("y, mm", 12),
                FixedTable.Column.number("x, in", 12),
                FixedTable.Column.number("y, in", 12),
                FixedTable.Column.text("pin or shaft", 24));
        for (Point p : points) {
            centres.row(p.name(), mm(p.at().x()), mm(p.at().y()), inch(p.at().x()), inch(p.at().y()), p.hole());
        }
        centres.to(page);
        FixedTable tape = new FixedTable(
                "Centre to centre in the side view: check with a tape",
                FixedTable.Column.text("from", 32),
                FixedTable.Column.text("to", 32),
                FixedTable.Column.number("mm", 18),
                FixedTable.Column.number("in", 18));
        pairs(points, (a, b) -> {
            double apart = a.at().minus(b.at()).norm();
            tape.row(a.name(), b.name(), mm(apart), inch(apart));
        });
        tape.to(page);
        across(page);
        stops(page);
    }

    private List<Point> points() {
        List<Point> points = new ArrayList<>();
        Drive drive = design.drive();
        drive.places(design.pivot().at()).forEach((name, at) -> {
            boolean known = points.stream().anyMatch(p -> p.at().minus(at).norm() < 1e-6);
            if (name.equals(Skeleton.PIVOT)) {
                Shaft shaft = design.pivot().shaft();
                points.add(new Point("P, pivot", at, shaft == null ? null : shaft.diameter()));
            } else if (name.equals(Drive.FRAME_PIN)) {
                points.add(new Point("F, actuator at the frame", at, hole(drive.framePinJoint())));
            } else if (name.equals(drive.rodPinName())) {
                points.add(new Point("T, actuator at its moving end", at, hole(drive.tankPinJoint())));
            } else if (!known) {
                points.add(new Point(name, at, hole(drive.pinJoint(name))));
            }
        });
        return points;
    }

    private static @Nullable Double hole(@Nullable PinJoint joint) {
        return joint == null ? null : joint.diameter();
    }

    private void across(Markup page) {
        FixedTable grid = new FixedTable(
                "Across the machine, along the pivot",
                FixedTable.Column.text("part", 40),
                FixedTable.Column.number("z, mm", 30),
                FixedTable.Column.number("z, in", 30));
        across((name, z) -> grid.row(name, mm(z), inch(z)));
        grid.to(page);
    }

    private void across(BiConsumer<String, Double> each) {
        for (int b = 0; b < design.pivot().bearings().size(); b++) {
            each.accept(design.pivot().name(b), design.pivot().bearings().get(b).z());
        }
        int number = 1;
        for (PlacedActuator placed : design.drive().actuators()) {
            each.accept("actuator " + number++, placed.z());
        }
    }

    private void stops(Markup page) {
        FixedTable grid = new FixedTable(
                "Stops: pin to pin of the actuator",
                FixedTable.Column.text("tilt", 40),
                FixedTable.Column.number("mm", 30),
                FixedTable.Column.number("in", 30));
        for (Pose pose : ends()) {
            grid.row(Scale.angle().show(pose.tilt()), mm(pose.length()), inch(pose.length()));
        }
        grid.to(page);
        page.line(
                "p",
                "Tack first. Measure every distance in these tables again. Move the empty tank through its tilt by hand. Then weld.");
    }
}
