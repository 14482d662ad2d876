// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where the mounts may go, and what is wanted of them.
 *
 * @param framePin null: the frame pin stays where it is drawn
 * @param tankPin null: the tank pin stays where it is drawn
 * @param pivot null: the pivot stays where it is drawn
 */
public record Mounts(
        @Note("Where the frame pin may go; left out: where it is drawn") @Nullable Zone framePin,
        @Note("Where the tank pin may go, tank stowed; left out: where it is drawn") @Nullable Zone tankPin,
        @Note("Where the pivot may go; left out: where it is drawn") @Nullable Zone pivot,
        @Note("Where no pin may be") @Preset List<KeepOut> keepOuts,
        @Note("Actuators to choose from, by their names in the parts files; left out: the one that is drawn")
                @FromParts("actuators")
                @Preset
                List<ListedActuator> actuators,
        @Note("What is wanted of the answer") @Preset Wants wants) {}
