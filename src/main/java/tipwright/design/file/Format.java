// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import tipwright.design.Design;
import tipwright.design.key.Choice;

/** Knows where each key of the format belongs. */
final class Format {
    private Format() {}

    /**
     * The groups that a key belongs to, 'drive.straight'; within one top group the one above all that have it. Empty when no group
     * has it.
     */
    static Collection<String> homesOf(String key) {
        Set<String> homes = new LinkedHashSet<>();
        look(key, Design.class, "", homes);
        Map<String, String> tops = new LinkedHashMap<>();
        for (String home : homes) {
            int dot = home.indexOf('.');
            tops.merge(dot < 0 ? home : home.substring(0, dot), home, Format::shared);
        }
        return tops.values();
    }

    /** The longest path above both, or that both are. */
    private static String shared(String one, String other) {
        String group = one;
        while (!group.isEmpty() && !other.equals(group) && !other.startsWith(group + ".")) {
            group = Paths.above(group);
        }
        return group;
    }

    private static void look(String key, Class<?> record, String path, Set<String> homes) {
        for (Shape.Key own : Shape.of(record).keys()) {
            if (own.name().equals(key)) {
                homes.add(path.isEmpty() ? "the top of the file" : path);
            }
            String below = Paths.key(path, own.name());
            if (own.type().isRecord() && own.type().getPackageName().startsWith(Design.class.getPackageName())) {
                look(key, own.type(), below, homes);
            } else if (own.type().isSealed()) {
                Choice choice = own.type().getAnnotation(Choice.class);
                boolean named = choice != null && choice.value().isEmpty();
                ChoiceBinder.words(own.type())
                        .forEach((word, type) -> look(key, type, named ? Paths.key(below, word) : below, homes));
            }
        }
    }
}
