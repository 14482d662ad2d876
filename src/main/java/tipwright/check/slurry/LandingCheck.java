// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.Row;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.design.Limits;
import tipwright.design.around.Receiver;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Fill;
import tipwright.load.Gravity;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Where the stream lands. */
public final class LandingCheck implements Check {
    private static final double NEARLY = 1e-9;

    @Override
    public String id() {
        return "landing";
    }

    @Override
    public String title() {
        return "Load: landing in the pit or bin";
    }

    @Override
    public String title(String part) {
        return part.isEmpty()
                ? title()
                : part.endsWith("jet") ? "Load: landing of the jet" : "Load: landing of the slow flow over the lip";
    }

    @Override
    public String shortly(Finding finding) {
        return "where the load lands";
    }

    @Override
    public String rule() {
        return "From the lowest rim point of each opening the load falls between the two edges of the receiver's mouth: straight"
                + " down where it just runs over, at every tilt from the opening's own on; and as a jet square out of the"
                + " opening with all the slurry behind it, at the tilt where it opens, and at any tilt where it has a door that"
                + " could be let go. No drag, no splash, no clinging to the tank.";
    }

    @Override
    public String formula() {
        return "v = sqrt(2 g h), p = lip + v t + g t^2/2; distance to the nearest edge of the mouth >= limits.landing";
    }

    @Override
    public String source() {
        return "Torricelli and free fall (elementary); the distance wanted: common practice, no source";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.ABOUT_SURROUNDINGS);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("move the pit, bin or machine, or open the outlet more slowly");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design().limits());
        Receiver receiver = analysis.design().receiver();
        if (receiver == null) {
            return List.of(make.missing("", "receiver missing"));
        }
        List<Opening> openings = analysis.design().tank().openings();
        if (openings.isEmpty()) {
            return List.of(make.missing("", "tank.openings missing"));
        }
        List<CaseResult> shut =
                analysis.cases().stream().filter(DoorCheck::pressesOnAShutDoor).toList();
        List<Finding> all = new ArrayList<>();
        for (Opening opening : openings) {
            String name = openings.size() == 1 ? "" : opening.name() + " ";
            all.add(trickle(make, analysis, receiver, opening, name));
            all.add(
                    shut.isEmpty()
                            ? make.missing(name + "jet", "every load case with the outlet shut is under cases: skip:")
                            : jet(make, analysis, receiver, opening, shut, name));
        }
        return all;
    }

    private static Finding trickle(Findings make, Analysis analysis, Receiver receiver, Opening opening, String name) {
        Spot spot = new Spot(analysis, receiver);
        for (Row row : analysis.cases().get(0).rows()) {
            if (row.tilt() >= opening.opensAt() - NEARLY) {
                spot.offer(row, opening, 0, "");
            }
        }
        return spot.finding(make, name + "running over", "");
    }

    private static Finding jet(
            Findings make, Analysis analysis, Receiver receiver, Opening opening, List<CaseResult> shut, String name) {
        Spot spot = new Spot(analysis, receiver);
        for (CaseResult load : shut) {
            boolean opened = false;
            for (Row row : load.rows()) {
                boolean open = row.tilt() >= opening.opensAt() - NEARLY;
                if (open && (!opened || opening.door() != null)) {
                    spot.offer(row, opening, head(analysis, row, opening), load.name());
                }
                opened |= open;
            }
        }
        return spot.finding(make, name + "jet", spot.speed > 0 ? "" : "no head over the lip when it opens; ");
    }

    /** Height of the slurry over the lowest rim point, m. */
    private static double head(Analysis analysis, Row row, Opening opening) {
        Fill fill = row.load().fill();
        if (fill == null) {
            return 0;
        }
        Vec3 up = analysis.design().site().up().tilted(-turn(row));
        return Math.max(0, -fill.surface().height(opening.lipPoint(up)));
    }

    private static double turn(Row row) {
        return row.pose().bodies().get(row.pose().tank()).turn();
    }

    /** The landing place nearest to an edge of the mouth. */
    private static final class Spot {
        private final Receiver receiver;
        private final double width;
        private final double wanted;
        private final Vec3 up;
        private final Extreme.Search inside = Extreme.Search.smallest();
        private double at;
        private double speed;

        Spot(Analysis analysis, Receiver receiver) {
            this.receiver = receiver;
            width = receiver.far().minus(receiver.near()).norm();
            wanted = analysis.design().limits().landing();
            up = analysis.design().site().up();
        }

        void offer(Row row, Opening opening, double head, String loadCase) {
            double turn = turn(row);
            Vec3 lip = row.pose().place(opening.lipPoint(up.tilted(-turn)));
            double v = Math.sqrt(2 * Gravity.G * head);
            Vec2 out = opening.areaVector().unit().tilted(turn).xy();
            Vec2 velocity = out.times(outwards(opening) ? v : -v);
            double lands = Stream.lands(receiver, lip.xy(), velocity, up.xy().times(-Gravity.G));
            double here = Double.isNaN(lands) ? Double.NEGATIVE_INFINITY : width * Math.min(lands, 1 - lands);
            if (inside.offer(here, row.tilt(), v > 0 ? loadCase : null, null)) {
                at = lands * width;
                speed = v;
            }
        }

        /** Whether the rim's points run counter-clockwise seen from outside. */
        private static boolean outwards(Opening opening) {
            Vec3 normal = opening.normal();
            return normal == null || opening.areaVector().dot(normal) >= 0;
        }

        Finding finding(Findings make, String part, String before) {
            Extreme worst = inside.found();
            if (Double.isNaN(worst.tilt())) {
                return make.missing(part, "the opening is not open within the tilt range");
            }
            Text where = Double.isNaN(at)
                    ? Text.words("it does not come down on the " + receiver.name())
                    : Text.of("{} past the near edge of the ", Text.amount(at, Kind.LENGTH, "mm", 0))
                            .plus(receiver.name())
                            .plus(Text.of(", which is {} wide", Text.amount(width, Kind.LENGTH, "mm", 0)));
            Text note = Text.words(before).plus(where);
            if (speed > 0) {
                note = note.plus(Text.of(", at {}", Text.amount(speed, Kind.SPEED, "m/s", 1)));
            }
            return make.compare(part, wanted, worst.value(), 1, Kind.LENGTH, worst, note);
        }
    }
}
