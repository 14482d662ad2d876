// SPDX-License-Identifier: Apache-2.0
package tipwright.design.actuator;

import org.jspecify.annotations.Nullable;

/** An actuator that oil moves. */
public interface Cylinder {
    /**
     * Area that the oil pushes on, m2; 0 when oil cannot push that way.
     *
     * @param length pin to pin, m
     * @param out whether the rod goes out
     */
    double oilArea(double length, boolean out);

    /** Relief pressure, Pa. */
    double reliefPressure();

    /** Flow of the pump, m3/s; null when not known. */
    @Nullable
    Double flow();
}
