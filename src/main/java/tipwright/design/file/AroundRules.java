// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.around.Cradle;
import tipwright.design.around.CrossMember;
import tipwright.design.around.Footing;
import tipwright.design.around.Receiver;
import tipwright.design.around.SidePart;
import tipwright.design.around.TorqueTube;
import tipwright.design.drive.Drive;
import tipwright.design.drive.LinkPart;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.design.joint.Lug;
import tipwright.design.tank.Attached;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;
import tipwright.quantity.Kind;

/** What stands around the tank, and what holds its joints, must make sense by itself. */
final class AroundRules {
    private static final double SHORTEST = 1e-6;

    private final Facts facts;

    private AroundRules(Facts facts) {
        this.facts = facts;
    }

    static void check(Facts facts) {
        AroundRules rules = new AroundRules(facts);
        rules.parts("frame.members");
        rules.parts("obstacles");
        rules.zones(
                "tank.attached",
                facts.bound().list("tank.attached", Attached.class).stream()
                        .map(Attached::z)
                        .toList());
        List<LinkPart> links = facts.bound().list("links", LinkPart.class);
        rules.zones("links", links.stream().map(LinkPart::z).toList());
        rules.crossMember();
        rules.twist();
        rules.cradle();
        rules.receiver();
        rules.supports();
        List<Fastening> fastenings = facts.bound().list("fastenings", Fastening.class);
        for (int i = 0; i < fastenings.size(); i++) {
            rules.fastening(Paths.item("fastenings", i + 1), fastenings.get(i));
        }
        @Nullable Skeleton skeleton = MechanismRules.skeleton(facts);
        if (skeleton != null) {
            rules.bodies(skeleton, links, fastenings);
        }
    }

    private void parts(String list) {
        List<SidePart> parts = facts.bound().list(list, SidePart.class);
        Names.unique(facts, list, parts.stream().map(SidePart::name).toList());
        zones(list, parts.stream().map(SidePart::z).toList());
    }

    private void zones(String list, List<List<Double>> zones) {
        for (int i = 0; i < zones.size(); i++) {
            zone(Paths.item(list, i + 1) + ".z", zones.get(i));
        }
    }

    private void zone(String path, List<Double> z) {
        if (z.size() == 2 && Math.abs(z.get(1) - z.get(0)) < SHORTEST) {
            facts.wrong(path, "both ends are at " + Facts.say(z.get(0), Kind.LENGTH) + "; give it a width");
        }
    }

    private void crossMember() {
        CrossMember tube = facts.bound().get("frame.cross-member", CrossMember.class);
        if (tube == null) {
            return;
        }
        zone("frame.cross-member.z", tube.z());
        hollow("frame.cross-member", tube.height(), tube.width(), tube.wall());
    }

    private void twist() {
        for (String path : List.of("twist.tank", "twist.frame")) {
            TorqueTube tube = facts.bound().get(path, TorqueTube.class);
            if (tube != null) {
                hollow(path, tube.height(), tube.width(), tube.wall());
            }
        }
    }

    private void hollow(String path, double height, double width, double wall) {
        double least = Math.min(height, width);
        if (!(2 * wall < least)) {
            facts.wrong(
                    path + ".wall",
                    "a wall of " + Facts.say(wall, Kind.LENGTH) + " leaves nothing hollow in "
                            + Facts.say(least, Kind.LENGTH));
        }
    }

    /** Two saddles in one place are one. */
    private void cradle() {
        Cradle cradle = facts.bound().get("cradle", Cradle.class);
        if (cradle != null
                && cradle.at().size() == 2
                && cradle.at().get(1).minus(cradle.at().get(0)).norm() < cradle.width()) {
            facts.wrong("cradle.at", "the two saddles are nearer to each other than one is wide; give both places");
        }
    }

    private void receiver() {
        Receiver receiver = facts.bound().get("receiver", Receiver.class);
        if (receiver != null && receiver.far().minus(receiver.near()).norm() < SHORTEST) {
            facts.wrong("receiver.far", "lies on the near edge; move one of them");
        }
    }

    private void supports() {
        Footing footing = facts.bound().get("supports", Footing.class);
        int given = footing == null ? 0 : footing.stiffness().size();
        if (footing != null && given > 1 && given != footing.outline().size()) {
            facts.wrong(
                    "supports.stiffness",
                    "has " + given + " values for " + footing.outline().size()
                            + " supports; give one for each, in the order of the outline, or one for all");
        }
    }

    private void fastening(String path, Fastening fastening) {
        if (fastening.weld() == null
                && fastening.bolts() == null
                && fastening.lug() == null
                && fastening.seat() == null) {
            facts.wrong(path, "nothing is said of weld, bolts, lug or seat; give one of them");
        }
        FilletWeld weld = fastening.weld();
        if (weld != null) {
            List<FilletWeld.Seam> seams = weld.segments();
            for (int i = 0; i < seams.size(); i++) {
                if (seams.get(i).to().minus(seams.get(i).from()).norm() < SHORTEST) {
                    facts.wrong(
                            Paths.item(path + ".weld.segments", i + 1), "begins where it ends; a seam has a length");
                }
            }
        }
        Lug lug = fastening.lug();
        if (lug != null && !(lug.hole() < lug.width())) {
            facts.wrong(
                    path + ".lug.hole",
                    "the " + Facts.say(lug.hole(), Kind.LENGTH) + " hole is as wide as the lug or wider ("
                            + Facts.say(lug.width(), Kind.LENGTH) + ")");
        }
        if (lug != null && !(lug.end() > lug.hole() / 2)) {
            facts.wrong(
                    path + ".lug.end",
                    "measured from the middle of the hole, it must be more than half the hole ("
                            + Facts.say(lug.hole() / 2, Kind.LENGTH) + ")");
        }
    }

    private void bodies(Skeleton skeleton, List<LinkPart> links, List<Fastening> fastenings) {
        List<String> bodies = skeleton.bodies();
        for (int i = 0; i < links.size(); i++) {
            known(Paths.item("links", i + 1) + ".body", links.get(i).body(), bodies, "link");
        }
        List<String> joints = new ArrayList<>(List.of(Drive.FRAME_PIN, Drive.TANK_PIN, Drive.ROD_PIN));
        joints.addAll(Fastening.BEARINGS);
        skeleton.joints().stream()
                .map(Joint::name)
                .filter(n -> !joints.contains(n) && !n.equals(Skeleton.PIVOT))
                .forEach(joints::add);
        for (int i = 0; i < fastenings.size(); i++) {
            String path = Paths.item("fastenings", i + 1);
            known(path + ".joint", fastenings.get(i).joint(), joints, "joint");
            String on = fastenings.get(i).on();
            if (on != null && !on.equals("tank")) {
                known(path + ".on", on, bodies, "part");
            }
        }
    }

    private void known(String path, String name, List<String> all, String what) {
        if (!all.contains(name)) {
            facts.wrong(path, "no " + what + " " + ErrorText.quoted(name) + "; " + ErrorText.meant(name, all));
        }
    }
}
