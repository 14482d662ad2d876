// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import tipwright.design.key.Choice;

/** What helps the actuator, or weighs on the linkage beside the tank. Adding a kind: one record and its name in the permits clause. */
@Choice("kind")
public sealed interface Assist permits GasSpring, ExtensionSpring, TorsionSpring, Counterweight {
    /** What it is called. */
    String name();
}
