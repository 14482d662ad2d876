// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The best so far for each actuator and aim. Mutable: owned by one caller. */
final class Best {
    private final @Nullable Spot[][] spots;
    private long fitting;

    Best(int actuators) {
        spots = new @Nullable Spot[actuators][Aim.values().length];
    }

    void count() {
        fitting++;
    }

    /** How many candidates passed the quick look. */
    long fitting() {
        return fitting;
    }

    /** Whether a candidate with these lower bounds could be better at anything. */
    boolean mayImprove(int actuator, double utilisation, double force, double time) {
        Spot u = spots[actuator][Aim.UTILISATION.index()];
        Spot f = spots[actuator][Aim.FORCE.index()];
        Spot t = spots[actuator][Aim.TIME.index()];
        return u == null
                || f == null
                || t == null
                || utilisation < u.utilisation()
                || force < f.force() * (1 - 1e-6)
                || time < t.time();
    }

    void offer(int actuator, Spot spot) {
        for (Aim aim : Aim.values()) {
            Spot old = spots[actuator][aim.index()];
            if (old == null || spot.betterThan(old, aim)) {
                spots[actuator][aim.index()] = spot;
            }
        }
    }

    /** Takes over what another found; ties stay with the first, so the order of merging decides, not that of finding. */
    void merge(Best other) {
        fitting += other.fitting;
        for (int a = 0; a < spots.length; a++) {
            for (Spot spot : other.spots[a]) {
                if (spot != null) {
                    offer(a, spot);
                }
            }
        }
    }

    @Nullable
    Spot of(int actuator, Aim aim) {
        return spots[actuator][aim.index()];
    }

    /** The best over all actuators; null when nothing fits. */
    @Nullable
    Spot of(Aim aim) {
        Spot most = null;
        for (@Nullable Spot[] row : spots) {
            Spot spot = row[aim.index()];
            if (spot != null && (most == null || spot.betterThan(most, aim))) {
                most = spot;
            }
        }
        return most;
    }

    /** All of them, each once. */
    List<Spot> all() {
        List<Spot> all = new ArrayList<>();
        for (@Nullable Spot[] row : spots) {
            for (Spot spot : row) {
                if (spot != null && !all.contains(spot)) {
                    all.add(spot);
                }
            }
        }
        return all;
    }
}
