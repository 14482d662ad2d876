// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.io.IOException;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.check.Result;
import tipwright.design.actuator.Actuator;

/** The worst of all load cases, friction included: over all tilts, push and pull in part fills too, and at each tilt as filled. */
final class JsonPeaks {
    private static final double MM = 1000;

    private final JsonFields json;

    JsonPeaks(JsonFields json) {
        this.json = json;
    }

    void write(Result result) throws IOException {
        Analysis analysis = result.analysis();
        int bearings = analysis.design().pivot().bearings().size();
        json.start("peaks");
        peak("push", Peak.force(result, true));
        peak("pull", Peak.force(result, false));
        for (int b = 0; b < bearings; b++) {
            Peak.OnBearing worst = Peak.bearing(analysis.cases(), Peak.Tilts.ALL, b, b + 1);
            peak(
                    "bearing_" + (b + 1),
                    worst == null ? null : worst.peak(),
                    analysis.design().pivot().side(b));
        }
        json.end();
        json.each(
                "envelope",
                Envelope.of(analysis),
                e -> at(e, analysis.design().drive().actuators().get(0).actuator()));
    }

    private void peak(String name, @Nullable Peak peak) throws IOException {
        peak(name, peak, null);
    }

    private void peak(String name, @Nullable Peak peak, @Nullable String side) throws IOException {
        if (peak == null) {
            json.nothing(name);
            return;
        }
        json.start(name);
        json.number("force_n", peak.value());
        json.number("tilt_deg", Math.toDegrees(peak.tilt()));
        json.text("case", peak.loadCase());
        json.text("motion", peak.motion());
        if (side != null) {
            json.text("side", side);
        }
        json.end();
    }

    private void at(Envelope e, Actuator actuator) throws IOException {
        Pose pose = e.pose();
        json.number("tilt_deg", Math.toDegrees(pose.tilt()));
        json.number("actuator_length_mm", pose.length() * MM);
        json.number("stroke_used", (pose.length() - actuator.closed()) / actuator.stroke());
        json.number("moment_arm_mm", pose.arm() * MM);
        json.number("transmission_deg", Math.toDegrees(pose.transmission()));
        json.number("push_n", e.push() == null ? 0 : e.push().value());
        json.number("pull_n", e.pull() == null ? 0 : e.pull().value());
        json.number("bearing_n", e.bearing() == null ? 0 : e.bearing().peak().value());
    }
}
