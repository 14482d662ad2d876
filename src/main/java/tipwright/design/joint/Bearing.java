// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import tipwright.design.key.Choice;

/** A pivot bearing. Adding a kind: one record and its name in the permits clause. */
@Choice("kind")
public sealed interface Bearing permits BallInsert, PlainBush {
    /** Bore, m. */
    double bore();

    /** Friction coefficient taken when the design gives none. Source: common practice, no source. */
    double usualFriction();

    /** What the trade calls it: 'ball bearing'. */
    String noun();
}
