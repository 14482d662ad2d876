// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.design.drive.Anchor;
import tipwright.design.drive.Free;
import tipwright.design.drive.FreePin;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;

/** The names of a free mechanism must fit together. */
final class FreeRules {
    private static final String AT = "drive.free.";
    private static final double APART = 1e-3;

    private final Facts facts;
    private final Free free;
    private final List<String> bodies;
    private final Map<String, String> joints = new LinkedHashMap<>();

    private FreeRules(Facts facts, Free free) {
        this.facts = facts;
        this.free = free;
        this.bodies = free.allBodies();
    }

    static void check(Facts facts) {
        Free free = facts.bound().get("drive", Free.class);
        if (free != null) {
            new FreeRules(facts, free).check();
        }
    }

    /** Whether all bodies that a drive names are there, so that it has a skeleton. */
    static boolean sound(Free free) {
        List<String> bodies = free.allBodies();
        return free.pins().stream().allMatch(p -> bodies.containsAll(p.between()))
                && free.slides().stream().allMatch(s -> bodies.containsAll(s.between()))
                && bodies.contains(free.from().body())
                && bodies.contains(free.to().body());
    }

    private void check() {
        for (int i = 2; i < bodies.size(); i++) {
            if (bodies.indexOf(bodies.get(i)) < i) {
                facts.wrong(
                        Paths.item(AT + "bodies", i - 1),
                        "another body is called '" + bodies.get(i)
                                + "' ('frame' and 'tank' are there already); rename it");
            }
        }
        for (int i = 0; i < free.pins().size(); i++) {
            pin(Paths.item(AT + "pins", i + 1), free.pins().get(i));
        }
        for (int i = 0; i < free.slides().size(); i++) {
            String path = Paths.item(AT + "slides", i + 1);
            name(path, free.slides().get(i).name());
            between(path, free.slides().get(i).between());
        }
        if (!joints.containsKey(Skeleton.PIVOT)) {
            facts.wrong(AT + "pins", "no pin is named 'pivot'; give this name to the one in the two bearings");
        }
        end("from", free.from());
        end("to", free.to());
        if (free.from().body().equals(free.to().body())) {
            facts.wrong(
                    AT + "to.body",
                    "both ends of the actuator are on '" + free.to().body() + "'; it moves nothing");
        }
    }

    private void pin(String path, FreePin pin) {
        name(path, pin.name());
        between(path, pin.between());
        boolean pivot = pin.name().equals(Skeleton.PIVOT);
        @Nullable Vec2 at = pin.at();
        @Nullable Vec2 axis = facts.bound().get("pivot.at", Vec2.class);
        if (!pivot && at == null) {
            facts.wrong(path, "'at' is missing; only the pin named 'pivot' has its place from pivot.at");
        }
        if (pivot && at != null && axis != null && at.minus(axis).norm() > APART) {
            facts.wrong(path + ".at", "is not at pivot.at; leave it out");
        }
    }

    private void name(String path, String name) {
        String before = joints.putIfAbsent(name, path);
        if (before != null) {
            facts.wrong(path + ".name", "another joint is called '" + name + "', at " + before + "; rename one");
        }
    }

    private void between(String path, List<String> between) {
        for (int i = 0; i < between.size(); i++) {
            known(Paths.item(path + ".between", i + 1), between.get(i));
        }
        if (between.get(0).equals(between.get(1))) {
            facts.wrong(path + ".between", "a joint is between two bodies; found '" + between.get(0) + "' twice");
        }
    }

    private void end(String key, Anchor anchor) {
        known(AT + key + ".body", anchor.body());
    }

    private void known(String path, String body) {
        if (!bodies.contains(body)) {
            facts.wrong(path, "no body " + ErrorText.quoted(body) + "; " + ErrorText.meant(body, bodies));
        }
    }
}
