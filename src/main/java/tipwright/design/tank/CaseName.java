// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The built-in load cases: what the file and the JSON call them, and what a person reads. */
public enum CaseName {
    HELD(
            "full, outlet shut",
            "All of the slurry stays in; its surface stays level.",
            "full, load still in it",
            "All of the load stays in, as if nothing ran over the lip; its surface stays level."),
    DRAINING(
            "draining, outlet open",
            "The slurry leaves as soon as it can: it drains while the tank tilts.",
            "pouring over the lip",
            "The slurry runs over the lip as soon as it can, while the tank tilts."),
    HEAPED("heaped grit", "The water is gone; the grit lies at its angle of repose and slides out as the tank tilts."),
    CAKED("stuck cake", "The water is gone; the grit sticks where it settled, as one lump, until it lets go."),
    EMPTY("empty", "The tank alone."),
    HEEL("left in the tank", "The tank with what is still in it at full tilt, on the way back down."),
    SETTLED(
            "settled, water on top",
            "All of it is still in the tank; the grit is packed where it settled, the free water above it is level."),
    SLID(
            "grit slid to the outlet",
            "All of it is still in the tank; the grit has run against the dump end, with free water above it.",
            "grit slid to the lip",
            "All of it is still in the tank; the grit has run against the dump end, with free water above it."),
    STUCK_PLUS_Z("half the cake stuck, +z side", "Half of the grit stays stuck along the +z side; the rest is gone."),
    STUCK_MINUS_Z("half the cake stuck, -z side", "Half of the grit stays stuck along the -z side; the rest is gone."),
    FROZEN("frozen solid", "All of the slurry is one rigid lump, as it stood when the tank was stowed."),
    BRIM("full of rainwater", "Water fills the tank up to its rim or vent, and nothing leaves."),
    BRIDGED(
            "outlet blocks on the way",
            "The outlet blocks while the tank drains, at the worst moment up to each tilt.",
            "load hangs up on the way",
            "Part of the load hangs up in the tank while the rest pours out, at the worst moment up to each tilt.");

    /** The key of a cake that is still stuck at full tilt, which is no case of the design file. */
    public static final String STUCK = "caked and stuck";

    /** What a person reads for {@link #STUCK}. */
    public static final String NEVER_LETS_GO = "cake that never lets go";

    /** What it is, in a sentence. */
    public static final String ABOUT_NEVER = "The grit stays stuck up to full tilt.";

    private static final List<CaseName> ALL = List.of(values());

    private final String key;
    private final String shown;
    private final String about;
    private final String poured;
    private final String aboutPoured;

    CaseName(String shown, String about) {
        this(shown, about, shown, about);
    }

    CaseName(String shown, String about, String poured, String aboutPoured) {
        this.key = name().toLowerCase(Locale.ROOT).replace('_', '-');
        this.shown = shown;
        this.about = about;
        this.poured = poured;
        this.aboutPoured = aboutPoured;
    }

    /** As in the design file and in the JSON. */
    public String key() {
        return key;
    }

    /** Whether it is this one that a name is of, with the condition after it or without. */
    public boolean is(String name) {
        return name.equals(key()) || name.startsWith(key() + ", ");
    }

    /** As a person reads it. */
    public String shown() {
        return shown;
    }

    /** As a person reads it for a tank that has no outlet to shut, only a lip. */
    public String poured() {
        return poured;
    }

    /** What it is then, in a sentence. */
    public String aboutPoured() {
        return aboutPoured;
    }

    /** What it is, in a sentence or two. */
    public String about() {
        return about;
    }

    /** Whether the outlet stays shut all the while. */
    public boolean outletShut() {
        return switch (this) {
            case HELD, SETTLED, SLID, BRIM -> true;
            default -> false;
        };
    }

    /** All names of the design file. */
    public static List<String> keys() {
        return ALL.stream().map(CaseName::key).toList();
    }

    /** The case of a name of the design file; empty: one of the design's own. */
    public static Optional<CaseName> of(String key) {
        for (CaseName name : ALL) {
            if (name.key.equals(key)) {
                return Optional.of(name);
            }
        }
        return Optional.empty();
    }

    /** What a person reads for a name, and for the condition after it; the design's own cases keep theirs. */
    public static String shown(String key, Tank tank) {
        int end = key.indexOf(", ");
        if (end > 0) {
            return shown(key.substring(0, end), tank) + key.substring(end);
        }
        return key.equals(STUCK)
                ? NEVER_LETS_GO
                : of(key).map(c -> tank.pours() ? c.poured : c.shown).orElse(key);
    }

    /** What the load of a name is for this tank, in a sentence or two. */
    public static String about(String key, Tank tank) {
        int end = key.indexOf(", ");
        String name = end > 0 ? key.substring(0, end) : key;
        return name.equals(STUCK)
                ? ABOUT_NEVER
                : of(name).map(c -> tank.pours() ? c.aboutPoured : c.about).orElse("A fixed load of the design's own.");
    }
}
