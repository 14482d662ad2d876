// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.cut;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.JointPlan;
import tipwright.analysis.LinkPlan;
import tipwright.analysis.Mechanism;
import tipwright.design.Design;
import tipwright.design.drive.BoxSection;
import tipwright.design.drive.Drive;
import tipwright.design.drive.FlatSection;
import tipwright.design.drive.LinkPart;
import tipwright.design.drive.LinkSection;
import tipwright.design.drive.RoundSection;
import tipwright.design.drive.Section;
import tipwright.design.joint.PinJoint;
import tipwright.design.steel.Steel;
import tipwright.geometry.Vec2;
import tipwright.linkage.Strut;
import tipwright.quantity.Text;
import tipwright.sheet.bracket.CutPlate;

/** The links of a mechanism, as plates by their outline or as bars by their section. */
final class LinkCuts {
    private final Mechanism mechanism;
    private final Design design;
    private final Design proposed;

    LinkCuts(Analysis analysis, Design proposed) {
        mechanism = analysis.mechanism();
        design = analysis.design();
        this.proposed = proposed;
    }

    /** Those whose outline is given and that are as thin as plate. */
    void plates(List<PlateCut> to) {
        for (LinkPart part : design.links()) {
            if (part.z().isEmpty() || !FrameCuts.thin(part.outline(), thick(part))) {
                continue;
            }
            to.add(new PlateCut(
                    "link '" + part.body() + "'",
                    new CutPlate(turned(part.outline()), holes(part), thick(part)),
                    1,
                    false));
        }
    }

    private static double thick(LinkPart part) {
        return Math.abs(part.z().get(1) - part.z().get(0));
    }

    /** Counter-clockwise. */
    private static List<Vec2> turned(List<Vec2> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            twice += outline.get(i).cross(outline.get((i + 1) % outline.size()));
        }
        if (twice >= 0) {
            return outline;
        }
        List<Vec2> back = new ArrayList<>(outline);
        Collections.reverse(back);
        return back;
    }

    private List<CutPlate.PlateHole> holes(LinkPart part) {
        int body = mechanism.bodies().indexOf(part.body());
        List<CutPlate.PlateHole> holes = new ArrayList<>();
        Strut strut = design.drive().skeleton(design.pivot().at()).actuator();
        for (JointPlan joint : mechanism.joints()) {
            if (!joint.slide() && (joint.a() == body || joint.b() == body)) {
                hole(joint.name(), joint.at(), holes);
            }
        }
        if (strut.a() == body) {
            hole(Drive.FRAME_PIN, strut.onA(), holes);
        }
        if (strut.b() == body) {
            hole(Drive.ROD_PIN, strut.onB(), holes);
        }
        return holes;
    }

    private void hole(String pin, Vec2 at, List<CutPlate.PlateHole> to) {
        PinJoint joint = proposed.drive().pinJoint(pin);
        boolean there = to.stream().anyMatch(h -> h.at().minus(at).norm() < 1e-6);
        if (joint != null && !there) {
            to.add(new CutPlate.PlateHole(at, joint.diameter(), true));
        }
    }

    /** Those whose section is given and that are not plates already; what is left is told. */
    void bars(List<CutPiece> pieces, List<Text> open) {
        for (int body = 1; body < mechanism.bodies().size(); body++) {
            String name = mechanism.bodies().get(body);
            if (body == mechanism.tank() || mechanism.slides(body)) {
                continue;
            }
            LinkSection section = design.linkSections().stream()
                    .filter(l -> l.body().equals(name))
                    .findFirst()
                    .orElse(null);
            LinkPlan plan = mechanism.link(body);
            boolean plate = design.links().stream()
                    .anyMatch(l -> l.body().equals(name) && !l.z().isEmpty() && FrameCuts.thin(l.outline(), thick(l)));
            if (plate) {
                continue;
            }
            if (section == null || plan == null) {
                open.add(
                        Text.words(
                                "The link '" + name
                                        + "' is not described as plate or bar in the design: make it to its pins, and have it checked."));
            } else {
                pieces.add(bar(name, section, plan, twice(body) ? 2 : 1));
            }
        }
    }

    /** Whether a link is made on both sides of the machine. */
    private boolean twice(int body) {
        return mechanism.joints().stream()
                .anyMatch(
                        j -> (j.a() == body || j.b() == body) && design.drive().paired(j.name()));
    }

    private static CutPiece bar(String name, LinkSection link, LinkPlan plan, int sides) {
        Section section = link.section();
        double length = plan.length() + section.depth();
        Text holes = link.hole() > 0
                ? Text.of(
                        "holes {}, {} apart; half its depth beyond each",
                        Text.size(link.hole()),
                        Text.size(plan.length()))
                : Text.of("pins {} apart; half its depth beyond each", Text.size(plan.length()));
        return CutPiece.square(
                "link '" + name + "'",
                words(section),
                length,
                link.bars() * sides,
                section.area() * Steel.DENSITY,
                holes);
    }

    private static Text words(Section section) {
        if (section instanceof FlatSection flat) {
            return flat(flat.width(), flat.thickness());
        }
        if (section instanceof BoxSection box) {
            return FrameCuts.tube(box.height(), box.width(), box.wall());
        }
        RoundSection round = (RoundSection) section;
        return round.bore() > 0
                ? Text.of("round tube {} outside, {} inside", Text.size(round.diameter()), Text.size(round.bore()))
                : RoundCuts.section(round.diameter());
    }

    static Text flat(double width, double thickness) {
        return Text.of("flat {} x {}", Text.size(width), Text.size(thickness));
    }
}
