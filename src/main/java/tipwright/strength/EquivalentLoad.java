// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/** The radial load that dents a bearing as much as radial and axial load together. */
public final class EquivalentLoad {
    private EquivalentLoad() {}

    /**
     * Static equivalent radial load of a deep-groove ball bearing, N: P0 = max(0.6 Fr + 0.5 Fa, Fr).
     *
     * @param radial N
     * @param axial N
     *
     * Source: ISO 76 (from memory).
     */
    public static double ofRest(double radial, double axial) {
        return Math.max(0.6 * radial + 0.5 * axial, radial);
    }
}
