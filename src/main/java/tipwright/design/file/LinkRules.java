// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.drive.BoxSection;
import tipwright.design.drive.LinkSection;
import tipwright.design.drive.RoundSection;
import tipwright.design.drive.Section;
import tipwright.linkage.Skeleton;
import tipwright.quantity.Kind;

/** A section belongs to a link between two pins, and must have metal. */
final class LinkRules {
    private static final String LIST = "link-sections";

    private final Facts facts;

    private LinkRules(Facts facts) {
        this.facts = facts;
    }

    static void check(Facts facts) {
        LinkRules rules = new LinkRules(facts);
        List<LinkSection> all = facts.bound().list(LIST, LinkSection.class);
        @Nullable Skeleton skeleton = MechanismRules.skeleton(facts);
        for (int i = 0; i < all.size(); i++) {
            String path = Paths.item(LIST, i + 1);
            if (skeleton != null) {
                rules.link(path + ".body", all.get(i).body(), skeleton);
            }
            for (int j = 0; j < i; j++) {
                if (all.get(j).body().equals(all.get(i).body())) {
                    facts.wrong(path + ".body", "'" + all.get(i).body() + "' is given twice; keep one");
                    break;
                }
            }
            rules.section(path, all.get(i));
        }
    }

    private void link(String path, String body, Skeleton skeleton) {
        List<String> links = new ArrayList<>();
        for (int i = 1; i < skeleton.bodies().size(); i++) {
            if (i != skeleton.tank() && !skeleton.twoPins(i).isEmpty()) {
                links.add(skeleton.bodies().get(i));
            }
        }
        if (links.contains(body)) {
            return;
        }
        if (skeleton.bodies().contains(body)) {
            facts.wrong(path, "'" + body + "' is no link between two pins; " + ErrorText.meant(body, links));
        } else {
            facts.wrong(path, "no link " + ErrorText.quoted(body) + "; " + ErrorText.meant(body, links));
        }
    }

    private void section(String path, LinkSection made) {
        Section section = made.section();
        if (section instanceof RoundSection round && !(round.bore() < round.diameter())) {
            facts.wrong(
                    path + ".section.bore",
                    "must be less than the diameter (" + Facts.say(round.diameter(), Kind.LENGTH) + ")");
            return;
        }
        if (section instanceof BoxSection box) {
            double least = Math.min(box.height(), box.width());
            if (!(2 * box.wall() < least)) {
                facts.wrong(
                        path + ".section.wall",
                        "a wall of " + Facts.say(box.wall(), Kind.LENGTH) + " leaves nothing hollow in "
                                + Facts.say(least, Kind.LENGTH));
                return;
            }
        }
        if (!(made.hole() < section.largestHole())) {
            facts.wrong(
                    path + ".hole",
                    "a hole of " + Facts.say(made.hole(), Kind.LENGTH) + " leaves too little of this section; make it"
                            + " less than " + Facts.say(section.largestHole(), Kind.LENGTH));
        }
    }
}
