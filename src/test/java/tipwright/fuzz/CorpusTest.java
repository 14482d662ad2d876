// SPDX-License-Identifier: Apache-2.0
package tipwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every input that fuzzing has kept, again; '.ci/fuzz' looks for new ones. The time-out guards against hanging only. */
class CorpusTest {
    private static final Path CORPUS = Path.of("src/test/resources/tipwright/fuzz");

    /** A target of the fuzzer. */
    @FunctionalInterface
    private interface Target {
        void run(byte[] data) throws Exception;
    }

    private static Target target(String name) {
        return switch (name) {
            case "DesignFuzz" -> DesignFuzz::fuzzerTestOneInput;
            case "PartsFuzz" -> PartsFuzz::fuzzerTestOneInput;
            case "MeshFuzz" -> MeshFuzz::fuzzerTestOneInput;
            default -> QuantityFuzz::fuzzerTestOneInput;
        };
    }

    /**
     * The commands on a design that have tripped over one like it: a search where one has, documents and drawings where it was a name, else
     * what works out loads and times.
     */
    private static boolean asked(String name, String command) {
        boolean names = name.startsWith("name");
        boolean drawn = command.startsWith("sheet") || command.startsWith("report") || command.startsWith("parts");
        boolean tried = command.startsWith("tolerance") || command.startsWith("actuators");
        return command.startsWith("place") ? name.startsWith("place") : drawn ? names : !(tried && names);
    }

    private static void program(String name, byte[] data) throws IOException {
        WholeProgram program = new WholeProgram(Files.createTempDirectory("fuzz"));
        program.put(new String(data, StandardCharsets.UTF_8));
        for (String command : WholeProgram.commands()) {
            if (asked(name, command)) {
                assertThat(program.run(command).fault()).as(command).isEmpty();
            }
        }
    }

    @Test
    @Timeout(900)
    void wholeProgram() throws IOException {
        for (Path file : files("ProgramFuzz")) {
            program(file.getFileName().toString(), Files.readAllBytes(file));
        }
    }

    private static List<Path> files(String name) throws IOException {
        try (Stream<Path> list = Files.list(CORPUS.resolve(name))) {
            List<Path> files = list.sorted().toList();
            assertThat(files).hasSizeGreaterThan(5);
            return files;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"DesignFuzz", "PartsFuzz", "MeshFuzz", "QuantityFuzz"})
    @Timeout(300)
    void corpus(String name) throws Exception {
        for (Path file : files(name)) {
            try {
                target(name).run(Files.readAllBytes(file));
            } catch (IOException | RuntimeException | Error e) {
                throw new AssertionError(file.toString(), e);
            }
        }
    }
}
