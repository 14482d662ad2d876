// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.IOException;
import java.io.InputStream;
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
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;
import tipwright.design.file.ShippedDesigns;
import tipwright.design.tank.MeshInterior;
import tipwright.quantity.Spelling;
import tipwright.report.Inputs;

/** Writes a design to start from. */
@Command(
        name = "new",
        description = "Creates a design file to start from. It passes every check it can; comments explain each part.",
        footer = {
            "  tipwright new my-tank.yaml",
            "  tipwright new my-tank.yaml --ask                 asks question by question, and checks it",
            "  tipwright new my-tank.yaml --like crank-cart     from a design that comes with the program",
            "  tipwright new                                    prints it"
        })
final class NewCommand implements Callable<Integer> {
    @ParentCommand
    private Tipwright parent;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "File to create. Without it the text goes to the screen.")
    private @Nullable Path file;

    @Option(
            names = "--like",
            paramLabel = "NAME",
            description =
                    "Start from a design that comes with the program, such as 'crank-cart'; its mesh, if it has one, is"
                            + " written beside it.")
    private @Nullable String like;

    @Option(
            names = "--ask",
            description =
                    "Ask for the machine question by question; 'back' goes back, 'quit' keeps the answers for another day.")
    private boolean ask;

    @Option(names = "--force", description = "Write over a file that is there already.")
    private boolean force;

    @Override
    public Integer call() throws FailedException {
        if (ask) {
            return asked();
        }
        byte[] starter = like == null ? starter() : shipped(like);
        Path to = file;
        if (to == null) {
            spec.commandLine().getOut().print(new String(starter, StandardCharsets.UTF_8));
            return Exit.FINE;
        }
        String mesh = mesh();
        Path beside = mesh == null ? null : to.resolveSibling(mesh);
        for (Path wanted : beside == null ? List.of(to) : List.of(to, beside)) {
            if (isTaken(wanted)) {
                return Exit.CANNOT_COMPUTE;
            }
        }
        Outputs outputs = new Outputs(new Inputs(List.of(to)));
        if (beside != null) {
            // The design needs its mesh: neither may take the place of the other.
            outputs.spare(beside);
        }
        new Outputs(new Inputs(List.of())).write(to, out -> out.write(starter));
        if (mesh != null && beside != null) {
            outputs.write(beside, out -> out.write(shippedFile(mesh)));
        }
        spec.commandLine().getOut().println("Written: " + to + ". Next: tipwright check " + to);
        return Exit.FINE;
    }

    private int asked() throws FailedException {
        Path to = file;
        if (to == null || like != null) {
            throw new ParameterException(
                    spec.commandLine(),
                    to == null
                            ? "--ask needs the name of a file, such as my-tank.yaml"
                            : "--ask and --like do not go together");
        }
        PrintWriter out = spec.commandLine().getOut();
        return isTaken(to)
                ? Exit.CANNOT_COMPUTE
                : new Interviewer(out, spec.commandLine().getErr(), parent.terminal(), to).run();
    }

    private boolean isTaken(Path wanted) {
        boolean taken = !force && Files.exists(wanted, LinkOption.NOFOLLOW_LINKS);
        if (taken) {
            spec.commandLine()
                    .getErr()
                    .println("tipwright: " + wanted
                            + " already exists. Choose another name, or add --force to overwrite it.");
        }
        return taken;
    }

    private byte[] shipped(String name) {
        if (!name.matches("[a-z0-9-]+") || !ShippedDesigns.has(name)) {
            String near = Spelling.nearest(name, ShippedDesigns.names());
            throw new ParameterException(
                    spec.commandLine(),
                    "--like: no design '" + name + "' comes with the program; "
                            + (near == null
                                    ? "there are " + String.join(", ", ShippedDesigns.names())
                                    : "did you mean '" + near + "'?"));
        }
        return shippedFile(name + ".yaml");
    }

    private static byte[] shippedFile(String name) {
        try {
            return NamedFiles.shipped().read(name, DesignFile.LARGEST);
        } catch (IOException e) {
            throw new IllegalStateException(name + " is missing from the program", e);
        }
    }

    /** The mesh that the design wanted needs beside it; null when it needs none. */
    private @Nullable String mesh() {
        return like != null
                        && DesignFile.shipped(like + ".yaml") instanceof Reading.Good good
                        && good.design().tank().interior() instanceof MeshInterior interior
                ? interior.file()
                : null;
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
