// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import org.jspecify.annotations.Nullable;

/** Changes single values in the text of a file and leaves every other character as it is, comments too. */
public final class TextEdit {
    private TextEdit() {}

    /**
     * The text with another value.
     *
     * @param text a file that is sound YAML
     * @param path of a single value: 'drive.straight.frame-pin.x', 'tank.openings[1].diameter'
     * @param value the new text, without quotes; they are put around it where YAML needs them
     * @throws IllegalArgumentException when the text is no YAML or has no single value there
     */
    public static String replace(String text, String path, String value) {
        Node old = find(text, path);
        if (!(old instanceof Node.Scalar scalar)) {
            throw new IllegalArgumentException("no single value at '" + path + "'");
        }
        Place place = scalar.place();
        String head = text.substring(0, place.start());
        String tail = text.substring(place.end());
        String gap = head.endsWith(":") ? " " : "";
        for (String written : new String[] {value, quoted(value)}) {
            String edited = head + gap + written + tail;
            if (sameBut(text, edited, path, value)) {
                return edited;
            }
        }
        throw new IllegalArgumentException("'" + value + "' cannot be written at '" + path + "'");
    }

    /**
     * The text with another point.
     *
     * @param path of a point that is given by its coordinates
     * @throws IllegalArgumentException when the text is no YAML or has no such point there
     */
    public static String point(String text, String path, String x, String y) {
        return replace(replace(text, path + ".x", x), path + ".y", y);
    }

    /** Whether the edited text reads as the old one with this value alone changed. */
    private static boolean sameBut(String text, String edited, String path, String value) {
        return find(edited, path) instanceof Node.Scalar now
                && now.text().equals(value)
                && (!now.isNothing() || value.isEmpty())
                && keys(text).equals(keys(edited));
    }

    private static String keys(String text) {
        return String.join("\n", new SourceMap("", read(text)).all().keySet());
    }

    private static @Nullable Node read(String text) {
        return YamlText.read("", text, new Problems());
    }

    private static @Nullable Node find(String text, String path) {
        Node root = read(text);
        Place place = root == null ? null : new SourceMap("", root).find(path);
        return root == null || place == null ? null : at(root, place);
    }

    private static @Nullable Node at(Node node, Place place) {
        if (node.place().equals(place)) {
            return node;
        }
        if (node instanceof Node.Items list) {
            for (Node item : list.items()) {
                Node found = at(item, place);
                if (found != null) {
                    return found;
                }
            }
        } else if (node instanceof Node.Fields group) {
            for (Node.Field field : group.fields().values()) {
                Node found = at(field.value(), place);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    static String quoted(String value) {
        StringBuilder text = new StringBuilder("\"");
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c == '"' || c == '\\') {
                text.append('\\').append(c);
            } else if (c < ' ') {
                text.append(String.format("\\x%02x", (int) c));
            } else {
                text.append(c);
            }
        }
        return text.append('"').toString();
    }
}
