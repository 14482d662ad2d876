// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import tipwright.document.Dossier;
import tipwright.document.PageSetting;
import tipwright.document.Report;
import tipwright.document.Stills;
import tipwright.quantity.UnitSystem;
import tipwright.report.VerdictText;

/** Writes a report for paper or the browser. */
@Command(
        name = "report",
        description = {
            "Writes one document about a design, for the shop, the customer and the engineer, by the ending of the file's name: a PDF to"
                    + " print, or a page for the phone on which the machine tilts under your finger; it needs no network."
        },
        footer = {
            "  tipwright report my-tank.yaml --out my-tank.pdf",
            "  tipwright report my-tank.yaml --out my-tank.pdf --units us --paper letter",
            "  tipwright report my-tank.yaml --out my-tank.pdf --full",
            "  tipwright report my-tank.yaml --out my-tank.html --no-stills"
        })
final class ReportCommand implements Callable<Integer> {
    @ParentCommand
    private Tipwright parent;

    @Spec
    private CommandSpec spec;

    @Mixin
    private Asked asked = new Asked();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE",
            description = "File to write; its name ends in .pdf or .html.")
    private @Nullable Path file;

    @Mixin
    private Shown shown = new Shown();

    @Option(names = "--paper", paramLabel = "SIZE", description = "Sheet: a4 or letter. Default: by the units.")
    private PageSetting.@Nullable Size size;

    @Option(
            names = "--no-stills",
            description = "A PDF without pictures in three dimensions, which is quicker; a page never has them.")
    private boolean noStills;

    @Option(
            names = "--full",
            description =
                    "On paper too: the engineer's part, with every formula, all inputs in both systems, all that was assumed.")
    private boolean full;

    @Override
    public Integer call() throws FailedException {
        Path to = Objects.requireNonNull(file, "--out is required");
        DesignSource source =
                DesignSource.find(asked.design(), spec.commandLine().getErr());
        UnitSystem units = shown.units(source.reading());
        PageSetting paper = Papers.of(to, size, units, spec.commandLine()).withFull(full);
        Outputs outputs = Outputs.sparing(source);
        outputs.spare(to);
        Filing filing = new Filing(spec.commandLine(), parent.terminal().environment());
        CompletableFuture<Stills> shots = noStills || paper.medium() == PageSetting.Medium.HTML
                ? CompletableFuture.completedFuture(Stills.none("No pictures in this copy."))
                : filing.stills(source, units);
        Filing.Filed filed = filing.read(source);
        Stills stills = shots.join();
        if (filed.checked() == null) {
            return filed.code();
        }
        Dossier dossier = new Dossier(filed.checked(), filed.origin(), stills);
        outputs.write(to, out -> Report.write(dossier, paper, out));
        spec.commandLine().getOut().println(VerdictText.word(filed.checked().result()) + ": written to " + to);
        return Exit.FINE;
    }
}
