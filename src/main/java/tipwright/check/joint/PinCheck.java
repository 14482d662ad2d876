// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.JointPlan;
import tipwright.analysis.Row;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.WorkedFormula;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.design.actuator.Sharing;
import tipwright.design.drive.Drive;
import tipwright.design.joint.PinJoint;
import tipwright.design.key.NameId;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.strength.PinStress;

/** The actuator's pins and every other pin of the mechanism; the pivot has checks of its own. */
public final class PinCheck implements Check {
    @Override
    public String id() {
        return "pin";
    }

    @Override
    public String title() {
        return "Pins: bending and shear";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : Text.capital(part) + ": bending and shear";
    }

    @Override
    public String rule() {
        return "Each pin of the mechanism bears its force in shear and in bending between lug and cheeks together; of two pins side by side each bears half, and the twist"
                + " where the actuator or the load is off the middle; of unlike cylinders on one line each by its area. A pin on which more than two parts meet bears the largest of their forces. Where force reaches a link beside its middle, its pins cannot be told.";
    }

    @Override
    public String formula() {
        return "double shear: M = F (a/4 + g/2 + b/8), V = F/2; single: M = F ((a+b)/2 + g)/2, V = F; with a ball joint, h = b/2 + g, k = a + 2 h: M = F (h + a^2/(6 k) - a^3/(54 k^2)); sigma = 32 M/(pi d^3);"
                + " tau = 4 V/(3 A); sqrt(sigma^2 + 3 tau^2) <= yield / factor";
    }

    @Override
    public String source() {
        return "Shigley, Mechanical Engineering Design (pin between lug and cheeks); von Mises";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BOUNDS_MOUNTS, Trait.BEARS_DRIVE, Trait.CARRIES_TANK);
    }

    @Override
    public String part(Finding finding) {
        String pin = NameId.words(finding.partId());
        return pin.equals("tank pin") || pin.equals("rod pin") ? "moving pin" : pin;
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.PIN, PartKind.SHAFT);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a thicker or harder shaft or pin, or less overhang and gap");
    }

    @Override
    public String bound(String id) {
        return "actuator pin";
    }

    @Override
    public String opener() {
        return "{more} strength of the actuator's pins, with {actuator}";
    }

    @Override
    public String worked(Analysis analysis, Finding finding, UnitSystem units) {
        for (Part part : parts(analysis)) {
            PinJoint joint = analysis.design().drive().pinJoint(part.name());
            if (joint != null && finding.id().equals(id() + "/" + NameId.of(part.shown()))) {
                WorkedFormula worked = new WorkedFormula(analysis, finding, units);
                Row row = finding.worst().row(analysis.cases());
                return worked.balance()
                        .filter(b -> row != null)
                        .map(b -> worked.pin(joint, part.load().of(Objects.requireNonNull(row), b)))
                        .orElse("");
            }
        }
        return "";
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        return TwistedLinks.judged(
                make,
                analysis,
                parts(analysis).stream().map(p -> one(make, analysis, p)).toList());
    }

    /**
     * A pin.
     *
     * @param shown its name in the trade's words
     * @param name in the design
     * @param load that it bears, N
     */
    private record Part(String shown, String name, Extreme.OfBalance load) {}

    private static List<Part> parts(Analysis analysis) {
        Drive drive = analysis.design().drive();
        Extreme.OfBalance push = (row, b) -> Math.abs(b.force())
                * Sharing.largest(drive.actuators(), row.pose().length(), b.force() > 0);
        List<Part> all = new ArrayList<>();
        all.add(new Part("frame pin", Drive.FRAME_PIN, push));
        all.add(new Part(NameId.words(drive.rodPinName()), Drive.ROD_PIN, push));
        TwinLinks twins = new TwinLinks(analysis);
        SharedPins shared = new SharedPins(analysis);
        List<JointPlan> joints = analysis.mechanism().joints();
        for (int i = 0; i < joints.size(); i++) {
            int joint = i;
            String name = joints.get(i).name();
            if (i != analysis.mechanism().pivot() && !joints.get(i).slide()) {
                all.add(new Part(
                        NameId.words(name),
                        name,
                        (row, b) -> Math.max(twins.force(joint, row.pose(), b), shared.force(joint, row.pose(), b))));
            }
        }
        return all;
    }

    private static Finding one(Findings make, Analysis analysis, Part part) {
        Drive drive = analysis.design().drive();
        PinJoint joint = drive.pinJoint(part.name());
        Extreme most = Extreme.largest(analysis.cases(), part.load());
        Text bears = Text.of("bears up to {}", Text.amount(most.value(), Kind.FORCE));
        if (joint == null) {
            return make.missing(
                    part.shown(),
                    Text.words(drive.pinKey(part.name()) + " missing; it ").plus(bears));
        }
        return make.compare(
                part.shown(),
                usage(most.value(), joint, analysis.design().factors()),
                most,
                Text.words("combined stress against yield; ").plus(bears));
    }

    /** A pin under a force in N. */
    public static Usage usage(double force, PinJoint joint, Factors factors) {
        return new Usage(PinStress.combined(joint, force), joint.yield(), factors.pin(), Kind.PRESSURE);
    }
}
