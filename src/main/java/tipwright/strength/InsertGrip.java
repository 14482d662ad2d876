// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import org.jspecify.annotations.Nullable;
import tipwright.design.joint.BallInsert;

/**
 * What load along the shaft the set screws of an insert bearing hold.
 *
 * <p>Source: two pages of one maker on ball bearing units (read). It is a rule of thumb, for screws at full torque; the maker's own
 * figure goes before it.
 *
 * @param dynamic dynamic rating C, N
 * @param fixed static rating C0, N
 */
public record InsertGrip(double dynamic, double fixed) {
    /** @throws IllegalArgumentException if a rating is not above 0 */
    public InsertGrip {
        Precondition.positive("dynamic", dynamic);
        Precondition.positive("fixed", fixed);
    }

    /** What an insert holds along its shaft, N: its maker's figure, or the rule for a soft shaft; null when neither is known. */
    public static @Nullable Double of(BallInsert insert) {
        Double c = insert.c();
        Double c0 = insert.c0();
        if (insert.axial() != null) {
            return insert.axial();
        }
        return c == null || c0 == null ? null : new InsertGrip(c, c0).onSoftShaft();
    }

    /** On a shaft that is not hardened, N: a fifth of the dynamic rating. */
    public double onSoftShaft() {
        return 0.2 * dynamic;
    }

    /** Against a shoulder of the shaft, N: a quarter of the static rating, which is what the balls bear along. */
    public double againstShoulder() {
        return 0.25 * fixed;
    }

    /** On an adapter sleeve, N: 0.15 of the dynamic rating, the lower end of 0.15 to 0.2. */
    public double onSleeve() {
        return 0.15 * dynamic;
    }
}
