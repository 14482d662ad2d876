// SPDX-License-Identifier: Apache-2.0
package tipwright.fluid;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * How little an oil thins with warmth.
 *
 * <p>Source: ASTM D2270, table 1 for 2 to 20 mm2/s at 100 C as printed in a public library of chemical engineering (read). Thicker oils
 * are no hydraulic oils and are refused.
 */
public final class ViscosityIndex {
    private static final double MM2 = 1e-6;
    private static final double LEAST = 2;
    private static final double STEP = 0.1;

    private ViscosityIndex() {}

    /** The two columns of the table: viscosity at 40 C, mm2/s, of oils of index 0 and of index 100. */
    private static final class Table {
        private static final double[] ZERO = column("L");
        private static final double[] HUNDRED = column("H");

        private static double[] column(String name) {
            try (@Nullable InputStream in = ViscosityIndex.class.getResourceAsStream("viscosity-index.txt")) {
                if (in == null) {
                    throw new IllegalStateException("viscosity-index.txt is missing from the program");
                }
                String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                return text.lines()
                        .filter(line -> line.startsWith(name + " "))
                        .flatMap(line ->
                                java.util.Arrays.stream(line.substring(2).trim().split(" +")))
                        .mapToDouble(Double::parseDouble)
                        .toArray();
            } catch (IOException e) {
                throw new UncheckedIOException("viscosity-index.txt", e);
            }
        }
    }

    /**
     * Index of an oil.
     *
     * @param nu40 viscosity at 40 C, m2/s
     * @param nu100 viscosity at 100 C, m2/s, from 2 to 20 mm2/s
     */
    public static double of(double nu40, double nu100) {
        double y = nu100 / MM2;
        double u = nu40 / MM2;
        double zero = between(Table.ZERO, y);
        double hundred = between(Table.HUNDRED, y);
        if (u >= hundred) {
            return 100 * (zero - u) / (zero - hundred);
        }
        double n = (Math.log10(hundred) - Math.log10(u)) / Math.log10(y);
        return (Math.pow(10, n) - 1) / 0.00715 + 100;
    }

    /**
     * Viscosity at 100 C, m2/s, of an oil of which the index is known.
     *
     * @param nu40 viscosity at 40 C, m2/s
     * @param index from 0 to 250
     */
    public static double at100(double nu40, double index) {
        if (!(index >= 0 && index <= 250)) {
            throw new IllegalArgumentException("the index must be from 0 to 250, is " + index);
        }
        double low = LEAST * MM2;
        double high = 20 * MM2;
        if (of(nu40, low) > index || of(nu40, high) < index) {
            throw new IllegalArgumentException(
                    "an oil of " + nu40 + " m2/s and index " + index + " is not in the table");
        }
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (of(nu40, middle) < index) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static double between(double[] column, double y) {
        double at = (y - LEAST) / STEP;
        if (!(at >= -1e-9 && at <= column.length - 1 + 1e-9)) {
            throw new IllegalArgumentException("viscosity at 100 C must be from 2 to 20 mm2/s, is " + y);
        }
        int i = (int) Math.min(column.length - 2, Math.max(0, Math.floor(at)));
        return column[i] + (at - i) * (column[i + 1] - column[i]);
    }
}
