// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.quantity.UnitSystem;

/** A machine that pulls at part of its fill alone is not told that it never pulls. */
class PartFillPullTest {
    @Test
    void fiveNumbersTellThePullOfAPartFill() throws CannotComputeException, IOException {
        Result result = Checker.asFilled(Examples.read(Files.readString(Path.of("geometry", "crank-cart.yaml"))));
        Finding pull = result.findings().stream()
                .filter(f -> f.id().equals("pull"))
                .findFirst()
                .orElseThrow();
        assertThat(String.valueOf(pull.loadCase())).contains("% full");
        Peak own = Peak.force(result.analysis().cases(), Peak.Tilts.ALL, false);
        double full = own == null ? 0 : own.value();
        Peak told = Objects.requireNonNull(Peak.force(result, false));
        assertThat(told.value()).isEqualTo(pull.demand()).isGreaterThan(full);
        List<String> lines = FiveNumbers.of(result, new Style(false, UnitSystem.METRIC));
        assertThat(lines.get(1)).contains("Pull").contains("% full").doesNotContain("none");
    }
}
