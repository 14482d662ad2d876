// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;

/**
 * Regression, not validation, as {@link RegressionTest}: designs of it with one key after another changed, added or taken out, so that
 * what a key does stays what it was. Kept is what a change makes otherwise than in the design as it is.
 */
class ChangedDesignsTest {
    private static final Path FOLDER = Path.of("src/test/resources/tipwright/check/changed");
    private static final LoadSettings LOAD =
            LoadSettings.builder().setLabel("change").build();
    private static final Dump DUMP = new Dump(DumpSettings.builder().build());
    private static final Map<String, Map<String, List<String>>> AS_DRAWN = new TreeMap<>();

    static List<String> changes() throws IOException {
        return Files.readAllLines(FOLDER.resolve("changes.txt")).stream()
                .filter(line -> !line.startsWith("#"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("changes")
    void findsWhatItFound(String change) throws IOException, CannotComputeException {
        List<String> now = told(change);
        Path kept = FOLDER.resolve(RegressionTest.designOf(change) + ".txt");
        if (Boolean.getBoolean("test.write.regression")) {
            keep(kept, change, now);
        }
        RegressionTest.assertSame(change, section(kept, change), now);
    }

    /** What is otherwise than in the design as it is: numbers, and what is said of them where the verdict is another. */
    private static List<String> told(String change) throws IOException, CannotComputeException {
        String[] parts = change.split(" \\| ", -1);
        String text = Files.readString(RegressionTest.file(parts[0]));
        Object design = new Load(LOAD).loadFromString(text);
        for (int i = 1; i < parts.length; i++) {
            String[] pair = parts[i].split(" = ", 2);
            put(design, pair[0].split("\\.", -1), pair[1]);
        }
        if (!AS_DRAWN.containsKey(parts[0])) {
            AS_DRAWN.put(parts[0], RegressionTest.findings(Examples.read(text)));
        }
        Map<String, List<String>> drawn = AS_DRAWN.get(parts[0]);
        Map<String, List<String>> changed = RegressionTest.findings(Examples.read(DUMP.dumpToString(design)));
        List<String> other = new ArrayList<>();
        changed.forEach((id, is) -> {
            List<String> was = drawn.get(id);
            if (was == null || !RegressionTest.same(was.get(0), is.get(0))) {
                other.add(is.get(0));
                if (was == null || !was.get(2).equals(is.get(2))) {
                    other.add(is.get(1));
                }
            }
        });
        drawn.keySet().stream().filter(id -> !changed.containsKey(id)).forEach(id -> other.add("gone | " + id));
        return other;
    }

    @SuppressWarnings("unchecked")
    private static void put(Object design, String[] path, String value) {
        Object at = design;
        for (int i = 0; i < path.length - 1; i++) {
            at = at instanceof List<?> list
                    ? list.get(Integer.parseInt(path[i]))
                    : ((Map<String, Object>) at).computeIfAbsent(path[i], none -> new TreeMap<String, Object>());
        }
        Map<String, Object> map = (Map<String, Object>) at;
        if (value.equals("-")) {
            assertThat(map.remove(path[path.length - 1]))
                    .as("what is taken out")
                    .isNotNull();
        } else {
            map.put(path[path.length - 1], new Load(LOAD).loadFromString(value));
        }
    }

    private static List<String> section(Path kept, String change) throws IOException {
        List<String> all = Files.readAllLines(kept);
        int from = all.indexOf("# " + change);
        assertThat(from).as("%s: %s", kept, change).isNotNegative();
        int to = from + 1;
        while (to < all.size() && !all.get(to).startsWith("# ")) {
            to++;
        }
        return all.subList(from + 1, to);
    }

    /** Writes the sections of a design one after the other, in the order of the changes. */
    private static void keep(Path kept, String change, List<String> now) throws IOException {
        String design = RegressionTest.designOf(change);
        boolean first = changes().stream()
                .filter(c -> RegressionTest.designOf(c).equals(design))
                .findFirst()
                .orElseThrow()
                .equals(change);
        List<String> all = new ArrayList<>(first ? List.of() : Files.readAllLines(kept));
        all.add("# " + change);
        all.addAll(now);
        Files.write(kept, all);
    }
}
