// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.geometry.Range;
import tipwright.load.Emptying;
import tipwright.load.Vessel;

/**
 * Everything computed for a design.
 *
 * @param design as read
 * @param mechanism its bodies and joints
 * @param poses the linkage at each tilt that it reaches [tilt]
 * @param cases the load cases
 * @param emptying what stays in the tank at full tilt, and the tilt needed
 * @param stop where the linkage stops short; null when it reaches the full tilt
 * @param warnings in plain words
 * @param wind that blows on the tank all the while; null: it is calm
 * @param vessel the inside of the tank
 */
public record Analysis(
        Design design,
        Mechanism mechanism,
        List<Pose> poses,
        List<CaseResult> cases,
        Emptying emptying,
        @Nullable Stop stop,
        List<String> warnings,
        @Nullable Wind wind,
        Vessel vessel) {
    /** Copies the lists. */
    public Analysis {
        poses = List.copyOf(poses);
        cases = List.copyOf(cases);
        warnings = List.copyOf(warnings);
    }

    /** Shortest and longest that the actuator gets, pin to pin, m. */
    public Range lengths() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Pose pose : poses) {
            low = Math.min(low, pose.length());
            high = Math.max(high, pose.length());
        }
        return new Range(low, high);
    }

    /** Which of the poses is the one at this tilt; -1: none. */
    public int at(double tilt) {
        for (int i = 0; i < poses.size(); i++) {
            if (poses.get(i).tilt() == tilt) {
                return i;
            }
        }
        return -1;
    }

    /** Where every body of the mechanism is at a tilt, also between two that were worked out; held to the range, rad [body]. */
    public List<BodyPosition> bodiesAt(double tilt) {
        int i = 0;
        while (i + 2 < poses.size() && poses.get(i + 1).tilt() <= tilt) {
            i++;
        }
        Pose before = poses.get(i);
        Pose after = poses.get(Math.min(i + 1, poses.size() - 1));
        double span = after.tilt() - before.tilt();
        double share = span > 0 ? Math.max(0, Math.min(1, (tilt - before.tilt()) / span)) : 0;
        List<BodyPosition> all = new ArrayList<>();
        for (int body = 0; body < before.bodies().size(); body++) {
            all.add(before.bodies().get(body).towards(after.bodies().get(body), share));
        }
        return all;
    }

    /** The same with other load cases, or with some of their rows. */
    public Analysis with(List<CaseResult> others) {
        return over(poses, others);
    }

    /** The same at some of its poses. */
    public Analysis over(List<Pose> some, List<CaseResult> others) {
        return new Analysis(design, mechanism, some, others, emptying, stop, warnings, wind, vessel);
    }

    /** What was computed, told of a design that differs in what it does not depend on. */
    public Analysis of(Design other) {
        return new Analysis(other, mechanism, poses, cases, emptying, stop, warnings, wind, vessel);
    }
}
