// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.quantity.UnitSystem;

/**
 * A size that is sold.
 *
 * @param label as the shop says it: 'M12', '5/16 in'
 * @param size SI; of AWG cables the gauge
 */
public record SoldSize(String label, double size) {
    private static final String TABLE = "sold-sizes.csv";

    /** What is sold in sizes. The table tells the source of each. */
    public enum Series {
        PIN(Kind.LENGTH),
        BORE(Kind.LENGTH),
        LEG(Kind.LENGTH),
        PLATE(Kind.LENGTH),
        BOLT(Kind.LENGTH),
        VENT(Kind.LENGTH),
        CYLINDER(Kind.LENGTH),
        CABLE(Kind.AREA),
        FUSE(Kind.CURRENT);

        private final Kind kind;

        Series(Kind kind) {
            this.kind = kind;
        }
    }

    /** All of a series in the shops of a system, in the order of the table: the next does more. */
    public static List<SoldSize> of(Series series, UnitSystem units) {
        String name = series.name().toLowerCase(Locale.ROOT);
        String system = units.name().toLowerCase(Locale.ROOT);
        return text().lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> line.split(" *, *"))
                .filter(cells -> cells[0].equals(name) && (cells[1].equals("-") || cells[1].equals(system)))
                .map(cells -> new SoldSize(cells[2], read(cells[3], series.kind)))
                .toList();
    }

    /** As a builder would write it in a design file. */
    String text(Series series) {
        return series.kind == Kind.AREA && label.startsWith("AWG")
                ? String.valueOf(Math.round(size))
                : label.startsWith("M") ? label.substring(1) + " mm" : label;
    }

    private static double read(String cell, Kind kind) {
        try {
            boolean bare = kind == Kind.AREA && !cell.contains(" ");
            return Quantities.parse(cell, bare ? Kind.RATIO : kind);
        } catch (QuantityException e) {
            throw new IllegalStateException(cell, e);
        }
    }

    private static String text() {
        try (@Nullable InputStream in = SoldSize.class.getResourceAsStream(TABLE)) {
            if (in == null) {
                throw new IllegalStateException(TABLE + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(TABLE, e);
        }
    }
}
