// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.cut;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.steel.Angle;
import tipwright.design.steel.Bar;
import tipwright.design.steel.Disc;
import tipwright.design.steel.Flat;
import tipwright.design.steel.Pipe;
import tipwright.design.steel.Plate;
import tipwright.design.steel.Steel;
import tipwright.design.steel.TubePiece;
import tipwright.design.tank.Attached;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Text;
import tipwright.sheet.bracket.CutPlate;

/** The steel that parts on the tank are made of. */
final class SteelCuts {
    private static final int ROUND = 720;

    private final Design design;

    SteelCuts(Design design) {
        this.design = design;
    }

    void to(List<CutPiece> pieces, List<PlateCut> plates) {
        for (Attached part : design.tank().attached()) {
            for (Steel steel : part.steel()) {
                CutPiece piece = piece(part.name(), steel);
                CutPlate plate = plate(steel);
                if (piece != null) {
                    pieces.add(piece);
                } else if (plate != null) {
                    plates.add(new PlateCut(part.name(), plate, 1, false));
                }
            }
        }
    }

    private static @Nullable CutPiece piece(String name, Steel steel) {
        if (steel instanceof Flat f) {
            return piece(name, LinkCuts.flat(f.width(), f.thickness()), f.from(), f.to(), f.area());
        }
        if (steel instanceof TubePiece t) {
            double width = t.width() == null ? t.height() : t.width();
            return piece(name, FrameCuts.tube(t.height(), width, t.wall()), t.from(), t.to(), t.area());
        }
        if (steel instanceof Pipe p) {
            return piece(name, Text.words("pipe " + p.size()), p.from(), p.to(), p.area());
        }
        if (steel instanceof Bar b) {
            return piece(name, RoundCuts.section(b.diameter()), b.from(), b.to(), b.area());
        }
        if (steel instanceof Angle a) {
            double other = a.legs().get(a.legs().size() - 1);
            Text section = Text.of(
                    "angle {} x {} x {}", Text.size(a.legs().get(0)), Text.size(other), Text.size(a.thickness()));
            return piece(name, section, a.from(), a.to(), a.area());
        }
        return null;
    }

    private static CutPiece piece(String name, Text section, Vec3 from, Vec3 to, double area) {
        double length = to.minus(from).norm();
        return CutPiece.square(name, section, length, 1, area * Steel.DENSITY, Text.NONE);
    }

    private static @Nullable CutPlate plate(Steel steel) {
        if (steel instanceof Plate p && p.open() == null) {
            double w = p.size().get(0) / 2;
            double h = p.size().get(1) / 2;
            List<Vec2> box = List.of(new Vec2(-w, -h), new Vec2(w, -h), new Vec2(w, h), new Vec2(-w, h));
            return new CutPlate(box, List.of(), p.thickness());
        }
        if (steel instanceof Disc d) {
            List<Vec2> ring = new ArrayList<>();
            for (int i = 0; i < ROUND; i++) {
                double a = 2 * Math.PI * i / ROUND;
                ring.add(new Vec2(Math.cos(a), Math.sin(a)).times(d.diameter() / 2));
            }
            Double hole = d.hole();
            List<CutPlate.PlateHole> holes =
                    hole == null ? List.of() : List.of(new CutPlate.PlateHole(Vec2.ZERO, hole, false));
            return new CutPlate(ring, holes, d.thickness());
        }
        return null;
    }
}
