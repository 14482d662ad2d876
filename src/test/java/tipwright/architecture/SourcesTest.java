// SPDX-License-Identifier: Apache-2.0
package tipwright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What every source file must be. */
class SourcesTest {
    private static final Path MAIN = Path.of("src/main/java");
    /** Put together from halves, so that this file passes its own test. */
    private static final Pattern UNFINISHED =
            Pattern.compile("TO" + "DO|FIX" + "ME|XX" + "X\\b|UnsupportedOperation" + "Exception");

    private static List<Path> files(Path root) throws IOException {
        try (Stream<Path> walk = Files.walk(root)) {
            return walk.filter(p -> p.toString().endsWith(".java")).sorted().toList();
        }
    }

    private static List<Path> all() throws IOException {
        return files(Path.of("src"));
    }

    @Test
    void noFileIsLongerThanAReaderCanHold() throws IOException {
        Map<Path, Integer> tooLong = new TreeMap<>();
        for (Path file : all()) {
            int lines = Files.readAllLines(file).size();
            if (lines > 400) {
                tooLong.put(file, lines);
            }
        }
        assertThat(tooLong).isEmpty();
    }

    @Test
    void medianOfMainIsUnder120Lines() throws IOException {
        List<Integer> lengths = new ArrayList<>();
        for (Path file : files(MAIN)) {
            lengths.add(Files.readAllLines(file).size());
        }
        lengths.sort(null);
        assertThat(lengths.get(lengths.size() / 2)).isLessThan(120);
    }

    @Test
    void everyFileNamesItsLicenceFirst() throws IOException {
        List<Path> without = new ArrayList<>();
        for (Path file : all()) {
            if (!Files.readAllLines(file).get(0).equals("// SPDX-License-Identifier: Apache-2.0")) {
                without.add(file);
            }
        }
        assertThat(without).isEmpty();
    }

    @Test
    void nothingIsLeftUnfinished() throws IOException {
        List<String> marks = new ArrayList<>();
        for (Path file : all()) {
            int number = 0;
            for (String line : Files.readAllLines(file)) {
                number++;
                if (UNFINISHED.matcher(line).find()) {
                    marks.add(file + ":" + number + ": " + line.strip());
                }
            }
        }
        assertThat(marks).isEmpty();
    }

    @Test
    void everyPackageIsNullMarkedAndSaysWhatItIs() throws IOException {
        List<Path> without = new ArrayList<>();
        try (Stream<Path> walk = Files.walk(MAIN)) {
            for (Path folder : walk.filter(Files::isDirectory).sorted().toList()) {
                if (holdsJava(folder) && !isDescribed(folder.resolve("package-info.java"))) {
                    without.add(folder);
                }
            }
        }
        assertThat(without).isEmpty();
    }

    private static boolean holdsJava(Path folder) throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.anyMatch(p -> p.toString().endsWith(".java"));
        }
    }

    private static boolean isDescribed(Path info) throws IOException {
        if (!Files.exists(info)) {
            return false;
        }
        String text = Files.readString(info);
        return text.contains("\n@NullMarked\n") && text.contains("/**");
    }
}
