// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.drive.TiltRange;
import tipwright.design.file.PartsFile;
import tipwright.design.joint.Bearing;
import tipwright.design.joint.Shaft;
import tipwright.design.key.Copy;
import tipwright.design.supply.Battery;
import tipwright.design.tank.Slurry;
import tipwright.geometry.Vec2;
import tipwright.load.Contents;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.quantity.UnitSystem;

/** Whatever is advised is done as it is said, and then passes. */
class FixSearchTest {
    private static final Map<String, Actuator> ACTUATORS = new LinkedHashMap<>();
    private static final List<Shop.ListedBearing> BEARINGS = new ArrayList<>();

    static {
        for (PartsFile.Part part : PartsFile.shipped().parts()) {
            if (part.part() instanceof Actuator a) {
                ACTUATORS.put(part.name(), a);
            } else if (part.part() instanceof Bearing b) {
                BEARINGS.add(new Shop.ListedBearing(part.name(), b));
            }
        }
    }

    private static Shop shop(UnitSystem units) {
        List<ListedActuator> listed = new ArrayList<>();
        ACTUATORS.forEach((name, a) -> listed.add(new ListedActuator(name, a)));
        return new Shop(units, listed, BEARINGS);
    }

    static List<String> designs() throws IOException {
        List<String> names = new ArrayList<>();
        for (String folder : List.of("geometry", "src/test/resources/tipwright/check/regression")) {
            try (Stream<Path> files = Files.list(Path.of(folder))) {
                files.filter(f -> f.toString().endsWith(".yaml")).sorted().forEach(f -> names.add(f.toString()));
            }
        }
        return names;
    }

    @ParameterizedTest
    @MethodSource("designs")
    void everyFixOfADesignPasses(String file) throws IOException, CannotComputeException {
        UnitSystem units = UnitSystem.values()[file.length() % 2];
        holds(coarse(Examples.read(Files.readString(Path.of(file)))), units, file);
    }

    /**
     * Shipped designs with something spoilt, as seeded; {@code -Dtest.fixes=300} for more of them, and with
     * {@code -Dtest.fixes.from=100} those from number 100 on, so that many can be tried in pieces.
     */
    @Test
    void everyFixOfASpoiltDesignPasses() throws IOException, CannotComputeException {
        SplittableRandom seeds = new SplittableRandom(Long.getLong("test.seed", 7));
        List<String> names =
                designs().stream().filter(n -> n.startsWith("geometry")).toList();
        int from = Integer.getInteger("test.fixes.from", 0);
        int runs = Integer.getInteger("test.fixes", 8);
        int fixes = 0;
        for (int i = 0; i < from + runs; i++) {
            SplittableRandom random = seeds.split();
            if (i < from) {
                continue;
            }
            String name = names.get(random.nextInt(names.size()));
            Design sound = coarse(Examples.read(Files.readString(Path.of(name))));
            try {
                fixes += holds(
                        spoilt(sound, random),
                        i % 2 == 0 ? UnitSystem.METRIC : UnitSystem.US,
                        "number " + i + ", " + name);
            } catch (CannotComputeException jams) {
                continue;
            }
        }
        assertThat(fixes).isGreaterThan(runs / 2);
    }

    /** Heavier slurry, a fuller tank, actuators to one side, a thin pin or a thin shaft. */
    private static Design spoilt(Design sound, SplittableRandom random) {
        Slurry slurry = sound.slurry();
        double density =
                slurry.mixtureDensity() + random.nextDouble() * (slurry.cakeDensity() - slurry.mixtureDensity());
        return switch (random.nextInt(5)) {
            case 0 -> sound.withSlurry(slurry.withDensity(density));
            case 1 -> sound.withSlurry(slurry.withFill(1));
            case 2 -> sound.withDrive(sound.drive()
                    .with(sound.drive().actuators().stream()
                            .map(a -> Copy.with(a, "z", a.z() + random.nextDouble(0.05, 0.35)))
                            .toList()));
            case 3 -> Joints.withPin(
                    sound, "frame-pin", p -> Copy.with(p, "diameter", p.diameter() * random.nextDouble(0.4, 0.7)));
            default -> {
                Shaft shaft = sound.pivot().shaft();
                yield shaft == null
                        ? sound
                        : sound.withPivot(Copy.with(
                                sound.pivot(),
                                "shaft",
                                Copy.with(shaft, "diameter", shaft.diameter() * random.nextDouble(0.4, 0.7))));
            }
        };
    }

    private static int holds(Design design, UnitSystem units, String which) throws CannotComputeException {
        Result before = Checker.asFilled(design);
        TriedFixes found = FixSearch.of(before, () -> shop(units), true);
        Map<String, Finding> was = byId(before);
        for (TriedFix fix : found.all()) {
            String words = which + ": " + fix.said().show(units);
            Map<String, Finding> is =
                    byId(Checker.asFilled(done(design, fix, fix.said().show(units))));
            assertThat(fix.fixes()).isNotEmpty().allSatisfy(id -> {
                assertThat(was.get(id).verdict()).isIn(Verdict.FAIL, Verdict.CLOSE);
                assertThat(is.get(id).verdict()).as(words + " for " + id).isIn(Verdict.PASS, Verdict.CLOSE);
            });
            assertThat(fix.everything())
                    .as(words)
                    .isEqualTo(is.values().stream().noneMatch(f -> f.verdict() == Verdict.FAIL));
            is.forEach((id, f) -> {
                if (f.verdict() == Verdict.FAIL) {
                    assertThat(was.get(id).verdict()).as(words + ": " + id).isEqualTo(Verdict.FAIL);
                }
                if (f.verdict() == Verdict.NOT_CHECKED && was.containsKey(id)) {
                    assertThat(was.get(id).verdict()).as(words + ": " + id).isEqualTo(Verdict.NOT_CHECKED);
                }
            });
            if (fix.design().supply() instanceof Battery now
                    && design.supply() instanceof Battery old
                    && now.fuse() != null
                    && old.fuse() != null
                    && now.fuse() > old.fuse()) {
                assertThat(now.fuse()).isLessThanOrEqualTo(now.cable().rating());
            }
        }
        return found.all().size();
    }

    private static Map<String, Finding> byId(Result result) {
        return result.findings().stream()
                .collect(Collectors.toMap(Finding::id, f -> f, (a, b) -> a.worseThan(b) ? a : b));
    }

    private static final Pattern FILL = Pattern.compile("fill it to (\\d+) % at most.*");
    private static final Pattern PART = Pattern.compile(".*actuators? '([^']+)' of the parts box.*");
    private static final Pattern MOVE = Pattern.compile("move the ([a-z -]+?) [-\\d].* \\(to x = (.+), y = (.+)\\)");

    /** The design with the change done as the words say; what the words do not tell to the letter, as it was tried. */
    private static Design done(Design design, TriedFix fix, String words) {
        Matcher fill = FILL.matcher(words);
        if (fill.matches()) {
            Design filled = design.withSlurry(design.slurry().withFill(Integer.parseInt(fill.group(1)) / 100.0));
            assertThat(volume(fix.design())).isCloseTo(volume(filled), within(1e-9));
            return filled;
        }
        Matcher part = PART.matcher(words);
        if (part.matches()) {
            Design driven = design.withDrive(design.drive().with(ACTUATORS.get(part.group(1))));
            assertThat(fix.design()).isEqualTo(driven);
            return driven;
        }
        Matcher move = MOVE.matcher(words);
        if (move.matches() && !words.contains("actuator by")) {
            Vec2 at = new Vec2(length(move.group(2)), length(move.group(3)));
            Vec2 put = fix.design()
                    .drive()
                    .places(fix.design().pivot().at())
                    .get(move.group(1).replace(' ', '-'));
            assertThat(put.minus(at).norm()).as(words).isLessThan(1e-9);
        }
        return fix.design();
    }

    private static double volume(Design design) {
        return new Contents(design).slurryVolume();
    }

    private static double length(String text) {
        try {
            boolean minus = text.startsWith("-");
            double size = Quantities.parse(minus ? text.substring(1) : text, Kind.LENGTH);
            return minus ? -size : size;
        } catch (QuantityException e) {
            throw new AssertionError(text, e);
        }
    }

    private static Design coarse(Design design) {
        TiltRange t = design.tilt();
        return design.withTilt(new TiltRange(t.from(), t.to(), Math.max(t.step(), Math.toRadians(5))));
    }
}
