// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Examples;
import tipwright.design.Design;
import tipwright.geometry.Vec3;
import tipwright.load.Leaning;
import tipwright.load.LoadCase;
import tipwright.load.LoadState;
import tipwright.load.LoadTable;
import tipwright.load.Vessel;

/** The free surface of a liquid in a box that leans sideways. */
class FreeSurfaceTest {
    private static final double[] STOWED = {0};

    private static Design box(double length, double height, double width, double depth, double density) {
        return Examples.read(Examples.BOX
                .replace(
                        "{shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}",
                        "{shape: box, size: [" + length + " m, " + height + " m, " + width
                                + " m], centre: [0 m, 0 m, 0 m]}")
                .replace(
                        "rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m]",
                        "rim: circle, diameter: 100 mm, centre: [0 m, " + height / 2 + " m, 0 m]")
                .replace(
                        "wall: {thickness: 4 mm, density: 7850 kg/m3, yield: 700 MPa}",
                        "mass: {empty: 1 g, centre: [0 m, 0 m, 0 m]}")
                .replace(
                        "{fill: 100 %, density: 1400 kg/m3, repose: 30 deg}",
                        "{fill: " + 100 * depth / height + " %, density: " + density + " kg/m3}"));
    }

    private static LoadState leaning(Design design, double angle) {
        LoadTable table = LoadTable.of(design, STOWED);
        LoadCase held = table.cases().get(0);
        Vec3 up = new Vec3(0, Math.cos(angle), -Math.sin(angle));
        return new Leaning(design, Vessel.of(design)).at(held, held.states().get(0), 0, up);
    }

    /**
     * Sideways B^2 tan a / (12 h), up B^2 tan^2 a / (24 h). Source: statics of a liquid in a rectangular tank, surface clear of the
     * corners (own input set, B 2 m, h 0.5 m).
     */
    @ParameterizedTest
    @CsvSource({"5, 58.326, 2.551", "10, 117.551, 10.364"})
    void theCentroidOfARectangularTankShifts(double degrees, double sideways, double raised) {
        Design design = box(1, 1, 2, 0.5, 1000);
        LoadState level = LoadTable.of(design, STOWED).cases().get(0).states().get(0);
        LoadState state = leaning(design, Math.toRadians(degrees));
        Vec3 shift = state.centroid().minus(level.centroid());
        assertThat(1000 * shift.z()).isCloseTo(sideways, within(0.001));
        assertThat(1000 * shift.y()).isCloseTo(raised, within(0.001));
        assertThat(shift.x()).isCloseTo(0, within(1e-12));
    }

    /**
     * A ship of 8153.75 t pumps half of a tank of 15 x 10 x 2 m of salt water (1.025) out: G rises 0.1153 m, the free surface takes
     * 0.1602 m, new GM 0.2245 m from KM 8 and KG 7.5 m. The rise is by hand; the free surface is read off our box at a small
     * angle. Source: a text on ship stability (inputs read; the answer from memory, worked out again).
     */
    @Test
    void aSlackTankTakesFromAShipsStability() {
        double displaced = 8153.75;
        double pumped = 15 * 10 * 1 * 1.025;
        double left = displaced - pumped;
        double rise = pumped * (7.5 - 1.5) / left;
        assertThat(rise).isCloseTo(0.1153, within(0.00005));
        double angle = 1e-3;
        Design design = box(15, 2, 10, 1, 1025);
        double shift = leaning(design, angle).centroid().z() * pumped / left / Math.tan(angle);
        assertThat(shift).isCloseTo(0.1602, within(0.00005));
        assertThat(8 - 7.5 - rise - shift).isCloseTo(0.2245, within(0.0001));
    }

    /** Free surface correction l b^3 / 12 over the volume displaced: 750 short tons in a hold of 60 x 31 ft slack, and 477 in 54 x 31. */
    @ParameterizedTest
    @CsvSource({"60, 31, 750, 5.674", "54, 31, 477, 8.030"})
    void holdsFullOfWaterLoseTheirStability(double length, double width, double tons, double lost) {
        double foot = 0.3048;
        // by volume: any density does, so long as what floats is of the same liquid (35 cubic feet a ton)
        Design design = box(length * foot, 20 * foot, width * foot, 10 * foot, 1000);
        double angle = 1e-3;
        double volume = length * width * 10;
        double shift = leaning(design, angle).centroid().z() / foot * volume / (35 * tons) / Math.tan(angle);
        assertThat(shift).isCloseTo(lost, within(0.003));
    }
}
