// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.around.CrossMember;
import tipwright.design.around.Frame;
import tipwright.design.drive.BoxSection;
import tipwright.design.drive.Drive;
import tipwright.design.drive.FlatSection;
import tipwright.design.drive.LinkSection;
import tipwright.design.drive.RoundSection;
import tipwright.design.drive.Section;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.design.joint.Lug;
import tipwright.design.joint.PinJoint;
import tipwright.design.key.Copy;
import tipwright.design.key.NameId;
import tipwright.quantity.Text;

/** The next sizes of pins, welds, bolts, lugs, links and the cross member. */
final class JointSizes implements Proposer {
    private static final Set<String> SIZED = Set.of("pin", "weld", "bolt", "link", "cross-member");

    @Override
    public String asked(Finding f) {
        if (f.isOf("what-if")) {
            String part = f.partId();
            return part.startsWith("frame-pin-when")
                    ? "pin/" + Drive.FRAME_PIN
                    : part.startsWith("moving-pin-when") ? "pin/" + Drive.ROD_PIN : "";
        }
        if (SIZED.contains(f.checkId()) && !f.partId().isEmpty()) {
            return f.id().replace("-tension", "");
        }
        return f.isOf("lug") ? f.id().replaceAll("-(tear-out|net-section|bearing)$", "") : "";
    }

    @Override
    public List<List<Proposal>> changes(Analysis analysis, String asked, Shop shop) {
        Design design = analysis.design();
        String part = Finding.partOf(asked);
        List<Proposal> all =
                switch (asked.split("/", 2)[0]) {
                    case "pin" -> pins(design, part, shop);
                    case "weld" -> welds(design, part, shop);
                    case "bolt" -> bolts(design, part, shop);
                    case "lug" -> lugs(design, part, shop);
                    case "link" -> links(design, part, shop);
                    default -> crossMember(design, shop);
                };
        return all.stream().map(List::of).toList();
    }

    private static List<Proposal> pins(Design design, String joint, Shop shop) {
        PinJoint pin = Joints.pin(design, joint);
        List<Proposal> all = new ArrayList<>();
        if (pin != null) {
            for (SoldSize s : shop.above(SoldSize.Series.PIN, pin.diameter())) {
                all.add(new Proposal(
                        Text.words("a pin of " + s.label() + " at the " + NameId.words(joint) + " in place of ")
                                .plus(Text.mark(pin.diameter()))
                                .plus(", and the holes for it"),
                        grown(s.size(), pin.diameter()),
                        Joints.thicker(design, joint, s.size())));
            }
        }
        return all;
    }

    private static List<Proposal> welds(Design design, String joint, Shop shop) {
        List<Proposal> all = new ArrayList<>();
        double leg = most(design, joint, f -> f.weld() == null ? 0 : f.weld().leg());
        if (leg > 0) {
            for (SoldSize s : shop.above(SoldSize.Series.LEG, leg)) {
                all.add(new Proposal(
                        Text.words("a fillet weld with a leg of " + s.label() + " at the " + NameId.words(joint)
                                        + " in place of ")
                                .plus(Text.mark(leg)),
                        0.5 * grown(s.size(), leg),
                        Joints.withFastenings(
                                design,
                                f -> f.joint().equals(joint) && f.weld() != null,
                                f -> Copy.with(f, "weld", withLeg(f.weld(), s.size())))));
            }
        }
        return all;
    }

    private static @Nullable FilletWeld withLeg(@Nullable FilletWeld weld, double leg) {
        return weld == null ? null : Copy.with(weld, "leg", leg);
    }

    private static List<Proposal> bolts(Design design, String joint, Shop shop) {
        List<Proposal> all = new ArrayList<>();
        double diameter =
                most(design, joint, f -> f.bolts() == null ? 0 : f.bolts().diameter());
        if (diameter > 0) {
            for (SoldSize s : shop.above(SoldSize.Series.BOLT, diameter)) {
                all.add(new Proposal(
                        Text.words("bolts of " + s.label() + " at " + NameId.words(joint) + ", of the same strength"),
                        grown(s.size(), diameter),
                        Joints.withFastenings(
                                design,
                                f -> f.joint().equals(joint) && f.bolts() != null,
                                f -> Copy.with(f, "bolts", withThread(f.bolts(), s.size())))));
            }
        }
        return all;
    }

    private static @Nullable Bolts withThread(@Nullable Bolts bolts, double diameter) {
        return bolts == null ? null : Copy.with(Copy.with(bolts, "diameter", diameter), "stressArea", null);
    }

    private static List<Proposal> lugs(Design design, String joint, Shop shop) {
        List<Proposal> all = new ArrayList<>();
        double thickness =
                most(design, joint, f -> f.lug() == null ? 0 : f.lug().thickness());
        if (thickness > 0) {
            for (SoldSize s : shop.above(SoldSize.Series.PLATE, thickness)) {
                all.add(new Proposal(
                        Text.words("a lug of " + s.label() + " plate at the " + NameId.words(joint) + " in place of ")
                                .plus(Text.mark(thickness)),
                        0.5 * grown(s.size(), thickness),
                        Joints.thickerLug(design, joint, s.size())));
            }
            for (int percent = 20; percent <= 100; percent += 20) {
                double more = 1 + percent / 100.0;
                all.add(new Proposal(
                        Text.words("a lug that is wider around its hole at the " + NameId.words(joint) + ", by "
                                + percent + " % both across and to its end"),
                        0.5 * (more - 1),
                        Joints.withFastenings(
                                design,
                                f -> f.joint().equals(joint) && f.lug() != null,
                                f -> Copy.with(f, "lug", wider(f.lug(), more)))));
            }
        }
        return all;
    }

    private static @Nullable Lug wider(@Nullable Lug lug, double by) {
        return lug == null ? null : Copy.with(Copy.with(lug, "width", lug.width() * by), "end", lug.end() * by);
    }

    private static List<Proposal> links(Design design, String body, Shop shop) {
        List<Proposal> all = new ArrayList<>();
        for (LinkSection link : design.linkSections()) {
            if (!NameId.of(link.body()).equals(body)) {
                continue;
            }
            double old = thickness(link.section());
            SoldSize.Series series =
                    link.section() instanceof RoundSection ? SoldSize.Series.PIN : SoldSize.Series.PLATE;
            for (SoldSize s : shop.above(series, old)) {
                Section put = thicker(link.section(), s.size());
                if (put != null) {
                    all.add(new Proposal(
                            Text.words("the link '" + body + "' of " + s.label() + " in place of ")
                                    .plus(Text.mark(old)),
                            grown(s.size(), old),
                            Copy.with(
                                    design,
                                    "linkSections",
                                    design.linkSections().stream()
                                            .map(l -> l.equals(link) ? Copy.with(l, "section", put) : l)
                                            .toList())));
                }
            }
        }
        return all;
    }

    private static double thickness(Section section) {
        return section instanceof FlatSection f
                ? f.thickness()
                : section instanceof BoxSection b ? b.wall() : section.depth();
    }

    /** The same section with the thickness or, when round, the diameter of another; null: there is no such bar. */
    private static @Nullable Section thicker(Section section, double size) {
        if (section instanceof FlatSection f) {
            return size <= f.width() ? Copy.with(f, "thickness", size) : null;
        }
        if (section instanceof BoxSection b) {
            return 2 * size < Math.min(b.height(), b.width()) ? Copy.with(b, "wall", size) : null;
        }
        return section instanceof RoundSection r ? Copy.with(r, "diameter", size) : null;
    }

    private static List<Proposal> crossMember(Design design, Shop shop) {
        Frame frame = design.frame();
        CrossMember tube = frame == null ? null : frame.crossMember();
        List<Proposal> all = new ArrayList<>();
        if (frame != null && tube != null) {
            for (SoldSize s : shop.above(SoldSize.Series.PLATE, tube.wall())) {
                if (2 * s.size() < Math.min(tube.height(), tube.width()) / 2) {
                    all.add(new Proposal(
                            Text.words("a cross member with a wall of " + s.label() + " in place of ")
                                    .plus(Text.mark(tube.wall())),
                            grown(s.size(), tube.wall()),
                            design.withFrame(frame.withCrossMember(Copy.with(tube, "wall", s.size())))));
                }
            }
        }
        return all;
    }

    private interface Size {
        double of(Fastening f);
    }

    private static double most(Design design, String joint, Size size) {
        return design.fastenings().stream()
                .filter(f -> f.joint().equals(joint))
                .mapToDouble(size::of)
                .max()
                .orElse(0);
    }

    /** How much larger a part is, as a share of a rebuild. */
    private static double grown(double size, double old) {
        return 0.2 * (size / old - 1);
    }
}
