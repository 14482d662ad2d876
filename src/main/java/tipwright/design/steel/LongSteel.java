// SPDX-License-Identifier: Apache-2.0
package tipwright.design.steel;

import java.util.List;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** A piece of one section from end to end. */
sealed interface LongSteel extends Steel permits Flat, Angle, TubePiece, Pipe, Bar {
    /** Where it runs, and how high and wide its section is. */
    Stretched stretched();

    /** Area of the section, m2. */
    double area();

    @Override
    default double mass() {
        return DENSITY * area() * stretched().length();
    }

    @Override
    default Vec3 centre() {
        return stretched().middle();
    }

    @Override
    default List<Vec2> outline() {
        return stretched().outline();
    }

    @Override
    default List<Double> across() {
        return stretched().across();
    }
}
