// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.actuator.TelescopicCylinder;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;

/** A telescopic cylinder in time. Source: v = Q/A. */
class StageMachineTest {
    private static Design design() {
        if (DesignFile.read(Path.of("geometry", "stage-tub.yaml")) instanceof Reading.Good good) {
            return good.design();
        }
        throw new AssertionError();
    }

    /** With pressure to spare the time is the swept volume over the pump's flow. */
    @Test
    void raisingTakesTheSweptVolumeOverTheFlow() throws CannotComputeException, Machines.MissingException {
        Design design = design();
        Machine machine = Machines.of(design);
        Analysis analysis = Analyser.analyse(design);
        TelescopicCylinder ram =
                (TelescopicCylinder) design.drive().actuators().get(0).actuator();
        double from = analysis.poses().get(0).length();
        double to = analysis.poses().get(analysis.poses().size() - 1).length();
        double volume = 0;
        double time = 0;
        int steps = 20_000;
        for (int i = 0; i < steps; i++) {
            double length = from + (to - from) * (i + 0.5) / steps;
            volume += ram.moving(length).area() * (to - from) / steps;
            time += (to - from) / steps / machine.draw(length, 1000, true, true).speed();
        }
        assertThat(time).isCloseTo(volume / 1e-4, within(1e-9 * time));
        Timing timing = CycleTimer.time(analysis);
        assertThat(timing.missing()).isNull();
        assertThat(timing.of("held").raise()).isCloseTo(time, within(2e-3 * time));
    }

    /**
     * The pump's shaft gives p Q over the pump's efficiency, the motor draws that over its own: 10 kN on the widest stage of 75 mm.
     * Source: P = p Q.
     */
    @Test
    void theShaftGivesWhatThePumpLosesToo() throws Machines.MissingException {
        Machine machine = Machines.of(design());
        DriveState up = machine.draw(0.6, 10_000, true, true);
        double pressure = 10_000 / (Math.PI / 4 * 0.075 * 0.075 * 0.95);
        assertThat(up.pressure()).isCloseTo(pressure, within(1e-6 * pressure));
        assertThat(up.shaft()).isCloseTo(pressure * 1e-4 / 0.8, within(1e-6 * up.shaft()));
        assertThat(up.power()).isCloseTo(pressure * 1e-4 / 0.8 / 0.8, within(1e-6 * up.power()));
    }
}
