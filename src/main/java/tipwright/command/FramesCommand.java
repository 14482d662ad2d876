// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.viewer.start.DrawingPrograms;
import tipwright.viewer.start.FrameOrder;

/** Draws the dump without a window. */
@Command(
        name = "frames",
        description = {
            "Draws the dump as pictures in three dimensions, without a window. Without a display it starts a virtual one of"
                    + " its own (Xvfb)."
        },
        footer = {
            "  tipwright frames my-tank.yaml --out pictures",
            "  tipwright frames my-tank.yaml --out pictures --at 0deg,20deg,45deg --size 1920x1080",
            "  tipwright frames my-tank.yaml --out pictures --gif --case held"
        })
final class FramesCommand implements Callable<Integer> {
    private static final Pattern SIZE = Pattern.compile("(\\d{2,5})x(\\d{2,5})");
    private static final int SMALLEST = 160;
    private static final int LARGEST = 4096;

    @ParentCommand
    private Tipwright parent;

    @Spec
    private CommandSpec spec;

    @Mixin
    private Asked asked = new Asked();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "DIR",
            description = "Folder for the pictures; made if missing.")
    private @Nullable Path out;

    @Option(
            names = "--at",
            split = ",",
            paramLabel = "TILT",
            description = "Tilts to draw, such as 0deg,30deg. Default: five, evenly spaced.")
    private List<String> at = List.of();

    @Option(
            names = "--size",
            paramLabel = "WIDTHxHEIGHT",
            description = "Of each picture, in pixels; ${DEFAULT-VALUE}.")
    private String size = "1280x720";

    @Option(names = "--case", paramLabel = "NAME", description = "Load case to show; ${DEFAULT-VALUE}.")
    private String loadCase = "draining";

    /** Places to look from. */
    enum From {
        CORNER,
        SIDE,
        END,
        ABOVE
    }

    @Option(names = "--from", paramLabel = "PLACE", description = "Where to look from: ${COMPLETION-CANDIDATES}.")
    private From from = From.CORNER;

    @Option(names = "--gif", description = "Also an animated picture, dump.gif.")
    private boolean gif;

    @Option(names = "--light", description = "Light background, for printing.")
    private boolean light;

    @Mixin
    private Shown shown = new Shown();

    @Override
    public Integer call() throws FailedException {
        Matcher wanted = SIZE.matcher(size);
        if (!wanted.matches() || !fits(wanted.group(1)) || !fits(wanted.group(2))) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--size: '" + size + "' is no size of a picture; give WIDTHxHEIGHT, each " + SMALLEST + " to "
                            + LARGEST + ", such as '1280x720'");
        }
        Path folder = Objects.requireNonNull(out, "--out is required");
        DrawnDesign drawn = DrawnDesign.find(asked.design(), spec.commandLine());
        if (drawn.name() == null) {
            return Exit.NOT_UNDERSTOOD;
        }
        String named = drawn.loadCase(loadCase, spec.commandLine());
        FrameOrder order = new FrameOrder(
                drawn.name(),
                folder,
                tilts(),
                named,
                Integer.parseInt(wanted.group(1)),
                Integer.parseInt(wanted.group(2)),
                gif,
                light,
                shown.units(drawn.reading()),
                from.name());
        try {
            return DrawingPrograms.stills(order, parent.terminal().environment());
        } catch (IOException e) {
            throw new FailedException(String.valueOf(e.getMessage()), e);
        }
    }

    private static boolean fits(String number) {
        int n = Integer.parseInt(number);
        return n >= SMALLEST && n <= LARGEST;
    }

    private List<Double> tilts() {
        List<Double> all = new ArrayList<>();
        for (String text : at) {
            try {
                all.add(Quantities.parse(text, Kind.ANGLE));
            } catch (QuantityException e) {
                throw new ParameterException(spec.commandLine(), "--at: " + e.getMessage());
            }
        }
        return all;
    }
}
