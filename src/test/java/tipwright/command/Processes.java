// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Starts the program as a process of its own. */
final class Processes {
    private Processes() {}

    /** Whether a command can be found. */
    static boolean has(String command) {
        return Arrays.stream(System.getenv("PATH").split(":")).anyMatch(p -> Files.isExecutable(Path.of(p, command)));
    }

    /** The words that start it. */
    static List<String> program(String... args) {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        line.addAll(List.of(args));
        return line;
    }

    /**
     * Runs it to its end.
     *
     * @param folder that it is started in
     * @param environment variables to set; those that are empty are taken away
     * @param out where its output goes; null: it is read
     */
    static Cli.Outcome run(List<String> line, Path folder, Map<String, String> environment, Path out)
            throws IOException, InterruptedException {
        Path err = Files.createTempFile("err", ".txt");
        ProcessBuilder builder =
                new ProcessBuilder(line).directory(folder.toFile()).redirectError(err.toFile());
        if (out != null) {
            builder.redirectOutput(out.toFile());
        }
        environment.forEach((name, value) -> {
            if (value.isEmpty()) {
                builder.environment().remove(name);
            } else {
                builder.environment().put(name, value);
            }
        });
        Process process = builder.start();
        process.getOutputStream().close();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        int code = process.waitFor();
        String errors = Files.readString(err);
        Files.delete(err);
        return new Cli.Outcome(code, said, errors);
    }
}
