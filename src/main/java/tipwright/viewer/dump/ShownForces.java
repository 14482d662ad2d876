// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Balance;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * The forces that are shown.
 *
 * @param force of all actuators together, N; positive pushes
 * @param pivot force of the tank on its bearings in the side view, N
 * @param bearings force of the tank on each bearing, N [bearing]
 */
public record ShownForces(double force, Vec2 pivot, List<Vec3> bearings) {
    /** Copies the list. */
    public ShownForces {
        bearings = List.copyOf(bearings);
    }

    /** A share s of the way from a to b. */
    static ShownForces between(Balance a, Balance b, double s) {
        List<Vec3> bearings = new ArrayList<>();
        for (int i = 0; i < a.bearings().size(); i++) {
            bearings.add(
                    a.bearings().get(i).times(1 - s).plus(b.bearings().get(i).times(s)));
        }
        Vec2 pivot = a.pivot().times(1 - s).plus(b.pivot().times(s));
        return new ShownForces((1 - s) * a.force() + s * b.force(), pivot, bearings);
    }
}
