// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.geometry.Vec2;

/**
 * Mounts that were checked again by the full check.
 *
 * @param aims what it is the best for; empty: one of the other good compromises
 * @param design with the mounts there
 * @param findings of every check
 * @param governing the worst of those that depend on the mounts; null: the time wanted
 * @param failed checks that fail, whether they depend on the mounts or not; none of an answer
 */
public record Answer(
        List<Aim> aims,
        Candidate candidate,
        Design design,
        List<Finding> findings,
        @Nullable Finding governing,
        List<Finding> failed) {
    /** Copies the lists. */
    public Answer {
        aims = List.copyOf(aims);
        findings = List.copyOf(findings);
        failed = List.copyOf(failed);
    }

    /** Where a place of the mechanism is, m, by its name in the design file, whether it could be moved or not. */
    public Vec2 place(String name) {
        Vec2 at = design.drive().places(design.pivot().at()).get(name);
        if (at == null) {
            throw new IllegalArgumentException("no place of this name: " + name);
        }
        return at;
    }
}
