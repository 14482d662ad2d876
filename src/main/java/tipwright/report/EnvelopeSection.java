// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.design.Actuator;
import tipwright.design.Support;

/** About a dozen tilts with the worst of all load cases at each. */
final class EnvelopeSection {
    private static final int MOST_ROWS = 16;
    private static final double[] STEPS = {0.5, 1, 2, 2.5, 5, 10, 15, 20};

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
        for (int i : shown(analysis.poses())) {
            Pose pose = analysis.poses().get(i);
            Peak.Tilts here = Peak.Tilts.only(i);
            Peak push = Peak.force(analysis.cases(), here, true);
            Peak pull = Peak.force(analysis.cases(), here, false);
            int bearings = analysis.design().pivot().bearings().size();
            Peak.OnBearing bearing = Peak.bearing(analysis.cases(), here, 0, bearings);
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

    /** Numbers of the tilts that are shown: round ones, and always the first and the last. */
    static List<Integer> shown(List<Pose> poses) {
        List<Integer> all = new ArrayList<>();
        if (poses.isEmpty()) {
            return all;
        }
        double step = step(poses);
        int last = poses.size() - 1;
        for (int i = 0; i < last; i++) {
            double steps = Math.toDegrees(poses.get(i).tilt()) / step;
            if (i == 0 || Math.abs(steps - Math.rint(steps)) < 1e-6) {
                all.add(i);
            }
        }
        all.add(last);
        return all;
    }

    private static double step(List<Pose> poses) {
        double span =
                Math.toDegrees(poses.get(poses.size() - 1).tilt() - poses.get(0).tilt());
        for (double step : STEPS) {
            if (span / step + 1 <= MOST_ROWS) {
                return step;
            }
        }
        return STEPS[STEPS.length - 1];
    }
}
