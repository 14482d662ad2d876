// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.SplittableRandom;
import java.util.TreeMap;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.tank.Slurry;
import tipwright.geometry.Bisection;

/** Tolerance analysis: the effect of mounts that are off their place. Mutable inside: owned by one caller. */
public final class Welder {
    /** Runs of the Monte Carlo when nobody asks for another number: the chance is then good to about 1 %. */
    private static final int USUAL_RUNS = 2000;

    /** The same for a mechanism that takes the general analysis: good to about 3 %. */
    private static final int FEWER_RUNS = 300;

    /** Of more coordinates only the corners are tried that the slopes point to. */
    private static final int ALL_CORNERS = 6;

    /** The worst tries are kept, so many of them. */
    private static final int KEPT = 30;

    /** So many tries are made side by side. */
    private static final int BLOCK = 256;

    private static final double LOAD = 0.05;
    private static final double FAR = 0.05;
    private static final double FINE = 5e-5;
    /** What counts as the most when a limit has no measure any more, or the slopes would have none. */
    private static final double MOST = 1000;

    private final Design design;
    private final Trial trial;
    private final int coordinates;
    private final PriorityQueue<Tried> worst = new PriorityQueue<>(Comparator.comparingDouble(Tried::used));

    /**
     * A welder of a design.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn
     */
    public Welder(Design design) throws CannotComputeException {
        this.design = design;
        trial = new Trial(design);
        coordinates = trial.places().size();
    }

    /** Runs of the Monte Carlo when nobody asks for another number. */
    public int usualRuns() {
        return trial.quick() ? USUAL_RUNS : FEWER_RUNS;
    }

    /** The coordinates that can be off, in words. */
    List<String> places() {
        return trial.places();
    }

    /** What the checks say with each coordinate off by some m, in the order of the places. */
    Judgement at(double... off) {
        return trial.at(off);
    }

    /**
     * The answer.
     *
     * @param tolerance of each coordinate, m
     * @param runs of the Monte Carlo: every coordinate anywhere within the tolerance, all alike likely
     */
    public Tolerance tolerance(double tolerance, int runs, long seed) {
        Judgement drawn = at(new double[coordinates]);
        double drawnMost = drawn.utilisation();
        List<Tolerance.Swing> swings = swings(tolerance);
        List<double[]> corners = corners(swings);
        loads(swings);
        swings.sort(Comparator.comparingDouble((Tolerance.Swing s) -> -s.reach(drawnMost)));
        Corner corner = worst(corners, tolerance);
        Map<Limit, Double> chances = new TreeMap<>();
        double chance = monteCarlo(tolerance, runs, seed, chances);
        return new Tolerance(
                tolerance,
                drawnMost,
                drawn.governing(),
                swings,
                corner.utilisation(),
                corner.limit(),
                runs,
                chance,
                chances,
                largest(corners));
    }

    /** One way in which the pins were off, m, and the most that is used then. */
    @SuppressWarnings("ArrayRecordComponent")
    private record Tried(double used, double[] off) {}

    private void keep(double used, double[] off) {
        worst.add(new Tried(used, off.clone()));
        if (worst.size() > KEPT) {
            worst.poll();
        }
    }

    /**
     * What other checks say in the worst of the ways that {@link #tolerance} tried.
     *
     * @param most so many ways, 30 at most
     */
    public OtherChecks others(int most) {
        List<double[]> ways = worst.stream()
                .sorted(Comparator.comparingDouble(Tried::used).reversed())
                .limit(most)
                .map(Tried::off)
                .toList();
        return OtherChecks.of(trial, trial.checked(), ways);
    }

    /** The largest utilisation with every coordinate off by a tolerance in m, the worst way. */
    public double worstCorner(double tolerance) {
        return worst(corners(swings(tolerance)), tolerance).utilisation();
    }

    private List<Tolerance.Swing> swings(double tolerance) {
        List<Tolerance.Swing> swings = new ArrayList<>();
        for (int i = 0; i < coordinates; i++) {
            double[] off = new double[coordinates];
            off[i] = -tolerance;
            Judgement low = at(off);
            off[i] = tolerance;
            swings.add(swing(trial.places().get(i), tolerance, true, low, at(off)));
        }
        return swings;
    }

    private static Tolerance.Swing swing(String name, double size, boolean place, Judgement low, Judgement high) {
        Map<Limit, Double> slopes = new TreeMap<>();
        for (Limit limit : Limit.values()) {
            slopes.put(limit, (Math.min(MOST, high.of(limit)) - Math.min(MOST, low.of(limit))) / (2 * size));
        }
        return new Tolerance.Swing(name, size, place, low.utilisation(), high.utilisation(), slopes);
    }

    /** Density, fill and weight of the empty tank, 5 % either way. */
    private void loads(List<Tolerance.Swing> swings) {
        Slurry s = design.slurry();
        double density = s.mixtureDensity();
        swings.add(swing(
                "slurry density",
                LOAD,
                false,
                trial.with(s.withDensity(Math.max(s.liquidDensity(), density * (1 - LOAD)))),
                trial.with(s.withDensity(Math.min(s.cakeDensity(), density * (1 + LOAD))))));
        double room = new tipwright.load.Contents(design).capacity();
        double fill = Math.min(1, s.volumeIn(room) / room);
        swings.add(swing(
                "fill",
                LOAD,
                false,
                trial.with(s.withFill(fill * (1 - LOAD))),
                trial.with(s.withFill(Math.min(1, fill * (1 + LOAD))))));
        swings.add(swing("weight of the empty tank", LOAD, false, trial.heavier(-LOAD), trial.heavier(LOAD)));
    }

    /**
     * Which way each coordinate is off in the corners that are tried: -1 or 1 [corner][coordinate].
     *
     * @param swings one for each coordinate, in their order
     */
    private List<double[]> corners(List<Tolerance.Swing> swings) {
        List<double[]> all = new ArrayList<>();
        if (coordinates <= ALL_CORNERS) {
            for (int corner = 0; corner < 1 << coordinates; corner++) {
                double[] signs = new double[coordinates];
                for (int i = 0; i < coordinates; i++) {
                    signs[i] = (corner >> i & 1) == 0 ? -1 : 1;
                }
                all.add(signs);
            }
            return all;
        }
        for (Limit limit : Limit.values()) {
            double[] up = new double[coordinates];
            double[] down = new double[coordinates];
            boolean moves = false;
            for (int i = 0; i < coordinates; i++) {
                double slope = swings.get(i).slopes().getOrDefault(limit, 0.0);
                moves |= slope != 0;
                up[i] = slope < 0 ? -1 : 1;
                down[i] = -up[i];
            }
            if (moves) {
                all.add(up);
                all.add(down);
            }
        }
        return all;
    }

    /** Largest utilisation over the corners, and of which limit. */
    private record Corner(double utilisation, Limit limit) {}

    private Corner worst(List<double[]> corners, double tolerance) {
        double most = 0;
        Limit limit = Limit.at(0);
        for (double[] signs : corners) {
            double[] off = new double[coordinates];
            Arrays.setAll(off, i -> signs[i] * tolerance);
            Judgement judged = at(off);
            keep(judged.utilisation(), off);
            if (judged.utilisation() > most) {
                most = judged.utilisation();
                limit = judged.governing();
            }
        }
        return new Corner(most, limit);
    }

    /** Bisects the tolerance; the utilisations grow from the middle outwards as far as they are near linear. */
    private double largest(List<double[]> corners) {
        if (at(new double[coordinates]).utilisation() > 1) {
            return 0;
        }
        if (kept(corners, FAR)) {
            return FAR;
        }
        return Bisection.between(0, FAR, FINE, "the largest tolerance, m", by -> kept(corners, by))
                .good();
    }

    /** Whether every limit is kept in every corner. */
    private boolean kept(List<double[]> corners, double tolerance) {
        for (double[] signs : corners) {
            double[] off = new double[coordinates];
            Arrays.setAll(off, i -> signs[i] * tolerance);
            if (at(off).utilisation() > 1) {
                return false;
            }
        }
        return true;
    }

    private double monteCarlo(double tolerance, int runs, long seed, Map<Limit, Double> chances) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] over = new int[Limit.COUNT];
        int any = 0;
        for (int done = 0; done < runs; done += BLOCK) {
            double[][] ways = new double[Math.min(BLOCK, runs - done)][coordinates];
            for (double[] way : ways) {
                Arrays.setAll(way, i -> tolerance * (2 * random.nextDouble() - 1));
            }
            // the tries side by side, what is kept of them in the order in which they were drawn
            List<Judgement> tried = Arrays.stream(ways).parallel().map(this::at).toList();
            for (int run = 0; run < ways.length; run++) {
                keep(tried.get(run).utilisation(), ways[run]);
                double[] u = tried.get(run).utilisations();
                boolean fails = false;
                for (int i = 0; i < u.length; i++) {
                    if (u[i] > 1) {
                        over[i]++;
                        fails = true;
                    }
                }
                any += fails ? 1 : 0;
            }
        }
        for (int i = 0; i < over.length; i++) {
            if (over[i] > 0) {
                chances.put(Limit.at(i), (double) over[i] / runs);
            }
        }
        return runs == 0 ? 0 : (double) any / runs;
    }
}
