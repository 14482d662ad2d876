// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.LinkedHashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.design.Choice;
import tipwright.design.Design;

/** Knows where each key of the format belongs. */
final class Format {
    private Format() {}

    /** The group that a key belongs to, 'drive.straight', or the group above all that have it; null when there is none. */
    static @Nullable String homeOf(String key) {
        Set<String> homes = new LinkedHashSet<>();
        look(key, Design.class, "", homes);
        String common = null;
        for (String home : homes) {
            common = common == null ? home : shared(common, home);
        }
        return common == null || common.isEmpty() ? null : common;
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
            if (own.type().isRecord() && own.type().getPackage().equals(record.getPackage())) {
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
