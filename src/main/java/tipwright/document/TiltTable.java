// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.design.actuator.Actuator;
import tipwright.geometry.Vec3;
import tipwright.quantity.UnitSystem;
import tipwright.report.Envelope;
import tipwright.report.Peak;
import tipwright.report.Scale;
import tipwright.time.Cycle;
import tipwright.time.Timing;

/**
 * What a page shows at a tilt, for every tilt and load case, as they are shown in both systems of units: the page looks them up and
 * works nothing out. Source of the form: RFC 8259.
 */
final class TiltTable {
    private final Analysis analysis;
    private final Timing timing;
    private final List<CaseResult> cases;
    private final TiltPicture picture;

    TiltTable(Analysis analysis, Timing timing) {
        this.analysis = analysis;
        this.timing = timing;
        this.cases =
                Analyser.all(analysis).stream().filter(c -> !c.rows().isEmpty()).toList();
        this.picture = new TiltPicture(analysis, cases);
    }

    /** The load cases, by number; those that only come about if something goes wrong are last. */
    List<CaseResult> cases() {
        return cases;
    }

    TiltPicture picture() {
        return picture;
    }

    /** How many tilts there are. */
    int rows() {
        return analysis.poses().size();
    }

    String json() {
        Actuator actuator = analysis.design().drive().actuators().get(0).actuator();
        List<Envelope> worst = Envelope.of(analysis);
        StringBuilder out = new StringBuilder("{\"tilts\":");
        out.append(list(analysis.poses(), p -> Scale.angle().plain(p.tilt())));
        length(out, "length", Pose::length);
        length(out, "stroke", p -> p.length() - actuator.closed());
        length(out, "left", p -> actuator.closed() + actuator.stroke() - p.length());
        force(out, "push", worst, e -> value(e.push()));
        force(out, "pull", worst, e -> value(e.pull()));
        force(
                out,
                "most",
                worst,
                e -> value(e.bearing() == null ? null : e.bearing().peak()));
        out.append(",\n").append(picture.json()).append(",\n\"cases\":[");
        for (int i = 0; i < cases.size(); i++) {
            out.append(i == 0 ? "" : ",").append(loadCase(i));
        }
        return out.append("]}").toString();
    }

    private String loadCase(int number) {
        CaseResult c = cases.get(number);
        StringBuilder out = new StringBuilder("\n{\"hardest\":" + hardest(c) + ",\"normal\":" + normal(c));
        force(out, "raise", c.rows(), r -> r.raise().force());
        force(out, "lower", c.rows(), r -> r.lower().force());
        force(out, "rest", c.rows(), r -> r.rest().force());
        force(out, "bearing", c.rows(), TiltTable::bearing);
        Cycle cycle = timing.of(c.name());
        seconds(out, "up", c.rows(), t -> cycle == null ? Double.NaN : cycle.upTo(t));
        seconds(out, "down", c.rows(), t -> cycle == null ? Double.NaN : cycle.downFrom(t));
        return out.append(",\"shapes\":")
                .append(picture.shapes(number))
                .append('}')
                .toString();
    }

    private static double value(@Nullable Peak peak) {
        return peak == null ? Double.NaN : peak.value();
    }

    /** Of the bearing that carries most, at rest or in motion, N. */
    private static double bearing(Row row) {
        double most = 0;
        for (Balance balance : List.of(row.rest(), row.raise(), row.lower())) {
            for (Vec3 load : balance.bearings()) {
                most = Math.max(most, load.norm());
            }
        }
        return most;
    }

    /** The tilt at which the actuators push or pull hardest, by number. */
    private static int hardest(CaseResult c) {
        int best = 0;
        double most = -1;
        for (int i = 0; i < c.rows().size(); i++) {
            Row row = c.rows().get(i);
            for (Balance balance : List.of(row.rest(), row.raise(), row.lower())) {
                if (Math.abs(balance.force()) > most) {
                    most = Math.abs(balance.force());
                    best = i;
                }
            }
        }
        return best;
    }

    /** The last tilt, by number, at which it belongs to a normal dump; -1 for none. */
    private static int normal(CaseResult c) {
        int last = -1;
        for (int i = 0; i < c.rows().size(); i++) {
            last = c.load().normalAt(c.rows().get(i).tilt()) ? i : last;
        }
        return last;
    }

    private void length(StringBuilder out, String name, Function<Pose, Double> of) {
        both(
                out,
                name,
                units -> list(analysis.poses(), p -> number(Scale.length(units).plain(of.apply(p)))));
    }

    private static <T> void force(StringBuilder out, String name, List<T> rows, Function<T, Double> of) {
        both(out, name, units -> list(rows, r -> number(Scale.force(units).plain(of.apply(r)))));
    }

    private static void both(StringBuilder out, String name, Function<UnitSystem, String> of) {
        out.append(",\n\"").append(name).append("\":{\"metric\":").append(of.apply(UnitSystem.METRIC));
        out.append(",\"us\":").append(of.apply(UnitSystem.US)).append('}');
    }

    private static void seconds(StringBuilder out, String name, List<Row> rows, DoubleFunction<Double> of) {
        out.append(",\n\"").append(name).append("\":");
        out.append(list(rows, r -> number(Words.seconds(of.apply(r.tilt())).replace(" s", ""))));
    }

    private static <T> String list(List<T> rows, Function<T, String> of) {
        List<String> all = new ArrayList<>();
        rows.forEach(r -> all.add(of.apply(r)));
        return "[" + String.join(",", all) + "]";
    }

    /** A number as JSON has it, one with a fraction as text; '-' is none. */
    private static String number(String shown) {
        return shown.equals("-") ? "null" : shown.contains("/") ? '"' + shown + '"' : shown;
    }
}
