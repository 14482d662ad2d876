// SPDX-License-Identifier: Apache-2.0
package tipwright.check.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Row;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.actuator.Cylinder;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.TelescopicCylinder;
import tipwright.design.supply.HandPump;
import tipwright.design.supply.Pump;
import tipwright.design.supply.ReturnLine;
import tipwright.design.supply.Supply;
import tipwright.design.tank.CaseName;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Whether the tank's own weight presses hard enough on the oil to come down against the seals. */
public final class GravityReturnCheck implements Check {
    @Override
    public String id() {
        return "gravity-return";
    }

    @Override
    public String title() {
        return "Return by its own weight";
    }

    @Override
    public String rule() {
        return "Where nothing but its own weight brings the tank back, it makes at every tilt, against the friction of its pins,"
                + " more than the pressure at which the cylinder's seals begin to move, with a margin: empty, with what stays in it,"
                + " and at full tilt with every load of a normal dump.";
    }

    @Override
    public String formula() {
        return "p = F_lower / A; p_seals margin / p <= 1";
    }

    @Override
    public String source() {
        return "p = F/A; the margin: common practice, no source";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a double-acting cylinder, a spring that pulls the tank back, or less tilt");
    }

    @Override
    public Text says(Finding finding) {
        return finding.has() > 0 ? Check.super.says(finding) : finding.note();
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Design design = analysis.design();
        List<Cylinder> cylinders = new ArrayList<>();
        for (PlacedActuator p : design.drive().actuators()) {
            if (p.actuator() instanceof Cylinder c) {
                cylinders.add(c);
            }
        }
        if (cylinders.size() < design.drive().actuators().size() || !byGravity(design.supply(), cylinders)) {
            return List.of();
        }
        Findings make = new Findings(this, design);
        if (analysis.cases().stream().noneMatch(c -> CaseName.EMPTY.is(c.name()))) {
            return List.of(make.cannot("", "cases: 'empty' is skipped"));
        }
        Extreme.Search search = Extreme.Search.smallest();
        boolean out = analysis.poses().get(0).arm() > 0;
        for (CaseResult load : analysis.cases()) {
            for (Row row : back(load)) {
                search.offer(pressure(row, cylinders, out), row.tilt(), load.name(), MotionDirection.LOWERING);
            }
        }
        return List.of(one(make, search.found(), line(design.supply())));
    }

    /** Where a load may begin its way back, or be on it. */
    private static List<Row> back(CaseResult load) {
        List<Row> rows = load.rows();
        if (CaseName.EMPTY.is(load.name()) || CaseName.HEEL.is(load.name())) {
            return rows;
        }
        Row last = rows.get(rows.size() - 1);
        return load.load().normalAt(last.tilt()) ? List.of(last) : List.of();
    }

    private static Finding one(Findings make, Extreme least, @Nullable ReturnLine line) {
        String tank = CaseName.EMPTY.is(String.valueOf(least.loadCase())) ? "the empty tank" : "the tank";
        Text makes = Text.of(
                tank + " makes {} at {}",
                Text.amount(Math.max(0, least.value()), Kind.PRESSURE, "bar", 2),
                Text.degrees(least.tilt(), 0));
        if (!(least.value() > 0)) {
            return make.given(
                    "",
                    0,
                    Math.max(0, least.value()),
                    1,
                    Kind.PRESSURE,
                    Double.POSITIVE_INFINITY,
                    least,
                    Verdict.FAIL,
                    Text.words(tank + " does not press on the oil there: it stays up"));
        }
        Double seals = line == null ? null : line.seals();
        if (line == null || seals == null) {
            String key = line == null ? "supply.return-line" : "supply.return-line.seals";
            return make.missing("", Text.words(key + " missing; ").plus(makes));
        }
        Usage usage = new Usage(seals, least.value(), line.margin(), Kind.PRESSURE);
        return make.compare(
                "",
                usage,
                least,
                Text.words("pressure of the seals against what the tank makes; ")
                        .plus(makes));
    }

    /** Pressure that the load makes on its way back, Pa; negative: it does not drive the oil out. */
    private static double pressure(Row row, List<Cylinder> cylinders, boolean out) {
        double area = 0;
        for (Cylinder c : cylinders) {
            area += c.oilArea(row.pose().length(), out);
        }
        return (out ? 1 : -1) * row.lower().force() / area;
    }

    private static @Nullable ReturnLine line(@Nullable Supply supply) {
        return supply instanceof Pump p ? p.returnLine() : supply instanceof HandPump h ? h.returnLine() : null;
    }

    /** Whether it comes back by its own weight alone, as said or as is usual where oil cannot pull. */
    static boolean byGravity(@Nullable Supply supply, List<Cylinder> cylinders) {
        boolean pulls = cylinders.stream().allMatch(c -> c.oilArea(0, false) > 0);
        Pump.Lowering said = supply instanceof Pump p ? p.lowering() : null;
        boolean released = supply instanceof HandPump h && h.orifice() != null;
        boolean stages = cylinders.stream().anyMatch(c -> c instanceof TelescopicCylinder);
        return stages || released || (said == null ? !pulls : said == Pump.Lowering.GRAVITY);
    }
}
