// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import java.util.List;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * Which load cases to leave out, and the design's own.
 *
 * @param skip names of built-in cases
 * @param add fixed loads in the tank
 */
public record Cases(
        @Note(
                        "Built-in load cases to leave out: held, draining, heaped, caked, empty, heel, settled, slid, stuck-plus-z, stuck-minus-z, frozen, brim, bridged")
                @Preset
                List<String> skip,
        @Note("Load cases of your own: a fixed mass at a fixed place in the tank") @Counted(atMost = 20) @Preset
                List<Own> add) {
    /** Names of the built-in cases that every check looks at: at least one of them, or one of the design's own, is left. */
    public static final List<String> USUAL =
            List.of("held", "draining", "heaped", "caked", "empty", "heel", "settled", "slid");

    /** Names of all built-in cases. */
    public static final List<String> BUILT_IN = CaseName.keys();

    /**
     * A load of the design's own: fixed mass and centre, as if bolted to the tank.
     *
     * @param mass kg
     * @param centre m, stowed
     */
    public record Own(
            @Note("What the load is called") String name,
            @Note("What it weighs") @Measured(value = Kind.MASS, atLeast = "0 kg") double mass,
            @Note("Its centre of mass, tank stowed") @Measured(Kind.LENGTH) Vec3 centre) {}
}
