// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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
import tipwright.design.around.Cradle;
import tipwright.design.tank.CylinderInterior;
import tipwright.design.tank.Wall;
import tipwright.geometry.Vec3;
import tipwright.load.Gravity;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.Beam;
import tipwright.strength.OutOfRangeException;
import tipwright.strength.Saddle;

/** A lying round tank on the two saddles of its cradle. */
public final class SaddleCheck implements Check {
    /** Cosine between the tank's axis and the machine up to which it lies lengthwise. */
    private static final double LENGTHWISE = 0.98;

    @Override
    public String id() {
        return "saddle";
    }

    @Override
    public String title() {
        return "Tank in its cradle";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Tank in its cradle: " + part;
    }

    @Override
    public String rule() {
        return "A lying round tank presses on two saddles by its weight square to its axis, at every tilt. Its wall bends at the saddles' tips, is pushed together under them and sheared beside them, and the tank bends as a beam between them. Each stays below yield; a saddle that does not give with the wall doubles the bending at its tips. What the saddles pull, once the tank wants to leave one, does not count.";
    }

    @Override
    public String formula() {
        return "tip: Q/(4 t (b + 1.56 sqrt(r t))) + 12 K7 Q r/(L t^2), or 3 K7 Q/(2 t^2) from L = 8 r on; below: K5 Q/(t (b + 1.56 sqrt(r t))); shear: sqrt(3) K2 Q (L - 2 a)/(r t L); middle: M/(pi r^2 t)";
    }

    @Override
    public String source() {
        return "L. P. Zick, Welding Journal 1951, in the form of ASME VIII-2 4.15 (read); rigid saddle: a teaching text on PD 5500 (read); factor: common practice, no source";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.CARRIES_TANK);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TANK);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words(
                "saddles that reach further round or are wider, nearer to the tank's ends, or a thicker wall");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Design design = analysis.design();
        Findings make = new Findings(this, design);
        Cradle cradle = design.cradle();
        if (cradle == null) {
            return List.of();
        }
        if (!(design.tank().interior() instanceof CylinderInterior tank)
                || Math.abs(tank.axis().unit().x()) < LENGTHWISE) {
            return List.of(make.cannot("", "the rule is for a round tank that lies lengthwise"));
        }
        Wall wall = design.tank().wall();
        if (wall == null) {
            return List.of(make.missing("", "tank.wall missing"));
        }
        List<Finding> all = new ArrayList<>();
        Rests rests = new Rests(tank, cradle, wall.thickness(), design.site().grade());
        for (int i = 0; i < 2; i++) {
            int which = i;
            String name = i == 0 ? "front saddle" : "rear saddle";
            Extreme most = normal(analysis, row -> rests.load(row, which));
            Text note = Text.of("with {} on it", Text.amount(most.value(), Kind.FORCE));
            try {
                all.addAll(one(make, name, rests.saddle(which), most, cradle, wall, design, note));
            } catch (OutOfRangeException e) {
                all.add(make.cannot(
                        name, Text.words("out of the rule's range: ").plus(e.reason())));
            }
        }
        return all;
    }

    private static List<Finding> one(
            Findings make,
            String name,
            Saddle saddle,
            Extreme most,
            Cradle cradle,
            Wall wall,
            Design design,
            Text note) {
        double load = Math.max(0, most.value());
        double factor = design.factors().wall();
        double[] stresses = {
            Math.abs(saddle.horn(load, cradle.rigid())),
            saddle.bottom(load, cradle.welded()),
            Math.sqrt(3) * Math.abs(saddle.shear(load)),
            Math.abs(saddle.middle(load))
        };
        String[] parts = {"tip of the " + name, "below the " + name, "shear at the " + name, "between, by the " + name};
        List<Finding> all = new ArrayList<>();
        for (int i = 0; i < parts.length; i++) {
            all.add(make.compare(parts[i], new Usage(stresses[i], wall.yield(), factor, Kind.PRESSURE), most, note));
        }
        return all;
    }

    private static Extreme normal(Analysis analysis, ToDoubleFunction<Row> value) {
        return Extreme.largest(Occasion.NORMAL.of(analysis).cases(), null, value);
    }

    /** The two saddles, by their places along the tank's axis from its front end. */
    private static final class Rests {
        private final CylinderInterior tank;
        private final Cradle cradle;
        private final double wall;
        private final double grade;
        private final double front;
        private final double rear;

        Rests(CylinderInterior tank, Cradle cradle, double wall, double grade) {
            this.grade = grade;
            this.tank = tank;
            this.cradle = cradle;
            this.wall = wall;
            double one = along(cradle.at().get(0).x());
            double other = along(cradle.at().get(1).x());
            front = Math.min(one, other);
            rear = Math.max(one, other);
        }

        private double along(double x) {
            return (x - tank.centre().x()) / Math.abs(tank.axis().unit().x());
        }

        Saddle saddle(int which) {
            double place = which == 0 ? front : rear;
            return new Saddle(
                    cradle.angle(),
                    (tank.diameter() + wall) / 2,
                    wall,
                    cradle.width(),
                    tank.length(),
                    tank.length() / 2 - Math.abs(place));
        }

        /**
         * What presses on one of them, N: by the lever rule; what pulls along the tank acts at its axis' height over the saddles, which
         * puts more on the lower one.
         */
        double load(Row row, int which) {
            double weight = row.load().mass() * Gravity.G;
            double square = weight * Math.cos(row.tilt() + grade);
            double down = weight * Math.sin(row.tilt() + grade);
            Vec3 off = row.load().centroid().minus(tank.centre());
            double height = (tank.diameter() + wall) / 2 + off.y();
            double share = new Beam(front, rear).first(new double[] {off.x()}, new double[] {1});
            double shifted = down * height / (rear - front);
            return which == 0 ? square * share - shifted : square * (1 - share) + shifted;
        }
    }
}
