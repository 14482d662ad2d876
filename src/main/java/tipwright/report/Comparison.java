// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CaseResult;
import tipwright.check.HowFull;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.tank.CaseName;
import tipwright.design.tank.Tank;
import tipwright.load.Emptying;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.time.Cycle;

/** Designs side by side. */
public final class Comparison {
    private static final int ABREAST = 4;
    private static final int WIDTH = 18;

    private final List<Checked> designs;
    private final UnitSystem units;
    private final List<Line> lines = new ArrayList<>();

    private Comparison(List<Checked> designs, UnitSystem units) {
        this.designs = designs;
        this.units = units;
    }

    /**
     * One property of all designs.
     *
     * @param name of the property
     * @param values one for each design
     */
    public record Line(String name, List<String> values) {
        /** Copies the list. */
        public Line {
            values = List.copyOf(values);
        }
    }

    /** What is compared, most important first. */
    public static List<Line> lines(List<Checked> designs, UnitSystem units) {
        Comparison all = new Comparison(designs, units);
        all.results();
        all.dumps();
        all.parts();
        return all.lines;
    }

    /** Names that tell the designs apart, in their order. */
    public static List<String> names(List<Checked> designs) {
        List<String> names = new ArrayList<>();
        for (Checked c : designs) {
            String name = Prose.safe(c.result().analysis().design().name());
            names.add(names.contains(name) ? name + " (" + (names.size() + 1) + ")" : name);
        }
        return names;
    }

    /** As plain text, at most four designs abreast, lines ended by a line feed. */
    public static String text(List<Checked> designs, Style style) {
        StringBuilder out = new StringBuilder();
        List<Line> all = lines(designs, style.units());
        List<String> names = names(designs);
        for (int from = 0; from < designs.size(); from += ABREAST) {
            int to = Math.min(designs.size(), from + ABREAST);
            Table table = new Table("l" + "l".repeat(to - from));
            row(table, "", names.subList(from, to));
            for (Line line : all) {
                row(table, line.name(), line.values().subList(from, to));
            }
            table.lines("  ").forEach(l -> out.append(l).append('\n'));
            out.append(to < designs.size() ? "\n" : "");
        }
        return out.toString();
    }

    private static void row(Table table, String name, List<String> values) {
        List<List<String>> cells =
                values.stream().map(v -> Prose.wrap("", v, WIDTH)).toList();
        int height = cells.stream().mapToInt(List::size).max().orElse(1);
        for (int i = 0; i < height; i++) {
            List<String> texts = new ArrayList<>();
            texts.add(i == 0 ? name : "");
            for (List<String> cell : cells) {
                texts.add(i < cell.size() ? cell.get(i) : "");
            }
            table.row(texts.toArray(String[]::new));
        }
    }

    private void line(String name, Function<Checked, String> value) {
        lines.add(new Line(name, designs.stream().map(value).toList()));
    }

    private void results() {
        line("verdict", c -> c.result().verdict().word());
        line("fail", c -> count(c, Verdict.FAIL));
        line("close", c -> count(c, Verdict.CLOSE));
        line("not checked", c -> count(c, Verdict.NOT_CHECKED));
        line("closest to failing", Comparison::fullest);
        line("largest push", c -> force(c, true));
        line("largest pull", c -> force(c, false));
        line("stroke used", this::stroke);
        line("most loaded bearing", this::bearing);
        line("fill limit", this::full);
        line("stays in, liquid", c -> residue(c.result().analysis().emptying().liquid()));
        line("stays in, cake", c -> residue(c.result().analysis().emptying().cake()));
    }

    private void dumps() {
        line("dump time", c -> dump(c, Cycle::total, Kind.TIME));
        line("time to raise", c -> dump(c, Cycle::raise, Kind.TIME));
        line("energy per dump", c -> dump(c, d -> d.spent().energy(), Kind.ENERGY));
    }

    private void parts() {
        line(
                "tank holds",
                c -> show(
                        c.result()
                                .analysis()
                                .design()
                                .tank()
                                .interior()
                                .solid()
                                .whole()
                                .volume(),
                        Kind.VOLUME));
        line("full tilt", c -> Scale.angle()
                .show(c.result().analysis().design().tilt().to()));
        line("actuators", c -> Integer.toString(actuators(c).size()));
        line("rated push, each", c -> show(actuators(c).get(0).actuator().ratedPush(), Kind.FORCE));
        line("stroke", c -> show(actuators(c).get(0).actuator().stroke(), Kind.LENGTH));
    }

    private static List<PlacedActuator> actuators(Checked c) {
        return c.result().analysis().design().drive().actuators();
    }

    private static List<CaseResult> cases(Checked c) {
        return c.result().analysis().cases();
    }

    private static String count(Checked c, Verdict verdict) {
        return Long.toString(c.result().findings().stream()
                .filter(f -> f.verdict() == verdict)
                .count());
    }

    private static String fullest(Checked c) {
        return c.result().findings().stream()
                .filter(f -> f.verdict() != Verdict.NOT_CHECKED && !Double.isNaN(f.utilisation()))
                .max(Finding.BY_USE)
                .map(f -> (f.utilisation() > 9.99 ? ">999" : Long.toString(Math.round(100 * f.utilisation()))) + " % "
                        + Prose.safe(f.title()))
                .orElse("-");
    }

    private String force(Checked c, boolean push) {
        Peak peak = Peak.force(c.result(), push);
        Tank tank = c.result().analysis().design().tank();
        return peak == null
                ? "none"
                : Scale.force(units).show(peak.value()) + ", " + CaseName.shown(peak.loadCase(), tank);
    }

    private String stroke(Checked c) {
        return Scale.length(units).show(c.result().analysis().lengths().span());
    }

    private String bearing(Checked c) {
        int n = c.result().analysis().design().pivot().bearings().size();
        Peak.OnBearing worst = Peak.bearing(cases(c), Peak.Tilts.ALL, 0, n);
        return worst == null ? "-" : Scale.force(units).show(worst.peak().value());
    }

    private String full(Checked c) {
        HowFull most = c.result().howFull();
        return most == null
                ? "fails even empty"
                : Scale.percent().show(most.fill()) + ", " + show(most.volume(), Kind.VOLUME);
    }

    private static String residue(Emptying.@Nullable Residue left) {
        return left == null ? "-" : Scale.percent().show(left.share());
    }

    private String dump(Checked c, Function<Cycle, Double> value, Kind kind) {
        Cycle dump = c.result().timing().dump();
        if (dump == null) {
            return "-";
        }
        double si = value.apply(dump);
        return Double.isFinite(si) ? show(si, kind) : "-";
    }

    private String show(double si, Kind kind) {
        return Quantities.show(si, kind, units);
    }
}
