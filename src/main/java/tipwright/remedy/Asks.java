// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import tipwright.check.Checks;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;

/** What findings have to do with. */
final class Asks {
    private Asks() {}

    /** Whether the actuator, where its pins are, or how it loads what bears it has a say in a finding. */
    static boolean ofDrive(Finding f) {
        return !has(f, Trait.SLOW)
                && !f.id().equals("what-if/wheel-sinks")
                && (has(f, Trait.BOUNDS_MOUNTS) || has(f, Trait.BEARS_DRIVE) || ofTime(f) || f.isOf("what-if"));
    }

    /** Whether less in the tank may help a finding. */
    static boolean ofFill(Finding f) {
        return has(f, Trait.DEPENDS_ON_FILL)
                && !has(f, Trait.SLOW)
                && !f.isOf("stroke")
                && !f.id().equals("what-if/wheel-sinks");
    }

    private static boolean ofTime(Finding f) {
        return f.isOf("stall") || f.isOf("duty") || f.isOf("cycle-time") || f.id().startsWith("electrical/current");
    }

    private static boolean has(Finding f, Trait trait) {
        return Checks.of(f).map(Check::traits).filter(t -> t.contains(trait)).isPresent();
    }
}
