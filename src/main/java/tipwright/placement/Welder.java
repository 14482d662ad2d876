// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Actuator;
import tipwright.design.Design;
import tipwright.design.ListedActuator;
import tipwright.design.Mounts;
import tipwright.design.Slurry;
import tipwright.design.Straight;
import tipwright.geometry.Vec2;

/** Works out what welds that are off do. Mutable inside: owned by one caller. */
public final class Welder {
    /** Runs of the Monte Carlo when nobody asks for another number: the chance is then good to about 1 %. */
    public static final int USUAL_RUNS = 2000;

    private static final String[] PLACES = {
        "frame pin x", "frame pin y", "tank pin x", "tank pin y", "pivot x", "pivot y"
    };
    private static final double LOAD = 0.05;
    private static final double FAR = 0.05;
    private static final double FINE = 5e-5;

    private final Design design;
    private final Straight straight;
    private final TiltLoads drawn;
    private final TiltLoads alongX;
    private final TiltLoads alongY;
    private final ListedActuator actuator;
    private final double wantedTime;
    private final Judge judge;
    private final double[] utilisations = new double[Judge.LIMITS];

    /**
     * A welder of a design.
     *
     * @throws CannotComputeException when the drive is not a straight one
     */
    public Welder(Design design) throws CannotComputeException {
        this.design = design;
        straight = TiltLoads.straight(design);
        drawn = TiltLoads.of(design);
        alongX = Task.moved(design, new Vec2(Task.STEP, 0));
        alongY = Task.moved(design, new Vec2(0, Task.STEP));
        Actuator a = straight.actuators().get(0).actuator();
        actuator = new ListedActuator("as drawn", a);
        Mounts mounts = design.mounts();
        Double time = mounts == null ? null : mounts.wants().time();
        wantedTime = time == null ? Double.POSITIVE_INFINITY : time;
        judge = new Judge(design, actuator, drawn, wantedTime);
    }

    /** Utilisations with each coordinate off by some m [frame x, frame y, tank x, tank y, pivot x, pivot y]; not to be kept. */
    double[] at(double... off) {
        Vec2 pivot = new Vec2(off[4], off[5]);
        TiltLoads loads = drawn;
        Judge here = judge;
        if (pivot.norm() > 0) {
            loads = drawn.towards(
                    drawn.pivot().plus(pivot), alongX, alongY, pivot.x() / Task.STEP, pivot.y() / Task.STEP);
            here = judge.withLoads(loads, wantedTime);
        }
        Vec2 frame = straight.framePin().plus(new Vec2(off[0], off[1]));
        Vec2 tank = straight.tankPin().plus(new Vec2(off[2], off[3]));
        return judged(here, loads, frame, tank);
    }

    private double[] judged(Judge here, TiltLoads loads, Vec2 frame, Vec2 tank) {
        Detail detail = new Detail(loads, here.pinRadii);
        detail.run(frame, tank, here.housing);
        here.exact(detail, utilisations);
        return utilisations;
    }

    /**
     * The answer.
     *
     * @param tolerance of each coordinate, m
     * @param runs of the Monte Carlo: every coordinate anywhere within the tolerance, all alike likely
     */
    public Tolerance tolerance(double tolerance, int runs, long seed) throws CannotComputeException {
        double[] u = at(new double[6]);
        int g = Judge.governing(u);
        double drawnMost = u[g];
        List<Tolerance.Swing> swings = new ArrayList<>();
        for (int i = 0; i < PLACES.length; i++) {
            double[] off = new double[6];
            off[i] = -tolerance;
            double[] low = at(off).clone();
            off[i] = tolerance;
            swings.add(swing(PLACES[i], tolerance, true, low, at(off).clone()));
        }
        loads(swings);
        swings.sort(Comparator.comparingDouble((Tolerance.Swing s) -> -s.reach(drawnMost)));
        double[] corner = corners(tolerance);
        EnumMap<Limit, Double> chances = new EnumMap<>(Limit.class);
        double chance = monteCarlo(tolerance, runs, seed, chances);
        return new Tolerance(
                tolerance,
                drawnMost,
                Limit.at(g),
                swings,
                corner[0],
                Limit.at((int) corner[1]),
                runs,
                chance,
                chances,
                largest());
    }

    private static Tolerance.Swing swing(String name, double size, boolean place, double[] low, double[] high) {
        Map<Limit, Double> slopes = new EnumMap<>(Limit.class);
        for (int i = 0; i < low.length; i++) {
            slopes.put(Limit.at(i), (high[i] - low[i]) / (2 * size));
        }
        return new Tolerance.Swing(name, size, place, low[Judge.governing(low)], high[Judge.governing(high)], slopes);
    }

    /** Density, fill and weight of the empty tank, 5 % either way. */
    private void loads(List<Tolerance.Swing> swings) throws CannotComputeException {
        Slurry s = design.slurry();
        double density = s.mixtureDensity();
        swings.add(swing(
                "slurry density",
                LOAD,
                false,
                with(s.withDensity(Math.max(s.liquidDensity(), density * (1 - LOAD)))),
                with(s.withDensity(Math.min(s.cakeDensity(), density * (1 + LOAD))))));
        double room = new tipwright.load.Contents(design).capacity();
        double fill = Math.min(1, s.volumeIn(room) / room);
        swings.add(swing(
                "fill",
                LOAD,
                false,
                with(s.withFill(fill * (1 - LOAD))),
                with(s.withFill(Math.min(1, fill * (1 + LOAD))))));
        int empty = drawn.names().indexOf("empty");
        if (empty >= 0 && design.assists().isEmpty()) {
            swings.add(swing("weight of the empty tank", LOAD, false, heavier(empty, -LOAD), heavier(empty, LOAD)));
        }
    }

    private double[] with(Slurry slurry) throws CannotComputeException {
        TiltLoads loads = TiltLoads.of(design.withSlurry(slurry));
        Judge here = new Judge(design, actuator, loads, wantedTime);
        return judged(here, loads, straight.framePin(), straight.tankPin()).clone();
    }

    /** Every load is the empty tank's and its contents', so more tank is more of the empty tank's. */
    private double[] heavier(int empty, double share) {
        TiltLoads loads = drawn.plus(empty, share);
        return judged(judge.withLoads(loads, wantedTime), loads, straight.framePin(), straight.tankPin())
                .clone();
    }

    /** Largest utilisation over the corners, and the limit's place. */
    private double[] corners(double tolerance) {
        double most = 0;
        int limit = 0;
        for (int corner = 0; corner < 64; corner++) {
            double[] off = new double[6];
            for (int i = 0; i < 6; i++) {
                off[i] = (corner >> i & 1) == 0 ? -tolerance : tolerance;
            }
            double[] u = at(off);
            int g = Judge.governing(u);
            if (u[g] > most) {
                most = u[g];
                limit = g;
            }
        }
        return new double[] {most, limit};
    }

    /** Bisects the tolerance; the utilisations grow from the middle outwards as far as they are near linear. */
    private double largest() {
        double good = 0;
        double bad = FAR;
        double[] u = at(new double[6]);
        if (u[Judge.governing(u)] > 1) {
            return 0;
        }
        if (corners(bad)[0] <= 1) {
            return bad;
        }
        while (bad - good > FINE) {
            double middle = 0.5 * (good + bad);
            if (corners(middle)[0] <= 1) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return good;
    }

    private double monteCarlo(double tolerance, int runs, long seed, Map<Limit, Double> chances) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] over = new int[Judge.LIMITS];
        int any = 0;
        double[] off = new double[6];
        for (int run = 0; run < runs; run++) {
            for (int i = 0; i < 6; i++) {
                off[i] = tolerance * (2 * random.nextDouble() - 1);
            }
            double[] u = at(off);
            boolean fails = false;
            for (int i = 0; i < u.length; i++) {
                if (u[i] > 1) {
                    over[i]++;
                    fails = true;
                }
            }
            any += fails ? 1 : 0;
        }
        for (int i = 0; i < over.length; i++) {
            if (over[i] > 0) {
                chances.put(Limit.at(i), (double) over[i] / runs);
            }
        }
        return runs == 0 ? 0 : (double) any / runs;
    }
}
