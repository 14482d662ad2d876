// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.around.Footing;
import tipwright.design.drive.TiltRange;
import tipwright.design.key.Copy;
import tipwright.design.key.NameId;
import tipwright.design.tank.Door;
import tipwright.design.tank.Opening;
import tipwright.design.tank.Vent;
import tipwright.geometry.Vec2;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;

/** A larger vent, more latches, more tilt, a wider stance. */
final class SurroundingSizes implements Proposer {
    private static final double STEP = Math.toRadians(5);
    private static final double STEEPEST = Math.toRadians(175);
    private static final int LATCHES = 6;
    private static final String LATCH = "-latch";
    private static final double INCH = 0.0254;

    @Override
    public String asked(Finding f) {
        return switch (f.checkId()) {
            case "vent" -> "vent";
            case "door" -> f.partId().endsWith(LATCH)
                    ? f.partId().substring(0, f.partId().length() - LATCH.length())
                    : "";
            case "empties" -> "tilt/";
            case "tip-over" -> "stance/";
            default -> "";
        };
    }

    @Override
    public List<List<Proposal>> changes(Analysis analysis, String asked, Shop shop) {
        Design design = analysis.design();
        List<Proposal> all = new ArrayList<>();
        switch (asked) {
            case "vent" -> vents(design, shop, all);
            case "tilt/" -> tilts(design, all);
            case "stance/" -> stances(design, shop, all);
            default -> latches(design, asked, all);
        }
        return all.stream().map(List::of).toList();
    }

    private static void vents(Design design, Shop shop, List<Proposal> all) {
        Vent vent = design.tank().vent();
        if (vent != null) {
            for (SoldSize s : shop.above(SoldSize.Series.VENT, vent.diameter())) {
                all.add(new Proposal(
                        Text.words("a vent of " + s.label() + " bore"),
                        0.05,
                        Copy.with(
                                design,
                                "tank",
                                Copy.with(design.tank(), "vent", Copy.with(vent, "diameter", s.size())))));
            }
        }
    }

    private static void tilts(Design design, List<Proposal> all) {
        TiltRange tilt = design.tilt();
        for (int i = 1; tilt.to() + i * STEP <= STEEPEST && i <= 14; i++) {
            double to = Math.rint(tilt.to() / STEP + i) * STEP;
            all.add(new Proposal(
                    Text.words("tilt it to ").plus(Text.degrees(to, 0)),
                    0.1 * i,
                    design.withTilt(new TiltRange(tilt.from(), to, tilt.step()))));
        }
    }

    private static void stances(Design design, Shop shop, List<Proposal> all) {
        Footing footing = design.supports();
        if (footing == null) {
            return;
        }
        Vec2 middle = Vec2.ZERO;
        for (Vec2 p : footing.outline()) {
            middle = middle.plus(p.times(1.0 / footing.outline().size()));
        }
        double step = shop.units() == UnitSystem.METRIC ? 0.1 : 4 * INCH;
        for (int i = 1; i <= 6; i++) {
            double by = i * step;
            List<Vec2> wider = new ArrayList<>();
            for (Vec2 p : footing.outline()) {
                Vec2 from = p.minus(middle);
                wider.add(p.plus(new Vec2(Math.signum(from.x()) * by, Math.signum(from.y()) * by)));
            }
            all.add(new Proposal(
                    Text.words("feet or outriggers ").plus(Text.mark(by)).plus(" further out on every side"),
                    0.15 * i,
                    Copy.with(design, "supports", Copy.with(footing, "outline", List.copyOf(wider)))));
        }
    }

    private static void latches(Design design, String name, List<Proposal> all) {
        for (Opening o : design.tank().openings()) {
            Door door = o.door();
            if (door == null || !NameId.of(o.name()).equals(name)) {
                continue;
            }
            for (int n = door.latches() + 1; n <= LATCHES; n++) {
                Opening put = Copy.with(o, "door", Copy.with(door, "latches", n));
                List<Opening> openings = design.tank().openings().stream()
                        .map(p -> p.equals(o) ? put : p)
                        .toList();
                all.add(new Proposal(
                        Text.words(n + " latches on the " + o.name() + " in place of " + door.latches()),
                        0.05 * (n - door.latches()),
                        Copy.with(design, "tank", Copy.with(design.tank(), "openings", openings))));
            }
        }
    }
}
