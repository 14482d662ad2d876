// SPDX-License-Identifier: Apache-2.0
package tipwright.design.actuator;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;

/** An actuator. Adding a kind: one record and its name in the permits clause. */
@Choice("kind")
public sealed interface Actuator permits ElectricActuator, HydraulicActuator, Rope, TelescopicCylinder {
    /** Pin to pin when closed, m. */
    double closed();

    /** m. */
    double stroke();

    /** Rated push while moving, N; the least over the stroke. */
    double ratedPush();

    /** Rated push while moving at a length in m, pin to pin, N. */
    default double ratedPush(double length) {
        return ratedPush();
    }

    /** What it is called, one of it: 'electric actuator'. */
    String noun();

    /** Rated pull while moving, N; 0 when it cannot pull. */
    double ratedPull();

    /** Rated holding force at rest, N; null when not known. */
    @Nullable
    Double ratedHold();

    /** The rod; null when not known. */
    @Nullable
    Rod rod();

    /** The body around the rod; null when not known. */
    @Nullable
    Tube tube();

    /** Rated share of the time that it may run, 0 to 1; null when not known. */
    @Nullable
    Double duty();

    /** Price in whatever money the parts file uses; null when not given. */
    @Nullable
    Double price();
}
