// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import tipwright.document.Contrast;
import tipwright.document.Dossier;
import tipwright.document.PageSetting;
import tipwright.document.Stills;
import tipwright.quantity.UnitSystem;
import tipwright.report.Checked;
import tipwright.report.Comparison;
import tipwright.report.Style;

/** Puts designs side by side. */
@Command(
        name = "compare",
        description = {
            "Puts two to six designs side by side: a table on the screen; with --out a document with plots laid over each"
                    + " other."
        },
        footer = {
            "  tipwright compare long-rod.yaml short-rod.yaml",
            "  tipwright compare long-rod.yaml short-rod.yaml --out both.pdf",
            "  tipwright compare silt-trailer too-small --units us"
        })
final class CompareCommand implements Callable<Integer> {
    @ParentCommand
    private Tipwright parent;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "2..6",
            paramLabel = "DESIGN",
            description = "Design files, or names of designs that come with the program.")
    private List<String> designs = List.of();

    @Option(names = "--out", paramLabel = "FILE", description = "Document to write; its name ends in .pdf or .html.")
    private @Nullable Path file;

    @Mixin
    private Shown shown = new Shown();

    @Option(names = "--paper", paramLabel = "SIZE", description = "Sheet: a4 or letter. Default: by the units.")
    private PageSetting.@Nullable Size size;

    @Override
    public Integer call() throws FailedException {
        Path to = file;
        List<DesignSource> sources = designs.stream()
                .map(name -> DesignSource.find(name, spec.commandLine().getErr()))
                .toList();
        UnitSystem units = shown.units(sources.get(0).reading());
        Outputs outputs = Outputs.sparing(sources.toArray(new DesignSource[0]));
        PageSetting paper = to == null ? null : Papers.of(to, size, units, spec.commandLine());
        if (to != null) {
            outputs.spare(to);
        }
        Filing filing = new Filing(spec.commandLine(), parent.terminal().environment());
        List<Dossier> dossiers = new ArrayList<>();
        for (DesignSource source : sources) {
            Filing.Filed filed = filing.read(source);
            Checked checked = filed.checked();
            if (checked == null) {
                return filed.code();
            }
            dossiers.add(new Dossier(checked, filed.origin(), Stills.none("")));
        }
        Style style = new Style(parent.terminal().colour(), units);
        List<Checked> all = dossiers.stream().map(Dossier::checked).toList();
        spec.commandLine().getOut().print(Comparison.text(all, style));
        if (to != null && paper != null) {
            outputs.write(to, out -> Contrast.write(dossiers, paper, out));
            spec.commandLine().getOut().println("written to " + to);
        }
        return Exit.FINE;
    }
}
