// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.joint.Support;
import tipwright.geometry.Vec3;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;

/** Where things are along the pivot. */
final class Across {
    private static final double SAME = 1e-6;

    private Across() {}

    /** 'left ' or 'right ' as seen from the dump end; empty in the middle. */
    static String side(double z) {
        return Math.abs(z) < SAME ? "" : z > 0 ? "left " : "right ";
    }

    /** Every place of a pin along the pivot, m. */
    static List<Double> of(Design design, Marking.Spot spot) {
        boolean actuator = spot.bodies().contains(Marking.ACTUATOR);
        boolean paired =
                spot.place().pivot() || design.drive().paired(spot.place().key());
        if (paired && !actuator) {
            return design.pivot().bearings().stream().map(Support::z).toList();
        }
        List<PlacedActuator> all = design.drive().actuators();
        return actuator ? all.stream().map(PlacedActuator::z).toList() : List.of(PlacedActuator.middle(all));
    }

    /** 'z -450, z 450' in the tape's units. */
    static String words(List<Double> places, UnitSystem units) {
        List<String> all = new ArrayList<>();
        for (double z : places) {
            all.add(Marks.bare(z, units));
        }
        return String.join("; ", all);
    }

    /** From each bearing to each end of an actuator on the frame, straight through space: what tells whether it is square. */
    static List<String[]> diagonals(Design design, Marking marking, UnitSystem units) {
        List<String[]> all = new ArrayList<>();
        Marking.Spot pivot = marking.spots().get(0);
        for (int k = 1; k < marking.spots().size(); k++) {
            Marking.Spot spot = marking.spots().get(k);
            for (double z : of(design, spot)) {
                String name =
                        spot.place().words() + (of(design, spot).size() > 1 ? " at z " + Marks.bare(z, units) : "");
                List<String> row = new ArrayList<>(List.of(name));
                for (Support s : design.pivot().bearings()) {
                    Vec3 a = new Vec3(pivot.at().x(), pivot.at().y(), s.z());
                    Vec3 b = new Vec3(spot.at().x(), spot.at().y(), z);
                    row.add(Marks.show(b.minus(a).norm(), units));
                }
                all.add(row.toArray(new String[0]));
            }
        }
        return all;
    }
}
