// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;

/** What must hold between the values of a design; each rule looks at the values that were understood. */
final class Rules {
    private static final List<Consumer<Facts>> ALL = List.of(
            SlurryRules::check,
            TankRules::check,
            OpeningRules::check,
            PivotRules::check,
            DriveRules::check,
            FreeRules::check,
            MechanismRules::check,
            AssistRules::check,
            ActuatorRules::check,
            CaseRules::check,
            MountRules::check,
            AroundRules::check,
            LinkRules::check,
            FarRules::check);

    private Rules() {}

    /** Makes the rules ready, so that another thread that reads soon finds them so. */
    static void prepare() {
        Objects.requireNonNull(ALL);
    }

    /** Applies every rule. */
    static void check(Bound bound, SourceMap sources, Problems problems, Problems warnings) {
        Facts facts = new Facts(bound, sources, problems, warnings, TankRules.solid(bound, sources, problems));
        ALL.forEach(rule -> rule.accept(facts));
    }
}
