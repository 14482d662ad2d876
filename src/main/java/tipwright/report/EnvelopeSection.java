// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.design.actuator.Actuator;
import tipwright.design.joint.Support;
import tipwright.design.tank.CaseName;

/** About a dozen tilts with the worst of all load cases at each. */
final class EnvelopeSection {
    private final Analysis analysis;
    private final Style style;

    EnvelopeSection(Analysis analysis, Style style) {
        this.analysis = analysis;
        this.style = style;
    }

    List<String> lines() {
        Scale length = Scale.length(style.units());
        Scale force = Scale.force(style.units());
        Table pushes = new Table("rrrrrrl");
        pushes.row("tilt", "pin to", "stroke", "lever", "pushing", "push", "with");
        pushes.row("deg", "pin " + length.unit(), "used", "arm " + length.unit(), "angle", force.unit());
        Table pulls = new Table("rrlrll");
        pulls.row("tilt", "pull", "with", "bearing", "which", "pushes");
        pulls.row("deg", force.unit(), "", force.unit());
        List<String> pushed = List.of();
        List<String> pulled = List.of();
        for (Envelope at : Envelope.shown(analysis)) {
            Pose pose = at.pose();
            Peak push = at.push();
            Peak pull = at.pull();
            Peak.OnBearing bearing = at.bearing();
            String tilt = Scale.angle().plain(pose.tilt());
            List<String> up = List.of(
                    tilt,
                    length.number(pose.length()),
                    strokeUsed(pose),
                    length.number(pose.arm()),
                    Long.toString(Math.round(Math.toDegrees(pose.transmission()))),
                    push == null ? "-" : force.number(push.value()),
                    push == null
                            ? ""
                            : CaseName.shown(push.loadCase(), analysis.design().tank()));
            if (!up.equals(pushed)) {
                pushes.row(up.toArray(String[]::new));
            }
            pushed = up;
            List<String> back = List.of(
                    tilt,
                    pull == null ? "-" : force.number(pull.value()),
                    pull == null
                            ? ""
                            : CaseName.shown(pull.loadCase(), analysis.design().tank()),
                    bearing == null ? "-" : force.number(bearing.peak().value()),
                    bearing == null ? "" : analysis.design().pivot().side(bearing.bearing()),
                    way(bearing));
            if (!back.equals(pulled)) {
                pulls.row(back.toArray(String[]::new));
            }
            pulled = back;
        }
        List<String> lines = new ArrayList<>();
        lines.add(style.heading("Tilt by tilt, worst load, with friction"));
        lines.addAll(pushes.lines("  "));
        lines.addAll(Term.legend(List.of("pin to pin", "lever arm", "pushing angle")));
        lines.add("");
        lines.addAll(pulls.lines("  "));
        lines.addAll(Term.legend(List.of("pushes")));
        return lines;
    }

    private String way(Peak.@Nullable OnBearing bearing) {
        if (bearing == null) {
            return "";
        }
        Support support = analysis.design().pivot().bearings().get(bearing.bearing());
        return Direction.of(bearing.load(), support.base()).word();
    }

    private String strokeUsed(Pose pose) {
        Actuator actuator = analysis.design().drive().actuators().get(0).actuator();
        return Math.round(100 * (pose.length() - actuator.closed()) / actuator.stroke()) + " %";
    }
}
