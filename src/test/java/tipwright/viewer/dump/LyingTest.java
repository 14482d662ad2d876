// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec3;
import tipwright.outline.MachineOutline;
import tipwright.viewer.Trial;

/** What has left lies there, and as much of it as has left. */
class LyingTest {
    /** A pit, the bare ground, a bin: liquid and grit. */
    @ParameterizedTest
    @CsvSource({"silt-trailer", "crank-cart", "lime-barrel"})
    void keepsTheVolume(String name) throws Exception {
        DumpStates dump = new DumpStates(Trial.shipped(name));
        Surroundings room = Surroundings.of(dump, new MachineOutline(dump.analysis()));
        Lying lying = dump.lying(room);
        double most = dump.contents().slurryVolume();
        for (boolean grit : new boolean[] {false, true}) {
            for (double volume : new double[] {0.02 * most, 0.3 * most, most}) {
                Mesh mesh = lying.mesh(volume, grit, new Vec3(1, lying.place().floor(), 0));
                assertThat(mesh.volume()).isCloseTo(volume, within(1e-9));
                double low = mesh.extent(new Vec3(0, 1, 0)).low();
                assertThat(low).isCloseTo(lying.place().floor(), within(1e-9));
                if (lying.place().pit()) {
                    assertThat(mesh.extent(new Vec3(0, 1, 0)).high())
                            .as("it does not run over")
                            .isLessThan(lying.place().top());
                }
            }
        }
        assertThat(lying.mesh(0, false, Vec3.ZERO)).isNull();
    }

    @Test
    void whatIsInAndWhatIsOutIsAllOfIt() throws Exception {
        DumpStates dump = new DumpStates(Trial.shipped("silt-trailer"));
        Timeline timeline = Timeline.of(dump, "draining");
        for (double share : new double[] {0, 0.02, 0.1, 0.3, 0.9}) {
            Timeline.Spot spot = timeline.at(share * timeline.top());
            MachineState now = dump.at("draining", spot);
            double in = now.fill() == null ? 0 : now.fill().volume();
            assertThat(in + now.out()).isCloseTo(dump.contents().slurryVolume(), within(1e-6));
        }
        assertThat(dump.at("held", dump.last()).out()).isCloseTo(0, within(1e-9));
    }
}
