// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of the validation table holds, and could fail. */
class ValidationTest {
    private static final List<ValidationRow> ROWS = Validation.rows();

    static List<ValidationRow> rows() {
        return ROWS;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void rowHolds(ValidationRow row) {
        assertThat(row.passes()).as(row.toString()).isTrue();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void rowFailsWhenTheFigureIsWrong(ValidationRow row) {
        Reference r = row.reference();
        assertThat(r.tolerance()).isPositive();
        assertThat(r.tolerance()).as("a deviation of 1 %% would not be seen").isLessThan(0.01 * Math.abs(r.value()));
        for (double wrong : List.of(
                r.value() * 1.01,
                r.value() * 0.99,
                -r.value(),
                0.0,
                r.value() + 1.01 * r.tolerance(),
                r.value() - 1.01 * r.tolerance(),
                Double.NaN,
                Double.POSITIVE_INFINITY,
                Double.NEGATIVE_INFINITY)) {
            assertThat(new ValidationRow(r, wrong).passes()).as("%s", wrong).isFalse();
        }
    }

    /** As one test too: what is measured before a test begins is counted for none by tools that put faults in. */
    @Test
    void everyRowHolds() {
        assertThat(Validation.rows()).allMatch(ValidationRow::passes);
    }

    @Test
    void everyFigureHasItsReferenceAndTheOtherWayRound() {
        TreeSet<String> ids = new TreeSet<>();
        for (Reference r : ReferenceTables.all()) {
            assertThat(ids.add(r.id())).as("twice: " + r.id()).isTrue();
            assertThat(List.of(r.group(), r.quantity(), r.unit(), r.source())).doesNotContain("");
        }
        assertThat(Validation.figures().keySet()).containsExactlyInAnyOrderElementsOf(ids);
    }

    @Test
    void theTableIsWideEnough() {
        Map<String, Integer> count = new TreeMap<>();
        for (ValidationRow row : ROWS) {
            count.merge(row.reference().group(), 1, Integer::sum);
        }
        assertThat(count.keySet())
                .contains(
                        "hydrostatics",
                        "position",
                        "rates",
                        "statics",
                        "bearings",
                        "columns",
                        "pins",
                        "welds",
                        "beams",
                        "electrics",
                        "hydraulics",
                        "flow",
                        "tip-over",
                        "shells",
                        "plates",
                        "vacuum",
                        "fatigue",
                        "bolts pried",
                        "tube faces",
                        "screws",
                        "torsion",
                        "oil",
                        "impact",
                        "stock",
                        "units");
        assertThat(ROWS.size() - count.get("units")).isGreaterThanOrEqualTo(200);
    }
}
