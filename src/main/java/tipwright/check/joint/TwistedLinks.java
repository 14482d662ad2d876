// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.JointPlan;
import tipwright.analysis.LinkPlane;
import tipwright.analysis.Mechanism;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Sharing;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec2;
import tipwright.quantity.Text;

/**
 * Links that force reaches beside their middle: how they, their pins and what holds those bear the moment across is not worked out.
 *
 * <p>A link lies where it is drawn; one that is not drawn, or all the way across, half way between the actuators, and one with pins on
 * both sides half way between the bearings. Source: statics of a rigid body.
 */
public final class TwistedLinks {
    private static final Text WHY = Text.words(
            "force reaches a link beside its middle; how it bears that twist, with its pins and brackets, is not worked out");
    /** Nearer to the middle than this is in the middle, m. */
    private static final double IN_LINE = 1e-6;

    private final Analysis analysis;
    private final Design design;
    private final Mechanism mechanism;
    /** Whether links carry the tank on the bearings; {@link TwinLinks} then tells what those on both sides bear of a twist. */
    private final boolean shared;

    private final Set<Integer> pushed;

    public TwistedLinks(Analysis analysis) {
        this.analysis = analysis;
        design = analysis.design();
        mechanism = analysis.mechanism();
        shared = mechanism.carriesTankOnLinks();
        pushed = pushed();
    }

    /** Numbers of the links that the actuators are pinned to, and of those that share that pin. */
    private Set<Integer> pushed() {
        Pose stowed = analysis.poses().get(0);
        Set<Integer> links = new HashSet<>();
        for (boolean moving : new boolean[] {false, true}) {
            int body = moving ? mechanism.actuatorTo() : mechanism.actuatorFrom();
            Vec2 pin = mechanism.actuatorPin(stowed, moving);
            links.add(body);
            for (JointPlan joint : mechanism.joints()) {
                boolean on = joint.a() == body || joint.b() == body;
                if (on && isLink(body) && SharedPins.same(joint.at(), pin)) {
                    links.add(joint.a());
                    links.add(joint.b());
                }
            }
        }
        links.removeIf(body -> !isLink(body));
        return links;
    }

    private boolean isLink(int body) {
        return body != 0 && body != mechanism.tank();
    }

    /** Whether a finding is about a link that the actuators push, about a pin of it or about what holds that pin. */
    public boolean bear(Finding f) {
        return isAbout(f, pushed);
    }

    private boolean isAbout(Finding f, Set<Integer> links) {
        for (int body : links) {
            String link = NameId.of(mechanism.bodies().get(body));
            if (f.isOf("link") && isOf(f.partId(), link)) {
                return true;
            }
            for (JointPlan joint : mechanism.joints()) {
                boolean on = joint.a() == body || joint.b() == body;
                if (on && !told(joint) && isAt(f, NameId.of(joint.name()))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether a finding is about a pin or what holds it: 'pin/knee', 'lug/knee-tear-out', 'fatigue/weld-knee'. */
    private static boolean isAt(Finding f, String pin) {
        if (f.isOf("pin")) {
            return f.partId().equals(pin);
        }
        String part = f.partId();
        boolean fatigue = part.startsWith("weld-") || part.startsWith("wall-");
        return !f.isOf("link") && isOf(fatigue ? part.substring(part.indexOf('-') + 1) : part, pin);
    }

    private static boolean isOf(String part, String whole) {
        return part.equals(whole) || part.startsWith(whole + "-");
    }

    /** Whether what each side of a joint bears of a twist is told elsewhere. */
    private boolean told(JointPlan joint) {
        return shared && isTwice(joint);
    }

    private boolean isTwice(JointPlan joint) {
        return joint.name().equals(mechanism.joints().get(mechanism.pivot()).name())
                || design.drive().paired(joint.name());
    }

    /** What a check found; what is about links that are twisted cannot be told, unless it fails without the twist. */
    static List<Finding> judged(Findings make, Analysis analysis, List<Finding> found) {
        if (found.stream().allMatch(TwistedLinks::isSettled)) {
            return found;
        }
        TwistedLinks links = new TwistedLinks(analysis);
        Set<Integer> twisted = links.pushed.isEmpty() ? Set.of() : links.twisted();
        return twisted.isEmpty()
                ? found
                : found.stream()
                        .map(f -> isSettled(f) || !links.isAbout(f, twisted) ? f : make.cannot(f, WHY))
                        .toList();
    }

    /** Whether a twist would not change what is said. */
    private static boolean isSettled(Finding f) {
        return f.verdict() == Verdict.FAIL || f.verdict() == Verdict.NOT_CHECKED;
    }

    /** Numbers of the links that are twisted while the actuators share as they do. */
    private Set<Integer> twisted() {
        Set<Integer> twisted = new HashSet<>();
        for (int body : pushed) {
            if (!carries(body) && pushedBeside(middle(body))) {
                twisted.addAll(pushed);
            }
        }
        for (JointPlan joint : mechanism.joints()) {
            boolean links = isLink(joint.a()) && isLink(joint.b()) && !joint.slide() && !isTwice(joint);
            if (links
                    && !carries(joint.a())
                    && !carries(joint.b())
                    && Math.abs(middle(joint.a()) - middle(joint.b())) > IN_LINE) {
                twisted.add(joint.a());
                twisted.add(joint.b());
            }
        }
        return twisted;
    }

    /** Whether a link is one of those on both sides whose share of a twist is told elsewhere. */
    private boolean carries(int body) {
        return shared && isTwice(body);
    }

    private boolean isTwice(int body) {
        return mechanism.joints().stream().anyMatch(j -> (j.a() == body || j.b() == body) && isTwice(j));
    }

    /** Whether the actuators' force ever acts beside a place along the pivot, m. */
    private boolean pushedBeside(double z) {
        List<PlacedActuator> all = design.drive().actuators();
        if (all.size() == 1) {
            return Math.abs(all.get(0).z() - z) > IN_LINE;
        }
        for (CaseResult load : analysis.cases()) {
            for (Row row : load.rows()) {
                for (MotionDirection way : MotionDirection.ALL) {
                    double force = row.balance(way).force();
                    double acts = Sharing.middle(all, row.pose().length(), force > 0);
                    if (force != 0 && Math.abs(acts - z) > IN_LINE) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** Where the middle of a link lies along the pivot, m. */
    private double middle(int body) {
        Double drawn = LinkPlane.drawn(design, mechanism.bodies().get(body));
        if (drawn != null) {
            return drawn;
        }
        return isTwice(body)
                ? design.pivot().middle()
                : PlacedActuator.middle(design.drive().actuators());
    }
}
