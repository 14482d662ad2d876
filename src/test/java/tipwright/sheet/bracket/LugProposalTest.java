// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.bracket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.key.Copy;
import tipwright.geometry.Vec2;
import tipwright.quantity.UnitSystem;

/** Lugs that are proposed, and the shapes of those that are given. */
class LugProposalTest {
    private static Design read(String name) {
        return ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
    }

    /** A shipped design that tells nothing of how its joints are held. */
    private static Design bare(String name) {
        return Copy.with(read(name), "fastenings", List.of());
    }

    /** The whole check of the design with the proposals in it finds each of them and fails none; of the design without it cannot tell. */
    @ParameterizedTest
    @CsvSource({"saw-skid, US, frame-pin tank-pin", "crank-cart, METRIC, frame-pin crank-pivot tank-pin"})
    void whatIsProposedPassesTheChecks(String name, UnitSystem units, String joints) throws CannotComputeException {
        Design design = bare(name);
        Brackets brackets = Brackets.of(Analyser.analyse(design), units);
        assertThat(brackets.all())
                .as("a plate for each lug, and one for both bearings")
                .hasSize(joints.split(" ").length + 1)
                .allMatch(Bracket::proposed);
        assertThat(brackets.open()).isEmpty();
        List<Finding> before = Checker.asFilled(design).findings();
        List<Finding> after = Checker.asFilled(brackets.design()).findings();
        for (String joint : (joints + " bearing-1 bearing-2").split(" ")) {
            List<String> ids = joint.startsWith("bearing")
                    ? List.of("weld/" + joint, "bolt/" + joint, "prying/" + joint)
                    : List.of("weld/" + joint, "lug/" + joint + "-tear-out", "lug-side/" + joint);
            for (String id : ids) {
                assertThat(before).noneMatch(f -> f.id().equals(id));
                assertThat(after.stream().filter(f -> f.id().equals(id)).map(Finding::verdict))
                        .as(id)
                        .hasSize(1)
                        .allMatch(v -> v == Verdict.PASS || v == Verdict.CLOSE);
            }
        }
        assertThat(failing(after)).isSubsetOf(failing(before));
    }

    /** With more asked of bolts the mount gets larger ones, a thicker plate, or none that is sold is found and it says so. */
    @Test
    void aMountGrowsUntilItPasses() throws CannotComputeException {
        Design design = bare("crank-cart");
        double usual = thread(Brackets.of(Analyser.analyse(design), UnitSystem.METRIC));
        Design asked = Copy.with(
                design,
                "factors",
                Copy.with(design.factors(), "bolt", 60 * design.factors().bolt()));
        Brackets larger = Brackets.of(Analyser.analyse(asked), UnitSystem.METRIC);
        assertThat(thread(larger)).isGreaterThan(usual);
        assertThat(failing(Checker.findings(larger.design()))).noneMatch(id -> id.contains("bearing-"));
        Design never = Copy.with(
                design,
                "factors",
                Copy.with(design.factors(), "bolt", 1e5 * design.factors().bolt()));
        Brackets none = Brackets.of(Analyser.analyse(never), UnitSystem.METRIC);
        assertThat(none.open().stream().map(t -> t.metric()))
                .anyMatch(t -> t.startsWith("The mount of bearing 1 is not in the design"));
    }

    private static double thread(Brackets brackets) {
        return brackets.design().fastenings().stream()
                .filter(f -> f.joint().equals("bearing-1"))
                .mapToDouble(f -> f.bolts() == null ? 0 : f.bolts().diameter())
                .sum();
    }

    private static List<String> failing(List<Finding> all) {
        return all.stream()
                .filter(f -> f.verdict() == Verdict.FAIL)
                .map(Finding::id)
                .toList();
    }

    /** By hand from the design file: 70 wide with a round end over a foot of 60, the hole 50 above it. */
    @Test
    void givenLugHasTheDesignsSizes() throws CannotComputeException {
        Brackets brackets = Brackets.of(Analyser.analyse(read("silt-trailer")), UnitSystem.METRIC);
        Bracket lug = brackets.all().get(0);
        assertThat(lug.proposed()).isFalse();
        assertThat(lug.count()).isEqualTo(2);
        CutPlate plate = lug.plate();
        assertThat(plate.low().minus(new Vec2(-0.035, -0.05)).norm()).isLessThan(1e-9);
        assertThat(plate.high().minus(new Vec2(0.035, 0.035)).norm()).isLessThan(1e-9);
        double area = Math.PI * 0.035 * 0.035 / 2 + 0.05 * (0.07 + 0.06) / 2 - Math.PI * 0.025 * 0.025 / 4;
        assertThat(plate.area()).isCloseTo(area, within(1e-3 * area));
        assertThat(plate.mass()).isCloseTo(area * 0.010 * 7850, within(1e-3));
        List<Bracket> mounts = brackets.all().stream()
                .filter(b -> b.name().startsWith("Mount"))
                .toList();
        assertThat(mounts).hasSize(1);
        assertThat(mounts.get(0).count()).isEqualTo(2);
        assertThat(mounts.get(0).plate().high().minus(new Vec2(0.088, 0.038)).norm())
                .isLessThan(1e-9);
        assertThat(mounts.get(0).plate().holes()).hasSize(4).allMatch(h -> Math.abs(h.diameter() - 0.013) < 1e-9);
        assertThat(brackets.open()).isEmpty();
    }
}
