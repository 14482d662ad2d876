// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.standing.Footprint.Mass;
import tipwright.design.tank.CaseName;
import tipwright.geometry.Vec3;

/** Where the unit leans and the cake never lets go, the door still hangs plumb: its weight is straight under its hinge. By hand. */
class StuckCakeWithDoorTest {
    private static final double KG = 150;

    /** Tank and cake at the last tilt, on ground that leans. */
    private static Mass tank(String name, Vec3 up) throws CannotComputeException {
        List<Mass> last = new ArrayList<>();
        new WholeUnit(Analyser.analyse(Examples.read(swap(Examples.DOOR_BOX, "NAME", name))))
                .each(null, (load, pose, masses) -> {
                    if (load.equals(CaseName.STUCK)) {
                        last.clear();
                        last.addAll(masses.leaning().apply(up));
                    }
                });
        return last.get(last.size() - 1);
    }

    @Test
    void doorHangsPlumbWhereTheUnitLeans() throws CannotComputeException {
        double tilt = Math.toRadians(80);
        for (double lean : new double[] {-9, 0, 7}) {
            double slope = Math.toRadians(lean);
            Vec3 up = new Vec3(Math.sin(-slope), Math.cos(slope), 0);
            Mass open = tank("end", up);
            Mass stiff = tank("lump", up);
            Vec3 moved = open.at().minus(stiff.at()).times(open.kg());
            // half a metre: from along the tilted wall to plumb
            assertThat(moved.x()).isCloseTo(KG * 0.5 * (Math.sin(tilt) + Math.sin(slope)), within(1e-6));
            assertThat(moved.y()).isCloseTo(KG * 0.5 * (Math.cos(tilt) - Math.cos(slope)), within(1e-6));
        }
    }
}
