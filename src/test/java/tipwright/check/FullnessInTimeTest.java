// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;

/** The fill that is told also passes what only the dump in time shows, such as a vent that is too small. */
class FullnessInTimeTest {
    private static Design trailer(String from, String to) throws Exception {
        String text = Files.readString(Path.of("geometry/silt-trailer.yaml"));
        assertThat(text).contains(from);
        Reading reading = DesignFile.read("trailer.yaml", text.replace(from, to), NamedFiles.shipped());
        return ((Reading.Good) reading).design();
    }

    private static List<String> failing(Design design, double fill) throws Exception {
        return Checker.findings(design.withSlurry(design.slurry().withFill(fill))).stream()
                .filter(f -> f.verdict() == Verdict.FAIL)
                .map(Finding::id)
                .toList();
    }

    @Test
    void aSmallVentBoundsTheFill() throws Exception {
        Design design = trailer("vent: {diameter: 120 mm}", "vent: {diameter: 80 mm}");
        HowFull full = Checker.check(design).howFull();
        assertThat(full).isNotNull();
        assertThat(full.limit()).isEqualTo("Vent: air getting in");
        assertThat(full.fill()).isBetween(0.85, 0.99);
        assertThat(failing(design, full.fill())).isEmpty();
        assertThat(failing(design, full.fill() + 0.02)).contains("vent");
    }

    @Test
    void whatFailsEmptyTooIsNoMatterOfTheFill() throws Exception {
        Design design = trailer("dump: {cycle-time: 4 min}", "dump: {cycle-time: 1 min}");
        assertThat(failing(design, 0)).contains("cycle-time");
        HowFull full = Checker.check(design).howFull();
        assertThat(full).isNotNull();
        assertThat(full.fill()).isEqualTo(1);
    }

    @Test
    void theDensestSlurryThatIsToldPasses() throws Exception {
        Design design = trailer("name: Silt trailer", "name: Silt trailer");
        HowFull full = Checker.check(design).howFull();
        assertThat(full).isNotNull();
        Design brim = design.withSlurry(design.slurry().withFill(1).withDensity(full.densityWhenFull()));
        assertThat(Checker.findings(brim)).noneMatch(f -> f.verdict() == Verdict.FAIL);
    }
}
