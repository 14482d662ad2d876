// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.cut;

import java.util.List;
import tipwright.design.Design;
import tipwright.design.around.CrossMember;
import tipwright.design.around.Frame;
import tipwright.design.around.SidePart;
import tipwright.design.steel.Steel;
import tipwright.geometry.Vec2;
import tipwright.geometry.stock.RoundedTube;
import tipwright.quantity.Text;

/** The frame's members as lengths of sections. */
final class FrameCuts {
    private static final Text NO_WALL = Text.words("wall not in the design");

    private final Frame frame;

    FrameCuts(Design design) {
        Frame given = design.frame();
        frame = given == null ? new Frame(null, null, List.of(), null, null, null) : given;
    }

    void to(List<CutPiece> pieces, List<Text> open) {
        for (SidePart part : frame.members()) {
            member(part, pieces, open);
        }
        CrossMember tube = frame.crossMember();
        if (tube != null) {
            Text section = tube(tube.height(), tube.width(), tube.wall());
            double mass = perMetre(tube.height(), tube.width(), tube.wall());
            pieces.add(CutPiece.square("cross member", section, tube.span(), 1, mass, Text.NONE));
        }
    }

    static Text tube(double height, double width, double wall) {
        return Text.of(
                "tube {} x {} x {}",
                Text.size(Math.max(height, width)),
                Text.size(Math.min(height, width)),
                Text.size(wall));
    }

    /** kg of a metre of rectangular tube. */
    static double perMetre(double height, double width, double wall) {
        boolean rounded = wall > 0 && height >= 4 * wall && width >= 4 * wall;
        double area = height * width - (height - 2 * wall) * (width - 2 * wall);
        return rounded ? new RoundedTube(height, width, wall).mass(Steel.DENSITY) : area * Steel.DENSITY;
    }

    private void member(SidePart part, List<CutPiece> pieces, List<Text> open) {
        SectionShape shape = SectionShape.of(part.outline());
        if (shape == null) {
            open.add(Text.words("The " + part.name()
                    + " is no straight section: its outline in the design is to be made up from plate or pieces."));
            return;
        }
        boolean placed = !part.z().isEmpty();
        double across = placed ? Math.abs(part.z().get(1) - part.z().get(0)) : width();
        boolean lies = across > shape.length();
        double length = lies ? across : shape.length();
        double a = lies ? shape.length() : across;
        Text section = Text.of(
                "section {} x {}", Text.size(Math.max(a, shape.depth())), Text.size(Math.min(a, shape.depth())));
        Text note = placed ? NO_WALL : NO_WALL.plus("; as long as the frame is wide");
        if (Double.isNaN(across)) {
            section = Text.of("section {} deep", Text.size(shape.depth()));
            note = NO_WALL.plus(", nor how far it goes across");
            length = Double.NaN;
        }
        List<Double> mitres = lies ? List.of(0.0, 0.0) : shape.mitres();
        pieces.add(new CutPiece(part.name(), section, length, mitres, 1, Double.NaN, note));
    }

    /** How wide the frame is along the pivot, m; NaN when none of its members tells. */
    private double width() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (SidePart part : frame.members()) {
            for (double z : part.z()) {
                low = Math.min(low, z);
                high = Math.max(high, z);
            }
        }
        return high > low ? high - low : Double.NaN;
    }

    /** Whether an outline is a plate on edge: its corners and how thick it is along the pivot. */
    static boolean thin(List<Vec2> outline, double thick) {
        double most = 0;
        for (Vec2 p : outline) {
            for (Vec2 q : outline) {
                most = Math.max(most, p.minus(q).norm());
            }
        }
        return thick > 0 && thick <= 0.04 && thick < most / 4;
    }
}
