// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.LinkedHashMap;
import java.util.Map;
import tipwright.analysis.Row;
import tipwright.geometry.Vec3;

/** The figures of one row under the names and in the units that JSON and CSV share. */
final class RowFigures {
    private static final double MM = 1000;
    private static final double LITRES = 1000;

    private RowFigures() {}

    /** Name to one number or to several (x, y or x, y, z), in the order of the output. */
    static Map<String, double[]> of(Row row) {
        Map<String, double[]> figures = new LinkedHashMap<>();
        Vec3 c = row.centroid();
        one(figures, "tilt_deg", Math.toDegrees(row.tilt()));
        one(figures, "mass_kg", row.load().mass());
        one(figures, "volume_l", row.load().volume() * LITRES);
        figures.put("centroid_mm", new double[] {c.x() * MM, c.y() * MM, c.z() * MM});
        one(figures, "actuator_length_mm", row.pose().length() * MM);
        one(figures, "actuator_force_n", row.rest().force());
        one(figures, "moment_arm_mm", row.pose().arm() * MM);
        one(figures, "transmission_deg", Math.toDegrees(row.pose().transmission()));
        one(figures, "raise_force_n", row.raise().force());
        one(figures, "lower_force_n", row.lower().force());
        figures.put(
                "pivot_force_n",
                new double[] {row.rest().pivot().x(), row.rest().pivot().y()});
        return figures;
    }

    private static void one(Map<String, double[]> figures, String name, double value) {
        figures.put(name, new double[] {value});
    }
}
