// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;

/** Where something stands in the way of all that is best, the search goes on beside it. */
class WiderLookTest {
    private static final Path FOLDER = Path.of("geometry");

    /** The trailer with one actuator to choose from and an air tank on the spot that is best without it. */
    private static Design trailer(String airTank) throws CannotComputeException, IOException {
        String text = swap(
                Files.readString(FOLDER.resolve("silt-trailer.yaml")),
                "actuators: [light-6, mid-9, mid-12, mid-12-long]",
                "actuators: [mid-12-long]",
                "obstacles:\n",
                "obstacles:\n  - {name: air tank, outline: " + airTank + ", z: [-90 mm, 90 mm]}\n");
        Reading reading = DesignFile.read("a.yaml", text, NamedFiles.folder(FOLDER));
        return ((Reading.Good) reading).design();
    }

    private final List<Progress> told = Collections.synchronizedList(new ArrayList<>());

    private Placement placed(Design design) throws CannotComputeException {
        return new Placer(2, 1, 16_000L, () -> false, told::add).place(design);
    }

    @Test
    void findsAPlaceBesideWhatStandsInTheWay() throws CannotComputeException, IOException {
        Design design = trailer("[[240 mm, -420 mm], [420 mm, -420 mm], [420 mm, -240 mm], [240 mm, -240 mm]]");
        Placement found = placed(design);
        assertThat(found.answers()).isNotEmpty();
        for (Answer answer : found.answers()) {
            List<Finding> findings = Checker.findings(answer.design());
            assertThat(findings).isNotEmpty().noneMatch(f -> f.verdict() == Verdict.FAIL);
        }
        // why the better ones are turned down is told
        assertThat(found.notes()).anyMatch(n -> n.contains("to air tank: clearance"));
        assertThat(told).anySatisfy(p -> assertThat(p.words())
                .isEqualTo("the best fail another check; a second look: 100 % searched"));
    }

    /** What the tank itself strikes on its way it strikes wherever the pins are: there is nothing to look for. */
    @Test
    void whatNoPlaceMendsIsNotLookedForAnew() throws CannotComputeException, IOException {
        Placement found = placed(trailer("[[700 mm, 800 mm], [800 mm, 800 mm], [800 mm, 1000 mm], [700 mm, 1000 mm]]"));
        assertThat(found.answers()).isEmpty();
        assertThat(found.nearly()).isNotEmpty();
        assertThat(found.notes()).anyMatch(n -> n.startsWith("moving the mounts does not help, it fails anyway: "));
        assertThat(told).isNotEmpty().noneMatch(Progress::again);
    }
}
