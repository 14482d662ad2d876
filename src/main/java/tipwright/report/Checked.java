// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Stop;
import tipwright.check.Result;
import tipwright.design.Design;
import tipwright.design.file.Assumption;
import tipwright.doubt.Sureness;

/**
 * What there is to report on: a checked design, and what its file left open.
 *
 * @param result of the checks
 * @param assumptions defaults that were taken for keys left out
 * @param remarks on what the file says, in plain words
 * @param sure how sure the verdict is; null when no value may be off, or when it was not asked for
 */
public record Checked(Result result, List<Assumption> assumptions, List<String> remarks, @Nullable Sureness sure) {
    /** Without asking how sure it is. */
    public Checked(Result result, List<Assumption> assumptions, List<String> remarks) {
        this(result, assumptions, remarks, null);
    }

    /** Copies the lists. */
    public Checked {
        assumptions = List.copyOf(assumptions);
        remarks = List.copyOf(remarks);
    }

    /** The assumptions, with the friction that follows from the kind of bearing where the file gives none. */
    public List<Assumption> taken() {
        Design design = result.analysis().design();
        List<Assumption> all = new ArrayList<>(assumptions);
        if (design.friction().pivot() == null) {
            String values = design.pivot().bearings().stream()
                    .map(s -> Double.toString(s.bearing().usualFriction()))
                    .distinct()
                    .collect(Collectors.joining(" and "));
            all.add(new Assumption("friction.pivot", values + " (by the kind of bearing)", ""));
        }
        return all;
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
