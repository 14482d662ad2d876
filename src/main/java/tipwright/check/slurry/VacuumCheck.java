// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.TimedCheck;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Usage;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.tank.CylinderInterior;
import tipwright.design.tank.Vent;
import tipwright.design.tank.Wall;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.CircularPlate;
import tipwright.strength.OutOfRangeException;
import tipwright.strength.OutsidePressure;
import tipwright.strength.PlateBending;
import tipwright.strength.PlateUnderPressure;
import tipwright.strength.StiffenedWall;
import tipwright.time.Cycle;
import tipwright.time.Moment;
import tipwright.time.Timing;

/** Whether a closed round tank stands the vacuum inside it. */
public final class VacuumCheck implements TimedCheck {
    @Override
    public String id() {
        return "vacuum";
    }

    @Override
    public String title() {
        return "Tank under vacuum: buckling inward";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Tank under vacuum: " + part;
    }

    @Override
    public String rule() {
        return "A closed tank that drains faster than air gets in, or that is filled by suction, is pressed in from outside. The shell caves in at the larger of the short and the long form, of which a third may act; flat ends, and the flat walls and lid of a box or hopper, bend and stay below yield as if nothing held against it from inside; dished ends by their crown radius. A tank filled by suction needs a way for air to get in, or the vacuum holds its door shut. Round within 1 % of the diameter, without dents.";
    }

    @Override
    public String formula() {
        return "p = 2.42 E (t/D)^2.5 / ((1 - nu^2)^0.75 (L/D - 0.45 sqrt(t/D))) or 2 E/(1 - nu^2) (t/D)^3, a third allowed; dished 0.0625 E (t/R)^2; flat walls by Ritz's method for thin plates";
    }

    @Override
    public String source() {
        return "Windenburg and Trilling 1934 (read); Roark table 35 case 19a (read); ASME VIII-1: a third, L with a third of the heads' depth, dished heads (from memory)";
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TANK);
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.NEEDS_TIME, Trait.OF_NORMAL_DUMP);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a larger vent or a vacuum breaker, a thicker wall, or stiff rings");
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        Design design = analysis.design();
        Findings make = new Findings(this, design);
        Double suction = design.tank().suction();
        Vent vent = design.tank().vent();
        if (vent == null && suction == null) {
            return List.of();
        }
        Cycle dump = timing.dump();
        Extreme draining = dump == null ? Extreme.NOWHERE : dump.largest(Moment::vacuum);
        if (suction == null && dump == null) {
            return List.of(make.untimed("", timing));
        }
        double drawn = suction == null ? 0 : suction;
        boolean pumped = suction != null && !(draining.value() > drawn);
        Extreme worst = pumped ? Extreme.at(drawn, Double.NaN) : draining;
        List<Finding> all = new ArrayList<>();
        if (suction != null) {
            all.add(door(make, design, suction));
        }
        Wall wall = design.tank().wall();
        if (wall == null) {
            all.add(make.missing("wall", "tank.wall missing"));
        } else if (!(design.tank().interior() instanceof CylinderInterior tank)) {
            all.addAll(flat(make, design, wall, worst));
        } else {
            String when = pumped ? "while it is filled by suction" : "while it drains";
            all.add(shell(make, tank, wall, worst, when));
            all.addAll(heads(make, tank, wall, worst, design.factors().wall()));
        }
        return all;
    }

    private static Finding shell(Findings make, CylinderInterior tank, Wall wall, Extreme worst, String when) {
        double outside = tank.diameter() + 2 * wall.thickness();
        double depths = tank.headDepths() / 3;
        try {
            double allowed = OutsidePressure.steel(outside, wall.thickness(), tank.length() + depths)
                    .allowed();
            return make.compare(
                    "shell", worst.value(), allowed, 1, Kind.PRESSURE, worst, "a third of what caves it in; " + when);
        } catch (OutOfRangeException e) {
            return make.cannot("shell", Text.words("out of the rule's range: ").plus(e.reason()));
        }
    }

    private static List<Finding> heads(Findings make, CylinderInterior tank, Wall wall, Extreme worst, double factor) {
        List<Finding> all = new ArrayList<>();
        double t = wall.thickness();
        for (CylinderInterior.HeadShape head : new LinkedHashSet<>(tank.heads())) {
            double crown =
                    switch (head) {
                        case FLAT -> Double.NaN;
                        case HEMISPHERICAL -> tank.diameter() / 2;
                        case SEMI_ELLIPSOIDAL -> 0.9 * tank.diameter();
                        case TORISPHERICAL -> tank.crown() * tank.diameter();
                    };
            if (head == CylinderInterior.HeadShape.FLAT) {
                PlateBending bent =
                        CircularPlate.steel(tank.diameter() / 2, t, false).under(worst.value());
                all.add(make.compare(
                        "flat end",
                        new Usage(bent.equivalent(), wall.yield(), factor, Kind.PRESSURE),
                        worst,
                        Text.words(
                                bent.linear()
                                        ? "bending of the flat end, free to turn at its rim"
                                        : "bending of the flat end; it gives way by more than half its thickness, where"
                                                + " the figure is on the safe side")));
            } else {
                all.add(make.compare(
                        "dished end",
                        worst.value(),
                        dished(t, crown + t),
                        1,
                        Kind.PRESSURE,
                        worst,
                        "outside pressure that the middle of the dished end can take"));
            }
        }
        return all;
    }

    /** Flat walls as if nothing inside held against the vacuum, which is so above the slurry and everywhere once it is out. */
    private static List<Finding> flat(Findings make, Design design, Wall wall, Extreme worst) {
        List<FlatWall> walls = FlatWall.closed(design.tank());
        if (walls.isEmpty()) {
            return List.of(make.cannot("wall", "the inside is a mesh; its walls are not known one by one"));
        }
        double pressure = Math.max(0, worst.value());
        double factor = design.factors().wall();
        List<Finding> all = new ArrayList<>();
        for (FlatWall flat : walls) {
            try {
                double stress = 0;
                double moved = 0;
                for (PlateUnderPressure plate : flat.plates(wall)) {
                    PlateBending bent = plate.under(pressure, pressure);
                    stress = Math.max(stress, FlatWallCheck.governing(bent));
                    moved = Math.max(moved, bent.moved());
                }
                all.add(make.compare(
                        flat.name(),
                        new Usage(stress, wall.yield(), factor, Kind.PRESSURE),
                        worst,
                        Text.words("pressed in by the vacuum; ").plus(FlatWallCheck.bends(moved, wall))));
            } catch (OutOfRangeException e) {
                all.add(make.cannot(
                        flat.name(), Text.words("out of the rule's range: ").plus(e.reason())));
            }
            StiffenedWall beam = flat.stiffened(wall);
            if (beam != null) {
                all.add(make.compare(
                        flat.name() + " stiffener",
                        new Usage(beam.stress(pressure, pressure), wall.yield(), factor, Kind.PRESSURE),
                        worst,
                        Text.words("a stiffener with the wall beside it, bent inwards by the vacuum")));
            }
        }
        return all;
    }

    /** Pressure from outside that a dished end of steel may bear, Pa; its wall and its outer crown radius in m. */
    static double dished(double wall, double crown) {
        return 0.0625 * 200e9 * Math.pow(wall / crown, 2);
    }

    private static Finding door(Findings make, Design design, double suction) {
        Vent vent = design.tank().vent();
        if (vent != null && vent.diameter() > 0) {
            return make.given(
                    "door",
                    0,
                    suction,
                    1,
                    Kind.PRESSURE,
                    0,
                    Extreme.NOWHERE,
                    Verdict.PASS,
                    "air gets in through the vent once its valve is open: open it before the door");
        }
        return make.given(
                "door",
                suction,
                0,
                1,
                Kind.PRESSURE,
                Double.POSITIVE_INFINITY,
                Extreme.NOWHERE,
                Verdict.FAIL,
                "filled by suction and without a vent: the vacuum holds the door shut while it tips");
    }
}
