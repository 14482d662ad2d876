// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/**
 * What was found for all that fails.
 *
 * @param all least change first
 * @param looked whether anything was looked for
 * @param complete whether the search got to its end; false: it was cut short
 */
public record TriedFixes(List<TriedFix> all, boolean looked, boolean complete) {
    /** Nothing was looked for. */
    public static final TriedFixes NONE = new TriedFixes(List.of(), false, true);

    /** Copies the list, least change first. */
    public TriedFixes {
        all = all.stream()
                .sorted((a, b) -> Double.compare(a.change(), b.change()))
                .toList();
    }

    /**
     * Those that fix a finding, one of each kind: first those that fix everything, then the least change; those that leave it close
     * last.
     */
    public List<TriedFix> of(Finding finding) {
        Map<String, TriedFix> byKind = new LinkedHashMap<>();
        all.stream()
                .filter(f -> f.fixes().contains(finding.id()))
                .sorted((a, b) -> Integer.compare(last(a, finding), last(b, finding)))
                .forEach(f -> byKind.putIfAbsent(f.kind(), f));
        return List.copyOf(byKind.values());
    }

    /** 0 for a fix of everything that leaves the finding well clear, up to 3. */
    private static int last(TriedFix fix, Finding finding) {
        return (fix.close().contains(finding.id()) ? 2 : 0) + (fix.everything() ? 0 : 1);
    }

    /** These and others. */
    public TriedFixes plus(TriedFixes others) {
        return new TriedFixes(
                Stream.concat(all.stream(), others.all.stream()).toList(),
                looked || others.looked,
                complete && others.complete);
    }

    /**
     * Those with which no check fails, where one does without them: as in the list for one finding, those that leave something close
     * last, else least change first.
     */
    public List<TriedFix> ofEverything(Result without) {
        return without.verdict() == Verdict.FAIL
                ? all.stream()
                        .filter(TriedFix::everything)
                        .sorted(Comparator.comparing(f -> !f.close().isEmpty()))
                        .toList()
                : List.of();
    }
}
