// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.Pose;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.design.Design;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Sharing;
import tipwright.design.around.CrossMember;
import tipwright.design.around.Frame;
import tipwright.geometry.Vec2;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.Beam;
import tipwright.strength.RectangularTube;

/** The rectangular tube under the actuator's frame pin. */
public final class CrossMemberCheck implements Check {
    /** Places along the span where its bending is looked at; an even number, so that the middle is one. */
    private static final int PARTS = 400;

    @Override
    public String id() {
        return "cross-member";
    }

    @Override
    public String title() {
        return "Cross member under the frame pin: bending";
    }

    @Override
    public String title(String part) {
        return part.isEmpty()
                ? title()
                : "Cross member under the frame pin: " + (part.equals("bending") ? "sag" : "stress");
    }

    @Override
    public String rule() {
        return "The tube bends between its ends under the pin's force, both ways, and is twisted where the pin sits beside its"
                + " middle. Ends: free to bend, held against twist. Its stress stays below yield, its bending below a share of"
                + " the span.";
    }

    @Override
    public String formula() {
        return "sigma = Mx/Sx + My/Sy; tau = T/(2 A t) + V/(2 h t); sqrt(sigma^2 + 3 tau^2) <= yield / factor; deflection ="
                + " P b x (L^2 - b^2 - x^2)/(6 E I L)";
    }

    @Override
    public String source() {
        return "beam theory; Bredt; von Mises; limit of the deflection: common practice, no source";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BEARS_DRIVE, Trait.CARRIES_TANK);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.CROSS_MEMBER);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a deeper or thicker tube, or the pin closer to the frame rail");
    }

    @Override
    public Text says(Finding finding) {
        return finding.partId().equals("bending")
                ? finding.allowed("the cross member under the frame pin sags by")
                : Check.super.says(finding);
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Design design = analysis.design();
        Findings make = new Findings(this, design);
        Frame frame = design.frame();
        CrossMember tube = frame == null ? null : frame.crossMember();
        if (tube == null) {
            return List.of(make.missing("", "frame.cross-member missing"));
        }
        if (analysis.mechanism().actuatorFrom() != 0) {
            return List.of(make.cannot("", "the actuator is not pinned to the frame"));
        }
        double from = Math.min(tube.z().get(0), tube.z().get(1));
        double to = Math.max(tube.z().get(0), tube.z().get(1));
        double[] places = design.drive().actuators().stream()
                .mapToDouble(PlacedActuator::z)
                .toArray();
        for (double z : places) {
            if (!(z > from && z < to)) {
                return List.of(make.cannot("", "an actuator sits beyond the ends in frame.cross-member.z"));
            }
        }
        Bent bent = new Bent(tube, new Beam(from, to), design.drive().actuators());
        Extreme stress = Extreme.largest(analysis.cases(), (row, b) -> bent.stress(row.pose(), b.force()));
        Extreme sag = Extreme.largest(analysis.cases(), (row, b) -> bent.sag(row.pose(), b.force()));
        Text note =
                Text.of("1/{} of the span", Text.number(tube.span() / Math.max(sag.value(), 1e-9 * tube.span()), 0));
        return List.of(
                make.compare(
                        "stress",
                        stressed(stress.value(), tube, design.factors()),
                        stress,
                        Text.words("combined stress against yield")),
                make.compare("bending", bent(sag.value(), tube, design.limits()), sag, note));
    }

    /** A tube under a combined stress in Pa. */
    static Usage stressed(double stress, CrossMember tube, Factors factors) {
        return new Usage(stress, tube.yield(), factors.crossMember(), Kind.PRESSURE);
    }

    /** A tube that bends by so many m. */
    static Usage bent(double sag, CrossMember tube, Limits limits) {
        return new Usage(sag, limits.deflection() * tube.span(), 1, Kind.LENGTH);
    }

    /** The tube under the actuators' shares of their force. */
    private static final class Bent {
        private final CrossMember tube;
        private final RectangularTube section;
        private final Beam beam;
        private final List<PlacedActuator> actuators;
        private final double[] places;
        /** Deflection along the tube by 1 N at one place and a stiffness of 1 N m2, m [actuator][part]. */
        private final double[][] supple;
        /** The largest of one actuator alone, m. */
        private final double most;

        Bent(CrossMember tube, Beam beam, List<PlacedActuator> actuators) {
            this.tube = tube;
            this.beam = beam;
            this.actuators = actuators;
            places = actuators.stream().mapToDouble(PlacedActuator::z).toArray();
            section = new RectangularTube(tube.height(), tube.width(), tube.wall());
            supple = new double[places.length][PARTS + 1];
            for (int k = 0; k < places.length; k++) {
                for (int i = 1; i < PARTS; i++) {
                    double z = beam.from() + (beam.to() - beam.from()) * i / PARTS;
                    supple[k][i] = beam.deflection(z, new double[] {places[k]}, new double[] {1}, 1);
                }
            }
            most = Arrays.stream(supple[0]).max().orElse(0);
        }

        private double[] shares(Pose pose, double force) {
            return Sharing.shares(actuators, pose.length(), force > 0);
        }

        private Vec2 all(Pose pose, double force) {
            return pose.framePin().minus(pose.tankPin()).unit().times(force);
        }

        private static double[] times(double[] shares, double all) {
            return Arrays.stream(shares).map(s -> s * all).toArray();
        }

        double stress(Pose pose, double force) {
            Vec2 f = all(pose, force);
            double[] shares = shares(pose, force);
            double[] down = times(shares, f.y());
            double[] level = times(shares, f.x());
            double[] twist = times(shares, pose.framePin().minus(tube.at()).cross(f));
            double worst = 0;
            for (double z : places) {
                double sigma = Math.abs(beam.moment(z, places, down)) / section.modulus()
                        + Math.abs(beam.moment(z, places, level)) / section.modulusAcross();
                double torque = Math.max(Math.abs(beam.first(places, twist)), Math.abs(beam.second(places, twist)));
                double pushY = Math.max(Math.abs(beam.first(places, down)), Math.abs(beam.second(places, down)));
                double pushX = Math.max(Math.abs(beam.first(places, level)), Math.abs(beam.second(places, level)));
                double across = section.shearAcross(pushX);
                double tau = section.torsion(torque) + Math.max(section.shear(pushY), across);
                worst = Math.max(worst, Math.sqrt(sigma * sigma + 3 * tau * tau));
            }
            return worst;
        }

        double sag(Pose pose, double force) {
            Vec2 f = all(pose, force);
            double[] shares = shares(pose, force);
            double deepest = shares.length == 1 ? shares[0] * most : deepest(shares);
            return deepest
                    / tube.modulus()
                    * new Vec2(f.x() / section.inertiaAcross(), f.y() / section.inertia()).norm();
        }

        private double deepest(double[] shares) {
            double deepest = 0;
            for (int i = 1; i < PARTS; i++) {
                double sum = 0;
                for (int k = 0; k < shares.length; k++) {
                    sum += shares[k] * supple[k][i];
                }
                deepest = Math.max(deepest, sum);
            }
            return deepest;
        }
    }
}
