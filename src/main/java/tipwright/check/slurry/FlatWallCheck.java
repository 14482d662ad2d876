// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.Row;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Occasion;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.tank.Wall;
import tipwright.load.Gravity;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.OutOfRangeException;
import tipwright.strength.PlateBending;
import tipwright.strength.PlateUnderPressure;
import tipwright.strength.StiffenedWall;

/** Flat walls of boxes and hoppers under the pressure of the slurry. */
public final class FlatWallCheck implements Check {
    private final Map<List<Object>, Unit> known = new ConcurrentHashMap<>();

    /** Stresses of a wall by 1 Pa even all over, and by 1 Pa at its bottom that falls to nothing at its top, and how far it gives way. */
    private record Unit(double even, double falling, double evenMoved, double fallingMoved) {}

    @Override
    public String id() {
        return "flat-wall";
    }

    @Override
    public String title() {
        return "Flat walls: bending";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Flat walls, " + part + ": bending";
    }

    @Override
    public String rule() {
        return "Every flat wall of a box or hopper bends under the slurry, whose pressure rises with depth, at every tilt of the normal dump. Its edges are taken once as free to turn and once as held, and the worse counts; the upper edge of an open tank is free, or held by its rim's stiffness. The greater of the stress across or up the wall, which tables give, and of the equivalent one with the twist at the corners counts. An end that is no rectangle is taken as the rectangle round it. Upright stiffeners carry the wall between them as beams.";
    }

    @Override
    public String formula() {
        return "Ritz's method for thin plates; sigma = p_even s_even + p_rise s_rise <= yield / factor; stiffener: M / Z with 15 t of wall on each side";
    }

    @Override
    public String source() {
        return "S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells (from memory), held against tables; EN 1993-1-5 9.1 (from memory)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TANK);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("stiffeners nearer to each other or deeper, a rim along an open edge, or a thicker wall");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Design design = analysis.design();
        Findings make = new Findings(this, design);
        List<FlatWall> walls = FlatWall.of(design.tank());
        if (walls.isEmpty()) {
            return List.of();
        }
        Wall wall = design.tank().wall();
        if (wall == null) {
            return List.of(make.missing("", "tank.wall missing"));
        }
        double weight = design.slurry().mixtureDensity() * Gravity.G;
        List<Finding> all = new ArrayList<>();
        for (FlatWall flat : walls) {
            all.addAll(one(make, analysis, flat, wall, weight));
        }
        return all;
    }

    private List<Finding> one(Findings make, Analysis analysis, FlatWall flat, Wall wall, double weight) {
        List<PlateUnderPressure> plates;
        try {
            plates = flat.plates(wall);
        } catch (OutOfRangeException e) {
            return List.of(make.cannot(
                    flat.name(), Text.words("out of the rule's range: ").plus(e.reason())));
        }
        double[] unit = new double[4];
        for (PlateUnderPressure plate : plates) {
            Unit u = known.computeIfAbsent(key(plate), k -> unit(plate));
            unit[0] = Math.max(unit[0], u.even());
            unit[1] = Math.max(unit[1], u.falling());
            unit[2] = Math.max(unit[2], u.evenMoved());
            unit[3] = Math.max(unit[3], u.fallingMoved());
        }
        Extreme worst = normal(analysis, row -> {
            double[] p = flat.pressures(row, weight);
            return p[0] * unit[0] + p[1] * unit[1];
        });
        Row row = worst.row(analysis.cases());
        double[] p = row == null ? new double[2] : flat.pressures(row, weight);
        double moved = p[0] * unit[2] + p[1] * unit[3];
        double factor = analysis.design().factors().wall();
        Text note = bends(moved, wall);
        List<Finding> all = new ArrayList<>();
        Usage usage = new Usage(Math.max(0, worst.value()), wall.yield(), factor, Kind.PRESSURE);
        all.add(make.compare(flat.name(), usage, worst, note));
        StiffenedWall beam = flat.stiffened(wall);
        if (beam != null) {
            Extreme most = normal(analysis, r -> {
                double[] q = flat.pressures(r, weight);
                return beam.stress(q[0] + q[1], q[0]);
            });
            all.add(make.compare(
                    flat.name() + " stiffener",
                    new Usage(Math.max(0, most.value()), wall.yield(), factor, Kind.PRESSURE),
                    most,
                    Text.words("bending of a stiffener with the wall beside it")));
        }
        return all;
    }

    /** How far a flat wall gives way, m, and whether the rule holds there. */
    static Text bends(double moved, Wall wall) {
        Text note = Text.of("bends by {}", Text.amount(moved, Kind.LENGTH, "mm", 1));
        return moved <= wall.thickness() / 2
                ? note
                : note.plus(
                        ", more than half its thickness: it then also carries by stretching, so it is stronger than shown here");
    }

    private static Extreme normal(Analysis analysis, ToDoubleFunction<Row> value) {
        return Extreme.largest(Occasion.NORMAL.of(analysis).cases(), null, value);
    }

    /** All that a plate is told by: a record's own hash would first be spun, which takes longer than a check. */
    static List<Object> key(PlateUnderPressure p) {
        return List.of(
                p.width(),
                p.height(),
                p.thickness(),
                p.modulus(),
                p.poisson(),
                p.sides(),
                p.bottom(),
                p.top(),
                p.rim());
    }

    private static Unit unit(PlateUnderPressure plate) {
        PlateBending even = plate.under(1, 1);
        PlateBending falling = plate.under(1, 0);
        return new Unit(governing(even), governing(falling), even.moved(), falling.moved());
    }

    /** The safe one of the two stresses that a wall tells. */
    static double governing(PlateBending bent) {
        return Math.max(bent.direct(), bent.equivalent());
    }
}
