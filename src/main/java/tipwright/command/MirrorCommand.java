// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Mirror;
import tipwright.report.Inputs;

/** Turns a design that was drawn from the other side. */
@Command(
        name = "mirror",
        description = {
            "Turns a design that was drawn the other way round, with the dump side to the left.",
            "The sign of every x changes; comments, order and units stay. The file itself is not changed."
        },
        footer = {
            "  tipwright mirror my-tank.yaml --out turned.yaml",
            "  tipwright mirror my-tank.yaml                     prints it"
        })
final class MirrorCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "DESIGN", description = "The design file to turn.")
    private Path file = Path.of("");

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "File to create. Without it the text goes to the screen.")
    private @Nullable Path out;

    @Option(
            names = "--force",
            description = "Write over a file that is there already, but never over the design itself.")
    private boolean force;

    @Override
    public Integer call() throws FailedException {
        PrintWriter err = spec.commandLine().getErr();
        String turned;
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > DesignFile.LARGEST) {
                err.println("tipwright: " + file + " is no file, or too large for a design");
                return Exit.NOT_UNDERSTOOD;
            }
            turned = Mirror.turned(file.toString(), Files.readString(file));
        } catch (Mirror.CannotTurnException e) {
            err.println("tipwright: " + e.getMessage());
            return Exit.NOT_UNDERSTOOD;
        } catch (IOException e) {
            err.println("tipwright: " + file + " cannot be read as text");
            return Exit.NOT_UNDERSTOOD;
        }
        Path to = out;
        if (to == null) {
            spec.commandLine().getOut().print(turned);
            return Exit.FINE;
        }
        Outputs outputs = new Outputs(new Inputs(List.of(file)));
        outputs.spare(to);
        if (!force && Files.exists(to, LinkOption.NOFOLLOW_LINKS)) {
            err.println("tipwright: " + to + " already exists. Choose another name, or add --force to overwrite it.");
            return Exit.CANNOT_COMPUTE;
        }
        outputs.write(to, stream -> stream.write(turned.getBytes(StandardCharsets.UTF_8)));
        spec.commandLine().getOut().println("Written: " + to + ". Next: tipwright check " + to);
        return Exit.FINE;
    }
}
