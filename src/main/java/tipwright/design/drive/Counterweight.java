// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * A weight on a body of the linkage: a counterweight, or the weight of a link.
 *
 * @param body tank, or a body of the mechanism by its name
 * @param mass kg
 * @param centre m, stowed
 */
@Choice("counterweight")
public record Counterweight(
        @Note("What it is called") String name,
        @Note("tank, or the name of a link") String body,
        @Note("What it weighs") @Measured(value = Kind.MASS, above = "0 kg") double mass,
        @Note("Its centre of mass, tank stowed") @Measured(Kind.LENGTH) Vec3 centre)
        implements Assist {}
