// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.Extreme;
import tipwright.analysis.LinkPlane;
import tipwright.analysis.Pose;
import tipwright.check.rule.Check;
import tipwright.check.rule.Concerned;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Sharing;
import tipwright.design.around.TorqueTube;
import tipwright.design.joint.Support;
import tipwright.design.tank.CylinderInterior;
import tipwright.design.tank.Wall;
import tipwright.geometry.Vec2;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.HingePair;
import tipwright.strength.RectangularTube;
import tipwright.strength.TorsionSection;

/** Tank and frame where the actuators' force acts beside the middle of the two bearings. */
public final class TwistCheck implements Check {
    /** Shear modulus of steel, Pa. Common practice, no source. */
    private static final double SHEAR = 79e9;

    /** Nearer to the middle than this is in the middle, m. */
    private static final double MIDDLE = 1e-6;
    /** Less than this twists nothing, N m. */
    private static final double SLIGHT = 1e-3;

    @Override
    public String id() {
        return "twist";
    }

    @Override
    public String title() {
        return "Tank and frame: twist";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : Text.capital(part) + ": twist";
    }

    @Override
    public String rule() {
        return "Where the actuators' force acts beside the middle of the two bearings, it twists the tank between the actuator's bracket and the pivot, and the frame between the frame pin and the pivot's posts; the bearings bear the couple, more on one and less on the other. The cradle's tube, or the round tank itself where its brackets sit on its wall, bears the tank's twist, at the pivot that of a load beside the middle too; a tube of the frame bears the frame's. Two actuators that are alike and as far from the middle twist nothing until one lags: then one carries all, which is looked at among what may go wrong.";
    }

    @Override
    public String formula() {
        return "tank: T = F sin(angle to the line from pivot to pin) e; frame: T = F upright e; tube: sqrt(3) T/(2 A t); round tank, bent or twisted: T/(pi r^2 t); <= yield / factor";
    }

    @Override
    public String source() {
        return "statics; torsion of thin closed sections after R. Bredt (from memory); von Mises";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BEARS_DRIVE, Trait.BOUNDS_MOUNTS);
    }

    @Override
    public Concerned concerned(Analysis analysis, Finding finding) {
        return finding.id().endsWith("frame")
                ? new Concerned(Set.of(PartKind.FRAME, PartKind.CROSS_MEMBER), "", false)
                : new Concerned(Set.of(PartKind.CRADLE), "", false);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words(
                "the actuator nearer to the middle of the two bearings, a larger or thicker tube, or two actuators");
    }

    @Override
    public String bound(String id) {
        return "twist";
    }

    @Override
    public String shortly(Finding finding) {
        return part(finding);
    }

    @Override
    public String part(Finding finding) {
        return finding.id().endsWith("frame") ? "twist of the frame" : "twist of the tank";
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Design design = analysis.design();
        List<Support> supports = design.pivot().bearings();
        double z1 = Math.min(supports.get(0).z(), supports.get(1).z());
        double z2 = Math.max(supports.get(0).z(), supports.get(1).z());
        Aside aside = new Aside(design.drive().actuators(), (z1 + z2) / 2, z2 - z1);
        Extreme most = Extreme.largest(analysis.cases(), (row, b) -> aside.of(row.pose(), b));
        boolean beside = most.value() > MIDDLE;
        double twisted = Extreme.largest(
                        analysis.cases(), (row, b) -> onTank(row.pose(), b, pivot(analysis, row.pose()), aside))
                .value();
        Double plane = LinkPlane.ofDrive(design, analysis.mechanism());
        boolean linked = plane != null && Math.abs(plane - aside.middle()) > MIDDLE;
        if (!beside && !linked && (design.twist().tank() == null || !(twisted > SLIGHT))) {
            return List.of();
        }
        Findings make = new Findings(this, design);
        Extreme couple = Extreme.largest(analysis.cases(), (row, b) -> new HingePair(z1, z2)
                .couple(Math.abs(b.force()), aside.of(row.pose(), b)));
        Text shifts =
                Text.of("; it shifts up to {} from one bearing to the other", Text.amount(couple.value(), Kind.FORCE));
        List<Finding> all = new ArrayList<>();
        all.add(tank(make, analysis, aside, beside ? shifts : Text.NONE));
        if (beside) {
            all.add(frame(make, analysis, aside));
        }
        return all;
    }

    /** How far from the middle of the bearings the actuators' force acts, m. */
    private record Aside(List<PlacedActuator> actuators, double middle, double span) {
        double of(Pose pose, Balance balance) {
            return Math.abs(Sharing.middle(actuators, pose.length(), balance.force() > 0) - middle);
        }
    }

    private static Finding tank(Findings make, Analysis analysis, Aside aside, Text shifts) {
        Design design = analysis.design();
        if (analysis.mechanism().actuatorTo() != analysis.mechanism().tank()) {
            return make.cannot("tank", "how links pass the twist on to the tank is not worked out");
        }
        Extreme worst = Extreme.largest(
                analysis.cases(), (row, b) -> onTank(row.pose(), b, pivot(analysis, row.pose()), aside));
        TorqueTube tube = design.twist().tank();
        if (tube != null) {
            Pose pose = analysis.poses().get(0);
            double length = pose.tankPin().minus(pivot(analysis, pose)).norm();
            return make.compare(
                    "tank",
                    usage(tube, worst.value(), design.factors().crossMember()),
                    worst,
                    turned(tube, worst.value(), length).plus(shifts));
        }
        Wall wall = design.tank().wall();
        if (wall == null
                || !(design.tank().interior() instanceof CylinderInterior round)
                || design.fastenings().stream().noneMatch(f -> f.seat() != null)) {
            return make.missing(
                    "tank",
                    Text.of(
                            "twist.tank missing (the cradle's tube); it bears {}",
                            Text.amount(worst.value(), Kind.MOMENT, "N m", 0)));
        }
        double radius = (round.diameter() + wall.thickness()) / 2;
        double stress = round(radius, wall.thickness(), worst.value());
        return make.compare(
                "tank",
                new Usage(stress, wall.yield(), design.factors().wall(), Kind.PRESSURE),
                worst,
                Text.of("{} twist the round tank itself", Text.amount(worst.value(), Kind.MOMENT, "N m", 0))
                        .plus(shifts));
    }

    private static Finding frame(Findings make, Analysis analysis, Aside aside) {
        Design design = analysis.design();
        if (analysis.mechanism().actuatorFrom() != 0) {
            return make.cannot("frame", "the actuator is not pinned to the frame");
        }
        Extreme worst = Extreme.largest(analysis.cases(), (row, b) -> onFrame(row.pose(), b, aside));
        TorqueTube tube = design.twist().frame();
        if (tube == null) {
            return make.missing(
                    "frame",
                    Text.of(
                            "twist.frame missing (a tube of the frame that bears twist); it bears {}",
                            Text.amount(worst.value(), Kind.MOMENT, "N m", 0)));
        }
        Pose pose = analysis.poses().get(0);
        double length = Math.abs(pose.framePin().x() - pivot(analysis, pose).x());
        return make.compare(
                "frame",
                usage(tube, worst.value(), design.factors().crossMember()),
                worst,
                turned(tube, worst.value(), length));
    }

    private static Text turned(TorqueTube tube, double torque, double length) {
        double twist = section(tube).twist(torque, length, SHEAR);
        return Text.of("{} twist it by {}", Text.amount(torque, Kind.MOMENT, "N m", 0), Text.degrees(twist, 2));
    }

    private static Vec2 pivot(Analysis analysis, Pose pose) {
        return analysis.mechanism().joints().get(analysis.mechanism().pivot()).place(pose);
    }

    /**
     * About the line from the pivot to the actuator's pin, N m: at the bracket what the actuators put in, at the pivot what the bearings
     * bear of it and of a load that lies or is blown to one side.
     */
    private static double onTank(Pose pose, Balance balance, Vec2 pivot, Aside aside) {
        Vec2 along = pose.tankPin().minus(pose.framePin()).unit();
        Vec2 line = pose.tankPin().minus(pivot);
        if (!(line.norm() > 0)) {
            return 0;
        }
        double atBracket = Math.abs(balance.force() * along.cross(line.unit())) * aside.of(pose, balance);
        Vec2 differs =
                balance.bearings().get(1).minus(balance.bearings().get(0)).xy();
        double atPivot = Math.abs(differs.cross(line.unit())) * aside.span() / 2;
        return Math.max(atBracket, atPivot);
    }

    /** About a line along the machine, N m. */
    private static double onFrame(Pose pose, Balance balance, Aside aside) {
        Vec2 along = pose.tankPin().minus(pose.framePin()).unit();
        return Math.abs(balance.force() * along.y()) * aside.of(pose, balance);
    }

    private static TorsionSection section(TorqueTube tube) {
        return TorsionSection.tube(tube.height(), tube.width(), tube.wall());
    }

    /** A tube under a torque in N m. */
    static Usage usage(TorqueTube tube, double torque, double factor) {
        double shear = new RectangularTube(tube.height(), tube.width(), tube.wall()).torsion(torque);
        return new Usage(Math.sqrt(3) * shear, tube.yield(), factor, Kind.PRESSURE);
    }

    /** Stress of a round shell that a moment in N m bends or twists, whichever is worse, Pa. */
    static double round(double radius, double wall, double moment) {
        return moment / (Math.PI * radius * radius * wall);
    }
}
