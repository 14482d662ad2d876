// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;

/**
 * The few best so far for each actuator and aim, apart from each other: should the full check turn one down, the next is at hand.
 * Mutable: owned by one caller.
 */
final class Shortlist {
    private static final int KEPT = 8;
    /** Spots nearer than this to each other are one, m. */
    private static final double APART = 0.03;

    private static final double SAME = 1e-6;

    private final int actuators;
    private final int kept;
    private final double apart;
    /** [actuator * aims + aim], best first. */
    private final List<List<Candidate>> lists = new ArrayList<>();

    private long fitting;

    Shortlist(int actuators) {
        this(actuators, KEPT, APART);
    }

    /**
     * One of another length.
     *
     * @param kept how many of each actuator and aim
     * @param apart spots nearer than this to each other are one, m
     */
    Shortlist(int actuators, int kept, double apart) {
        this.actuators = actuators;
        this.kept = kept;
        this.apart = apart;
        for (int i = 0; i < actuators * Aim.values().length; i++) {
            lists.add(new ArrayList<>());
        }
    }

    /** The same spots, nothing counted. */
    Shortlist copy() {
        Shortlist copy = new Shortlist(actuators, kept, apart);
        for (int i = 0; i < lists.size(); i++) {
            copy.lists.get(i).addAll(lists.get(i));
        }
        return copy;
    }

    int actuators() {
        return actuators;
    }

    void count() {
        fitting++;
    }

    /** How many candidates passed the quick look. */
    long fitting() {
        return fitting;
    }

    /** The best of an actuator for an aim, best first. */
    List<Candidate> of(int actuator, Aim aim) {
        return lists.get(actuator * Aim.values().length + aim.index());
    }

    /** Whether a candidate with these lower bounds could be among the few best at anything; places in m. */
    boolean mayImprove(int actuator, List<Vec2> at, double utilisation, double force, double time) {
        return better(of(actuator, Aim.UTILISATION), Aim.UTILISATION, at, utilisation)
                || better(of(actuator, Aim.FORCE), Aim.FORCE, at, force * (1 + SAME))
                || better(of(actuator, Aim.TIME), Aim.TIME, at, time);
    }

    private boolean better(List<Candidate> list, Aim aim, List<Vec2> at, double bound) {
        if (list.size() == kept && bound >= list.get(kept - 1).cost(aim)) {
            return false;
        }
        for (Candidate old : list) {
            if (old.near(at, apart) && old.cost(aim) <= bound) {
                return false;
            }
        }
        return true;
    }

    void offer(int actuator, Candidate spot) {
        for (Aim aim : Aim.values()) {
            offer(of(actuator, aim), spot, aim);
        }
    }

    private void offer(List<Candidate> list, Candidate spot, Aim aim) {
        for (Candidate old : list) {
            if (old.near(spot, apart) && !spot.betterThan(old, aim)) {
                return;
            }
        }
        list.removeIf(old -> old.near(spot, apart));
        int at = 0;
        while (at < list.size() && !spot.betterThan(list.get(at), aim)) {
            at++;
        }
        list.add(at, spot);
        if (list.size() > kept) {
            list.remove(kept);
        }
    }

    /** Takes over what another found; ties stay with the first, so the order of merging decides, not that of finding. */
    void merge(Shortlist other) {
        fitting += other.fitting;
        for (int a = 0; a < actuators; a++) {
            for (Aim aim : Aim.values()) {
                for (Candidate spot : other.of(a, aim)) {
                    offer(of(a, aim), spot, aim);
                }
            }
        }
    }

    /** The best over all actuators; null when nothing fits. */
    @Nullable
    Candidate of(Aim aim) {
        Candidate most = null;
        for (int a = 0; a < actuators; a++) {
            for (Candidate spot : of(a, aim)) {
                most = most == null || spot.betterThan(most, aim) ? spot : most;
            }
        }
        return most;
    }
}
