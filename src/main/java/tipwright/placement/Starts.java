// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import tipwright.geometry.Vec2;

/** The few best candidates so far for each actuator, whether they fit or not, apart from each other. Mutable: owned by one caller. */
final class Starts {
    private static final int KEPT = 6;
    private static final double APART = 0.05;

    /** [actuator], best first. */
    private final List<List<Start>> lists = new ArrayList<>();

    Starts(int actuators) {
        for (int i = 0; i < actuators; i++) {
            lists.add(new ArrayList<>());
        }
    }

    /**
     * A candidate.
     *
     * @param at m [place]
     */
    record Start(List<Vec2> at, double cost) {
        private boolean near(Start other) {
            for (int i = 0; i < at.size(); i++) {
                if (at.get(i).minus(other.at.get(i)).norm() >= APART) {
                    return false;
                }
            }
            return true;
        }
    }

    /** The best of an actuator, best first. */
    List<Start> of(int actuator) {
        return lists.get(actuator);
    }

    void offer(int actuator, List<Vec2> at, double cost) {
        List<Start> list = lists.get(actuator);
        if (list.size() == KEPT && !(cost < list.get(KEPT - 1).cost())) {
            return;
        }
        Start start = new Start(at, cost);
        if (list.stream().anyMatch(s -> s.near(start) && s.cost() <= cost)) {
            return;
        }
        list.removeIf(s -> s.near(start));
        int i = 0;
        while (i < list.size() && list.get(i).cost() <= cost) {
            i++;
        }
        list.add(i, start);
        if (list.size() > KEPT) {
            list.remove(KEPT);
        }
    }

    /** Takes over what another found, in the order of merging. */
    void merge(Starts other) {
        for (int a = 0; a < lists.size(); a++) {
            for (Start s : other.of(a)) {
                offer(a, s.at(), s.cost());
            }
        }
    }
}
