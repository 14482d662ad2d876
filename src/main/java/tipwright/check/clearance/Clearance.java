// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import tipwright.analysis.Analysis;
import tipwright.analysis.JointPlan;
import tipwright.geometry.Bisection;
import tipwright.geometry.MadeOnce;
import tipwright.geometry.Vec2;
import tipwright.outline.MachinePart;
import tipwright.outline.MachineParts;
import tipwright.outline.OutlineGeometry;
import tipwright.outline.PartKind;
import tipwright.outline.ReceiverEdges;
import tipwright.outline.ZRange;

/**
 * The gaps between all that moves and all that it could run into: tank and attached parts, swinging doors, links and actuators, against
 * frame members, obstacles, ground and the edges of the receiver, and against each other where they are not one body. Within the pin zone of a joint that two
 * parts share they may touch.
 */
public final class Clearance {
    private static final double REST_OFF = Math.toRadians(3);
    private static final double FARTHEST = 0.5;
    private static final double STEP = 5e-3;
    private static final double FINE = 0.1e-3;

    private final Analysis analysis;
    private final Scene scene;
    private final Motions motions;
    private final IdentityHashMap<Geometry, IdentityHashMap<Vec2, Geometry>> cut = new IdentityHashMap<>();
    private final double wanted;
    private final double pinZone;
    private final List<Vec2> ways = List.of(new Vec2(0, -1), new Vec2(0, 1), new Vec2(-1, 0), new Vec2(1, 0));

    private Clearance(Analysis analysis, Scene scene) {
        this.analysis = analysis;
        this.scene = scene;
        motions = scene.motions;
        wanted = analysis.design().limits().clearance();
        pinZone = analysis.design().limits().pinZone();
    }

    /**
     * Who moves and what is in the way.
     *
     * @param swings of the doors, which are the first of the parts
     * @param parts those that move first
     */
    private record Scene(Motions motions, IdentityHashMap<MachinePart, Motions.Path> swings, List<MachinePart> parts) {
        static Scene of(Analysis analysis) {
            Motions motions = new Motions(analysis);
            IdentityHashMap<MachinePart, Motions.Path> swings = new IdentityHashMap<>();
            List<MachinePart> parts = new ArrayList<>();
            for (SwingingDoors.Swing swing : SwingingDoors.doors(analysis, motions)) {
                swings.put(swing.door(), swing.path());
                parts.add(swing.door());
            }
            MachineParts.of(analysis).stream().filter(MachinePart::solid).forEach(parts::add);
            parts.addAll(ReceiverEdges.of(analysis.design()));
            return new Scene(motions, swings, parts);
        }
    }

    /** Parts that move, in the order in which they stand among all. */
    private enum Movers {
        DOORS,
        TANK,
        OTHERS;

        static Movers of(MachinePart part, int tank) {
            if (part.kind() == PartKind.DOOR) {
                return DOORS;
            }
            return part.body() == tank && !part.kind().actuator() ? TANK : OTHERS;
        }
    }

    /**
     * The smallest gap of one pair over the tilt range.
     *
     * @param moving what moves
     * @param other what it could run into
     * @param rest whether the stowed tank lies on it, so that only touching it again counts
     * @param gap m; 0 when they touch or overlap
     * @param tilt where it is smallest, or where they first touch, rad
     * @param moves how the other one would have to be moved for the wanted gap, shortest first; empty: no need or no way found
     */
    public record Gap(String moving, String other, boolean rest, double gap, double tilt, List<Move> moves) {}

    /**
     * A way to make room.
     *
     * @param towards unit vector in the side view
     * @param by m
     */
    public record Move(Vec2 towards, double by) {}

    /** All pairs whose places along the pivot axis overlap. */
    public static List<Gap> of(Analysis analysis) {
        List<Gap> all = new ArrayList<>();
        nearest(analysis, Integer.MAX_VALUE).forEach(some -> all.addAll(some.get()));
        return all;
    }

    /**
     * Of each part that moves, the pairs that are nearer than wanted and the nearest of the others; and all with what it rests on. In
     * pieces that several threads may ask for; each is worked out by one of them.
     *
     * @param each number of others
     */
    static List<Supplier<List<Gap>>> nearest(Analysis analysis, int each) {
        MadeOnce<Scene> scene = new MadeOnce<>(() -> Scene.of(analysis));
        List<Supplier<List<Gap>>> pieces = new ArrayList<>();
        for (Movers movers : Movers.values()) {
            pieces.add(new MadeOnce<>(() -> new Clearance(analysis, scene.get()).all(movers, each)));
        }
        return pieces;
    }

    private List<Gap> all(Movers movers, int each) {
        List<MachinePart> parts = scene.parts;
        int tank = analysis.mechanism().tank();
        List<Pair> pairs = new ArrayList<>();
        Map<List<Object>, Integer> numbers = new HashMap<>();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                MachinePart a = parts.get(i);
                MachinePart b = parts.get(j);
                if (a.kind().moves()
                        && Movers.of(a, tank) == movers
                        && apart(a, b)
                        && a.form().z().overlaps(b.form().z())) {
                    // a door may be there twice, once for each way that it swings
                    Object moves = a.kind() == PartKind.DOOR ? a.name() : i;
                    Pair pair = pair(a, b, numbers.computeIfAbsent(List.of(moves, j), k -> numbers.size()));
                    if (pair != null) {
                        pairs.add(pair);
                    }
                }
            }
        }
        Map<String, List<Pair>> byMover = new HashMap<>();
        pairs.forEach(pair ->
                byMover.computeIfAbsent(pair.a().name(), m -> new ArrayList<>()).add(pair));
        Map<Integer, Gap> found = new TreeMap<>();
        byMover.values().forEach(ofOne -> found.putAll(nearest(ofOne, each)));
        return List.copyOf(found.values());
    }

    /** What can be left out of the pairs of one part is left out: those that are sure to be further off than the nearest. */
    private Map<Integer, Gap> nearest(List<Pair> pairs, int each) {
        Map<Integer, Gap> found = new HashMap<>();
        PriorityQueue<Double> near = new PriorityQueue<>((a, b) -> Double.compare(b, a));
        List<Pair> nearFirst = new ArrayList<>(pairs);
        nearFirst.sort((a, b) -> Double.compare(a.guess(), b.guess()));
        for (Pair pair : nearFirst) {
            boolean all = pair.rest() || near.size() < each;
            Gap gap = gap(pair, all ? Double.POSITIVE_INFINITY : Math.max(wanted, near.element()));
            if (gap != null) {
                Gap had = found.put(pair.number(), gap);
                if (had != null) {
                    found.put(pair.number(), gap.gap() < had.gap() ? gap : had);
                } else if (!gap.rest() && gap.gap() >= wanted) {
                    near.add(gap.gap());
                    if (near.size() > each) {
                        near.remove();
                    }
                }
            }
        }
        return found;
    }

    /** Whether two parts can come near each other: not one body, and not the two halves of an actuator. */
    private static boolean apart(MachinePart a, MachinePart b) {
        if (a.kind().actuator() || b.kind().actuator()) {
            return !(a.kind().actuator() && b.kind().actuator());
        }
        return a.body() != b.body();
    }

    private record Pair(int number, MachinePart a, MachinePart b, boolean rest, GapSearch search, double guess) {}

    private @Nullable Pair pair(MachinePart a, MachinePart b, int number) {
        ZRange common = a.form().z().and(b.form().z());
        Geometry first = a.form().within(common);
        Geometry second = b.form().within(common);
        for (Vec2 pin : shared(a, b)) {
            first = without(first, a, pin);
            second = without(second, b, pin);
        }
        if (first.isEmpty() || second.isEmpty()) {
            return null;
        }
        boolean rest = b.kind() == PartKind.REST;
        GapSearch search = new GapSearch(motions, first, path(a), second, path(b), rest ? 0 : wanted);
        return new Pair(number, a, b, rest, search, search.guess());
    }

    private @Nullable Gap gap(Pair pair, double below) {
        double from = pair.rest() ? offTheRest(pair.search()) : 0;
        GapSearch.Gap found = pair.search().smallest(from, below);
        if (found == null) {
            return null;
        }
        PartKind other = pair.b().kind();
        boolean tight = !pair.rest() && found.gap() < wanted;
        List<Move> moves = tight && !other.moves() && other != PartKind.GROUND ? moves(pair.search()) : List.of();
        return new Gap(pair.a().name(), pair.b().name(), pair.rest(), found.gap(), motions.tilt(found.pose()), moves);
    }

    /** What is left of a part around a pin, made once: a tank is held against every member of the frame. */
    private Geometry without(Geometry area, MachinePart part, Vec2 pin) {
        return cut.computeIfAbsent(area, a -> new IdentityHashMap<>())
                .computeIfAbsent(pin, p -> OutlineGeometry.without(area, part.own(p), pinZone));
    }

    private Motions.Path path(MachinePart part) {
        Motions.Path swing = scene.swings.get(part);
        return swing == null ? motions.of(part) : swing;
    }

    /** First pose at which it has come off the rest; the first of all, where it touches, when it has not soon. */
    private double offTheRest(GapSearch search) {
        for (int i = 0; i <= motions.last() && motions.tilt(i) - motions.tilt(0) <= REST_OFF; i++) {
            if (search.at(i) > 0) {
                return i;
            }
        }
        return 0;
    }

    /** Stowed places of the pins that two parts share; the frame's members all count as the frame. */
    private List<Vec2> shared(MachinePart a, MachinePart b) {
        List<Vec2> pins = new ArrayList<>();
        if (a.kind() == PartKind.DOOR
                || b.kind() == PartKind.OBSTACLE
                || b.kind() == PartKind.GROUND
                || b.kind() == PartKind.WHEEL
                || b.kind() == PartKind.RECEIVER) {
            return pins;
        }
        if (a.kind().actuator() || b.kind().actuator()) {
            MachinePart half = a.kind().actuator() ? a : b;
            MachinePart other = a.kind().actuator() ? b : a;
            if (half.body() == other.body()) {
                pins.add(half.kind() == PartKind.TUBE ? motions.framePin() : motions.tankPin());
            }
            return pins;
        }
        for (JointPlan joint : analysis.mechanism().joints()) {
            if (Set.of(joint.a(), joint.b()).equals(Set.of(a.body(), b.body()))) {
                pins.add(joint.at());
            }
        }
        return pins;
    }

    /** The shortest shifts of the second part, down, up, back and forward, that make the gap wanted. */
    private List<Move> moves(GapSearch search) {
        List<Move> moves = new ArrayList<>();
        for (Vec2 way : ways) {
            double by = shift(search, way);
            if (!Double.isNaN(by)) {
                moves.add(new Move(way, by));
            }
        }
        moves.sort((p, q) -> Double.compare(p.by(), q.by()));
        return moves;
    }

    /** How far to go one way until the gap is as wanted, m; NaN when that is too far. */
    private double shift(GapSearch search, Vec2 way) {
        double tight = 0;
        double by = 0;
        double gap = 0;
        while (gap < wanted) {
            if (by > FARTHEST) {
                return Double.NaN;
            }
            tight = by;
            by += Math.max(wanted - gap, STEP);
            gap = search.shifted(way.times(by)).smallest(0).gap();
        }
        String what = "how far a part must be moved to be clear, m";
        return Bisection.between(
                        by,
                        tight,
                        FINE,
                        what,
                        far -> !(search.shifted(way.times(far)).smallest(0).gap() < wanted))
                .good();
    }
}
