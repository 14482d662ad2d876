// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The short table in the README tells what the long one holds; the failure shows how it should read. */
class ReadmeTableTest {
    @Test
    void readmeTellsWhatIsHeldAgainstWhat() throws IOException {
        Map<String, int[]> counts = new LinkedHashMap<>();
        for (Reference r : ReferenceTables.all()) {
            counts.computeIfAbsent(r.group(), g -> new int[Basis.values().length])[
                    r.mark().ordinal()]++;
        }
        StringBuilder table = new StringBuilder(
                "| figures of | source read | from memory | our own example, worked out two ways |\n");
        table.append("| --- | --- | --- | --- |\n");
        int[] sum = new int[Basis.values().length];
        counts.forEach((group, marks) -> {
            row(table, group, marks);
            for (int i = 0; i < sum.length; i++) {
                sum[i] += marks[i];
            }
        });
        row(table, "all", sum);
        assertThat(Files.readString(Path.of("README.md"))).contains(table);
    }

    private static void row(StringBuilder table, String name, int[] counts) {
        table.append("| ").append(name);
        for (int count : counts) {
            table.append(" | ").append(count);
        }
        table.append(" |\n");
    }
}
