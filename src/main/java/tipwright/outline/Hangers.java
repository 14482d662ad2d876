// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.design.around.CrossMember;
import tipwright.design.around.Frame;
import tipwright.design.around.SidePart;
import tipwright.design.around.Wheels;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Range;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.MachinePart.Basis;

/**
 * Sketched: brackets from members of a frame that touch no other one up to the members over them, an axle between the wheels. Common
 * practice, no source.
 */
final class Hangers {
    private static final double TOUCH = 2e-3;
    private static final double PLATE = 0.012;
    private static final double AXLE = 0.03;
    private static final double USUAL_HALF = 0.5;
    private static final Vec3 ACROSS = new Vec3(0, 0, 1);

    private final List<Block> blocks = new ArrayList<>();
    private final double bar;

    /** A member as the box around it; none of its place along the pivot: all the way across. */
    private record Block(String name, Range x, Range y, @Nullable Range z) {
        boolean touches(Block o) {
            return near(x, o.x) && near(y, o.y) && (z == null || o.z == null || near(z, o.z));
        }

        private static boolean near(Range a, Range b) {
            return a.low() < b.high() + TOUCH && b.low() < a.high() + TOUCH;
        }

        boolean over(Block o) {
            return y.low() > o.y.high() && x.low() < o.x.high() && o.x.low() < x.high() && z != null;
        }
    }

    private Hangers(Frame frame, double bar) {
        this.bar = bar;
        for (SidePart part : frame.members()) {
            Range z = part.z().isEmpty() ? null : range(part.z());
            blocks.add(block(part.name(), part.outline(), z));
        }
        CrossMember tube = frame.crossMember();
        if (tube != null) {
            blocks.add(block("cross member", tube.outline(), range(tube.z())));
        }
    }

    static List<MachinePart> of(Analysis analysis, double bar) {
        Frame frame = analysis.design().frame();
        List<MachinePart> all = new ArrayList<>();
        if (frame == null) {
            return all;
        }
        Hangers hangers = new Hangers(frame, bar);
        for (Block block : hangers.blocks) {
            List<Mesh> plates = hangers.plates(block);
            if (!plates.isEmpty()) {
                all.add(part("hangers of the " + block.name, plates));
            }
        }
        Wheels wheels = frame.wheels();
        if (wheels != null) {
            Vec3 middle = new Vec3(wheels.axle().x(), wheels.axle().y(), 0);
            Vec3 side = ACROSS.times(wheels.track() / 2);
            all.add(part(
                    "axle of the wheels",
                    List.of(Forms.rod(
                            middle.minus(side), middle.plus(side), Math.min(AXLE, 0.1 * wheels.diameter()), 16))));
        }
        return all;
    }

    private static MachinePart part(String name, List<Mesh> pieces) {
        return new MachinePart(PartKind.FRAME, name, 0, Basis.SKETCHED, new Form.Pieces(pieces));
    }

    /** Upright plates from its top to the underside of what lies over it; none when it touches something. */
    private List<Mesh> plates(Block hung) {
        List<Mesh> plates = new ArrayList<>();
        // two blocks of one shape at one place are two
        Object itself = hung;
        if (blocks.stream().anyMatch(o -> o != itself && o.touches(hung))) {
            return plates;
        }
        double lowest = blocks.stream()
                .filter(o -> o.over(hung))
                .mapToDouble(o -> o.y.low())
                .min()
                .orElse(Double.NaN);
        for (Block o : blocks) {
            Range over = o.z;
            if (over != null && o.over(hung) && o.y.low() < lowest + TOUCH) {
                double z = (over.low() + over.high()) / 2;
                double half = hung.z == null ? USUAL_HALF : Math.max(-hung.z.low(), hung.z.high());
                double at = Math.max(-half, Math.min(half, z));
                double x = (Math.max(o.x.low(), hung.x.low()) + Math.min(o.x.high(), hung.x.high())) / 2;
                double wide = Math.min(3 * bar, hung.x.high() - hung.x.low());
                plates.add(Forms.beam(new Vec3(x, hung.y.low(), at), new Vec3(x, o.y.low(), at), PLATE, wide, ACROSS));
            }
        }
        return plates;
    }

    private static Block block(String name, List<Vec2> corners, @Nullable Range z) {
        return new Block(
                name,
                range(corners.stream().map(Vec2::x).toList()),
                range(corners.stream().map(Vec2::y).toList()),
                z);
    }

    private static Range range(List<Double> values) {
        return new Range(
                values.stream().mapToDouble(v -> v).min().orElse(0),
                values.stream().mapToDouble(v -> v).max().orElse(0));
    }
}
