// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.PlacedActuator;

/** A part is the same part in whatever units it is typed. */
class AlikeTest {
    /** The twin rams with one value of the second ram typed in another way. */
    private static Design twins(String from, String to) throws IOException {
        String text = Files.readString(Path.of("geometry/twin-rams.yaml"));
        int second = text.indexOf("- {z: 250 mm");
        assertThat(text.substring(second)).contains(from);
        return Examples.read(text.substring(0, second)
                + text.substring(second).replaceFirst(java.util.regex.Pattern.quote(from), to));
    }

    private static List<Actuator> rams(Design design) {
        return design.drive().actuators().stream().map(PlacedActuator::actuator).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "bore: 50 mm,              bore: 1.96850394 in",
        "closed: 570 mm,           closed: 22.4409449 in",
        "relief-pressure: 120 bar, relief-pressure: 1740.4528 psi",
        "hold: 20 kN,              hold: 4496.178 lbf",
        "flow: 4 L/min,            flow: 1.0566882 gpm",
        "'inside: 50 mm',          inside: 0.05 m"
    })
    void twinsInDifferentUnitsAreOnePart(String from, String to) throws IOException, CannotComputeException {
        Design design = twins(from, to);
        List<Actuator> rams = rams(design);
        assertThat(Alike.parts(rams.get(0), rams.get(1))).isTrue();
        assertThat(Checker.findings(design).stream().map(Finding::id).filter(id -> id.startsWith("stroke/")))
                .doesNotHaveDuplicates()
                .hasSize(2);
    }

    @ParameterizedTest
    @CsvSource({"bore: 50 mm, bore: 50.1 mm", "stroke: 500 mm, stroke: 501 mm", "hold: 20 kN, hold: 21 kN"})
    void partsOfOtherSizesAreNot(String from, String to) throws IOException {
        List<Actuator> rams = rams(twins(from, to));
        assertThat(Alike.parts(rams.get(0), rams.get(1))).isFalse();
    }

    @Test
    void aKindOrAValueThatIsMissingTellsThemApart() {
        assertThat(Alike.parts(null, null)).isTrue();
        assertThat(Alike.parts(null, 1.0)).isFalse();
        assertThat(Alike.parts(1.0, "1.0")).isFalse();
        assertThat(Alike.parts(List.of(0.0508), java.util.Arrays.asList(2 * 0.0254)))
                .isTrue();
        assertThat(Alike.parts(List.of(1.0, 2.0), List.of(1.0))).isFalse();
    }
}
