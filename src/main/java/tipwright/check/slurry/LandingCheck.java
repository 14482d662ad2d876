// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.BodyPosition;
import tipwright.analysis.CaseResult;
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
import tipwright.outline.PartKind;
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
                : part.endsWith("jet")
                        ? "Load: landing of the jet"
                        : part.endsWith("cake")
                                ? "Load: landing of the cake that lets go"
                                : "Load: landing of the last of it over the lip";
    }

    @Override
    public String shortly(Finding finding) {
        return "where the load lands";
    }

    @Override
    public String rule() {
        return "The load falls between the two edges of the receiver's mouth: straight down from the lowest rim point of each"
                + " opening where the last of it runs over, at every tilt from the opening's own on; as a jet square out of the"
                + " opening from every point of the rim under the surface, with all the slurry behind it, at the tilt where it"
                + " opens, and at any tilt where what keeps it shut could let go; and as a stuck cake that lets go at its"
                + " release, slides down the tank's floor over the whole length and flies on from the lip. No drag, no splash, no"
                + " clinging to the tank.";
    }

    @Override
    public String formula() {
        return "jet: v = sqrt(2 g h); cake: v^2 = 2 g L (sin a - tan b cos a); p = lip + v t + g t^2/2; distance to the nearest"
                + " edge of the mouth >= limits.landing";
    }

    @Override
    public String source() {
        return "Torricelli, sliding on a slope and free fall (elementary); the distance wanted: common practice, no source";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.ABOUT_SURROUNDINGS);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.RECEIVER);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("move the pit, bin or machine, or let the load out more slowly");
    }

    @Override
    public Text says(Finding finding) {
        String part = finding.partId();
        return LandingSpot.says(
                part.endsWith("jet")
                        ? "the jet"
                        : part.endsWith("cake") ? "the cake that lets go" : "the last of it over the lip",
                finding);
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
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
            Finding jet = shut.isEmpty()
                    ? make.cannot(name + "jet", "every load case in which all of it stays in is under cases: skip:")
                    : jet(make, analysis, receiver, opening, shut, name);
            Finding cake = cake(make, analysis, receiver, opening, name);
            if (jet != null) {
                all.add(jet);
            }
            if (cake != null) {
                all.add(cake);
            }
        }
        return all;
    }

    private static Finding trickle(Findings make, Analysis analysis, Receiver receiver, Opening opening, String name) {
        LandingSpot spot = new LandingSpot(analysis.design(), receiver);
        Vec3 up = analysis.design().site().up();
        double first = Math.max(opening.opensAt(), firstOut(analysis));
        for (Row row : analysis.cases().get(0).rows()) {
            if (row.tilt() >= first - NEARLY) {
                Vec3 lip = row.pose().place(opening.lipPoint(up.tilted(-turn(row))));
                spot.offer(row.tilt(), lip, new Vec2(0, 0), 0, null, null);
            }
        }
        return spot.finding(make, name + "running over", "");
    }

    /** Tilt from which something has left when it drains as it can, rad; the first when that load case is skipped. */
    private static double firstOut(Analysis analysis) {
        for (CaseResult c : analysis.cases()) {
            if (c.name().equals("draining")) {
                double full = c.load().contents();
                return c.rows().stream()
                        .filter(r -> r.load().volume() < full * (1 - NEARLY))
                        .mapToDouble(Row::tilt)
                        .findFirst()
                        .orElse(Double.POSITIVE_INFINITY);
            }
        }
        return Double.NEGATIVE_INFINITY;
    }

    /** What shoots out with all of the slurry behind it; null: it opens, and there is nothing behind it. */
    private static @Nullable Finding jet(
            Findings make, Analysis analysis, Receiver receiver, Opening opening, List<CaseResult> shut, String name) {
        LandingSpot spot = new LandingSpot(analysis.design(), receiver);
        Vec3 up = analysis.design().site().up();
        Jet jet = new Jet(opening);
        boolean opens = false;
        for (CaseResult load : shut) {
            boolean opened = false;
            for (Row row : load.rows()) {
                boolean open = row.tilt() >= opening.opensAt() - NEARLY;
                Fill fill = row.load().fill();
                if (fill != null && open && (!opened || opening.door() != null)) {
                    BodyPosition tank = row.pose().bodies().get(row.pose().tank());
                    Vec3 there = up.tilted(-tank.turn());
                    double level = fill.surface().level();
                    Jet.Standing now = new Jet.Standing(row.tilt(), tank, there, level);
                    jet.offer(spot, now, load.name(), null);
                }
                opened |= open;
            }
            opens |= opened;
        }
        return opens && !spot.any() ? null : spot.finding(make, name + "jet", "");
    }

    /** Of a cake that lets go at once and slides out over the lip; null: there is none, or it never does. */
    private static @Nullable Finding cake(
            Findings make, Analysis analysis, Receiver receiver, Opening opening, String name) {
        CakeFlight flight = CakeFlight.of(analysis, opening);
        if (flight == null) {
            return null;
        }
        LandingSpot spot = new LandingSpot(analysis.design(), receiver);
        flight.offer(spot);
        return spot.finding(make, name + "cake", "");
    }

    private static double turn(Row row) {
        return row.pose().bodies().get(row.pose().tank()).turn();
    }
}
