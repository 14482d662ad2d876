// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Occasion;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.key.Copy;
import tipwright.design.supply.Battery;

/** The two halves of a verdict. */
class PartsTest {
    private static Result shipped(String name) throws CannotComputeException {
        return Checker.asFilled(design(name));
    }

    private static Design design(String name) {
        return ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
    }

    private static Finding find(Part part, String id) {
        return part.findings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(id));
    }

    @Test
    void aLoadCheckIsInBothHalvesEachWhereItIsWorstThen() throws CannotComputeException {
        Result result = shipped("too-small");
        double opens = result.analysis().design().tank().openings().get(0).opensAt();
        Finding normal = find(result.parts().normal(), "push");
        Finding fault = find(result.parts().fault(), "push");
        assertThat(normal.tilt()).isLessThanOrEqualTo(opens);
        assertThat(fault.tilt()).isGreaterThan(opens);
        assertThat(fault.loadCase()).isIn("held", "settled", "slid");
        assertThat(result.findings()).contains(normal);
        assertThat(fault.demand()).isLessThan(normal.demand());
    }

    @Test
    void everyFindingIsInOneHalfAndTheWorstOfBothIsTheVerdict() throws CannotComputeException {
        for (String name : List.of("silt-trailer", "too-small", "lime-barrel", "kerb-swing", "six-link")) {
            Result result = shipped(name);
            for (Finding f : result.findings()) {
                assertThat(result.parts().both().stream()
                                .filter(p -> p.findings().contains(f))
                                .count())
                        .as(name + " " + f.id())
                        .isEqualTo(1);
            }
            Verdict worst = result.parts().both().stream()
                    .map(Part::verdict)
                    .filter(v -> v != Verdict.NOT_CHECKED)
                    .max(Verdict::compareTo)
                    .orElseThrow();
            assertThat(worst).as(name).isEqualTo(result.verdict());
        }
    }

    @Test
    void noTwinIsWorseThanTheFindingItself() throws CannotComputeException {
        Result result = shipped("six-link");
        for (Part part : result.parts().both()) {
            for (Finding twin : part.findings()) {
                Finding whole = result.findings().stream()
                        .filter(f -> f.id().equals(twin.id()))
                        .findFirst()
                        .orElseThrow();
                assertThat(twin.worseThan(whole)).as(twin.id()).isFalse();
            }
        }
    }

    @Test
    void whatGovernsIsAFaultOnlyWhereTheOutletShouldBeOpen() throws CannotComputeException {
        Result result = shipped("six-link");
        for (Finding f : result.parts().fault().findings()) {
            boolean whatIf = f.id().startsWith("what-if/");
            // What a whole dump adds up is worst at no tilt.
            boolean whole =
                    List.of("duty", "electrical/battery", "cold/battery").contains(f.id());
            assertThat(whatIf
                            || (whole && f.loadCase() == null)
                            || List.of("held", "settled", "slid")
                                    .contains(
                                            Objects.requireNonNull(f.loadCase()).split(", ")[0]))
                    .as(f.id())
                    .isTrue();
        }
        assertThat(result.parts().fault().occasion()).isEqualTo(Occasion.FAULT);
    }

    /** Nothing that passes asks for more than there is, and nothing over 100 % is called close. */
    @Test
    void noPassHasLessThanItNeedsAndNothingOverAllIsClose() throws CannotComputeException {
        for (String name : List.of(
                "crank-cart",
                "grit-hopper",
                "kerb-swing",
                "knee-stand",
                "lime-barrel",
                "rail-pusher",
                "saw-skid",
                "silt-trailer",
                "six-link",
                "slide-back",
                "stage-tub",
                "too-small",
                "twin-rams",
                "wash-tub",
                "yard-tub")) {
            for (Finding f : shipped(name).findings()) {
                if (f.verdict() == Verdict.PASS && Double.isFinite(f.needs()) && Double.isFinite(f.has())) {
                    assertThat(f.needs()).as(name + " " + f.id()).isLessThanOrEqualTo(f.has() * (1 + 1e-9));
                }
                if (f.verdict() == Verdict.CLOSE) {
                    assertThat(f.utilisation()).as(name + " " + f.id()).isLessThanOrEqualTo(1);
                }
            }
        }
    }

    /** The battery empties most when nothing leaves: that dump is no normal one, so the normal half tells of the others. */
    @Test
    void aDumpInTimeWithTheOutletShutIsAFault() throws CannotComputeException {
        Result result = shipped("silt-trailer");
        double volt =
                ((Battery) Objects.requireNonNull(result.analysis().design().supply())).voltage();
        Finding normal = find(result.parts().normal(), "electrical/battery");
        Finding fault = find(result.parts().fault(), "electrical/battery");
        double usual = charge(result, volt, "draining", "caked");
        double all = charge(result, volt, "draining", "caked", "held", "settled", "slid");
        assertThat(normal.demand()).isCloseTo(usual, within(1e-9 * usual));
        assertThat(fault.demand()).isCloseTo(all, within(1e-9 * all)).isGreaterThan(1.1 * usual);
        assertThat(find(result.parts().normal(), "duty/one-stretch").loadCase()).isIn("draining", "caked");
        assertThat(find(result.parts().fault(), "duty/one-stretch").loadCase()).isIn("held", "settled", "slid");
    }

    private static double charge(Result result, double volt, String... loads) {
        return Stream.of(loads)
                .mapToDouble(l ->
                        Objects.requireNonNull(result.timing().of(l)).spent().energy() / volt)
                .max()
                .orElseThrow();
    }

    /** With the outlet shut it stalls where it should have drained long since; the normal dump gets through. */
    @Test
    void aStallWithTheOutletShutLeavesTheNormalDumpAlone() throws CannotComputeException {
        Design barrel = design("lime-barrel");
        List<PlacedActuator> weak = barrel.drive().actuators().stream()
                .map(a -> Copy.with(a, "actuator", Copy.with((ElectricActuator) a.actuator(), "push", 1700.0)))
                .toList();
        Result result = Checker.asFilled(barrel.withDrive(barrel.drive().with(weak)));
        List<Finding> fault = result.parts().fault().findings().stream()
                .filter(f -> f.id().startsWith("stall"))
                .toList();
        assertThat(fault).isNotEmpty().allSatisfy(f -> {
            assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
            assertThat(f.loadCase()).isIn("held", "settled", "slid");
        });
        assertThat(find(result.parts().normal(), "stall").verdict()).isIn(Verdict.PASS, Verdict.CLOSE);
    }
}
