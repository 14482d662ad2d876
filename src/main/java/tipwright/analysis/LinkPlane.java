// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.drive.LinkPart;

/** Where links lie along the pivot, as they are drawn. */
public final class LinkPlane {
    private LinkPlane() {}

    /** The middle of a link as it is drawn, m; null where it is not drawn along the pivot. */
    public static @Nullable Double drawn(Design design, String body) {
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (LinkPart part : design.links()) {
            if (part.body().equals(body)) {
                for (double z : part.z()) {
                    from = Math.min(from, z);
                    to = Math.max(to, z);
                }
            }
        }
        return from < to ? (from + to) / 2 : null;
    }

    /** Where the link lies that a joint is on, m; null where it is not drawn along the pivot. */
    public static @Nullable Double of(Design design, Mechanism mechanism, JointPlan joint) {
        for (int body : new int[] {joint.a(), joint.b()}) {
            Double drawn = body == 0 || body == mechanism.tank()
                    ? null
                    : drawn(design, mechanism.bodies().get(body));
            if (drawn != null) {
                return drawn;
            }
        }
        return null;
    }

    /**
     * Where the drive's force reaches the tank, m, if a single link that is drawn hands it on to the tank; null where the actuators act on
     * the tank themselves, where links carry it on the bearings, or where it is not drawn.
     */
    public static @Nullable Double ofDrive(Design design, Mechanism mechanism) {
        int tank = mechanism.tank();
        if (mechanism.actuatorFrom() == tank || mechanism.actuatorTo() == tank) {
            return null;
        }
        if (mechanism.carriesTankOnLinks()) {
            return null;
        }
        JointPlan last = null;
        for (int i = 0; i < mechanism.joints().size(); i++) {
            JointPlan joint = mechanism.joints().get(i);
            if (i != mechanism.pivot()
                    && (joint.a() == tank || joint.b() == tank)
                    && !design.drive().paired(joint.name())) {
                if (last != null) {
                    return null;
                }
                last = joint;
            }
        }
        return last == null || last.slide() ? null : of(design, mechanism, last);
    }
}
