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
import tipwright.strength.PadPlate;
import tipwright.strength.PatchLoad;
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

    /** What is kept is what is worked out, with a pad and without, also when there are more walls than are kept. */
    @Test
    void whatIsKeptIsWhatIsWorkedOut() {
        WallInfluences memo = new WallInfluences();
        PatchLoad load = new PatchLoad(1000, 50, 80);
        for (int i = 0; i < 70; i++) {
            ShellPatch patch = patch(0.5, 0.005, 1.5, 0.7 + 0.001 * i, 0.05, 0.06);
            double once = memo.of(patch, null).equivalent(load);
            assertThat(memo.of(patch, null).equivalent(load)).isEqualTo(once);
        }
        ShellPatch patch = patch(0.5, 0.005, 1.5, 0.7, 0.05, 0.06);
        PadPlate pad = new PadPlate(PAD.thickness(), PAD.along() / 2, PAD.around() / 2);
        double padded = pad.influence(patch).equivalent(load);
        double bare = patch.influence().equivalent(load);
        assertThat(padded).isLessThan(0.8 * bare);
        assertThat(memo.of(patch, PAD)).as("worked out once").isSameAs(memo.of(patch, PAD));
        for (int twice = 0; twice < 2; twice++) {
            assertThat(memo.of(patch, PAD).equivalent(load)).isEqualTo(padded);
            assertThat(memo.of(patch, null).equivalent(load)).isEqualTo(bare);
        }
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
