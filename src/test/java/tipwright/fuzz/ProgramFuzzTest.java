// SPDX-License-Identifier: Apache-2.0
package tipwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The whole program on spoilt designs, in a process with a heap of 1 GB. More by hand: -Dtest.mutations=3000 -Dtest.seed=2; what breaks
 * it is kept in target/fuzz/ProgramFuzz and belongs in src/test/resources/tipwright/fuzz/ProgramFuzz once it is mended.
 */
class ProgramFuzzTest {
    private static final int MUTATIONS = Integer.getInteger("test.mutations", 60);
    private static final long SEED = Long.getLong("test.seed", 1);
    private static final Pattern ENDLESS = Pattern.compile("fault: (\\d+): .*does not end");

    private final List<String> said = new ArrayList<>();

    /** The number of the first that did not end; or negative. */
    private int run(int from) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx1g",
                        "-XX:+UseSerialGC",
                        "-Djava.awt.headless=true",
                        "-Dtest.patience=" + Long.getLong("test.patience", 300),
                        "-cp",
                        System.getProperty("java.class.path"),
                        ProgramFuzz.class.getName(),
                        Long.toString(SEED),
                        Integer.toString(from),
                        Integer.toString(MUTATIONS),
                        "target/fuzz/ProgramFuzz")
                .redirectErrorStream(true)
                .start();
        int endless = -1;
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                said.add(line);
                System.out.println(line);
                Matcher matcher = ENDLESS.matcher(line);
                endless = matcher.matches() ? Integer.parseInt(matcher.group(1)) : endless;
            }
        }
        process.waitFor();
        return endless;
    }

    @Test
    void noSpoiltDesignBreaksIt() throws IOException, InterruptedException {
        for (int from = 0; from >= 0 && from < MUTATIONS; ) {
            int endless = run(from);
            from = endless < 0 ? -1 : endless + 1;
        }
        assertThat(said).isNotEmpty().allMatch(line -> line.startsWith("counts: "));
    }
}
