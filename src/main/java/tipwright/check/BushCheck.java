// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.design.PlainBush;
import tipwright.quantity.Kind;
import tipwright.quantity.UnitSystem;

/** Pressure in plain bushes. */
final class BushCheck implements Check {
    @Override
    public String id() {
        return "bush";
    }

    @Override
    public String title() {
        return "Plain bush, pressure";
    }

    @Override
    public String rule() {
        return "The mean pressure in each plain bush is within what its material bears; a tank turns so slowly that pressure"
                + " governs, not pressure times speed.";
    }

    @Override
    public String formula() {
        return "p = F / (d b)";
    }

    @Override
    public String source() {
        return "projected-area pressure (R. L. Mott, Machine Elements in Mechanical Design, plain bearings); maker's limit";
    }

    @Override
    public String worked(Analysis analysis, Finding finding, UnitSystem units) {
        int index = Findings.number(finding);
        if (analysis.design().pivot().bearings().get(index).bearing() instanceof PlainBush bush) {
            return new Worked(analysis, finding, units).bush(index, bush.bore(), bush.length());
        }
        return "";
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        return BearingParts.each(
                this, analysis, PlainBush.class, (make, part, i, bearing) -> one(make, part, analysis, i, bearing));
    }

    private static Finding one(Findings make, String part, Analysis analysis, int i, PlainBush bush) {
        Double allowed = bush.pressure();
        if (allowed == null) {
            return make.missing(part, "bearing.pressure missing");
        }
        double area = bush.bore() * bush.length();
        Findings.Worst worst =
                Sweep.balances(analysis, (Balance b) -> b.bearings().get(i).xy().norm() / area);
        double factor = analysis.design().factors().bush();
        return make.compare(part, worst.value(), allowed, factor, Kind.PRESSURE, worst, "mean pressure, load over d b");
    }
}
