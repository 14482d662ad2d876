// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.joint.Bearing;
import tipwright.design.key.Copy;

/** Tries listed bearings in both places of a design. */
public final class BearingBox {
    private BearingBox() {}

    /**
     * What came of one bearing.
     *
     * @param result with it in both places; null when it cannot be computed
     * @param own whether it is the one that the design has in both
     */
    public record Tried(String name, Bearing bearing, @Nullable Result result, boolean own) {
        public Verdict verdict() {
            return result == null ? Verdict.FAIL : result.verdict();
        }

        /** The checks that fail. */
        public List<Finding> failing() {
            return result == null
                    ? List.of()
                    : result.findings().stream()
                            .filter(f -> f.verdict() == Verdict.FAIL)
                            .toList();
        }
    }

    /** Tries all: those that pass first, the smaller bore before the larger. */
    public static List<Tried> tried(Design design, Map<String, Bearing> box) {
        List<Tried> all = new ArrayList<>();
        box.forEach((name, bearing) -> {
            boolean own =
                    design.pivot().bearings().stream().allMatch(s -> s.bearing().equals(bearing));
            all.add(new Tried(name, bearing, result(design, bearing), own));
        });
        all.sort(Comparator.comparingInt((Tried t) -> t.failing().size())
                .thenComparing(t -> t.result() == null)
                .thenComparing(Tried::verdict)
                .thenComparingDouble(t -> t.bearing().bore()));
        return all;
    }

    private static @Nullable Result result(Design design, Bearing bearing) {
        List<tipwright.design.joint.Support> supports = design.pivot().bearings().stream()
                .map(s -> Copy.with(s, "bearing", bearing))
                .toList();
        try {
            return Checker.asFilled(design.withPivot(Copy.with(design.pivot(), "bearings", supports)));
        } catch (CannotComputeException e) {
            return null;
        }
    }
}
