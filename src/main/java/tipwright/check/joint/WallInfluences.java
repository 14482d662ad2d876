// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import tipwright.design.joint.Seat;
import tipwright.strength.CylinderShell;
import tipwright.strength.PadPlate;
import tipwright.strength.PatchInfluence;
import tipwright.strength.ShellPatch;

/**
 * What unit loads on a round wall do, by all that it depends on: worked out once for all loads, fills and checks of a machine. It
 * may be used by several threads.
 */
public final class WallInfluences {
    private static final int MOST = 64;
    private final Map<List<Double>, PatchInfluence> known = new ConcurrentHashMap<>();

    PatchInfluence of(ShellPatch patch, Seat.@Nullable Pad pad) {
        if (known.size() > MOST) {
            known.clear();
        }
        return known.computeIfAbsent(
                key(patch, pad),
                k -> pad == null
                        ? patch.influence()
                        : new PadPlate(pad.thickness(), pad.along() / 2, pad.around() / 2).influence(patch));
    }

    /** All that a wall and a pad are told by: a record's own hash would first be spun, which takes longer than a check. */
    static List<Double> key(ShellPatch patch, Seat.@Nullable Pad pad) {
        CylinderShell shell = patch.shell();
        List<Double> key = new ArrayList<>(List.of(
                shell.radius(),
                shell.wall(),
                shell.length(),
                shell.modulus(),
                shell.poisson(),
                patch.place(),
                patch.halfLength(),
                patch.halfWidth()));
        if (pad != null) {
            key.addAll(List.of(pad.thickness(), pad.along(), pad.around()));
        }
        return key;
    }
}
