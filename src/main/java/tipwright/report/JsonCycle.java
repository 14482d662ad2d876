// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.io.IOException;
import java.util.Locale;
import tipwright.time.Cycle;
import tipwright.time.DumpEvent;
import tipwright.time.Moment;
import tipwright.time.Timing;

/** The dump in time as JSON. */
final class JsonCycle {
    private static final double LITRES = 1000;
    private static final double MM = 1000;
    private static final double WH = 3600;
    private static final double MEGA = 1e6;
    private static final String NEVER = "it does not happen, or is not known";

    private final JsonFields json;

    JsonCycle(JsonFields json) {
        this.json = json;
    }

    /** The field 'cycle'; null when the time is not known. */
    void write(Timing timing) throws IOException {
        Cycle dump = timing.dump();
        if (dump == null) {
            json.nothing("cycle");
            return;
        }
        json.start("cycle");
        figures(dump);
        json.each("cases", timing.cycles(), this::figures);
        json.end();
    }

    /** The fields of the time line. */
    void timeLine(Timing timing) throws IOException {
        json.each("time_lines", timing.cycles(), cycle -> {
            json.text("case", cycle.load());
            json.each("events", cycle.happenings(), this::happening);
            json.each("rows", cycle.moments(), this::moment);
        });
    }

    private void figures(Cycle c) throws IOException {
        json.text("case", c.load());
        json.number("raise_s", c.raise());
        json.number("empty_s", c.empty());
        json.number("lower_s", c.lower());
        json.number("cycle_s", c.total());
        json.number("reaches_deg", Math.toDegrees(c.highest()));
        json.number("stalled_at_deg", Math.toDegrees(c.stalledAt()));
        json.number("stuck_at_deg", Math.toDegrees(c.stuckAt()));
        json.number("cycles_per_hour", c.perHour());
        json.number("on_time_s", c.spent().onTime());
        json.number("energy_wh", c.spent().energy() / WH);
        json.number("work_wh", c.spent().work() / WH);
        json.number("peak_current_a", c.peaks().current());
        json.number("peak_pressure_mpa", c.peaks().pressure() / MEGA);
        json.number("peak_flow_l_s", c.peaks().flow() * LITRES);
        json.number("peak_return_flow_l_s", c.peaks().returned() * LITRES);
        json.number("peak_pump_power_w", c.peaks().shaft());
        json.number("peak_discharge_l_s", c.peaks().discharge() * LITRES);
        json.number("peak_vacuum_pa", c.peaks().vacuum());
        json.missing(NEVER);
    }

    private void happening(DumpEvent h) throws IOException {
        json.number("time_s", h.time());
        json.number("tilt_deg", Math.toDegrees(h.tilt()));
        json.text("what", h.kind().words());
    }

    private void moment(Moment m) throws IOException {
        json.text("phase", m.phase().name().toLowerCase(Locale.ROOT));
        json.number("time_s", m.time());
        json.number("tilt_deg", Math.toDegrees(m.tilt()));
        json.number("actuator_length_mm", m.length() * MM);
        json.number("volume_l", m.volume() * LITRES);
        json.number("actuator_force_n", m.force());
        json.number("discharge_l_s", m.discharge() * LITRES);
        json.number("rod_speed_mm_s", m.draw().speed() * MM);
        json.number("current_a", m.draw().current());
        json.number("pressure_mpa", m.draw().pressure() / MEGA);
    }
}
