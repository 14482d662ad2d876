// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.NumberedPlace;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.around.Mounts;
import tipwright.design.around.Zone;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;
import tipwright.placement.PlacedPoint;
import tipwright.quantity.Marks;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;

/** One pin moved a little, to a mark of the tape or a hole of its zone; what holds it goes along. */
final class MovedPins implements Proposer {
    private static final double INCH = 0.0254;
    private static final double[] METRIC = {0.01, 0.025, 0.05, 0.1, 0.15};
    private static final double[] US = {INCH / 2, INCH, 2 * INCH, 4 * INCH, 6 * INCH};
    private static final double PIVOT = 2;

    /** What no tape tells from nothing, m. */
    private static final double SAME = 1e-4;

    @Override
    public String asked(Finding f) {
        return Asks.ofDrive(f) || f.isOf("stroke") ? "pins" : "";
    }

    @Override
    public List<List<Proposal>> changes(Analysis analysis, String asked, Shop shop) {
        Design design = analysis.design();
        List<PlacedActuator> placed = design.drive().actuators();
        boolean alike =
                placed.stream().allMatch(p -> p.actuator().equals(placed.get(0).actuator()));
        List<List<Proposal>> ladder = new ArrayList<>();
        if (!alike) {
            return ladder;
        }
        List<NumberedPlace> places = NumberedPlace.of(design);
        for (double by : steps(shop.units())) {
            List<Proposal> rung = new ArrayList<>();
            places.forEach(place -> rung.addAll(around(design, place, by, shop.units())));
            ladder.add(rung);
        }
        return ladder;
    }

    /** How far a pin is moved, from small to large, m. */
    static double[] steps(UnitSystem units) {
        return (units == UnitSystem.METRIC ? METRIC : US).clone();
    }

    /** One place moved by so much along and across, m, as far as it may go there. */
    static List<Proposal> around(Design design, NumberedPlace place, double by, UnitSystem units) {
        List<Proposal> all = new ArrayList<>();
        for (int x = -1; x <= 1; x++) {
            for (int y = -1; y <= 1; y++) {
                Proposal p = x == 0 && y == 0
                        ? null
                        : proposal(design, place.key(), place.at(), new Vec2(x * by, y * by), units);
                if (p != null) {
                    all.add(p);
                }
            }
        }
        return all;
    }

    private static @Nullable Proposal proposal(Design design, String name, Vec2 from, Vec2 by, UnitSystem units) {
        Vec2 wanted = from.plus(by);
        Vec2 mark = new Vec2(Marks.rounded(wanted.x(), units), Marks.rounded(wanted.y(), units));
        Mounts mounts = design.mounts();
        Zone zone = mounts == null ? null : mounts.zone(name);
        Vec2 to = zone != null && zone.holes() != null ? zone.holes().nearest(mark) : mark;
        PlacedPoint seat = new PlacedPoint(name, from, to);
        if (to.equals(from) || !seat.allowed(design)) {
            return null;
        }
        Design moved = PlacedPoint.moved(
                design, List.of(seat), design.drive().actuators().get(0).actuator());
        Vec2 way = to.minus(from);
        double change = 0.1 + way.norm() * (name.equals(Skeleton.PIVOT) ? PIVOT : 1) * 2;
        Text place = Text.of("(to x = {}, y = {})", Text.mark(to.x()), Text.mark(to.y()));
        return new Proposal(words(name, way), place, change, moved);
    }

    private static Text words(String name, Vec2 way) {
        List<Text> ways = new ArrayList<>();
        if (Math.abs(way.x()) > SAME) {
            ways.add(Text.mark(Math.abs(way.x()))
                    .plus(way.x() > 0 ? " towards the dump end" : " away from the dump end"));
        }
        if (Math.abs(way.y()) > SAME) {
            ways.add(Text.mark(Math.abs(way.y())).plus(way.y() > 0 ? " up" : " down"));
        }
        return Text.words("move the " + NameId.words(name) + " ").plus(Text.join(" and ", ways));
    }
}
