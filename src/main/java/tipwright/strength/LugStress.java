// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import tipwright.design.joint.Lug;

/**
 * Stresses in a plate with a pin through it: bearing F/(d t), tear-out F/(2 t (e - d/2)) on two planes of the conservative length,
 * net section F/((w - d) t). Source: elementary lug rules; tear-out length conservative against ASME BTH-1 (from memory).
 */
public final class LugStress {
    private LugStress() {}

    /** Pa; force in N on all the plates together. */
    public static double bearing(Lug lug, double force) {
        return force / (lug.plates() * lug.hole() * lug.thickness());
    }

    /** Pa; infinite when no metal is left in front of the hole. */
    public static double tearOut(Lug lug, double force) {
        double length = lug.end() - lug.hole() / 2;
        return length > 0 ? force / (lug.plates() * 2 * lug.thickness() * length) : Double.POSITIVE_INFINITY;
    }

    /** Pa; infinite when no metal is left beside the hole. */
    public static double netSection(Lug lug, double force) {
        double beside = lug.width() - lug.hole();
        return beside > 0 ? force / (lug.plates() * beside * lug.thickness()) : Double.POSITIVE_INFINITY;
    }
}
