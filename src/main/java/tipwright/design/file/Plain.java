// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What nodes hold, without their places: maps, lists and texts. */
final class Plain {
    /** What stands for a value that was not written. */
    private static final Object NOTHING = List.of("nothing", Map.of());

    private Plain() {}

    static Object any(Node node) {
        return with(node, null, NOTHING);
    }

    static Map<String, Object> of(Node.Fields group) {
        Map<String, Object> all = new LinkedHashMap<>();
        group.fields().forEach((key, field) -> all.put(key, any(field.value())));
        return all;
    }

    static List<Object> of(Node.Items list) {
        return list.items().stream().map(Plain::any).toList();
    }

    /** What a node holds with something else in place of one of those in it. */
    static Object with(Node node, @Nullable Node target, Object instead) {
        if (node == target) {
            return instead;
        }
        if (node instanceof Node.Fields group) {
            Map<String, Object> all = new LinkedHashMap<>();
            group.fields().forEach((key, field) -> all.put(key, with(field.value(), target, instead)));
            return all;
        }
        if (node instanceof Node.Items list) {
            List<Object> all = new ArrayList<>();
            list.items().forEach(item -> all.add(with(item, target, instead)));
            return all;
        }
        Node.Scalar scalar = (Node.Scalar) node;
        return scalar.isNothing() ? NOTHING : scalar.text();
    }

    /** What a value on one line holds. */
    static Object ofYaml(String yaml) {
        Node read = YamlText.read("", "{a: " + yaml + "}", new Problems());
        if (!(read instanceof Node.Fields group) || group.fields().size() != 1) {
            throw new IllegalArgumentException("'" + yaml + "' cannot be written on one line");
        }
        return any(group.fields().values().iterator().next().value());
    }

    /** A text as it is written in a file: with quotes where it needs them. */
    static String scalar(String text) {
        Node read = YamlText.read("", "{a: " + text + "}", new Problems());
        Node.Field field = read instanceof Node.Fields group && group.fields().size() == 1
                ? group.fields().get("a")
                : null;
        boolean plain = field != null
                && field.value() instanceof Node.Scalar scalar
                && scalar.plain()
                && !scalar.isNothing()
                && scalar.text().equals(text);
        return plain ? text : TextEdit.quoted(text);
    }
}
