// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Stop;
import tipwright.check.Result;
import tipwright.check.mistake.Mistakes;
import tipwright.design.Design;
import tipwright.design.file.Assumption;
import tipwright.doubt.Sureness;
import tipwright.quantity.Text;
import tipwright.remedy.SizeAnswer;
import tipwright.remedy.TriedFixes;

/**
 * What there is to report on: a checked design, and what its file left open.
 *
 * @param result of the checks
 * @param assumptions defaults that were taken for keys left out
 * @param remarks on what the file says, in plain words
 * @param fixes changes that were tried and fix what fails
 * @param sure how sure the verdict is; null when no value may be off, or when it was not asked for
 * @param sizes answers to the question marks of the file
 */
public record Checked(
        Result result,
        List<Assumption> assumptions,
        List<String> remarks,
        TriedFixes fixes,
        @Nullable Sureness sure,
        List<SizeAnswer> sizes) {
    /** Without asking how sure it is, and what would fix it. */
    public Checked(Result result, List<Assumption> assumptions, List<String> remarks) {
        this(result, assumptions, remarks, TriedFixes.NONE, null, List.of());
    }

    /** Copies the lists. */
    public Checked {
        assumptions = List.copyOf(assumptions);
        remarks = List.copyOf(remarks);
        sizes = List.copyOf(sizes);
    }

    /** The assumptions, with the friction that follows from the kind of bearing where the file gives none. */
    public List<Assumption> taken() {
        Design design = result.analysis().design();
        List<Assumption> all = new ArrayList<>(assumptions);
        if (design.friction().pivot() == null) {
            String values = design.pivot().bearings().stream()
                    .map(s -> s.bearing().usualFriction() + " (" + s.bearing().noun() + ")")
                    .distinct()
                    .collect(Collectors.joining(" and "));
            all.add(new Assumption("friction.pivot", values, ""));
        }
        return all;
    }

    /** What is probably a mistake in the file, each with its figures. */
    public List<Text> mistakes() {
        return Mistakes.of(result.analysis());
    }

    /** Where the linkage stops short, the warnings of the analysis and the remarks on the file; each once. */
    public List<String> warnings() {
        List<String> all = new ArrayList<>();
        Stop stop = result.analysis().stop();
        if (stop != null) {
            all.add(stop.why());
        }
        all.addAll(result.analysis().warnings());
        all.addAll(remarks);
        return all.stream().distinct().toList();
    }
}
