// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.FieldMeaning.Sort;
import tipwright.design.key.Annotated;
import tipwright.geometry.Vec2;

/**
 * Changes fields in the text of a design file; comments and the order of the rest stay as written. Whether the new text is a sound
 * design is for the reader to say. All throw IllegalArgumentException, with a sentence for the builder, where a text cannot be
 * changed so.
 */
public final class FieldEdit {
    private static final String BLANK = "\"\"";

    private FieldEdit() {}

    /**
     * The text with a value as typed. Of keys of which one is given, the others go. An empty value takes the key out, where it may be
     * left out.
     */
    public static String set(FileFields fields, String path, String typed) {
        String text = fields.text();
        FileField field = field(fields, path);
        String value = typed.strip();
        if (value.isEmpty() && !field.meaning().mandatory() && !isCoordinate(fields, path)) {
            return field.written() ? takeOut(text, path) : text;
        }
        if (field.meaning().sort() == Sort.KINDS && field.meaning().words().contains(value)) {
            return choose(text, path, value);
        }
        String edited = text;
        String group = path.substring(
                0, Math.max(0, path.length() - field.meaning().key().length() - 1));
        for (String other : field.inPlaceOf()) {
            FileField sister = fields.find(Paths.key(group, other));
            if (sister != null && sister.written() && !field.written()) {
                Rewriter without = new Rewriter(edited);
                edited = without.withoutKey(group(without, group), other);
            }
        }
        return put(edited, fields, path, yaml(field.meaning().sort(), value));
    }

    /**
     * The text with a point by its coordinates.
     *
     * @param x as typed
     * @param y as typed
     */
    public static String point(String text, String path, String x, String y) {
        String half = set(FileFields.of(text), path + ".x", x);
        return set(FileFields.of(half), path + ".y", y);
    }

    private static boolean isCoordinate(FileFields fields, String path) {
        Sort around = fields.around(path).meaning().sort();
        return (around == Sort.POINT || around == Sort.SIZES) && path.matches(".*\\.[xyz]");
    }

    private static String yaml(Sort sort, String value) {
        boolean list = value.indexOf(',') >= 0 && (sort == Sort.POINT || sort == Sort.DIRECTION || sort == Sort.SIZES);
        if (!list) {
            return Plain.scalar(value);
        }
        boolean braced = value.startsWith("[") && value.endsWith("]");
        String inside = braced ? value.substring(1, value.length() - 1) : value;
        return Arrays.stream(inside.split(",", -1))
                .map(v -> Plain.scalar(v.strip()))
                .collect(Collectors.joining(", ", "[", "]"));
    }

    /** The text with a group, a list or a point added that is not there: what has to be given in it is left blank. */
    public static String add(String text, String path) {
        FileField field = field(FileFields.of(text), path);
        return field.written() ? text : put(text, path, blank(field.meaning(), ""));
    }

    /** The text with a point placed by tape in place of its coordinates, or by its coordinates in place of the tape. */
    public static String placeBy(String text, String path, boolean tape) {
        FileField field = field(FileFields.of(text), path);
        return put(text, path, tape ? "{from: {}}" : blank(field.meaning(), ""));
    }

    /** The text without a field, or without a list's entry; a group that would be left with nothing and says nothing goes too. */
    public static String takeOut(String text, String path) {
        FileFields fields = FileFields.of(text);
        Rewriter rewriter = new Rewriter(text);
        if (path.endsWith("]")) {
            int start = path.lastIndexOf('[');
            Node list = NodePath.find(rewriter.root(), path.substring(0, start));
            int index = Integer.parseInt(path.substring(start + 1, path.length() - 1)) - 1;
            if (list instanceof Node.Items items && index < items.items().size()) {
                return items.items().size() == 1 && isNone(fields.find(path.substring(0, start)))
                        ? takeOut(text, path.substring(0, start))
                        : rewriter.withoutItem(items, index);
            }
            return takeOut(text, path.substring(0, start));
        }
        FileField field = field(fields, path);
        String key = field.meaning().key();
        String above = path.substring(0, Math.max(0, path.length() - key.length() - 1));
        Node.Fields group = group(rewriter, above);
        boolean alone = group.fields().size() == 1;
        return alone && isNone(fields.find(above)) ? takeOut(text, above) : rewriter.withoutKey(group, key);
    }

    /** Whether a field with nothing in it means the same as no such field. */
    private static boolean isNone(@Nullable FileField field) {
        return field != null && FieldMeaning.isNone(field.meaning().usual());
    }

    /**
     * The text with another kind in a group with kinds, or with the group if it was not there. Keys that the new kind has too stay as
     * written, others go; what has to be given is left blank.
     */
    public static String choose(String text, String path, String kind) {
        FileField field = field(FileFields.of(text), path);
        FieldMeaning m = field.meaning();
        Class<?> record = record(m, kind);
        Rewriter old = new Rewriter(text);
        if (!(NodePath.find(old.root(), path) instanceof Node.Fields group)
                || field.text().isEmpty()) {
            return put(text, path, blank(m, kind));
        }
        if (field.text().equals(kind)) {
            return text;
        }
        boolean only = m.by().isEmpty();
        String edited = only ? old.renamed(group, field.text(), kind) : put(text, Paths.key(path, m.by()), kind);
        return fitted(edited, only ? Paths.key(path, kind) : path, record, m.by());
    }

    /** The text with a group made to fit a record. */
    private static String fitted(String text, String path, Class<?> record, String by) {
        List<Shape.Key> keys = Shape.of(record).keys();
        List<String> known = keys.stream().map(Shape.Key::name).toList();
        String edited = text;
        Rewriter at = new Rewriter(edited);
        for (String key : group(at, path).fields().keySet()) {
            if (!known.contains(key) && !key.equals(by)) {
                edited = at.withoutKey(group(at, path), key);
                at = new Rewriter(edited);
            }
        }
        for (Map.Entry<String, String> e : needed(record).entrySet()) {
            Node.Fields group = group(at, path);
            boolean given = group.fields().containsKey(e.getKey())
                    || Annotated.of(record).exactlyOne().stream()
                            .anyMatch(set ->
                                    set.contains(e.getKey()) && set.stream().anyMatch(group.fields()::containsKey));
            if (!given) {
                edited = at.withKey(group, e.getKey(), e.getValue(), null);
                at = new Rewriter(edited);
            }
        }
        return edited;
    }

    /**
     * The text with one more entry in a list, or one more name.
     *
     * @param name kind of the entry, or its name; empty where it needs none
     */
    public static String addEntry(String text, String path, String name) {
        FileField field = field(FileFields.of(text), path);
        FieldMeaning m = field.meaning();
        FieldMeaning entry = m.entry();
        Rewriter at = new Rewriter(text);
        Node node = NodePath.find(at.root(), path);
        if (entry == null) {
            return named(text, field, name);
        }
        if (node instanceof Node.Fields || (node instanceof Node.Scalar value && !value.isNothing())) {
            at = new Rewriter(at.asList(node));
            node = NodePath.find(at.root(), path);
        }
        String blank = blank(entry, name);
        return node instanceof Node.Items list
                ? at.withItem(list, blank, list.items().size() - 1)
                : put(text, path, blankList(m, Math.max(1, m.atLeast()), name));
    }

    private static String named(String text, FileField field, String name) {
        boolean points = field.meaning().sort() == Sort.POINTS;
        if (name.isBlank()
                || field.inner().stream().anyMatch(f -> f.meaning().key().equals(name))) {
            throw new IllegalArgumentException(
                    name.isBlank() ? "write a name first" : "there is a '" + name + "' already");
        }
        Rewriter at = new Rewriter(text);
        String blank = points ? "[" + BLANK + ", " + BLANK + "]" : BLANK;
        return NodePath.find(at.root(), field.path()) instanceof Node.Fields group
                ? at.withKey(group, name, blank, null)
                : put(text, field.path(), "{" + Plain.scalar(name) + ": " + blank + "}");
    }

    /**
     * The text with one more corner in an outline.
     *
     * @param after number of the corner that it comes behind, from 0; -1: the first of all
     * @param x as written
     * @param y as written
     */
    public static String addCorner(String text, String path, int after, String x, String y) {
        Rewriter at = new Rewriter(text);
        String corner = "[" + Plain.scalar(x) + ", " + Plain.scalar(y) + "]";
        return NodePath.find(at.root(), path) instanceof Node.Items list
                ? at.withItem(list, corner, after)
                : put(text, path, "[" + corner + "]");
    }

    /** The text with a part given by its data in place of its name; what has to be given is left blank. */
    public static String ownData(String text, String path, String kind) {
        FieldMeaning m = field(FileFields.of(text), path).meaning();
        return put(text, path, m.sort() == Sort.KINDS ? blankKind(m, kind) : braced(needed(m.type())));
    }

    /** The text with a part to be given by its name in place of its data. */
    public static String asName(String text, String path) {
        return put(text, path, BLANK);
    }

    private static String blank(FieldMeaning m, String kind) {
        if (!m.section().isEmpty() && kind.isEmpty()) {
            return BLANK;
        }
        return switch (m.sort()) {
            case GROUP -> braced(needed(m.type()));
            case KINDS -> blankKind(m, kind.isEmpty() ? m.words().get(0) : kind);
            case LIST -> blankList(m, m.atLeast(), "");
            case POINT, SIZES -> m.type() == Vec2.class
                    ? "[" + BLANK + ", " + BLANK + "]"
                    : "[" + BLANK + ", " + BLANK + ", " + BLANK + "]";
            case POINTS, LENGTHS -> "{}";
            default -> BLANK;
        };
    }

    private static String blankList(FieldMeaning m, int entries, String kind) {
        FieldMeaning entry = m.entry();
        List<String> all = new ArrayList<>();
        for (int i = 0; i < entries && entry != null; i++) {
            all.add(blank(entry, kind));
        }
        return "[" + String.join(", ", all) + "]";
    }

    private static Class<?> record(FieldMeaning m, String kind) {
        Class<?> record = ChoiceBinder.words(m.type()).get(kind);
        if (record == null) {
            throw new IllegalArgumentException(
                    ErrorText.quoted(kind) + " is not known here; " + ErrorText.meant(kind, m.words()));
        }
        return record;
    }

    private static String blankKind(FieldMeaning m, String kind) {
        Map<String, String> keys = needed(record(m, kind));
        if (m.by().isEmpty()) {
            return "{" + kind + ": " + braced(keys) + "}";
        }
        Map<String, String> all = new LinkedHashMap<>(Map.of(m.by(), kind));
        all.putAll(keys);
        return braced(all);
    }

    private static String braced(Map<String, String> keys) {
        return keys.entrySet().stream()
                .map(e -> e.getKey() + ": " + e.getValue())
                .collect(Collectors.joining(", ", "{", "}"));
    }

    /** What has to be given in a record, blank; of keys of which one is given the first. */
    private static Map<String, String> needed(Class<?> record) {
        List<String> first = Annotated.of(record).exactlyOne().stream()
                .map(set -> set.get(0))
                .toList();
        Map<String, String> all = new LinkedHashMap<>();
        for (Shape.Key key : Shape.of(record).keys()) {
            if (!key.loaded() && (key.mandatory() || first.contains(key.name()))) {
                all.put(key.name(), blank(FieldMeaning.of(key), ""));
            }
        }
        return all;
    }

    /** The text with a value at a path, on one line as YAML; the groups around it are added where they are not there. */
    public static String write(String text, String path, String yaml) {
        return put(text, path, yaml);
    }

    /** The text with one more entry, on one line as YAML, behind the others of a list, which is added where it is not there. */
    public static String append(String text, String path, String yaml) {
        Rewriter at = new Rewriter(text);
        return NodePath.find(at.root(), path) instanceof Node.Items list
                ? at.withItem(list, yaml, list.items().size() - 1)
                : put(text, path, "[" + yaml + "]");
    }

    private static String put(String text, String path, String yaml) {
        return put(text, FileFields.of(text), path, yaml);
    }

    /**
     * The same.
     *
     * @param fields of the text; keys that are of no concern here may be gone from it since
     */
    private static String put(String text, FileFields fields, String path, String yaml) {
        Rewriter at = new Rewriter(text);
        Node node = NodePath.find(at.root(), path);
        if (node != null) {
            return at.replaced(node, yaml);
        }
        FileField field = field(fields, path);
        String key = field.meaning().key();
        String above = path.substring(0, Math.max(0, path.length() - key.length() - 1));
        Node around = NodePath.find(at.root(), above);
        if (around instanceof Node.Fields group) {
            return at.withKey(group, key, yaml, before(fields.around(path).inner(), path));
        }
        boolean blank = around instanceof Node.Scalar scalar
                && (scalar.isNothing() || scalar.text().isBlank());
        if (around != null && !blank) {
            throw new IllegalArgumentException("'" + above + "' is " + around.words() + "; take that out first");
        }
        return put(text, fields, above, "{" + Plain.scalar(key) + ": " + yaml + "}");
    }

    /** The written key that comes nearest before a field in the record's order; null: none does. */
    private static @Nullable String before(List<FileField> sisters, String path) {
        String key = null;
        for (FileField sister : sisters) {
            if (sister.path().equals(path)) {
                return key;
            }
            key = sister.written() ? sister.meaning().key() : key;
        }
        return null;
    }

    private static FileField field(FileFields fields, String path) {
        FileField field = fields.find(path);
        if (field == null) {
            throw new IllegalArgumentException("nothing can be written at '" + path + "'");
        }
        return field;
    }

    private static Node.Fields group(Rewriter rewriter, String path) {
        if (NodePath.find(rewriter.root(), path) instanceof Node.Fields group) {
            return group;
        }
        throw new IllegalArgumentException("'" + path + "' is no group of keys");
    }
}
