// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class FixedTableTest {
    private static FixedTable table(String arm) {
        return new FixedTable(
                        "trial",
                        FixedTable.Column.number("tilt", 8),
                        FixedTable.Column.number("arm", 8),
                        FixedTable.Column.text("load", 84))
                .row("0", arm, "full, outlet shut");
    }

    @Test
    void whatFitsKeepsItsShare() {
        assertThat(table("120").shares()).containsExactly(8, 8, 84);
    }

    /** A fraction of the tape needs more than a number of millimetres: '22 13/16' has eight letters. */
    @Test
    void theWidestEntryHasItsRoom() {
        double[] shares = table("22 13/16").shares();
        assertThat(shares[1]).isGreaterThan(9.5);
        assertThat(shares[0]).isBetween(7.0, 8.0);
        assertThat(Arrays.stream(shares).sum()).isCloseTo(100, within(1e-9));
    }

    @Test
    void noShareIsMoreThanThereIs() {
        double[] shares = table("9".repeat(300)).shares();
        assertThat(Arrays.stream(shares).sum()).isCloseTo(100, within(1e-9));
        assertThat(shares[0]).isPositive();
        assertThat(shares[2]).isPositive();
    }
}
