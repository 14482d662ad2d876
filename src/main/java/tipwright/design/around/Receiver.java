// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * The mouth that the load has to fall into.
 *
 * @param near edge next to the machine, m
 * @param far opposite edge, m
 */
public record Receiver(
        @Note("pit, kerb, bin") @Preset("pit") String name,
        @Note("Edge of its mouth next to the machine") @Measured(Kind.LENGTH) Vec2 near,
        @Note("Far edge of its mouth") @Measured(Kind.LENGTH) Vec2 far) {}
