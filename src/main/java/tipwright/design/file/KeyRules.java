// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tipwright.quantity.Spelling;

/** Judges which keys stand in a group. */
final class KeyRules {
    private static final int FEW = 3;

    private final Problems problems;

    KeyRules(Problems problems) {
        this.problems = problems;
    }

    /**
     * Notes keys that a record does not have.
     *
     * @return the record's keys that they were most likely meant to be
     */
    Set<String> unknown(Shape shape, Node.Fields group, String path, Set<String> extra) {
        Set<String> known = new LinkedHashSet<>(extra);
        for (Shape.Key key : shape.keys()) {
            if (!key.loaded()) {
                known.add(key.name());
            }
        }
        return known.containsAll(group.fields().keySet()) ? Set.of() : told(known, group, path);
    }

    private Set<String> told(Set<String> known, Node.Fields group, String path) {
        Set<String> free = new LinkedHashSet<>(known);
        free.removeAll(group.fields().keySet());
        Set<String> meant = new LinkedHashSet<>();
        group.fields().forEach((name, field) -> {
            if (!known.contains(name) && !problems.full()) {
                if (!name.isEmpty() && Character.isDigit(name.charAt(0))) {
                    problems.add(
                            field.key(),
                            path,
                            "a ',' before " + ErrorText.quoted(name) + "; write decimals with a point: ','"
                                    + " starts the next key");
                    return;
                }
                String near = Spelling.nearest(name, free);
                problems.add(
                        field.key(),
                        Paths.key(path, name),
                        "key " + ErrorText.quoted(name) + " is not known here; "
                                + (near == null ? elsewhere(name, known) : "did you mean '" + near + "'?"));
                if (near != null) {
                    meant.add(near);
                }
            }
        });
        return meant;
    }

    private static String elsewhere(String name, Set<String> known) {
        Collection<String> homes = Format.homesOf(name);
        boolean few = !homes.isEmpty() && homes.size() <= FEW;
        return few ? "it belongs to " + ErrorText.oneOf(homes) : "allowed: " + ErrorText.oneOf(known);
    }

    /**
     * Whether exactly one key of each such set is there; what is wrong is noted.
     *
     * @param meant keys that were most likely meant by misspelt ones
     */
    boolean exactlyOne(Shape shape, Node.Fields group, String path, Place at, Set<String> meant) {
        boolean good = true;
        for (List<String> all : shape.exactlyOne()) {
            List<String> given = new ArrayList<>(all);
            given.retainAll(group.fields().keySet());
            good &= given.size() == 1;
            if (given.isEmpty() && all.stream().noneMatch(meant::contains)) {
                String line = shape.keys().stream()
                        .filter(k -> k.name().equals(all.get(0)))
                        .map(Samples::line)
                        .findFirst()
                        .orElse(all.get(0));
                problems.add(at, path, "give one of " + ErrorText.oneOf(all) + "; add a line such as '" + line + "'");
            }
            group.fields().forEach((name, field) -> {
                if (given.indexOf(name) > 0) {
                    problems.add(
                            field.key(),
                            Paths.key(path, name),
                            "'" + given.get(0) + "' and '" + name + "' are both given; keep one");
                }
            });
        }
        return good;
    }
}
