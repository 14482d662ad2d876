// SPDX-License-Identifier: Apache-2.0
package tipwright.design.steel;

import java.util.List;
import tipwright.design.key.Choice;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** A piece of steel as it is bought, in its place. Adding one: a record here and its name in the permits clause. */
@Choice
public sealed interface Steel permits Plate, Disc, WireMesh, LongSteel {
    /** Density of steel, kg/m3. Source: EN 1991-1-1 annex A, nominal. */
    double DENSITY = 7850;

    /** Mass, kg. */
    double mass();

    /** Centre of mass, m, stowed. */
    Vec3 centre();

    /** Outline in the side view, m, stowed. */
    List<Vec2> outline();

    /** Where it begins and ends along the pivot axis, m. */
    List<Double> across();
}
