// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Pose;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.key.Copy;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** Hoses and cables begin at the actuator's body at every tilt, stay above the ground and end at one place of the frame. */
class HosesTest {
    private static Analysis shipped(String name) throws CannotComputeException {
        return Analyser.analyse(((Reading.Good) DesignFile.shipped(name + ".yaml")).design());
    }

    private static Hoses hoses(Analysis analysis) {
        return Objects.requireNonNull(Hoses.of(analysis, new MachineOutline(analysis).room()));
    }

    /** Distance of a point from the actuator's line, m. */
    private static double off(Vec3 p, Pose pose) {
        Vec2 along = pose.tankPin().minus(pose.framePin()).unit();
        return Math.abs(along.cross(p.xy().minus(pose.framePin())));
    }

    @Test
    void theyFollowTheActuator() throws CannotComputeException {
        for (String name : List.of("twin-rams", "silt-trailer", "six-link", "stage-tub")) {
            Analysis analysis = shipped(name);
            if (analysis.design().supply() == null) {
                continue;
            }
            Room room = new MachineOutline(analysis).room();
            Hoses hoses = hoses(analysis);
            PlacedActuator placed = analysis.design().drive().actuators().get(0);
            double radius = ActuatorShape.tubeRadius(placed.actuator());
            Vec3 end = null;
            for (Pose pose : analysis.poses()) {
                for (Hoses.Hose hose : hoses.at(MachinePose.of(pose))) {
                    Vec3 first = hose.points().get(0);
                    assertThat(off(first, pose)).as(name).isLessThan(radius);
                    assertThat(off(hose.points().get(1), pose)).as(name).isGreaterThan(radius);
                    assertThat(hose.points()).as(name).allMatch(p -> p.y() > room.ground());
                }
                Vec3 last = hoses.at(MachinePose.of(pose))
                        .get(0)
                        .points()
                        .get(hoses.at(MachinePose.of(pose)).get(0).points().size() - 1);
                boolean onFrame = analysis.poses().get(0).framePin().equals(pose.framePin());
                if (end != null && onFrame) {
                    assertThat(last.minus(end).norm()).as(name).isLessThan(1e-9);
                }
                end = last;
            }
        }
    }

    @Test
    void aCylinderThatPullsHasTwoAndACableOne() throws CannotComputeException {
        Analysis rams = shipped("twin-rams");
        assertThat(hoses(rams).at(MachinePose.of(rams.poses().get(0)))).hasSize(4);
        assertThat(hoses(rams).words()).isEqualTo("way of the hoses");
        Analysis trailer = shipped("silt-trailer");
        List<Hoses.Hose> cable =
                hoses(trailer).at(MachinePose.of(trailer.poses().get(0)));
        assertThat(cable).hasSize(1);
        // the metal of two cores of 16 mm2 makes a circle of 6.4 mm: the cable is thicker, and not twice as thick
        double metal = Math.sqrt(2 * 16e-6 / Math.PI);
        assertThat(cable.get(0).radius()).isBetween(metal, 2 * metal);
    }

    @Test
    void withoutASupplyThereAreNone() throws CannotComputeException {
        Analysis trailer = shipped("silt-trailer");
        Analysis bare = Analyser.analyse(Copy.with(trailer.design(), "supply", null));
        assertThat(Hoses.of(bare, new MachineOutline(bare).room())).isNull();
    }
}
