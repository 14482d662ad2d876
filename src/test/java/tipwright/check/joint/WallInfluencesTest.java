// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tipwright.design.joint.Seat;
import tipwright.strength.CylinderShell;
import tipwright.strength.ShellPatch;

/** What is kept of a wall is told apart by everything that the wall and its pad are told by. */
final class WallInfluencesTest {
    private static final Seat.Pad PAD = new Seat.Pad(0.006, 0.2, 0.25);

    @Test
    void everyNumberOfWallAndPadCounts() {
        int numbers = numbers(CylinderShell.class) + numbers(ShellPatch.class) + numbers(Seat.Pad.class);
        List<Double> key = WallInfluences.key(patch(0.5, 0.005, 1.5, 0.7, 0.05, 0.06), PAD);
        assertThat(new HashSet<>(key)).hasSize(numbers).hasSameSizeAs(key);
        assertThat(key)
                .contains(0.5, 0.005, 1.5, 200e9, 0.3, 0.7, 0.05, 0.06)
                .endsWith(PAD.thickness(), PAD.along(), PAD.around());
        assertThat(WallInfluences.key(patch(0.5, 0.005, 1.5, 0.7, 0.05, 0.06), null))
                .hasSize(numbers - numbers(Seat.Pad.class));
    }

    private static ShellPatch patch(
            double radius, double wall, double length, double place, double along, double around) {
        return new ShellPatch(CylinderShell.steel(radius, wall, length), place, along, around);
    }

    private static int numbers(Class<?> record) {
        int numbers = 0;
        for (RecordComponent component : record.getRecordComponents()) {
            assertThat(Set.of(double.class, CylinderShell.class)).contains(component.getType());
            numbers += component.getType() == double.class ? 1 : 0;
        }
        return numbers;
    }
}
