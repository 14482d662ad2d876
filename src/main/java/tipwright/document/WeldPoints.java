// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.drive.Drive;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.Shaft;
import tipwright.design.joint.Support;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.report.Scale;

/** What to mark out by tape: every centre from the datum, and from centre to centre. */
final class WeldPoints {
    private static final Scale MM = Scale.length(UnitSystem.METRIC);
    private static final Scale INCH = Scale.length(UnitSystem.US);

    private final Analysis analysis;
    private final Design design;

    WeldPoints(Analysis analysis) {
        this.analysis = analysis;
        this.design = analysis.design();
    }

    private record Point(String name, Vec2 at, String hole) {}

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
            centres.row(
                    p.name(),
                    MM.number(p.at().x()),
                    MM.number(p.at().y()),
                    INCH.number(p.at().x()),
                    INCH.number(p.at().y()),
                    p.hole());
        }
        centres.to(page);
        FixedTable tape = new FixedTable(
                "Centre to centre in the side view, to check by tape",
                FixedTable.Column.text("from", 32),
                FixedTable.Column.text("to", 32),
                FixedTable.Column.number("mm", 18),
                FixedTable.Column.number("in", 18));
        for (int i = 0; i < points.size(); i++) {
            for (int j = i + 1; j < points.size(); j++) {
                double apart = points.get(i).at().minus(points.get(j).at()).norm();
                tape.row(points.get(i).name(), points.get(j).name(), MM.number(apart), INCH.number(apart));
            }
        }
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
                points.add(new Point("P, pivot", at, shaft == null ? "not given" : hole(shaft.diameter())));
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

    private static String hole(@org.jspecify.annotations.Nullable PinJoint joint) {
        return joint == null ? "not given" : hole(joint.diameter());
    }

    private static String hole(double diameter) {
        return Quantities.show(diameter, Kind.LENGTH, UnitSystem.METRIC) + " ("
                + Quantities.show(diameter, Kind.LENGTH, UnitSystem.US) + ")";
    }

    private void across(Markup page) {
        FixedTable grid = new FixedTable(
                "Across the machine, along the pivot",
                FixedTable.Column.text("part", 40),
                FixedTable.Column.number("z, mm", 30),
                FixedTable.Column.number("z, in", 30));
        int number = 1;
        for (Support support : design.pivot().bearings()) {
            grid.row("bearing " + number++, MM.number(support.z()), INCH.number(support.z()));
        }
        number = 1;
        for (PlacedActuator placed : design.drive().actuators()) {
            grid.row("actuator " + number++, MM.number(placed.z()), INCH.number(placed.z()));
        }
        grid.to(page);
    }

    private void stops(Markup page) {
        FixedTable grid = new FixedTable(
                "Stops: pin to pin of the actuator",
                FixedTable.Column.text("tilt", 40),
                FixedTable.Column.number("mm", 30),
                FixedTable.Column.number("in", 30));
        List<Pose> poses = analysis.poses();
        for (Pose pose : List.of(poses.get(0), poses.get(poses.size() - 1))) {
            grid.row(Scale.angle().show(pose.tilt()), MM.number(pose.length()), INCH.number(pose.length()));
        }
        grid.to(page);
        page.line(
                "p",
                "Tack first. Measure every distance in these tables again. Move the empty tank through its tilt by hand. Then weld.");
    }
}
