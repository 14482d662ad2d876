// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Finds nodes by the paths of {@link Paths}; the numbers of a point are found as '.x', '.y' and '.z' too. */
final class NodePath {
    private static final String AXES = "xyz";

    private NodePath() {}

    /** The node at a path; null when nothing is written there. */
    static @Nullable Node find(Node from, String path) {
        if (path.isEmpty()) {
            return from;
        }
        String rest = path.startsWith(".") ? path.substring(1) : path;
        if (rest.startsWith("[")) {
            int end = rest.indexOf(']');
            Node item = item(from, Integer.parseInt(rest.substring(1, end)) - 1);
            return item == null ? null : find(item, rest.substring(end + 1));
        }
        if (from instanceof Node.Items && rest.length() == 1) {
            return item(from, AXES.indexOf(rest));
        }
        if (from instanceof Node.Fields group) {
            for (Map.Entry<String, Node.Field> e : group.fields().entrySet()) {
                String name = Paths.key("", e.getKey());
                boolean whole = rest.startsWith(name)
                        && (rest.length() == name.length() || ".[".indexOf(rest.charAt(name.length())) >= 0);
                Node found = whole ? find(e.getValue().value(), rest.substring(name.length())) : null;
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    /** An entry of a list; a single value may stand for a list of one. */
    private static @Nullable Node item(Node list, int index) {
        if (list instanceof Node.Items items) {
            return index >= 0 && index < items.items().size() ? items.items().get(index) : null;
        }
        return index == 0 ? list : null;
    }
}
