// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.PointSpec.How;
import tipwright.design.file.PointSpec.Mark;
import tipwright.design.tape.Adjusted;
import tipwright.design.tape.Adjustment;
import tipwright.design.tape.Observation;
import tipwright.design.tape.WeakNetException;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.UnitSystem;

/** Places points one after the other, then all together so that every reading fits best. */
final class PointNet {
    private static final double EXACT = 1e-6;

    private final Problems problems;
    private final UnitSystem units;
    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private final List<double[]> places = new ArrayList<>();
    private final List<boolean[]> free = new ArrayList<>();
    private final List<Boolean> across = new ArrayList<>();
    private final List<Taped> taped = new ArrayList<>();

    PointNet(Problems problems, UnitSystem units) {
        this.problems = problems;
        this.units = units;
    }

    /**
     * A reading with where it comes from.
     *
     * @param mark null for what follows by itself, such as 'straight above'
     */
    record Taped(Observation observation, PointSpec spec, @Nullable Mark mark) {}

    /** A point that is known already. */
    void known(String name, Vec3 at, boolean hasZ) {
        numbers.put(name, places.size());
        places.add(new double[] {at.x(), at.y(), at.z()});
        free.add(new boolean[3]);
        across.add(hasZ);
    }

    int number(String name) {
        return numbers.getOrDefault(name, -1);
    }

    List<Taped> taped() {
        return taped;
    }

    Vec3 place(int number) {
        double[] p = places.get(number);
        return new Vec3(p[0], p[1], p[2]);
    }

    /** Whether its place along the pivot is said, be it by a point that it is measured from. */
    boolean hasZ(int number) {
        return across.get(number);
    }

    /** Places one point by others that are placed; false with a problem noted. */
    boolean add(PointSpec spec) {
        Vec3 fixed = spec.fixed();
        if (fixed != null) {
            known(spec.name(), fixed, spec.z() != null);
            return true;
        }
        Double z = z(spec);
        if (z == null) {
            return false;
        }
        Vec2 at = new PointStart(this, spec, z, problems, units).find();
        if (at == null) {
            return false;
        }
        int number = places.size();
        numbers.put(spec.name(), number);
        places.add(new double[] {at.x(), at.y(), z});
        free.add(new boolean[] {true, true, false});
        across.add(spec.z() != null || refs(spec).stream().anyMatch(this::hasZ));
        observe(spec, number);
        return true;
    }

    private List<Integer> refs(PointSpec spec) {
        return spec.marks().stream()
                .flatMap(m -> m.to().stream())
                .map(this::number)
                .toList();
    }

    private @Nullable Double z(PointSpec spec) {
        if (spec.z() != null) {
            return spec.z();
        }
        double[] all = refs(spec).stream().mapToDouble(r -> places.get(r)[2]).toArray();
        for (double z : all) {
            if (Math.abs(z - all[0]) > EXACT) {
                problems.add(
                        spec.place(),
                        spec.path(),
                        "the points that it is measured from are not in one plane along the pivot; add 'z: 0 mm' or where"
                                + " this point is");
                return null;
            }
        }
        return all[0];
    }

    private void observe(PointSpec spec, int number) {
        int[] steps = new int[2];
        int first = -1;
        for (Mark mark : spec.marks()) {
            int to = number(mark.to().get(0));
            first = first < 0 ? to : first;
            int other = mark.to().size() > 1 ? number(mark.to().get(1)) : -1;
            PointSpec.Side side = mark.side();
            switch (mark.how()) {
                case DISTANCE -> put(new Observation.Distance(to, number, mark.length(), mark.doubt()), spec, mark);
                case STEP -> {
                    if (side != null) {
                        steps[side.axis()]++;
                        double length = side.sign() * mark.length();
                        put(new Observation.Step(to, number, side.axis(), length, mark.doubt()), spec, mark);
                    }
                }
                case SAME -> same(spec, to, number);
                case ALONG -> {
                    put(new Observation.OnLine(to, other, number, EXACT), spec, null);
                    put(new Observation.Distance(to, number, mark.length(), mark.doubt()), spec, mark);
                }
                case MIDDLE -> {
                    put(new Observation.Middle(to, other, number, 0, EXACT), spec, null);
                    put(new Observation.Middle(to, other, number, 1, EXACT), spec, null);
                }
            }
        }
        if (spec.has(How.STEP) && !spec.has(How.DISTANCE)) {
            for (int axis = 0; axis < 2; axis++) {
                if (steps[axis] == 0) {
                    put(new Observation.Step(first, number, axis, 0, EXACT), spec, null);
                }
            }
        }
    }

    private void same(PointSpec spec, int to, int number) {
        put(new Observation.Step(to, number, 0, 0, EXACT), spec, null);
        put(new Observation.Step(to, number, 1, 0, EXACT), spec, null);
    }

    private void put(Observation observation, PointSpec spec, @Nullable Mark mark) {
        taped.add(new Taped(observation, spec, mark));
    }

    /** All points so that every reading but one fits best; null when they cannot be told. */
    @Nullable
    Adjusted without(Taped left) {
        List<Taped> others = new ArrayList<>(taped);
        others.remove(left);
        try {
            return Adjustment.solve(
                    places.toArray(double[][]::new), free.toArray(boolean[][]::new), observations(others));
        } catch (WeakNetException open) {
            return null;
        }
    }

    /** All points so that every reading fits best; null with a problem noted. */
    @Nullable
    Adjusted adjusted() {
        try {
            Adjusted all = Adjustment.solve(
                    places.toArray(double[][]::new), free.toArray(boolean[][]::new), observations(taped));
            for (int i = 0; i < places.size(); i++) {
                Vec3 p = all.place(i);
                places.set(i, new double[] {p.x(), p.y(), p.z()});
            }
            return all;
        } catch (WeakNetException open) {
            PointSpec spec = taped.get(taped.size() - 1).spec();
            for (Taped t : taped) {
                if (number(t.spec().name()) == open.point()) {
                    spec = t.spec();
                }
            }
            problems.add(spec.place(), spec.path(), PointStart.inLine(spec, open.upAndDown()));
            return null;
        }
    }

    private static List<Observation> observations(List<Taped> some) {
        return some.stream().map(Taped::observation).toList();
    }
}
