// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import tipwright.design.joint.Seat;
import tipwright.strength.PadPlate;
import tipwright.strength.PatchInfluence;
import tipwright.strength.ShellPatch;

/**
 * What unit loads on a round wall do, by all that it depends on: worked out once for all loads, fills and checks of a machine. It
 * may be used by several threads.
 */
public final class WallInfluences {
    private static final int MOST = 64;
    private final Map<Key, PatchInfluence> known = new ConcurrentHashMap<>();

    private record Key(ShellPatch patch, Seat.@Nullable Pad pad) {}

    PatchInfluence of(ShellPatch patch, Seat.@Nullable Pad pad) {
        if (known.size() > MOST) {
            known.clear();
        }
        return known.computeIfAbsent(
                new Key(patch, pad),
                k -> pad == null
                        ? patch.influence()
                        : new PadPlate(pad.thickness(), pad.along() / 2, pad.around() / 2).influence(patch));
    }
}
