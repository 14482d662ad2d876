// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.BodyPosition;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.TimedCheck;
import tipwright.check.rule.Trait;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.around.Receiver;
import tipwright.design.key.NameId;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Gravity;
import tipwright.outline.PartKind;
import tipwright.quantity.Text;
import tipwright.time.Cycle;
import tipwright.time.Moment;
import tipwright.time.Rim;
import tipwright.time.Timing;

/** Where the stream lands while the tank empties. */
public final class StreamCheck implements TimedCheck {
    /** Moments closer than this in tilt, rad, and in volume, as a share, are one. */
    private static final double TURNED = Math.toRadians(0.5);

    private static final double LEFT = 0.01;

    @Override
    public String id() {
        return "stream";
    }

    @Override
    public String title() {
        return "Load: landing while it drains";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : title() + ", " + part;
    }

    @Override
    public String shortly(Finding finding) {
        return "where the load lands while it drains";
    }

    @Override
    public String rule() {
        return "At every moment of the dump in time, what drains falls between the two edges of the receiver's mouth. Over a lip it"
                + " passes the critical depth and leaves level, or square out of the opening where that points down, from the lip and"
                + " from the critical depth over it; an opening under the surface throws a jet from every point of its rim.";
    }

    @Override
    public String formula() {
        return "Q^2 T = g A^3; v = Q/A + g (A z)/Q, at most sqrt(2 g h); p = lip + v t + g t^2/2; distance to the nearest edge of"
                + " the mouth >= limits.landing";
    }

    @Override
    public String source() {
        return "critical depth and momentum of a free overfall (texts on open channels, from memory), Torricelli, free fall";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.NEEDS_TIME, Trait.OF_NORMAL_DUMP, Trait.ABOUT_SURROUNDINGS);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.RECEIVER);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a wider pit, move the machine, or tilt more slowly");
    }

    @Override
    public Text says(Finding finding) {
        String from = finding.partId().isEmpty() ? "" : " from '" + NameId.words(finding.partId()) + "'";
        return LandingSpot.says("what drains" + from, finding);
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        Design design = analysis.design();
        Receiver receiver = design.receiver();
        List<Opening> openings = design.tank().openings();
        if (receiver == null || openings.isEmpty()) {
            return List.of();
        }
        Findings make = new Findings(this, design);
        Cycle dump = timing.dump();
        if (dump == null) {
            return List.of(make.untimed("", timing));
        }
        List<Moment> moments = running(dump);
        List<Finding> all = new ArrayList<>();
        for (Opening opening : openings) {
            LandingSpot spot = new LandingSpot(design, receiver);
            Rim rim = new Rim(opening);
            Jet jet = new Jet(opening);
            moments.stream().filter(m -> rim.open(m.tilt())).forEach(m -> offer(spot, analysis, opening, rim, jet, m));
            if (spot.any()) {
                all.add(spot.finding(make, openings.size() == 1 ? "" : opening.name(), ""));
            }
        }
        return all;
    }

    /** The moments while something runs out that differ from those before. */
    private static List<Moment> running(Cycle dump) {
        List<Moment> all = new ArrayList<>();
        double start = dump.moments().get(0).volume();
        Moment last = null;
        for (Moment m : dump.moments()) {
            boolean runs = m.discharge() > 0 && Double.isFinite(m.level());
            if (runs
                    && (last == null
                            || Math.abs(m.tilt() - last.tilt()) > TURNED
                            || Math.abs(m.volume() - last.volume()) > LEFT * start)) {
                all.add(m);
                last = m;
            }
        }
        return all;
    }

    private static void offer(LandingSpot spot, Analysis analysis, Opening opening, Rim rim, Jet jet, Moment m) {
        Design design = analysis.design();
        double density = design.slurry().mixtureDensity();
        double level = m.level() - m.vacuum() / (density * Gravity.G);
        Departure now = Departure.of(design, opening, rim, m.tilt(), level);
        if (now == null) {
            return;
        }
        Vec3 up = design.site().up().tilted(-m.tilt());
        BodyPosition tank = analysis.bodiesAt(m.tilt()).get(analysis.mechanism().tank());
        String load = "draining";
        if (now.jet()) {
            Jet.Standing standing = new Jet.Standing(m.tilt(), tank, up, level);
            jet.offer(spot, standing, load, m.phase().direction());
            return;
        }
        for (Vec3 from : List.of(now.lip(), now.lip().plus(up.times(now.depth())))) {
            for (Vec2 way : now.ways()) {
                spot.offer(
                        m.tilt(),
                        tank.place(from),
                        way.times(now.speed()),
                        now.speed(),
                        load,
                        m.phase().direction());
            }
        }
    }
}
