// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.JointPlan;
import tipwright.analysis.Mechanism;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.design.drive.Drive;
import tipwright.design.joint.Fastening;
import tipwright.linkage.Skeleton;

/** Goes through the fastenings of a design that have a certain part. */
final class FasteningParts {
    private FasteningParts() {}

    /** What is found for one part. */
    interface Rule<T> {
        List<Finding> find(String name, T part, JointLoad load);
    }

    /**
     * A finding for each part, or one that says that there is none.
     *
     * @param key of the part within a fastening
     * @param near z of a part, m
     */
    static <T> List<Finding> each(
            Findings make,
            Analysis analysis,
            String key,
            Function<Fastening, @Nullable T> part,
            Function<T, Double> near,
            Rule<T> rule) {
        List<Finding> all = new ArrayList<>();
        for (Fastening fastening : analysis.design().fastenings()) {
            T found = part.apply(fastening);
            if (found != null) {
                JointLoad load = JointLoad.of(analysis, fastening, near.apply(found));
                all.addAll(
                        load == null
                                ? List.of(make.cannot(fastening.joint(), unknown(analysis, fastening)))
                                : rule.find(fastening.joint(), found, load));
            }
        }
        if (all.isEmpty()) {
            all.add(make.missing("", "fastenings: " + key + " missing"));
        }
        return TwistedLinks.judged(make, analysis, all);
    }

    /** Why a fastening has no load. */
    static String unknown(Analysis analysis, Fastening fastening) {
        String on = fastening.on();
        Mechanism mechanism = analysis.mechanism();
        for (JointPlan joint : mechanism.joints()) {
            if (joint.slide() && joint.name().equals(fastening.joint())) {
                return "fastenings: '" + joint.name()
                        + "' is a slide; what its carriage bears besides is not worked out";
            }
        }
        List<String> names = new ArrayList<>();
        names.add(Drive.FRAME_PIN);
        names.add(analysis.design().drive().rodPinName());
        names.addAll(Fastening.BEARINGS);
        mechanism.joints().stream()
                .filter(j -> !j.slide() && !j.name().equals(Skeleton.PIVOT))
                .forEach(j -> names.add(j.name()));
        if (on != null && names.contains(fastening.joint())) {
            return "fastenings: the joint '" + fastening.joint() + "' is not on '" + on + "'";
        }
        return "fastenings: this mechanism has no joint '" + fastening.joint() + "'" + (on == null ? "" : " on " + on)
                + "; it has " + String.join(", ", names);
    }
}
