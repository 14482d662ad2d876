// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;
import tipwright.check.standing.TipOverCheck;

/** The wind that may tip a machine over presses on the supports it is blown onto. */
class SupportsInTheWindTest {
    /**
     * An upright box tank of 1 m, its middle 1 m above the ground under the middle of four supports, hardly tipped. Each bears a
     * quarter of the weight; wind p on 1 m2 makes p x 1 m, borne by two pairs of supports 2 m (along x) or 1.2 m (along z) apart.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1000})
    void theLeewardPairBearsTheMomentOfTheWind(double pressure) throws CannotComputeException {
        String yaml = swap(
                        Examples.BOX,
                        "wall: {thickness: 4 mm, density: 7850 kg/m3, yield: 700 MPa}",
                        "mass: {empty: 400 kg, centre: [0 m, 1 m, 0 m]}",
                        "fill: 100 %",
                        "fill: 0 %",
                        "tilt: {to: 80 deg}",
                        "tilt: {to: 0.001 deg}")
                + "site: {wind-pressure: " + pressure + " Pa}\n"
                + "frame: {mass: 600 kg, centre: [0 m, 200 mm, 0 m]}\n"
                + "supports: {outline: [[-1 m, -600 mm], [1 m, -600 mm], [1 m, 600 mm], [-1 m, 600 mm]], y: 0 m,"
                + " rating: 10 kN}\n";
        Finding supports = new TipOverCheck()
                .run(Analyser.analyse(Examples.read(yaml))).stream()
                        .filter(f -> f.id().equals("tip-over/supports"))
                        .findFirst()
                        .orElseThrow();
        double weight = 1000 * 9.80665;
        double wind = pressure * 1 * 1 / (2 * 1.2);
        assertThat(supports.demand()).isCloseTo(weight / 4 + wind, within(0.1));
    }
}
