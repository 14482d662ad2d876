// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.design.actuator.Actuator;
import tipwright.design.joint.Support;

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
        Table table = new Table("rrrrrrlrlrrl");
        table.row(
                "tilt",
                "length",
                "stroke",
                "arm",
                "angle",
                "push",
                "case",
                "pull",
                "case",
                "bearing",
                "no.",
                "load goes");
        table.row("deg", length.unit(), "used", length.unit(), "deg", force.unit(), "", force.unit(), "", force.unit());
        for (Envelope at : Envelope.shown(analysis)) {
            Pose pose = at.pose();
            Peak push = at.push();
            Peak pull = at.pull();
            Peak.OnBearing bearing = at.bearing();
            table.row(
                    Scale.angle().plain(pose.tilt()),
                    length.number(pose.length()),
                    strokeUsed(pose),
                    length.number(pose.arm()),
                    Long.toString(Math.round(Math.toDegrees(pose.transmission()))),
                    push == null ? "-" : force.number(push.value()),
                    push == null ? "" : push.loadCase(),
                    pull == null ? "-" : force.number(pull.value()),
                    pull == null ? "" : pull.loadCase(),
                    bearing == null ? "-" : force.number(bearing.peak().value()),
                    bearing == null ? "" : Integer.toString(bearing.bearing() + 1),
                    way(bearing));
        }
        List<String> lines = new ArrayList<>();
        lines.add(style.heading("Over the tilt: the worst of all load cases, friction included"));
        lines.addAll(table.lines("  "));
        lines.addAll(Prose.wrap(
                "  ",
                "length: pin to pin. arm: what the actuator's line passes the pivot by, so that force times arm turns the tank."
                        + " angle: between the actuator and the line from pivot to its pin; 90 is best."));
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
