// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.drive.Anchor;
import tipwright.design.drive.Assist;
import tipwright.design.drive.Counterweight;
import tipwright.design.drive.GasSpring;
import tipwright.design.drive.LineSpring;
import tipwright.design.drive.TorsionSpring;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;
import tipwright.quantity.Kind;

/** Springs and weights must sit on parts that are there. */
final class AssistRules {
    private final Facts facts;
    private final Bound.Found<Assist> found;
    private final Skeleton skeleton;

    private AssistRules(Facts facts, Bound.Found<Assist> found, Skeleton skeleton) {
        this.facts = facts;
        this.found = found;
        this.skeleton = skeleton;
    }

    static void check(Facts facts) {
        @Nullable Skeleton skeleton = MechanismRules.skeleton(facts);
        if (skeleton != null) {
            for (Bound.Found<Assist> found : facts.bound().all(Assist.class)) {
                new AssistRules(facts, found, skeleton).check();
            }
        }
    }

    private void check() {
        Assist assist = found.value();
        if (assist instanceof LineSpring line) {
            ends(line.from(), line.to());
        }
        if (assist instanceof GasSpring gas) {
            gas(gas);
        }
        if (assist instanceof TorsionSpring torsion) {
            List<String> pins = skeleton.joints().stream()
                    .filter(j -> j instanceof Joint.Pin)
                    .map(Joint::name)
                    .toList();
            if (!pins.contains(torsion.pin())) {
                wrong("pin", "no pin " + ErrorText.quoted(torsion.pin()) + "; " + ErrorText.meant(torsion.pin(), pins));
            }
        }
        if (assist instanceof Counterweight weight) {
            known("body", weight.body());
            if (weight.body().equals(skeleton.bodies().get(0))) {
                wrong("body", "a weight on the frame moves nothing; name the tank or a link");
            }
        }
    }

    private void ends(Anchor from, Anchor to) {
        known("from.body", from.body());
        known("to.body", to.body());
        if (from.body().equals(to.body())) {
            wrong("to.body", "both ends are on '" + to.body() + "'; it does nothing");
        }
    }

    private void gas(GasSpring it) {
        if (it.stroke() >= it.extended()) {
            wrong("stroke", "must be less than the extended length (" + Facts.say(it.extended(), Kind.LENGTH) + ")");
        }
        if (it.compressedForce() < it.force()) {
            wrong(
                    "compressed-force",
                    "less than the force when fully out (" + Facts.say(it.force(), Kind.FORCE)
                            + "); a gas spring pushes harder when pressed in");
        }
    }

    private void known(String key, String body) {
        List<String> bodies = skeleton.bodies();
        if (!bodies.contains(body)) {
            wrong(key, "no body " + ErrorText.quoted(body) + "; " + ErrorText.meant(body, bodies));
        }
    }

    private void wrong(String key, String message) {
        found.wrong(facts.problems(), key, message);
    }
}
