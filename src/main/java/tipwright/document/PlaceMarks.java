// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tipwright.analysis.Analysis;
import tipwright.analysis.JointPlan;
import tipwright.analysis.Pose;
import tipwright.design.NumberedPlace;
import tipwright.geometry.Vec2;
import tipwright.linkage.Strut;

/** The places that are numbered in pictures of the machine at any tilt: the pivot, and the actuator's ends. */
record PlaceMarks(Analysis analysis) {

    /** What the numbers mean. */
    String legend() {
        StringBuilder words = new StringBuilder();
        for (NumberedPlace place : at(analysis.poses().get(0)).keySet()) {
            words.append(place.number()).append(": ").append(place.name()).append(". ");
        }
        return words.append("The numbers are those of the weld sheet.").toString();
    }

    /** Where each of them is, m, in the order of their numbers. */
    Map<NumberedPlace, Vec2> at(Pose pose) {
        Strut strut = analysis.design()
                .drive()
                .skeleton(analysis.design().pivot().at())
                .actuator();
        List<NumberedPlace> all = NumberedPlace.of(analysis.design());
        Map<NumberedPlace, Vec2> marks = new LinkedHashMap<>();
        for (NumberedPlace place : all) {
            if (place.pivot()) {
                marks.put(place, pivot(pose));
            } else if (place.is(strut.onA())) {
                marks.put(place, pose.framePin());
            } else if (place.is(strut.onB())) {
                marks.put(place, pose.tankPin());
            }
        }
        return marks;
    }

    /** The axis of the bearings; it moves where the machine carries it along. */
    private Vec2 pivot(Pose pose) {
        int joint = analysis.mechanism().pivot();
        if (joint < 0) {
            return analysis.design().pivot().at();
        }
        JointPlan plan = analysis.mechanism().joints().get(joint);
        return pose.bodies().get(plan.b()).place(plan.at());
    }
}
