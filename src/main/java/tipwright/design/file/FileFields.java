// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.file.FieldMeaning.Sort;
import tipwright.design.key.Annotated;
import tipwright.design.key.NameId;

/**
 * All that a design file holds and may hold, as a tree, made from the records that the reader follows. Immutable.
 *
 * @param text of the file
 * @param root the file as a whole
 * @param byPath all fields
 */
public record FileFields(String text, FileField root, Map<String, FileField> byPath) {
    private static final String[] AXES = {"x", "y", "z"};
    private static final int LONGEST_NAME = 40;

    /** Copies the map. */
    public FileFields {
        byPath = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(byPath));
    }

    /** The fields of a text; when it is no YAML, none of them is written. */
    public static FileFields of(String text) {
        Node read = YamlText.read("", text, new Problems());
        FileField root = new Builder(text).field(FieldMeaning.whole(Design.class), "", "", read, List.of());
        Map<String, FileField> all = new LinkedHashMap<>();
        root.all().forEach(f -> all.putIfAbsent(f.path(), f));
        return new FileFields(text, root, all);
    }

    /** The field at a path; null when there is none. */
    public @Nullable FileField find(String path) {
        return byPath.get(path);
    }

    /** The group, list or point around a field. */
    FileField around(String path) {
        for (String at = Paths.above(path); !at.isEmpty(); at = Paths.above(at)) {
            FileField field = byPath.get(at);
            if (field != null) {
                return field;
            }
        }
        return root;
    }

    /** The problems of a reading by the path of the field that each belongs to, as it stands beside it. */
    public Map<String, List<String>> beside(List<Problem> problems) {
        Map<String, List<String>> all = new TreeMap<>();
        for (Problem p : problems) {
            String path =
                    byPath.containsKey(p.path()) ? p.path() : around(p.path()).path();
            FileField group = byPath.get(path);
            for (FileField inner : group == null ? List.<FileField>of() : group.inner()) {
                if (p.message().startsWith("'" + inner.meaning().key() + "' is missing")) {
                    path = inner.path();
                }
            }
            all.computeIfAbsent(path, x -> new ArrayList<>()).add(p.message());
        }
        return all;
    }

    /**
     * What a group that is not written, a list's next entry, or a kind that is not chosen would hold.
     *
     * @param kind one of its words; empty where it has no kinds
     */
    public static List<FileField> inside(FieldMeaning group, String path, String kind) {
        Builder blank = new Builder("");
        if (group.sort() == Sort.LIST) {
            FieldMeaning entry = group.entry();
            return entry == null ? List.of() : List.of(blank.field(entry, Paths.item(path, 1), "", null, List.of()));
        }
        if (group.sort() == Sort.KINDS) {
            Class<?> record = ChoiceBinder.words(group.type()).get(kind);
            String below = group.by().isEmpty() ? Paths.key(path, kind) : path;
            return record == null ? List.of() : blank.keys(record, below, null);
        }
        if (group.sort() == Sort.POINT) {
            return blank.placed(path, new Node.Fields(Place.whole(""), Map.of()));
        }
        return blank.field(group, path, "", null, List.of()).inner();
    }

    /** Builds the tree of one text. */
    private record Builder(String text) {
        FileField field(FieldMeaning m, String path, String label, @Nullable Node node, List<String> others) {
            String named = label.isEmpty() ? NameId.words(m.key()) : label;
            return new FileField(path, m, named, node != null, written(m, node), others, inner(m, path, node));
        }

        private String written(FieldMeaning m, @Nullable Node node) {
            if (node instanceof Node.Scalar scalar) {
                return scalar.isNothing() ? "" : scalar.text();
            }
            if (m.sort() == Sort.KINDS && node instanceof Node.Fields group) {
                return kind(m, group);
            }
            return node == null
                    ? ""
                    : text.substring(node.place().start(), node.place().end());
        }

        private static String kind(FieldMeaning m, Node.Fields group) {
            if (m.by().isEmpty()) {
                return group.fields().keySet().stream().findFirst().orElse("");
            }
            Node.Field by = group.fields().get(m.by());
            return by != null && by.value() instanceof Node.Scalar word ? word.text() : "";
        }

        private List<FileField> inner(FieldMeaning m, String path, @Nullable Node node) {
            Node.Fields group = node instanceof Node.Fields fields ? fields : null;
            return switch (m.sort()) {
                case GROUP -> keys(m.type(), path, group);
                case KINDS -> group == null ? List.of() : ofKind(m, path, group);
                case LIST -> node == null ? List.of() : entries(m, path, node);
                case POINT -> group != null
                        ? placed(path, group)
                        : node instanceof Node.Items list ? coordinates(path, list) : List.of();
                case SIZES -> node instanceof Node.Items list ? coordinates(path, list) : List.of();
                case POINTS -> named(path, group, Sort.POINT);
                case LENGTHS -> named(path, group, Sort.QUANTITY);
                default -> List.of();
            };
        }

        private List<FileField> ofKind(FieldMeaning m, String path, Node.Fields group) {
            String word = kind(m, group);
            Class<?> record = ChoiceBinder.words(m.type()).get(word);
            if (record == null) {
                return List.of();
            }
            if (!m.by().isEmpty()) {
                return keys(record, path, group);
            }
            Node.Field only = group.fields().get(word);
            Node.Fields below = only != null && only.value() instanceof Node.Fields fields ? fields : null;
            return keys(record, Paths.key(path, word), below);
        }

        List<FileField> keys(Class<?> record, String path, Node.@Nullable Fields group) {
            List<FileField> all = new ArrayList<>();
            for (FieldMeaning m : FieldMeaning.keys(record)) {
                Node.Field field = group == null ? null : group.fields().get(m.key());
                Node node = field == null ? null : field.value();
                all.add(field(m, Paths.key(path, m.key()), "", node, others(record, m.key())));
            }
            return all;
        }

        private static List<String> others(Class<?> record, String key) {
            for (List<String> keys : Annotated.of(record).exactlyOne()) {
                List<String> set = new ArrayList<>(keys);
                if (set.remove(key)) {
                    return set;
                }
            }
            return List.of();
        }

        private List<FileField> entries(FieldMeaning m, String path, Node node) {
            List<FileField> all = new ArrayList<>();
            List<Node> items = node instanceof Node.Items list ? list.items() : List.of(node);
            FieldMeaning entry = m.entry();
            Set<String> labels = new HashSet<>();
            for (int i = 0; i < items.size() && entry != null; i++) {
                String label = entryLabel(m.key(), i, items.get(i));
                String own = labels.add(label) ? label : label + " (" + (i + 1) + ")";
                all.add(field(entry, Paths.item(path, i + 1), own, items.get(i), List.of()));
            }
            return all;
        }

        /** Its own name, or the list's and a number. */
        private static String entryLabel(String key, int index, Node item) {
            for (String naming : new String[] {"name", "joint", "pin", "link"}) {
                Node name = NodePath.find(item, naming);
                if (item instanceof Node.Fields
                        && name instanceof Node.Scalar text
                        && !text.text().isBlank()) {
                    String said = naming.equals("name") ? text.text() : NameId.words(text.text());
                    return said.length() > LONGEST_NAME ? said.substring(0, LONGEST_NAME) + "..." : said;
                }
            }
            String words = NameId.words(key);
            String one = words.endsWith("s") ? words.substring(0, words.length() - 1) : words;
            return one + " " + (index + 1);
        }

        private List<FileField> coordinates(String path, Node.Items list) {
            List<FileField> all = new ArrayList<>();
            for (int i = 0; i < Math.min(list.items().size(), AXES.length); i++) {
                FieldMeaning axis = FieldMeaning.plain(AXES[i], Sort.QUANTITY);
                all.add(field(axis, path + "." + AXES[i], "", list.items().get(i), List.of()));
            }
            return all;
        }

        List<FileField> placed(String path, Node.Fields group) {
            List<FileField> all = new ArrayList<>();
            for (PointKey key : PointKey.values()) {
                Node.Field field = group.fields().get(key.word());
                Node node = field == null ? null : field.value();
                all.add(field(FieldMeaning.of(key), Paths.key(path, key.word()), "", node, List.of()));
            }
            return all;
        }

        private List<FileField> named(String path, Node.@Nullable Fields group, Sort sort) {
            List<FileField> all = new ArrayList<>();
            if (group != null) {
                group.fields()
                        .forEach((name, field) -> all.add(field(
                                FieldMeaning.plain(name, sort),
                                Paths.key(path, name),
                                name,
                                field.value(),
                                List.of())));
            }
            return all;
        }
    }
}
