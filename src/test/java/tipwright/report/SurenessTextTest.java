// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.design.file.Uncertain;
import tipwright.doubt.Sureness;
import tipwright.quantity.Kind;
import tipwright.quantity.UnitSystem;

/** What is said of how sure a verdict is. */
class SurenessTextTest {
    private static Sureness by(Kind kind, double value, double doubt, double wanted) {
        Uncertain first = new Uncertain("points.tank-pin.from.axle", "", kind, value, doubt);
        return new Sureness(94, 100, "Stroke", 0.9, 0.1, List.of(new Sureness.Influence(first, 0.1)), wanted);
    }

    /** Twice the standard doubt; a tape shows no thousandths. What is there is rounded up, what has to be reached is rounded down. */
    @Test
    void tellsADoubtWithTheDigitsThatMeanSomething() {
        Sureness tape = by(Kind.LENGTH, 0.75, 0.0020205, 0.001576);
        assertThat(SurenessText.of(tape, UnitSystem.METRIC).get(1))
                .contains("now 750 mm +- 4.1 mm; within +- 3.1 mm of that");
        assertThat(SurenessText.of(tape, UnitSystem.US).get(1)).contains("+- 0.16 in; within +- 0.12 in of that");
        assertThat(SurenessText.of(by(Kind.MASS, 240, 12.34, 10.5), UnitSystem.METRIC)
                        .get(1))
                .contains("now 240 kg +- 25 kg; within +- 21 kg of that");
    }
}
