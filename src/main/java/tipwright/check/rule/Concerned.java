// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import tipwright.outline.MachinePart;
import tipwright.outline.PartKind;

/**
 * Which parts of the machine, as the outlines have them, a finding is about: what a picture marks.
 *
 * @param kinds that come into question
 * @param words in which some of them may be named: 'frame pin tear out', 'tank to left rail'
 * @param named whether only those count that are named; else all of the kinds where none is
 */
public record Concerned(Set<PartKind> kinds, String words, boolean named) {
    /** Nothing that is to be seen. */
    public static final Concerned NOTHING = new Concerned(Set.of(), "", true);

    /** Copies the set. */
    public Concerned {
        kinds = Set.copyOf(kinds);
    }

    /** Those of some kinds that the finding's id names; all of the kinds where it names none. */
    public static Concerned of(Set<PartKind> kinds, Finding finding) {
        return new Concerned(kinds, finding.partId(), false);
    }

    /** Those of some kinds that the finding's id names; none where it names none. */
    public static Concerned named(Set<PartKind> kinds, Finding finding) {
        return new Concerned(kinds, finding.partId(), true);
    }

    /** Those parts among all of a machine. */
    public List<MachinePart> among(List<MachinePart> parts) {
        List<MachinePart> some = parts.stream()
                .filter(p -> !p.kind().limit() && kinds.contains(p.kind()))
                .toList();
        List<MachinePart> told = told(some);
        return told.isEmpty() && !named ? some : told;
    }

    /** Longer names first, so that the frame pin is not found in 'tie frame pin'; a part's own name before what others are called too. */
    private List<MachinePart> told(List<MachinePart> some) {
        List<String> names = some.stream()
                .flatMap(p -> p.calledAlso().stream())
                .map(Concerned::plain)
                .distinct()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .toList();
        List<MachinePart> told = new ArrayList<>();
        String text = plain(words);
        for (String name : names) {
            if (text.contains(name)) {
                text = text.replace(name, " , ");
                told.addAll(called(some, name));
            }
        }
        return told.stream().distinct().toList();
    }

    private static List<MachinePart> called(List<MachinePart> some, String name) {
        List<MachinePart> own =
                some.stream().filter(p -> plain(p.name()).equals(name)).toList();
        List<MachinePart> all = new ArrayList<>(own);
        some.stream()
                .filter(p -> own.stream().noneMatch(o -> o.kind() == p.kind()))
                .filter(p -> p.calledAlso().stream().anyMatch(n -> plain(n).equals(name)))
                .forEach(all::add);
        return all;
    }

    /** Words with a blank before and after each, so that 'tank' is not found in 'tanker'. */
    private static String plain(String words) {
        return " "
                + words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9+]+", " ").strip() + " ";
    }
}
