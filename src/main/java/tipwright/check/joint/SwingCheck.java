// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.Mechanism;
import tipwright.analysis.Pose;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Titles;
import tipwright.check.rule.Trait;
import tipwright.design.Limits;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.Rod;
import tipwright.design.actuator.TelescopicCylinder;
import tipwright.design.actuator.Tube;
import tipwright.design.drive.Drive;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Whether the actuator can swing in its brackets as far as it has to. */
public final class SwingCheck implements Check {
    @Override
    public String id() {
        return "swing";
    }

    @Override
    public String title() {
        return "Actuator: swing in its bracket";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Actuator: swing in its bracket at " + Titles.the(part);
    }

    @Override
    public String shortly(Finding finding) {
        return "swing of the actuator in its bracket";
    }

    @Override
    public String rule() {
        return "From stowed to full tilt the actuator swings in both brackets. Its body must not meet the plate behind the pin: a bracket that stops it short bends the rod or burns the motor. The body is taken as wide from the pin on.";
    }

    @Override
    public String formula() {
        return "largest angle between actuator and bracket <= 90 deg; asin(height / half the body's diameter) where the pin is nearer to the plate than that";
    }

    @Override
    public String source() {
        return "plane geometry";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.BOUNDS_MOUNTS, Trait.ASKED_LATE);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.PIN, PartKind.LUG);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("the pin further off its plate, or the bracket turned towards the middle of the swing");
    }

    @Override
    public String bound(String id) {
        return "swing in the bracket";
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        List<Finding> all = new ArrayList<>();
        for (Fastening f : analysis.design().fastenings()) {
            boolean fixed = f.joint().equals(Drive.FRAME_PIN);
            if (fixed || f.joint().equals(analysis.design().drive().rodPinName())) {
                Finding found = one(make, analysis, f, fixed);
                if (found != null) {
                    all.add(found);
                }
            }
        }
        return all.isEmpty() ? List.of(make.missing("", "fastenings: height missing")) : all;
    }

    private static @Nullable Finding one(Findings make, Analysis analysis, Fastening f, boolean fixed) {
        Double height = f.height();
        FilletWeld weld = f.weld();
        Bolts bolts = f.bolts();
        Vec3 square = weld != null ? weld.normal() : bolts != null ? bolts.normal() : null;
        if (square != null && square.xy().norm() < 1e-3 * square.norm()) {
            return null;
        }
        if (height == null || square == null) {
            return make.missing(f.joint(), "fastenings: " + (height == null ? "height" : "weld or bolts") + " missing");
        }
        Actuator actuator = analysis.design().drive().actuators().get(0).actuator();
        double thick = fixed ? tube(actuator) : rod(actuator);
        if (Double.isNaN(thick)) {
            return make.missing(f.joint(), "actuator." + (fixed ? "tube" : "rod") + " missing");
        }
        double half = thick / 2;
        Mechanism m = analysis.mechanism();
        int body = fixed ? m.actuatorFrom() : m.actuatorTo();
        Vec2 n = square.xy().unit();
        Vec2 stowed = direction(analysis.poses().get(0), body, fixed);
        Vec2 out = n.dot(stowed) < 0 ? n.times(-1) : n;
        Extreme worst = Extreme.largest(
                analysis,
                pose -> Math.acos(
                        Math.max(-1, Math.min(1, direction(pose, body, fixed).dot(out)))));
        double free = height >= half ? Math.PI / 2 : Math.asin(height / half);
        return make.compare(
                f.joint(),
                worst.value(),
                free,
                1,
                Kind.ANGLE,
                worst,
                Text.of(
                        "between the actuator and straight out of its bracket; body {} thick",
                        Text.amount(2 * half, Kind.LENGTH, "mm", 0)));
    }

    /** From a pin along the actuator, in the axes of the body that the bracket sits on. */
    private static Vec2 direction(Pose pose, int body, boolean fixed) {
        Vec2 u = pose.tankPin().minus(pose.framePin()).unit().times(fixed ? 1 : -1);
        return u.tilted(-pose.bodies().get(body).turn());
    }

    /** m; NaN: not known. */
    private static double tube(Actuator actuator) {
        Tube tube = actuator.tube();
        return tube == null ? Double.NaN : tube.outside();
    }

    /** What comes out of the tube, the thinnest stage of several, m; NaN: not known. */
    private static double rod(Actuator actuator) {
        Rod rod = actuator.rod();
        if (actuator instanceof TelescopicCylinder cylinder) {
            return cylinder.stages().get(cylinder.stages().size() - 1).diameter();
        }
        return rod == null ? Double.NaN : rod.diameter();
    }
}
