// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry.stock;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads the tables that lie beside these classes in the program. */
final class StockTable {
    static final double INCH = 0.0254;

    private StockTable() {}

    /** Lines of a table, cut at commas and trimmed; those that begin with '#' left out. */
    static List<String[]> lines(String name) {
        try (@Nullable InputStream in = StockTable.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> line.trim().split(" *, *"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }
}
