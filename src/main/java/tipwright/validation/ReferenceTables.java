// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads the tables of references that came with the program. */
final class ReferenceTables {
    private static final String NIST = "NIST SP 811, appendix B";
    private static final String JONES = "tests of the open library 'fluids' (C. Bell), after D. Jones";

    private ReferenceTables() {}

    /** All of them, in the order of the groups. */
    static List<Reference> all() {
        List<Reference> all = new ArrayList<>();
        for (String[] line : lines("horizontal-tank-volume.csv", ",")) {
            String what = "Lying tank 108 by 156 in, " + line[0] + " heads, " + line[2] + " in deep";
            double gallons = Double.parseDouble(line[3]);
            all.add(new Reference(
                    "hydrostatics", Hydrostatics.id(line), what, "gal", gallons, 1e-6 * gallons, Basis.READ, JONES));
        }
        for (String[] line : lines("references.txt", "\\|")) {
            double value = Double.parseDouble(line[4]);
            double tolerance = Double.parseDouble(line[5]);
            all.add(new Reference(line[0], line[1], line[2], line[3], value, tolerance, Basis.of(line[6]), line[7]));
        }
        for (String[] line : lines("units.csv", ",")) {
            double si = Double.parseDouble(line[2]);
            double tolerance = si * Double.parseDouble(line[3]);
            all.add(new Reference("units", line[0], "1 " + line[0], "SI", si, tolerance, Basis.MEMORY, NIST));
        }
        return all;
    }

    /** The lines of a table, cut and trimmed; those that begin with '#' left out. */
    static List<String[]> lines(String table, String parted) {
        List<String[]> lines = new ArrayList<>();
        for (String line : text(table).split("\n")) {
            if (!line.isBlank() && !line.startsWith("#")) {
                String[] cells = line.split(parted);
                for (int i = 0; i < cells.length; i++) {
                    cells[i] = cells[i].strip();
                }
                lines.add(cells);
            }
        }
        return lines;
    }

    /** The text of a file that lies beside the tables. */
    static String text(String name) {
        try (@Nullable InputStream in = ReferenceTables.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }
}
