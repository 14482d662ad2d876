// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.design.key.Copy;
import tipwright.geometry.Vec3;

/** Welds and bolts that go along with a joint that is moved. */
final class Shifted {
    private Shifted() {}

    /** The fastenings of some joints moved, m. */
    static Design fastenings(Design design, Predicate<Fastening> which, Vec3 by) {
        return Joints.withFastenings(
                design, which, f -> Copy.with(Copy.with(f, "weld", weld(f.weld(), by)), "bolts", bolts(f.bolts(), by)));
    }

    private static @Nullable FilletWeld weld(@Nullable FilletWeld weld, Vec3 by) {
        return weld == null ? null : weld.movedBy(by);
    }

    private static @Nullable Bolts bolts(@Nullable Bolts bolts, Vec3 by) {
        return bolts == null ? null : bolts.movedBy(by);
    }
}
