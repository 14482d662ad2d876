// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.design.joint.Support;
import tipwright.design.tank.CaseName;

/** The largest force in each load case, and the largest load of each bearing. */
final class ForceSection {
    private final Analysis analysis;
    private final Style style;
    private final Scale force;

    ForceSection(Analysis analysis, Style style) {
        this.analysis = analysis;
        this.style = style;
        this.force = Scale.force(style.units());
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        int n = analysis.design().drive().actuators().size();
        lines.add(style.heading(
                n == 1
                        ? "Force of the actuator"
                        : n == 2 ? "Force of both actuators together" : "Force of all " + n + " actuators together"));
        Table table = new Table("lll");
        for (CaseResult c : analysis.cases()) {
            Peak push = Peak.force(List.of(c), Peak.Tilts.ALL, true);
            Peak pull = Peak.force(List.of(c), Peak.Tilts.ALL, false);
            table.row(CaseName.shown(c.name(), analysis.design().tank()), words("pushes", push), words("pulls", pull));
        }
        lines.addAll(table.lines("  "));
        lines.addAll(Term.legend(analysis.cases().stream()
                .map(c -> CaseName.shown(c.name(), analysis.design().tank()))
                .toList()));
        lines.add("");
        lines.add(style.heading("Largest load on each bearing"));
        List<Support> bearings = analysis.design().pivot().bearings();
        for (int b = 0; b < bearings.size(); b++) {
            Peak.OnBearing worst = Peak.bearing(analysis.cases(), Peak.Tilts.ALL, b, b + 1);
            if (worst != null) {
                lines.addAll(bearing(b, bearings.get(b), worst));
            }
        }
        return lines;
    }

    private List<String> bearing(int number, Support support, Peak.OnBearing worst) {
        String name = "  " + (number + 1) + " (" + analysis.design().pivot().side(number) + ")  ";
        String text = "at z " + Scale.length(style.units()).show(support.z()) + ": "
                + force.show(worst.peak().value()) + " at "
                + Scale.angle().show(worst.peak().tilt()) + " ("
                + CaseName.shown(worst.peak().loadCase(), analysis.design().tank()) + ", "
                + worst.peak().motion() + "), "
                + Direction.of(worst.load(), support.base()).words();
        return Prose.wrap(name, text);
    }

    /** 'pushes 7.9 kN at 0 deg raising', 'never pulls'. */
    private String words(String verb, @Nullable Peak peak) {
        if (peak == null) {
            return "never " + verb;
        }
        return verb + " " + force.show(peak.value()) + " at " + Scale.angle().show(peak.tilt()) + ", " + peak.motion();
    }
}
