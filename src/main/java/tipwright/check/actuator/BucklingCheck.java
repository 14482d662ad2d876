// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.WorkedFormula;
import tipwright.design.Factors;
import tipwright.design.Limits;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Rope;
import tipwright.design.actuator.Sharing;
import tipwright.design.actuator.TelescopicCylinder;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.strength.Column;

/** Rod buckling at every tilt with the length there. */
public final class BucklingCheck implements Check {
    @Override
    public String id() {
        return "buckling";
    }

    @Override
    public String title() {
        return "Actuator rod: buckling";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : title() + ", " + part;
    }

    @Override
    public String shortly(Finding finding) {
        return "rod buckling";
    }

    @Override
    public String rule() {
        return "At every tilt the push is within the buckling load of the actuator, pinned at both ends, at its length there;"
                + " without the body's dimensions the rod is taken over the whole length. A telescopic cylinder is taken stage by"
                + " stage where their bores are given; what overlaps counts once, play between the stages does not.";
    }

    @Override
    public String formula() {
        return "Euler pi^2 E I / L^2; Johnson A Sy (1 - Sy (L/k)^2 / (4 pi^2 E)) when L/k < sqrt(2 pi^2 E / Sy); rod and"
                + " body: lowest root of sin(k1 L1) cos(k2 L2)/k1 + cos(k1 L1) sin(k2 L2)/k2 = 0, k = sqrt(P/EI);"
                + " stages: bow and slope passed on from one to the next, lowest P that brings the bow back to the far pin";
    }

    @Override
    public String source() {
        return "Euler and J. B. Johnson columns (Hibbeler, Mechanics of Materials, ch. 13; Faires); stepped: beam theory";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.BOUNDS_MOUNTS, Trait.BEARS_DRIVE, Trait.CARRIES_TANK);
    }

    @Override
    public String part(Finding finding) {
        return "rod";
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.ROD);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Fix.of("a thicker or shorter rod{}, or " + Fix.ARM, finding, limits);
    }

    @Override
    public String bound(String id) {
        return "rod buckling";
    }

    @Override
    public String opener() {
        return "a rod that bears {more} in buckling than that of {actuator}";
    }

    @Override
    public String worked(Analysis analysis, Finding finding, UnitSystem units) {
        int index = Findings.number(finding);
        Actuator actuator = analysis.design().drive().actuators().get(index).actuator();
        double length = finding.worst().pose(analysis).length();
        return new WorkedFormula(analysis, finding, units).column(actuator, length);
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        List<PlacedActuator> actuators = analysis.design().drive().actuators();
        List<Finding> all = new ArrayList<>();
        for (int i = 0; i < actuators.size(); i++) {
            String part = actuators.size() == 1 ? "" : "actuator " + (i + 1);
            if (!(actuators.get(i).actuator() instanceof Rope)) {
                all.add(one(make, part, analysis, i));
            }
        }
        return all;
    }

    private static Finding one(Findings make, String part, Analysis analysis, int index) {
        List<PlacedActuator> all = analysis.design().drive().actuators();
        Actuator actuator = all.get(index).actuator();
        if (!Column.known(actuator)) {
            String stages = actuator instanceof TelescopicCylinder ? ", and actuator.stages: bore missing" : "";
            return make.missing(part, "actuator.rod missing" + stages);
        }
        String how = Column.byStages(actuator)
                ? "each stage as far as it is out"
                : actuator.tube() == null ? "bare rod over the whole length" : "rod and body";
        Factors factors = analysis.design().factors();
        IdentityHashMap<Pose, Double> columns = new IdentityHashMap<>();
        double least = Column.least(
                actuator,
                analysis.poses().stream().mapToDouble(Pose::length).min().orElse(0),
                analysis.poses().stream().mapToDouble(Pose::length).max().orElse(0));
        return make.worst(
                part,
                analysis,
                (row, b) -> usage(b.force(), least, factors).utilisation(),
                (row, b) -> usage(
                        b.force() * Sharing.shares(all, row.pose().length(), true)[index],
                        columns.computeIfAbsent(row.pose(), p -> Column.actuator(actuator, p.length())),
                        factors),
                Text.words(how));
    }

    /**
     * An actuator under a push in N; a pull does not buckle it.
     *
     * @param column what buckles it at its length, N
     */
    static Usage usage(double push, double column, Factors factors) {
        return new Usage(Math.max(0, push), column, factors.buckling(), Kind.FORCE);
    }
}
