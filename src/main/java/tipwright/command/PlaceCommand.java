// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.file.Problem;
import tipwright.design.file.Reading;
import tipwright.placement.Placement;
import tipwright.placement.Placer;
import tipwright.placement.Progress;
import tipwright.quantity.UnitSystem;
import tipwright.report.JsonMounts;
import tipwright.report.PlacementText;
import tipwright.report.Prose;
import tipwright.report.Style;

/** Searches for the best mounts. */
@Command(
        name = "place",
        description = {
            "Searches for the best places of the mounts before anything is welded.",
            "The design says in 'mounts:' where each pin may go, which actuators there are, and what is wanted."
        },
        footer = {
            "  tipwright place                          the demo",
            "  tipwright place my-tank.yaml",
            "  tipwright place crank-cart               a mechanism, each pin with a zone by its name",
            "  tipwright place my-tank.yaml --candidates 50000000     a finer grid; Ctrl-C keeps the best so far"
        })
final class PlaceCommand implements Callable<Integer> {
    private static final int PATIENCE = 20;

    @ParentCommand
    private Tipwright parent;

    @Spec
    private CommandSpec spec;

    @Mixin
    private Asked asked = new Asked();

    @Option(
            names = "--candidates",
            paramLabel = "NUMBER",
            description = "How many pin positions to try, roughly. Default: 2000000 for a straight drive,"
                    + " 20000 for other linkages.")
    private @Nullable Long candidates;

    @Option(names = "--seed", paramLabel = "NUMBER", description = "Seed of the refinement: ${DEFAULT-VALUE}.")
    private long seed = 1;

    @Option(
            names = "--threads",
            paramLabel = "NUMBER",
            description = "Number of processor cores to use. Default: all. The result does not depend on it.")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(
            names = "--map",
            paramLabel = "FILE",
            description =
                    "Save a map of the frame pin's zone (.svg or .png). A straight drive also gets NAME-tank for the tank"
                            + " pin.")
    private @Nullable Path map;

    @Option(names = "--json", description = "Print it as JSON.")
    private boolean json;

    @Mixin
    private Shown shown = new Shown();

    @Override
    public Integer call() throws FailedException {
        PrintWriter err = spec.commandLine().getErr();
        DesignSource source =
                DesignSource.find(asked.design(), spec.commandLine().getErr());
        if (source.reading() instanceof Reading.Bad bad) {
            bad.problems().stream().map(Problem::text).forEach(err::println);
            return Exit.NOT_UNDERSTOOD;
        }
        String wrong = map == null ? null : MapFiles.wrong(map);
        if (wrong != null) {
            err.println(wrong);
            return Exit.NOT_UNDERSTOOD;
        }
        if (threads < 1 || (candidates != null && candidates < 1)) {
            err.println((threads < 1 ? "--threads" : "--candidates") + ": must be 1 or more");
            return Exit.NOT_UNDERSTOOD;
        }
        Design design = ((Reading.Good) source.reading()).design();
        Outputs outputs = Outputs.sparing(source);
        if (map != null) {
            for (Path target : MapFiles.targets(design, map).values()) {
                outputs.spare(target);
            }
        }
        AtomicBoolean stop = new AtomicBoolean();
        CountDownLatch done = new CountDownLatch(1);
        Thread onInterrupt = new Thread(() -> {
            stop.set(true);
            await(done);
        });
        Runtime.getRuntime().addShutdownHook(onInterrupt);
        try {
            return place(design, shown.units(source.reading()), outputs, stop);
        } catch (CannotComputeException e) {
            err.println(source.name() + ": " + e.getMessage());
            return Exit.CANNOT_COMPUTE;
        } finally {
            spec.commandLine().getOut().flush();
            done.countDown();
            if (!stop.get()) {
                Runtime.getRuntime().removeShutdownHook(onInterrupt);
            }
        }
    }

    private int place(Design what, UnitSystem units, Outputs outputs, AtomicBoolean stop)
            throws CannotComputeException, FailedException {
        ProgressLine line =
                new ProgressLine(parent.progress(), parent.terminal().interactive());
        Placement found = new Placer(threads, seed, candidates, stop::get, line::show).place(what, units);
        line.clear();
        Style style = new Style(parent.terminal().colour(), units);
        spec.commandLine().getOut().print(json ? JsonMounts.place(what, found) : PlacementText.of(what, found, style));
        if (map != null) {
            Design best =
                    found.answers().isEmpty() ? what : found.answers().get(0).design();
            MapFiles.write(best, what, map, units, outputs, spec.commandLine().getOut());
        }
        if (found.unknown()) {
            return Exit.CANNOT_COMPUTE;
        }
        boolean fails =
                found.answers().isEmpty() || !found.answers().get(0).failed().isEmpty();
        return fails ? Exit.FAILS : Exit.FINE;
    }

    private static void await(CountDownLatch done) {
        try {
            if (!done.await(PATIENCE, TimeUnit.SECONDS)) {
                Thread.currentThread().interrupt();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** One line that is written over for a person; a line now and then for a file. */
    private static final class ProgressLine {
        private static final long OFTEN = 200_000_000L;
        private static final long SELDOM = 5_000_000_000L;

        private final PrintWriter err;
        private final boolean person;
        private long last = System.nanoTime();
        private int width;

        ProgressLine(PrintWriter err, boolean person) {
            this.err = err;
            this.person = person;
        }

        void show(Progress progress) {
            long now = System.nanoTime();
            if (now - last < (person ? OFTEN : SELDOM)) {
                return;
            }
            last = now;
            String text = progress.words() + "; "
                    + (progress.best() == null
                            ? "nothing fits yet"
                            : "best so far: "
                                    + Math.round(100 * progress.best().utilisation()) + " % used with "
                                    + Prose.safe(progress.best().actuator().name()));
            if (person) {
                err.print("\r" + text + " ".repeat(Math.max(0, width - text.length())));
                err.flush();
                width = text.length();
            } else {
                err.println(text);
            }
        }

        void clear() {
            if (width > 0) {
                err.print("\r" + " ".repeat(width) + "\r");
                err.flush();
            }
        }
    }
}
