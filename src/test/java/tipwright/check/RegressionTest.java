// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.clearance.Clearance;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.drive.TiltRange;
import tipwright.load.Contents;
import tipwright.outline.MachinePart;
import tipwright.outline.MachineParts;
import tipwright.quantity.UnitSystem;

/**
 * Regression, not validation: every finding, its working and every gap of many designs are what they were when they were last written
 * down, right or wrong. To write them anew after a change that is meant, and argued in its commit: {@code mvn -q -B test
 * -Dtest=RegressionTest -Dtest.write.regression=true}.
 */
public class RegressionTest {
    private static final Pattern LESS = Pattern.compile("([0-9.]+) % full$");
    private static final Path OWN = Path.of("src/test/resources/tipwright/check/regression");
    private static final Path SHIPPED = Path.of("geometry");
    private static final double TIGHT = 1e-9;

    /** Differences of sines and the like that are nothing but rounding, in SI. */
    private static final double NOTHING = 1e-12;

    /** Before a tilt: a least gap is flat where it lies, so that its place is known to no more than the search's last step, rad. */
    private static final String AT = "at ";

    private static final double PLACE = 1e-5;

    /** What the differential equation of the dump gives, solved to a tolerance of its own. */
    private static final List<String> TIMED =
            List.of("stall", "duty", "cycle-time", "electrical", "hydraulic", "vent", "channel", "stream");

    private static final double SOLVED = 1e-6;

    /** An arc sine near a right angle keeps half of the digits only, rad. */
    private static final double RIGHT_ANGLE = 1e-7;

    public static List<String> designs() throws IOException {
        List<String> names = new ArrayList<>();
        for (Path folder : List.of(SHIPPED, OWN)) {
            try (Stream<Path> files = Files.list(folder)) {
                files.filter(f -> f.toString().endsWith(".yaml")).sorted().forEach(f -> names.add(f.toString()));
            }
        }
        return names;
    }

    @ParameterizedTest
    @MethodSource("designs")
    void findsWhatItFound(String file) throws IOException, CannotComputeException {
        List<String> now = lines(coarse(Examples.read(Files.readString(Path.of(file)))));
        String name = swap(Path.of(file).getFileName().toString(), ".yaml", ".txt");
        Path kept = OWN.resolve(name);
        if (Boolean.getBoolean("test.write.regression")) {
            Files.write(kept, now);
        }
        assertSame(kept.toString(), Files.readAllLines(kept), now);
    }

    /** Fails where a line is not what it was, but for rounding. */
    static void assertSame(String what, List<String> before, List<String> now) {
        for (int i = 0; i < Math.min(now.size(), before.size()); i++) {
            assertThat(same(before.get(i), now.get(i)))
                    .as("%s line %s%nwas %s%nis  %s", what, i + 1, before.get(i), now.get(i))
                    .isTrue();
        }
        assertThat(now).as(what).hasSameSizeAs(before);
    }

    /** The design that a change is of. */
    static String designOf(String change) {
        return change.substring(0, change.indexOf(" | "));
    }

    /** The file of a design of this test. */
    static Path file(String design) throws IOException {
        return Path.of(designs().stream()
                .filter(name -> name.endsWith("/" + design + ".yaml"))
                .findFirst()
                .orElseThrow(() -> new AssertionError(design)));
    }

    /** What is found in a design as it is filled, by the ids: a line of numbers and one of words each. */
    static Map<String, List<String>> findings(Design design) throws CannotComputeException {
        Result result = Checker.asFilled(coarse(design, 12));
        Map<String, List<String>> all = new LinkedHashMap<>();
        for (Finding f : result.findings()) {
            all.put(f.id(), List.of(line(result, f), words(result, f), "" + f.verdict()));
        }
        return all;
    }

    /** Tilts of 5 degrees at least, to be quick. */
    public static Design coarse(Design design) {
        return coarse(design, 5);
    }

    private static Design coarse(Design design, double degrees) {
        TiltRange t = design.tilt();
        return design.withTilt(new TiltRange(t.from(), t.to(), Math.max(t.step(), Math.toRadians(degrees))));
    }

    /** The fill with which something is found, when it is another than the stated one; NaN when it is not. */
    private static double share(Finding finding) {
        Matcher told = LESS.matcher(String.valueOf(finding.loadCase()));
        return told.find() ? Double.parseDouble(told.group(1)) / 100 : Double.NaN;
    }

    private static List<String> lines(Design design) throws CannotComputeException {
        Result result = Checker.check(design);
        List<String> all = new ArrayList<>();
        for (Finding f : result.findings()) {
            all.add(line(result, f));
            all.add(words(result, f));
        }
        for (Clearance.Gap g : Clearance.of(result.analysis())) {
            all.add("gap | " + g.moving() + " | " + g.other() + " | " + g.rest() + " | " + g.gap() + " | " + AT
                    + g.tilt());
            for (Clearance.Move m : g.moves()) {
                all.add("move | " + m.towards().x() + " | " + m.towards().y() + " | " + m.by());
            }
        }
        HowFull full = result.howFull();
        if (full == null || full.fill() < new Contents(design).fill() - 0.01) {
            assertThat(result.findings())
                    .as("less than is in it may be in it, so something must be told that fails")
                    .anyMatch(f -> f.verdict() == Verdict.FAIL);
        }
        if (full != null) {
            assertThat(result.findings())
                    .as("what fails with less in it than may be in it")
                    .filteredOn(f -> f.verdict() == Verdict.FAIL && share(f) < full.fill() - 0.01)
                    .isEmpty();
        }
        all.add(
                full == null
                        ? "never passes"
                        : "how full | " + full.fill() + " | " + full.volume() + " | " + full.mass() + " | "
                                + full.level() + " | " + full.densityWhenFull() + " | " + full.limit());
        all.add("verdict | " + result.verdict());
        return all;
    }

    /** What is found, its working and its note. */
    private static String line(Result result, Finding f) {
        return String.join(
                " | ",
                f.id(),
                f.title(),
                "" + f.demand(),
                "" + f.capacity(),
                "" + f.factor(),
                "" + f.kind(),
                "" + f.utilisation(),
                AT + f.tilt(),
                "" + f.loadCase(),
                "" + f.verdict(),
                f.note().metric(),
                worked(result, f));
    }

    /** What a check says of a finding, what would mend it, and which parts it is about. */
    private static String words(Result result, Finding finding) {
        Check check = owner(finding);
        List<MachinePart> parts = MachineParts.of(result.analysis());
        return String.join(
                " | ",
                "words",
                check.says(finding).metric(),
                check.says(finding).show(UnitSystem.US),
                check.fix(finding, result.analysis().design().limits()).metric(),
                check.takes(finding).metric(),
                check.trouble(finding),
                check.shortly(finding),
                check.part(finding),
                check.concerned(result.analysis(), finding).among(parts).stream()
                        .map(MachinePart::name)
                        .collect(Collectors.joining(", ")));
    }

    private static Check owner(Finding finding) {
        return Checks.all().stream()
                .filter(check -> finding.id().equals(check.id()) || finding.id().startsWith(check.id() + "/"))
                .findFirst()
                .orElseThrow(() -> new AssertionError(finding.id()));
    }

    private static String worked(Result result, Finding finding) {
        return finding.verdict() == Verdict.NOT_CHECKED
                ? ""
                : owner(finding).worked(result.analysis(), finding, UnitSystem.METRIC);
    }

    /** Words alike, numbers within a billionth. */
    static boolean same(String before, String now) {
        String[] was = before.split(" \\| ", -1);
        String[] is = now.split(" \\| ", -1);
        boolean timed = TIMED.contains(was[0].split("/", 2)[0]);
        double share = timed ? SOLVED : TIGHT;
        double least = was[0].equals("transmission") ? RIGHT_ANGLE : NOTHING;
        boolean same = was.length == is.length;
        for (int i = 0; same && i < was.length; i++) {
            boolean place = was[i].startsWith(AT) && is[i].startsWith(AT);
            same = was[i].equals(is[i])
                    || (place
                            ? near(was[i].substring(AT.length()), is[i].substring(AT.length()), 0, PLACE)
                            : near(was[i], is[i], share, least));
        }
        return same;
    }

    private static boolean near(String before, String now, double share, double least) {
        try {
            double a = Double.parseDouble(before);
            double b = Double.parseDouble(now);
            return Math.abs(a - b) <= share * Math.abs(a) + least;
        } catch (NumberFormatException words) {
            return false;
        }
    }
}
