// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.List;
import java.util.function.BiConsumer;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.design.Design;
import tipwright.design.NumberedPlace;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.Shaft;
import tipwright.quantity.Kind;
import tipwright.quantity.Marks;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.report.Scale;
import tipwright.sheet.Marking;

/** What to mark out by tape, with the numbers and names of the weld sheet: every centre from the datum, and from centre to centre. */
final class WeldPoints {
    private final Analysis analysis;
    private final Design design;

    WeldPoints(Analysis analysis) {
        this.analysis = analysis;
        this.design = analysis.design();
    }

    /** Of its pin, or of the shaft in the bearings. */
    private String hole(NumberedPlace place, UnitSystem units) {
        PinJoint joint = place.joint();
        Shaft shaft = place.pivot() ? design.pivot().shaft() : null;
        return shaft != null
                ? Quantities.show(shaft.diameter(), Kind.LENGTH, units)
                : joint != null
                        ? Quantities.show(joint.diameter(), Kind.LENGTH, units)
                        : place.slide() ? "slide" : "not given";
    }

    private String hole(NumberedPlace place) {
        String metric = hole(place, UnitSystem.METRIC);
        String us = hole(place, UnitSystem.US);
        return metric.equals(us) ? metric : metric + " (" + us + ")";
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
        List<NumberedPlace> places = NumberedPlace.of(design);
        FixedTable centres = new FixedTable(
                "Centres from the datum, tank stowed, " + unit + ": x towards the dump side, y up",
                FixedTable.Column.text("centre", 36),
                FixedTable.Column.number("x", 20),
                FixedTable.Column.number("y", 20),
                FixedTable.Column.text("pin or shaft", 24));
        places.forEach(p ->
                centres.row(p.words(), Marks.bare(p.at().x(), units), Marks.bare(p.at().y(), units), hole(p, units)));
        centres.styled("slim").to(page);
        FixedTable tape = new FixedTable(
                "Centre to centre: check with a tape",
                FixedTable.Column.text("from", 36),
                FixedTable.Column.text("to", 36),
                FixedTable.Column.number(unit, 28));
        Marking.of(design)
                .spans()
                .forEach(span -> tape.row(name(span.a()), name(span.b()), Marks.bare(span.length(), units)));
        tape.to(page);
        FixedTable across = new FixedTable(
                "Along the pivot, and stops", FixedTable.Column.text("what", 60), FixedTable.Column.number(unit, 40));
        across((name, z) -> across.row("z of " + name, Marks.bare(z, units)));
        ends().forEach(pose -> across.row(
                "pin to pin of the actuator at " + Scale.angle().show(pose.tilt()), Marks.bare(pose.length(), units)));
        across.to(page);
    }

    private static String name(Marking.Spot spot) {
        return spot.place().words();
    }

    private List<Pose> ends() {
        List<Pose> poses = analysis.poses();
        return List.of(poses.get(0), poses.get(poses.size() - 1));
    }

    void to(Markup page) {
        List<NumberedPlace> places = NumberedPlace.of(design);
        FixedTable centres = new FixedTable(
                "Centres from the datum, tank stowed: x towards the dump side, y up",
                FixedTable.Column.text("centre", 28),
                FixedTable.Column.number("x, mm", 12),
                FixedTable.Column.number("y, mm", 12),
                FixedTable.Column.number("x, in", 12),
                FixedTable.Column.number("y, in", 12),
                FixedTable.Column.text("pin or shaft", 24));
        for (NumberedPlace p : places) {
            centres.row(p.words(), mm(p.at().x()), mm(p.at().y()), inch(p.at().x()), inch(p.at().y()), hole(p));
        }
        centres.to(page);
        FixedTable tape = new FixedTable(
                "Centre to centre in the side view: check with a tape",
                FixedTable.Column.text("from", 32),
                FixedTable.Column.text("to", 32),
                FixedTable.Column.number("mm", 18),
                FixedTable.Column.number("in", 18));
        for (Marking.Span span : Marking.of(design).spans()) {
            tape.row(name(span.a()), name(span.b()), mm(span.length()), inch(span.length()));
        }
        tape.to(page);
        across(page);
        stops(page);
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
