// SPDX-License-Identifier: Apache-2.0
package tipwright.design.steel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.geometry.Vec3;
import tipwright.geometry.stock.PipeSize;

/** Masses of steel as bought against handbooks. */
class SectionMassTest {
    private static final Vec3 METRE = new Vec3(1, 0, 0);

    /** Source: EN 10219 lists 4.25 for 50 x 50 x 3 and 8.59 for 100 x 50 x 4 (from memory); the others worked out anew. */
    @ParameterizedTest
    @CsvSource({
        "50, 50, 3, 4.245",
        "60, 40, 3, 4.245",
        "80, 40, 3, 5.187",
        "80, 80, 4, 9.222",
        "100, 50, 4, 8.594",
        "100, 100, 5, 14.410"
    })
    void tubes(double height, double width, double wall, double mass) {
        TubePiece tube = new TubePiece(height / 1000, width / 1000, wall / 1000, Vec3.ZERO, METRE);
        assertThat(tube.mass()).isCloseTo(mass, within(6e-4));
    }

    /** Source: 7.85 kg/m2 for each mm of steel, 1/8 to 1/2 in. */
    @ParameterizedTest
    @CsvSource({"0.125, 24.92", "0.1875, 37.39", "0.25, 49.85", "0.375, 74.77", "0.5, 99.70"})
    void plates(double inches, double mass) {
        Plate plate = new Plate(List.of(1.0, 1.0), inches * 0.0254, null, Vec3.ZERO, new Vec3(0, 1, 0));
        assertThat(plate.mass()).isCloseTo(mass, within(6e-3));
    }

    /** Source: weights of steel pipe, plain end, lb/ft, ASME B36.10M (from memory). */
    @ParameterizedTest
    @CsvSource({
        "1 in schedule 40, 1.68",
        "2 in schedule 40, 3.66",
        "3 in schedule 40, 7.58",
        "4 in schedule 40, 10.80",
        "1-1/2 in schedule 80, 3.63",
        "2 in sch 80, 5.03",
        "6 in schedule 40, 18.99"
    })
    void pipes(String size, double poundsPerFoot) {
        double mass = new Pipe(size, Vec3.ZERO, METRE).mass();
        assertThat(mass / 0.45359237 * 0.3048).isCloseTo(poundsPerFoot, within(0.01 * poundsPerFoot));
    }

    /**
     * Source: equal angles in handbooks, 50 x 50 x 5 with a root of 7 mm and toes of 3.5 mm: 3.77 kg/m (from memory). The rounding,
     * 0.2146 (7^2 - 2 x 3.5^2) mm2, is left out by the program.
     */
    @Test
    void angleAndRound() {
        Angle angle = new Angle(List.of(0.05), 0.005, Vec3.ZERO, METRE);
        double rounding = 7850 * 0.2146 * (49 - 24.5) * 1e-6;
        assertThat(angle.mass() + rounding).isCloseTo(3.77, within(0.005));
        assertThat(new Bar(0.02, Vec3.ZERO, METRE).mass()).isCloseTo(2.466, within(1e-3));
        assertThat(new Flat(0.05, 0.005, Vec3.ZERO, METRE).mass()).isCloseTo(1.9625, within(1e-9));
    }

    @Test
    void unknownPipesAreNotGuessed() {
        assertThat(PipeSize.named("7 in schedule 40")).isEmpty();
        assertThat(PipeSize.named("2 in")).isEmpty();
    }

    /** A piece that lies across shows its section from the side, and its length along the pivot. */
    @Test
    void outlines() {
        Bar across = new Bar(0.02, new Vec3(0.1, 0.2, -0.5), new Vec3(0.1, 0.2, 0.5));
        assertThat(across.across()).containsExactly(-0.5, 0.5);
        assertThat(across.outline()).hasSize(4);
        Disc disc = new Disc(0.6, null, 0.005, new Vec3(1, 2, 0), new Vec3(1, 0, 0));
        assertThat(disc.across()).containsExactly(-0.3, 0.3);
        assertThat(disc.outline().stream().mapToDouble(p -> p.y()).max().orElse(0))
                .isCloseTo(2.3, within(1e-12));
        assertThat(disc.mass()).isCloseTo(7850 * Math.PI * 0.09 * 0.005, within(1e-9));
    }
}
