// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.PointSpec.Mark;
import tipwright.design.tape.Adjusted;
import tipwright.design.tape.NamedPoints;
import tipwright.design.tape.Tape;
import tipwright.geometry.Vec3;

/** The points of one file by name, and points that are written in place of coordinates. */
final class NamedPlaces {
    private static final String NAME = "[A-Za-z][A-Za-z0-9 _.'/-]{0,39}";
    private static final int MOST = 200;

    private final Reader reader;
    private final Map<String, Vec3> places = new LinkedHashMap<>();
    private final Map<String, Boolean> across = new HashMap<>();
    private boolean given;
    private boolean failed;
    private @Nullable TapeNotes notes;
    private @Nullable QuantityBinder quantities;

    NamedPlaces(Reader reader) {
        this.reader = reader;
    }

    /** Reads and places all of them; null with problems noted. */
    @Nullable
    NamedPoints read(Node node, String path, QuantityBinder binder) {
        given = true;
        failed = true;
        quantities = binder;
        Problems problems = reader.problems();
        if (!(node instanceof Node.Fields group)
                || group.fields().isEmpty()
                || group.fields().size() > MOST) {
            String found = node instanceof Node.Fields many ? many.fields().size() + " points" : node.words();
            problems.add(
                    node.place(), path, "1 to " + MOST + " names with their points are needed here; found " + found);
            return null;
        }
        PointReader points = pointReader(binder);
        Map<String, PointSpec> specs = new LinkedHashMap<>();
        boolean good = true;
        for (Map.Entry<String, Node.Field> entry : group.fields().entrySet()) {
            String name = entry.getKey();
            if (!name.matches(NAME)) {
                problems.add(
                        entry.getValue().key(),
                        path,
                        ErrorText.quoted(name)
                                + " is no name for a point; start with a letter, such as 'axle' or 'rail-end'");
                good = false;
                continue;
            }
            PointSpec spec = points.read(name, entry.getValue().value(), Paths.key(path, name));
            good &= spec != null;
            if (spec != null) {
                specs.put(name, spec);
            }
        }
        List<PointSpec> order = good ? ordered(specs) : null;
        return order == null ? null : solved(order, specs.keySet());
    }

    private PointReader pointReader(QuantityBinder binder) {
        Tape own = reader.bound().get("tape", Tape.class);
        return new PointReader(reader, binder, own == null ? Tape.USUAL : own);
    }

    /** Each after those that it is measured from; null with a problem noted. */
    private @Nullable List<PointSpec> ordered(Map<String, PointSpec> specs) {
        Map<String, PointSpec> order = new LinkedHashMap<>();
        for (PointSpec spec : specs.values()) {
            if (!visit(spec, specs, order, new LinkedHashSet<>())) {
                return null;
            }
        }
        return new ArrayList<>(order.values());
    }

    private boolean visit(
            PointSpec spec, Map<String, PointSpec> specs, Map<String, PointSpec> order, Set<String> open) {
        if (order.containsKey(spec.name())) {
            return true;
        }
        open.add(spec.name());
        for (Mark mark : spec.marks()) {
            for (String name : mark.to()) {
                PointSpec other = specs.get(name);
                if (other == null) {
                    unknown(name, mark.place(), mark.path(), specs.keySet());
                    return false;
                }
                if (open.contains(name)) {
                    reader.problems()
                            .add(
                                    mark.place(),
                                    mark.path(),
                                    "goes round in a ring: " + String.join(" from ", open) + " from " + name
                                            + "; give one of them as [x, y], or from points that are known");
                    return false;
                }
                if (!visit(other, specs, order, open)) {
                    return false;
                }
            }
        }
        open.remove(spec.name());
        order.put(spec.name(), spec);
        return true;
    }

    private void unknown(String name, Place place, String path, Set<String> names) {
        reader.problems()
                .add(place, path, "no point is called " + ErrorText.quoted(name) + "; " + ErrorText.meant(name, names));
    }

    private @Nullable NamedPoints solved(List<PointSpec> order, Set<String> names) {
        PointNet net = new PointNet(reader.problems(), reader.units());
        for (PointSpec spec : order) {
            if (!net.add(spec)) {
                return null;
            }
        }
        Adjusted adjusted = null;
        if (net.taped().stream().anyMatch(t -> t.mark() != null)) {
            adjusted = net.adjusted();
            if (adjusted == null) {
                return null;
            }
            notes = new TapeNotes(net, adjusted, reader.units());
            if (reader.bound().get("tape", Tape.class) == null) {
                reader.assume(new Assumption(
                        "tape", "accuracy class ii, held to 2 mm or 1/16 in", "for the points measured by tape"));
            }
        }
        Map<String, Double> doubts = new LinkedHashMap<>();
        for (String name : names) {
            int number = net.number(name);
            places.put(name, net.place(number));
            across.put(name, net.hasZ(number));
            doubts.put(name, adjusted == null ? 0 : adjusted.largestDoubt(number));
        }
        failed = false;
        return new NamedPoints(places, doubts);
    }

    /** Tells how well the tape closes, and refuses readings that spoil the rest. */
    void tell(Problems warnings) {
        if (notes != null) {
            notes.tell(reader, warnings);
        }
    }

    /**
     * A point written as a name, or measured from named points; null with problems noted.
     *
     * @param size 2 or 3
     */
    @Nullable
    Object place(Node node, String path, int size) {
        if (!given && node instanceof Node.Scalar name) {
            String sample = size == 2 ? "[300 mm, 120 mm]" : "[300 mm, 120 mm, 0 mm]";
            reader.problems()
                    .add(
                            name.place(),
                            path,
                            "a point " + (size == 2 ? "[x, y]" : "[x, y, z]") + " is needed, such as " + sample
                                    + "; found "
                                    + name.words()
                                    + (name.text().matches(NAME) ? ", and the file has no 'points:' with names" : ""));
            return null;
        }
        QuantityBinder binder = quantities == null ? new QuantityBinder(reader) : quantities;
        PointSpec spec = pointReader(binder).read("", node, path);
        if (spec == null || failed) {
            return null;
        }
        PointNet net = new PointNet(reader.problems(), reader.units());
        places.forEach((name, at) -> net.known(name, at, across.getOrDefault(name, false)));
        for (Mark mark : spec.marks()) {
            for (String name : mark.to()) {
                if (!places.containsKey(name)) {
                    unknown(name, mark.place(), mark.path(), places.keySet());
                    return null;
                }
            }
        }
        if (!net.add(spec) || (spec.has(PointSpec.How.DISTANCE) && net.adjusted() == null)) {
            return null;
        }
        Vec3 at = net.place(net.number(""));
        if (size == 3 && !net.hasZ(net.number(""))) {
            reader.assume(new Assumption(path, "z 0 mm", "in the middle across; 'z:' tells another place"));
        }
        return size == 2 ? at.xy() : at;
    }
}
