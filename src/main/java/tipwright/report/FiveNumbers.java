// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.check.Checks;
import tipwright.check.Early;
import tipwright.check.HowFull;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.tank.CaseName;
import tipwright.geometry.Range;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.time.Cycle;
import tipwright.time.Timing;

/** The five numbers that everybody asks for: force, stroke, bearing, fill and time, each with what there is. */
public final class FiveNumbers {
    /** Name of the line that tells how full it may be. */
    public static final String FILL = "Fill";

    private static final String TIME = "Time";
    private static final int WIDTH = 96;
    private static final int COLUMN = 15;

    private final Analysis analysis;
    private final List<Finding> findings;
    private final Style style;

    private FiveNumbers(Analysis analysis, List<Finding> findings, Style style) {
        this.analysis = analysis;
        this.findings = findings;
        this.style = style;
    }

    /**
     * One of them.
     *
     * @param name what it is
     * @param says how much, of how much, and where
     */
    public record Line(String name, String says) {}

    /** All five. */
    public static List<Line> all(Result result, Style style) {
        FiveNumbers numbers = new FiveNumbers(result.analysis(), result.findings(), style);
        List<Line> all = new ArrayList<>(numbers.known());
        all.add(new Line(FILL, numbers.fill(result.howFull())));
        all.add(new Line(TIME, numbers.time(result.timing())));
        return all;
    }

    /** All five, where those that are not known yet say so. */
    public static List<Line> soFar(Early early, Style style, String notYet) {
        List<Line> all = new ArrayList<>(known(early, style));
        all.add(new Line(FILL, notYet));
        all.add(new Line(TIME, notYet));
        return all;
    }

    /** All five, as lines of text. */
    static List<String> of(Result result, Style style) {
        return wrapped(all(result, style));
    }

    /** Those that are known before the dump in time is. */
    public static List<Line> known(Early early, Style style) {
        return new FiveNumbers(early.analysis(), early.findings(), style).known();
    }

    /** Those that are known before the dump in time is, as lines of text. */
    static List<String> of(Early early, Style style) {
        return wrapped(known(early, style));
    }

    private List<Line> known() {
        return List.of(
                new Line("Push", force("push", true)),
                new Line("Pull", force("pull", false)),
                new Line("Stroke left", stroke()),
                new Line("Bearing", bearing()));
    }

    private static List<String> wrapped(List<Line> lines) {
        Table table = new Table("ll");
        lines.forEach(line -> table.row(line.name(), line.says()));
        return table.lines("  ").stream()
                .flatMap(line -> wrapped(line).stream())
                .toList();
    }

    /** A line that is too long, in several; the name of the number keeps its column. */
    private static List<String> wrapped(String line) {
        return line.length() <= WIDTH ? List.of(line) : Prose.wrap(line.substring(0, COLUMN), line.substring(COLUMN));
    }

    private @Nullable Finding found(String id) {
        return findings.stream().filter(f -> f.id().equals(id)).findFirst().orElse(null);
    }

    private String force(String id, boolean push) {
        Peak peak = Peak.force(analysis, findings, push);
        if (peak == null) {
            return "none";
        }
        Finding f = found(id);
        return Scale.force(style.units()).show(peak.value()) + rated(f) + ", " + at(peak);
    }

    private String rated(@Nullable Finding f) {
        return f == null || f.verdict() == Verdict.NOT_CHECKED || !(f.has() > 0)
                ? ""
                : " of " + Scale.force(style.units()).show(f.has());
    }

    private String at(Peak peak) {
        return CaseName.shown(peak.loadCase(), analysis.design().tank()) + ", at "
                + Scale.angle().show(peak.tilt());
    }

    private String stroke() {
        Design design = analysis.design();
        Actuator actuator = design.drive().actuators().get(0).actuator();
        Range lengths = analysis.lengths();
        return left(lengths.low() - actuator.closed(), " before it is closed")
                + ", "
                + left(actuator.closed() + actuator.stroke() - lengths.high(), " before it is fully out")
                + " (of " + length(actuator.stroke()) + ")";
    }

    private String left(double length, String what) {
        return length < 0 ? "none" + what + ": " + length(-length) + " short" : length(length) + what;
    }

    private String length(double si) {
        return Scale.length(style.units()).show(si);
    }

    private String bearing() {
        int n = analysis.design().pivot().bearings().size();
        Peak.OnBearing worst = Peak.bearing(analysis.cases(), Peak.Tilts.ALL, 0, n);
        if (worst == null) {
            return "-";
        }
        Finding rating = findings.stream()
                .filter(f -> Checks.of(f)
                        .map(c -> c.ratesBearing(worst.bearing(), f))
                        .orElse(false))
                .filter(f -> f.verdict() != Verdict.NOT_CHECKED)
                .max(Finding.BY_USE)
                .orElse(null);
        Scale force = Scale.force(style.units());
        String load = force.show(worst.peak().value());
        int second = 1 - worst.bearing();
        Peak.OnBearing less = Peak.bearing(analysis.cases(), Peak.Tilts.ALL, second, second + 1);
        String other = less == null ? load : force.show(less.peak().value());
        return analysis.design().pivot().name(worst.bearing())
                + ": " + load + (rating == null ? "" : rated(rating)) + ", " + at(worst.peak())
                + (other.equals(load)
                        ? ""
                        : "; the " + analysis.design().pivot().side(second) + " one " + other);
    }

    private String fill(@Nullable HowFull most) {
        if (most == null) {
            return "it fails even empty";
        }
        String amount = "(" + Quantities.show(most.volume(), Kind.VOLUME, style.units()) + ", "
                + Quantities.show(most.mass(), Kind.MASS, style.units()) + ")";
        return most.limit() == null
                ? "may be filled to the rim " + amount
                : most.fill() < FillSection.LITTLE
                        ? "next to nothing"
                        : (int) Math.floor(100 * most.fill()) + " % at most " + amount
                                + ", with nothing to spare; above that fails: "
                                + Prose.safe(Objects.requireNonNull(most.limit()));
    }

    private String time(Timing timing) {
        Cycle dump = timing.dump();
        List<String> all = new ArrayList<>(new TimeSection(analysis.design(), style).sentences(timing));
        return dump == null || all.isEmpty() ? "cannot tell: " + timing.missing() : all.get(0);
    }
}
