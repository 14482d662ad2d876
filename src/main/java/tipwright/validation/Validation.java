// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The validation table. */
public final class Validation {
    private Validation() {}

    /** Computes every row; takes a second or two. */
    public static List<ValidationRow> rows() {
        Map<String, Figures.Figure> figures = figures();
        List<ValidationRow> rows = new ArrayList<>();
        for (Reference reference : ReferenceTables.all()) {
            rows.add(new ValidationRow(reference, value(figures.get(reference.id()))));
        }
        return rows;
    }

    static Map<String, Figures.Figure> figures() {
        Figures figures = new Figures();
        Hydrostatics.addTo(figures);
        Slurries.addTo(figures);
        Linkages.addTo(figures);
        FourBars.addTo(figures);
        WholeDesigns.addTo(figures);
        Strength.addTo(figures);
        Joining.addTo(figures);
        Supplies.addTo(figures);
        Flows.addTo(figures);
        TippingOver.addTo(figures);
        Walls.addTo(figures);
        Connections.addTo(figures);
        Oils.addTo(figures);
        Stocks.addTo(figures);
        Units.addTo(figures);
        return figures.byId();
    }

    private static double value(Figures.@Nullable Figure figure) {
        if (figure == null) {
            return Double.NaN;
        }
        try {
            return figure.value();
        } catch (Exception e) {
            return Double.NaN;
        }
    }
}
