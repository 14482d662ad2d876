// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.around.CrossMember;
import tipwright.design.around.Frame;
import tipwright.design.around.SidePart;
import tipwright.design.drive.Assist;
import tipwright.design.drive.Drive;
import tipwright.design.drive.LineSpring;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.Support;
import tipwright.geometry.Extent;
import tipwright.geometry.Vec2;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachinePose;
import tipwright.quantity.Marks;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.sheet.bracket.Brackets;

/** Every place in the ways that a tape can take it, and the stops. */
final class PlacePages {
    private static final int STOPS = 7;

    private final Pager pager;
    private final Analysis analysis;
    private final Design design;
    private final Marking marking;
    private final Marking drawn;
    private final Brackets brackets;
    private final UnitSystem units;
    private final DatumView datum;

    /**
     * To write with.
     *
     * @param asDrawn the design before its places were rounded
     */
    PlacePages(Pager pager, Analysis analysis, Design asDrawn, Brackets brackets, UnitSystem units) {
        this.pager = pager;
        this.analysis = analysis;
        this.brackets = brackets;
        this.units = units;
        design = analysis.design();
        marking = Marking.of(design);
        drawn = Marking.of(asDrawn);
        datum = new DatumView(design, units);
    }

    /** How much room the list of pins takes, mm. */
    double pinsHeight() {
        return (marking.spots().size() + 1) * Pager.LINE + 4;
    }

    /** The pins by their numbers. */
    void pins() {
        List<String[]> rows = new ArrayList<>();
        for (Marking.Spot spot : marking.spots()) {
            rows.add(new String[] {
                Integer.toString(spot.number()),
                spot.place().slide() ? spot.name() + ", middle of the carriage" : spot.name(),
                Marks.show(spot.at().x(), units),
                Marks.show(spot.at().y(), units),
                Across.words(Across.of(design, spot), units) + " " + Lengths.unit(units),
                hole(spot)
            });
        }
        pager.table("rlrrrl", new String[] {"", "", "x", "y", "z", "pin"}, rows);
    }

    private String hole(Marking.Spot spot) {
        if (spot.place().slide()) {
            return "slide";
        }
        if (spot.place().pivot()) {
            return "bearings of "
                    + size(design.pivot().bearings().get(0).bearing().bore()) + " bore";
        }
        PinJoint joint = spot.place().joint();
        if (joint != null) {
            return size(joint.diameter());
        }
        PinJoint proposed = brackets.design()
                .drive()
                .pinJoint(
                        spot.bodies().contains(Marking.ACTUATOR)
                                ? rod(spot)
                                : spot.place().key());
        return proposed == null ? "as the actuator's or link's end" : size(proposed.diameter()) + ", proposed";
    }

    private String rod(Marking.Spot spot) {
        return spot.place().key().equals(design.drive().rodPinName()) ? Drive.ROD_PIN : Drive.FRAME_PIN;
    }

    private String size(double m) {
        return Text.size(m).show(units);
    }

    void datum() {
        pager.heading("The datum");
        pager.drawing(datum.picture(analysis, pager.width(), 62));
        datum.words().forEach(pager::line);
    }

    /** Only where a mark of the tape is not where the design has the place. */
    void rounding() {
        List<String[]> rows = new ArrayList<>();
        for (int i = 0; i < marking.spots().size(); i++) {
            Marking.Spot spot = marking.spots().get(i);
            Vec2 exact = drawn.spots().stream()
                    .filter(d -> d.name().equals(spot.name()))
                    .findFirst()
                    .orElse(drawn.spots().get(Math.min(i, drawn.spots().size() - 1)))
                    .at();
            if (exact.minus(spot.at()).norm() > 1e-5) {
                rows.add(new String[] {
                    spot.place().words(), Lengths.fine(exact.x(), units), Lengths.fine(exact.y(), units)
                });
            }
        }
        if (!rows.isEmpty()) {
            pager.heading("Before rounding to the tape");
            pager.table("lrr", new String[] {"", "x", "y"}, rows);
        }
    }

    void edges() {
        Frame frame = design.frame();
        List<SidePart> members = members(frame);
        if (members.isEmpty()) {
            pager.heading("From the frame");
            pager.line("The design gives no frame; measure from the datum and from the pivot.");
            return;
        }
        pager.heading("From the nearest edge of the frame, tank stowed");
        List<String[]> rows = new ArrayList<>();
        for (Marking.Spot spot : marking.spots()) {
            rows.add(new String[] {spot.place().words(), datum.edge(nearest(members, spot.at()), spot.at())});
        }
        pager.table("ll", new String[] {"middle of", "is"}, rows);
    }

    /** The frame's members, and its cross member as one of them. */
    private static List<SidePart> members(@Nullable Frame frame) {
        List<SidePart> all = new ArrayList<>();
        if (frame != null) {
            all.addAll(frame.members());
            CrossMember tube = frame.crossMember();
            if (tube != null) {
                Vec2 half = new Vec2(tube.width() / 2, tube.height() / 2);
                Vec2 low = tube.at().minus(half);
                Vec2 high = tube.at().plus(half);
                List<Vec2> box = List.of(low, new Vec2(high.x(), low.y()), high, new Vec2(low.x(), high.y()));
                all.add(new SidePart("cross member", box, tube.z(), false));
            }
        }
        return all;
    }

    private static SidePart nearest(List<SidePart> parts, Vec2 p) {
        SidePart best = parts.get(0);
        double least = Double.POSITIVE_INFINITY;
        for (SidePart part : parts) {
            List<Vec2> ring = part.outline();
            for (int i = 0; i < ring.size(); i++) {
                Vec2 a = ring.get(i);
                Vec2 d = ring.get((i + 1) % ring.size()).minus(a);
                double t = Math.max(0, Math.min(1, p.minus(a).dot(d) / Math.max(d.dot(d), 1e-12)));
                double off = p.minus(a.plus(d.times(t))).norm();
                if (off < least - 1e-9) {
                    least = off;
                    best = part;
                }
            }
        }
        return best;
    }

    /** From the datum to every place, and from pin to pin. */
    void spans() {
        pager.heading("Straight, from middle to middle");
        List<String[]> rows = new ArrayList<>();
        for (Marking.Spot spot : marking.spots()) {
            rows.add(new String[] {
                "datum to " + spot.place().words(), Marks.show(spot.at().norm(), units)
            });
        }
        for (Marking.Span span : marking.spans()) {
            rows.add(new String[] {
                span.a().place().words() + " to " + span.b().place().words(), Marks.show(span.length(), units)
            });
        }
        columns(rows);
    }

    /** Short rows side by side. */
    private void columns(List<String[]> rows) {
        List<String[]> two = new ArrayList<>();
        int half = (rows.size() + 1) / 2;
        for (int i = 0; i < half; i++) {
            String[] right = i + half < rows.size() ? rows.get(i + half) : new String[] {"", ""};
            two.add(new String[] {rows.get(i)[0], rows.get(i)[1], right[0], right[1]});
        }
        pager.table("lrlr", new String[] {"", "", "", ""}, two);
    }

    void across() {
        pager.heading("Diagonals through space");
        List<Support> b = design.pivot().bearings();
        List<String[]> rows = Across.diagonals(design, marking, units);
        pager.table("lrr", new String[] {"from the pivot in the middle of", bearing(b, 0), bearing(b, 1)}, rows);
        if (rows.stream().allMatch(r -> r[1].equals(r[2]))) {
            pager.line("Both columns measure alike when the frame is square.");
        }
    }

    private String bearing(List<Support> bearings, int i) {
        double z = bearings.get(i).z();
        return design.pivot().name(i) + ", z " + Marks.show(z, units);
    }

    /** The tank's farthest points from the pivot. */
    void tank() {
        pager.heading("The tank from the pivot's middle, stowed, outside");
        MachinePose home = MachinePose.of(analysis.poses().get(0)).doorsShut();
        List<Vec2> wall = new ArrayList<>();
        new MachineOutline(analysis).tank(home).forEach(wall::addAll);
        Extent box = Extent.of(wall);
        Vec2 p = design.pivot().at();
        columns(List.of(
                new String[] {"its dump end", off(box.high().x() - p.x(), "towards the dump end", "away from it")},
                new String[] {"its front end", off(box.low().x() - p.x(), "towards the dump end", "away from it")},
                new String[] {"its lowest point", off(box.low().y() - p.y(), "above", "below")},
                new String[] {"its highest point", off(box.high().y() - p.y(), "above", "below")}));
    }

    private String off(double d, String plus, String minus) {
        return Marks.show(Math.abs(d), units) + " " + (d < 0 ? minus : plus);
    }

    void springs() {
        List<String[]> rows = new ArrayList<>();
        for (Assist assist : design.assists()) {
            if (assist instanceof LineSpring line) {
                for (var end : List.of(line.from(), line.to())) {
                    rows.add(new String[] {
                        assist.name() + ", on " + end.body(),
                        Marks.show(end.at().x(), units),
                        Marks.show(end.at().y(), units),
                        Marks.show(line.z(), units)
                    });
                }
            }
        }
        if (!rows.isEmpty()) {
            pager.heading("Ends of springs, tank stowed");
            pager.table("lrrr", new String[] {"", "x", "y", "z"}, rows);
        }
    }

    void stops() {
        pager.keep(STOPS);
        pager.heading("Stops and angles at both ends");
        List<Pose> poses = analysis.poses();
        Pose stowed = poses.get(0);
        Pose full = poses.get(poses.size() - 1);
        Actuator a = design.drive().actuators().get(0).actuator();
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {"tilt of the tank", degrees(stowed.tilt()), degrees(full.tilt())});
        rows.add(new String[] {
            "actuator, pin to pin", Marks.show(stowed.length(), units), Marks.show(full.length(), units)
        });
        rows.add(new String[] {"left to its nearer end", left(a, stowed), left(a, full)});
        rows.add(new String[] {"actuator off level", degrees(level(stowed)), degrees(level(full))});
        rows.add(new String[] {"pushing angle", degrees(stowed.transmission()), degrees(full.transmission())});
        rows.add(new String[] {"its moving pin from the datum", at(stowed.tankPin()), at(full.tankPin())});
        pager.table("lrr", new String[] {"", "stowed", "full tilt"}, rows);
    }

    private String at(Vec2 p) {
        return "x " + Marks.show(p.x(), units) + ", y " + Marks.show(p.y(), units);
    }

    private static String degrees(double rad) {
        return Text.degrees(rad, 1).metric();
    }

    /** Between the actuator and the level, 0 to 90 deg. */
    private static double level(Pose pose) {
        Vec2 d = pose.tankPin().minus(pose.framePin());
        return Math.atan2(Math.abs(d.y()), Math.abs(d.x()));
    }

    private String left(Actuator a, Pose pose) {
        double in = pose.length() - a.closed();
        double out = a.closed() + a.stroke() - pose.length();
        double least = Math.min(in, out);
        return least < 0 ? "does not reach" : Marks.show(least, units);
    }
}
