// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

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
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.drive.Drive;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.Lug;
import tipwright.design.joint.PinJoint;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** What play in worn pins lets the tank do. */
public final class PlayCheck implements Check {
    private static final int DIRECTIONS = 72;

    @Override
    public String id() {
        return "play";
    }

    @Override
    public String title() {
        return "Worn pins: play at the rim";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Worn pins: drop where the force turns";
    }

    @Override
    public String rule() {
        return "With pins and holes worn as far as they may be, the play at both ends of the actuator lets the tank rattle at its rim; where the force changes from push to pull, it drops through that play, and no further than it may rattle.";
    }

    @Override
    public String formula() {
        return "rattle = (play at frame pin + play at moving pin) / lever arm x distance of the furthest rim from the pivot; drop: the same with the lever arm where the force changes its sign";
    }

    @Override
    public String source() {
        return "plane geometry; limits: common practice, no source";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.BOUNDS_MOUNTS, Trait.ASKED_LATE);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.PIN, PartKind.SHAFT);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("tighter holes, new pins and bushes sooner, or more lever arm");
    }

    @Override
    public String bound(String id) {
        return "play of the pins";
    }

    @Override
    public Text says(Finding finding) {
        return finding.allowed(
                finding.partId().isEmpty()
                        ? "with worn pins the rim can move by"
                        : "where push and pull change, the rim drops by");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Design design = analysis.design();
        Findings make = new Findings(this, design);
        double play = play(design, Drive.FRAME_PIN) + play(design, Drive.ROD_PIN);
        double rim = rim(design);
        double limit = design.wear().rattle();
        Extreme worst = Extreme.largest(analysis, pose -> play / Math.abs(pose.arm()) * rim);
        Text note = Text.of(
                "at the rim, {} from the pivot, with {} of play in the actuator's pins",
                Text.amount(rim, Kind.LENGTH, "mm", 0),
                Text.amount(play, Kind.LENGTH, "mm", 1));
        List<Finding> all = new ArrayList<>();
        all.add(make.compare("", worst.value(), limit, 1, Kind.LENGTH, worst, note));
        Extreme drops = drop(analysis, play * rim);
        if (!Double.isNaN(drops.tilt())) {
            all.add(make.compare(
                    "drop",
                    drops.value(),
                    limit,
                    1,
                    Kind.LENGTH,
                    drops,
                    Text.of(
                            "at the rim, through the play, where push and pull change, at {}",
                            Text.degrees(drops.tilt(), 0))));
        }
        return all;
    }

    /** Play at one end of the actuator, m: as drilled, or as worn if that is more. */
    static double play(Design design, String pin) {
        PinJoint joint = design.drive().pinJoint(pin);
        double drilled = 0;
        for (Fastening f : design.fastenings()) {
            Lug lug = f.lug();
            boolean here = f.joint().equals(pin)
                    || (pin.equals(Drive.ROD_PIN) && f.joint().equals(Drive.TANK_PIN));
            if (here && lug != null && joint != null) {
                drilled = Math.max(drilled, lug.hole() - joint.diameter());
            }
        }
        return Math.max(drilled, design.wear().play());
    }

    /** From the pivot to the furthest point of the tank's inside in the side view, m, at most 0.1 % short. */
    private static double rim(Design design) {
        Solid solid = design.tank().interior().solid();
        Vec2 pivot = design.pivot().at();
        double most = 0;
        for (int i = 0; i < DIRECTIONS; i++) {
            double angle = 2 * Math.PI * i / DIRECTIONS;
            Vec3 d = new Vec3(Math.cos(angle), Math.sin(angle), 0);
            most = Math.max(most, solid.extent(d).high() - d.xy().dot(pivot));
        }
        return most;
    }

    /** Largest drop at the rim where the force at rest changes its sign in a normal dump, m; nowhere if it never does. */
    private static Extreme drop(Analysis analysis, double playTimesRim) {
        Extreme.Search most = Extreme.Search.largest();
        for (CaseResult load : analysis.cases()) {
            for (int i = 1; i < load.rows().size(); i++) {
                Row before = load.rows().get(i - 1);
                Row row = load.rows().get(i);
                double one = before.rest().force();
                double other = row.rest().force();
                if (one * other < 0 && load.load().normalAt(row.tilt())) {
                    double share = one / (one - other);
                    double arm = before.pose().arm()
                            + share * (row.pose().arm() - before.pose().arm());
                    double tilt = before.tilt() + share * (row.tilt() - before.tilt());
                    most.offer(playTimesRim / Math.abs(arm), tilt, load.name(), null);
                }
            }
        }
        return most.found();
    }
}
