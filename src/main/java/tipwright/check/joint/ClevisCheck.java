// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
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
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** An actuator whose two brackets are out of line along the pivot: its eyes lean between their cheeks. */
public final class ClevisCheck implements Check {
    /** Less than this is in line, rad: 0.1 mm in 1 m. */
    private static final double IN_LINE = 1e-4;

    @Override
    public String id() {
        return "clevis";
    }

    @Override
    public String title() {
        return "Eye of the actuator: pulled out of line";
    }

    @Override
    public String rule() {
        return "Where the actuator's two brackets are not in line along the pivot, it leans, and so do its eyes on their pins and between their cheeks. They lean as far as the pin's play in the hole and the gaps at the cheeks let them, or as far as a ball joint does; beyond that they bind and bend the rod.";
    }

    @Override
    public String formula() {
        return "asin(offset / shortest pin to pin) <= the lesser of (hole - pin) / eye's width and 2 gap / lug's width across";
    }

    @Override
    public String source() {
        return "plane geometry";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.BOUNDS_MOUNTS);
    }

    @Override
    public String bound(String id) {
        return "actuator out of line";
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.PIN, PartKind.LUG);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("brackets in line along the pivot, wider gaps at the cheeks, or ball joints in the eyes");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Design design = analysis.design();
        Findings make = new Findings(this, design);
        List<Finding> all = new ArrayList<>();
        for (Fastening f : design.fastenings()) {
            double lean = Math.asin(BracketLine.lean(analysis, f));
            if (!(lean > IN_LINE)) {
                continue;
            }
            PinJoint pin = design.drive().pinJoint(BracketLine.atFrame(f) ? Drive.FRAME_PIN : Drive.ROD_PIN);
            Lug lug = f.lug();
            if (pin == null || (lug == null && pin.leans() == null)) {
                all.add(make.missing(f.joint(), pin == null ? "the pin's sizes missing" : "fastenings: lug missing"));
                continue;
            }
            double free = free(pin, lug);
            all.add(make.compare(
                    f.joint(), lean, free, 1, Kind.ANGLE, Extreme.NOWHERE, "the two brackets are out of line"));
        }
        return all;
    }

    /** How far an eye leans to one side before it binds, rad. */
    static double free(PinJoint pin, @Nullable Lug lug) {
        Double ball = pin.leans();
        if (ball != null) {
            return ball;
        }
        return lug == null
                ? 0
                : Math.max(0, Math.min((lug.hole() - pin.diameter()) / pin.lug(), 2 * pin.gap() / lug.width()));
    }
}
