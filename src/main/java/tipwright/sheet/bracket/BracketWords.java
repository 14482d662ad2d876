// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.bracket;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Mechanism;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.design.joint.Flange;
import tipwright.design.joint.Lug;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.Seat;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.BoltHole;
import tipwright.strength.WeldGroup;

/** What is written beside a bracket, a sentence each. */
final class BracketWords {
    private BracketWords() {}

    private static Text length(double m) {
        return Text.size(m);
    }

    static Text hole(Lug lug, LugShape shape) {
        Text hole = Text.of(
                "Hole {} for the pin, {} from the middle of the hole to the free end, {} wide at the hole.",
                length(lug.hole()),
                length(lug.end()),
                length(lug.width()));
        return Double.isNaN(shape.height())
                ? hole.plus(" The plate lies flat on what it is welded to.")
                : hole.plus(Text.of(
                        " From the middle of the hole square down to the foot: {}; the foot is {} long.",
                        length(shape.height()),
                        length(shape.foot())));
    }

    static Text apart(Lug lug, PinJoint joint) {
        return Text.of(
                "{} plates, {} apart inside: an eye of {} and a gap of {} on each side.",
                Text.number(lug.plates(), 0),
                length(joint.lug() + 2 * joint.gap()),
                length(joint.lug()),
                length(joint.gap()));
    }

    static Text weld(FilletWeld weld) {
        Text start = Text.of("Fillet weld, leg {}, ", length(weld.leg()));
        FilletWeld.Rectangle box = weld.rectangle();
        FilletWeld.Lines lines = weld.lines();
        FilletWeld.Round round = weld.round();
        Text shape;
        if (box != null) {
            shape = Text.of("all round a rectangle of {} by {}", length(box.u()), length(box.v()));
        } else if (lines != null) {
            shape = Text.of("two seams of {} each, {} apart", length(lines.length()), length(lines.apart()));
        } else if (round != null) {
            shape = Text.of("all round {}", length(round.diameter()));
        } else {
            List<Text> each = new ArrayList<>();
            for (FilletWeld.Seam s : weld.segments()) {
                each.add(length(s.to().minus(s.from()).norm()));
            }
            shape = Text.words(each.size() == 1 ? "one seam of " : each.size() + " seams of ")
                    .plus(each.stream().distinct().count() == 1 ? each.get(0) : Text.join(", ", each));
        }
        return start.plus(shape)
                .plus(Text.of(": {} of weld in all for what it holds.", length(new WeldGroup(weld).length())));
    }

    static Text bolts(Bolts bolts) {
        int n = bolts.positions().size();
        return Text.of(
                (n == 1 ? "1 bolt, thread {}" : n + " bolts, thread {}") + ", tensile strength {}; holes {}.",
                length(bolts.diameter()),
                Text.amount(bolts.ultimate(), Kind.PRESSURE),
                length(BoltHole.diameter(bolts.diameter())));
    }

    static Text flange(@Nullable Flange flange, double edge) {
        return flange == null
                ? Text.of(
                        "The plate is not in the design: its outline is drawn {} around the holes, its thickness is for you to settle.",
                        length(edge))
                : Text.of(
                        "From a bolt's middle to the edge {}, to the weld of the upright {}.",
                        length(flange.edge()),
                        length(flange.arm()));
    }

    static Text pad(Seat seat, Seat.Pad pad) {
        return Text.of(
                        "Bend to the tank's wall: {} along the tank, {} around it; welded all round. What sits on it is {} along and {} around. Middle at ",
                        length(pad.along()),
                        length(pad.around()),
                        length(seat.along()),
                        length(seat.around()))
                .plus(place(seat.at()))
                .plus(".");
    }

    private static Text place(Vec3 at) {
        return Text.of("x {}, y {}, z {}", length(at.x()), length(at.y()), length(at.z()));
    }

    /** What it sits on, and where. */
    static Text stands(Fastening f, Mechanism mechanism, int body) {
        String on = f.on();
        FilletWeld weld = f.weld();
        Bolts bolts = f.bolts();
        String what = on != null ? on : mechanism.bodies().get(body);
        Text sits = Text.words("Sits on the " + what);
        Vec3 at = weld != null ? weld.at() : bolts != null ? bolts.at() : null;
        return at == null
                ? sits.plus(".")
                : sits.plus(weld != null ? "; middle of the weld at " : "; middle of the bolts at ")
                        .plus(place(at))
                        .plus(" from the datum.");
    }

    /** Of what is made more than once across the machine. */
    static Text again(List<Double> across) {
        List<Text> places = across.stream().map(BracketWords::length).toList();
        return Text.words("The same at each of z ")
                .plus(Text.join(", ", places))
                .plus(".");
    }

    static Text pin(PinJoint pin) {
        return Text.of(
                "Proposed with it: a pin of {} in an eye {} wide; both have to suit the actuator or link that you have.",
                length(pin.diameter()),
                length(pin.lug()));
    }

    private static String used(Map<String, Double> most) {
        List<String> used = new ArrayList<>();
        for (Map.Entry<String, Double> e : most.entrySet()) {
            if (!e.getKey().equals("swing")) {
                used.add(NameId.words(e.getKey()) + " " + Math.round(100 * e.getValue()) + " %");
            }
        }
        return String.join(", ", used);
    }

    static Text proposal(MountProposal.Found found) {
        return Text.words(
                "PROPOSAL: the design does not describe this mount. It was tried by the checks and passed them; used: "
                        + used(found.most())
                        + ". Weld the plate all round to the frame, and bolt the bearing onto it. The holes suit a usual foot for this"
                        + " bore: hold them against the foot that you have before you drill, and check it again where they differ.");
    }

    static Text proposal(LugProposal.Found found) {
        String on = found.foot().on();
        String foot = on.isEmpty()
                ? " Nothing of the design is near enough to stand on: make the foot to suit what is there, no higher."
                : on.equals(FootPlace.GIVEN) ? "" : " It stands square on the " + on + ".";
        return Text.words(
                "PROPOSAL: the design does not describe this lug. It was tried by the checks and passed them; used: "
                        + used(found.most()) + "." + foot);
    }
}
