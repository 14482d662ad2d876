// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tipwright.report.WholeFile;

/** Writes a design to start from. */
@Command(
        name = "new",
        description = "Writes a design to start from: every line says what it is; it passes as it stands.",
        footer = {"  tipwright new my-tank.yaml", "  tipwright new                  prints it"})
final class NewCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "Where to; left out: it is printed.")
    private @Nullable Path file;

    @Option(names = "--force", description = "Write over a file that is there already.")
    private boolean force;

    @Override
    public Integer call() throws FailedException {
        byte[] starter = starter();
        Path to = file;
        if (to == null) {
            spec.commandLine().getOut().print(new String(starter, StandardCharsets.UTF_8));
            return Exit.FINE;
        }
        if (!force && Files.exists(to, LinkOption.NOFOLLOW_LINKS)) {
            spec.commandLine()
                    .getErr()
                    .println(
                            "tipwright: " + to + " is there already; choose another name, or --force to write over it");
            return Exit.CANNOT_COMPUTE;
        }
        try {
            WholeFile.write(to, out -> out.write(starter));
        } catch (IOException e) {
            throw new FailedException(String.valueOf(e.getMessage()), e);
        }
        spec.commandLine().getOut().println("Written: " + to + ". Next: tipwright check " + to);
        return Exit.FINE;
    }

    private static byte[] starter() {
        try (InputStream in = NewCommand.class.getResourceAsStream("starter.yaml")) {
            if (in == null) {
                throw new IllegalStateException("starter.yaml is missing from the program");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException("starter.yaml", e);
        }
    }
}
