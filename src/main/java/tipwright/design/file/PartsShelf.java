// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.Actuator;
import tipwright.design.joint.Bearing;
import tipwright.geometry.MadeOnce;

/** Named actuators and bearings from the parts files: the design's own first, then those that came with the program. */
final class PartsShelf {
    /** What each section of a parts file holds. */
    static final Map<String, Class<?>> SECTIONS = sections();

    /** The parts files that came with the program, by the section that each has; read when they are first asked for. */
    private static final Map<String, MadeOnce<Shipped>> SHIPPED = shippedFiles();

    private static final int LARGEST = 10_000_000;
    private static final Set<String> EXTRA = Set.of("note");

    private final Reader reader;
    private final Map<String, Map<String, Entry>> own = new LinkedHashMap<>();
    private final Map<String, Map<String, Entry>> shipped = new LinkedHashMap<>();
    private final Set<String> shippedRead = new HashSet<>();

    PartsShelf(Reader reader) {
        this.reader = reader;
    }

    private static Map<String, Class<?>> sections() {
        Map<String, Class<?>> map = new LinkedHashMap<>();
        map.put("actuators", Actuator.class);
        map.put("bearings", Bearing.class);
        return map;
    }

    private static Map<String, MadeOnce<Shipped>> shippedFiles() {
        Map<String, MadeOnce<Shipped>> map = new LinkedHashMap<>();
        SECTIONS.keySet()
                .forEach(section -> map.put(section, new MadeOnce<>(() -> Shipped.read("parts/" + section + ".yaml"))));
        return map;
    }

    /** A part that is read when it is first asked for. */
    private static final class Entry {
        private final Node.Field field;
        private final SourceMap sources;
        private boolean read;
        private @Nullable Object part;

        Entry(Node.Field field, SourceMap sources) {
            this.field = field;
            this.sources = sources;
        }
    }

    /** Takes in one of the design's own files, all of it, so that its mistakes are told even where nothing is used. */
    void addOwn(String name, Place asked, String path) {
        Problems problems = reader.problems();
        String wrong = FileName.wrong(name);
        if (wrong != null) {
            problems.add(asked, path, wrong);
            return;
        }
        try {
            String text = TextBytes.decode(name, reader.bytes(name, LARGEST), problems);
            if (text != null) {
                addText(name, text, own);
                own.forEach((section, entries) -> entries.forEach((part, entry) -> part(section, part, entry)));
            }
        } catch (IOException unread) {
            problems.add(asked, path, ErrorText.quoted(name) + ": " + unread.getMessage());
        }
    }

    private void addText(String file, String text, Map<String, Map<String, Entry>> shelf) {
        Node root = YamlText.read(file, text, reader.problems());
        if (root != null) {
            addNodes(file, root, shelf);
        }
    }

    private void addNodes(String file, Node root, Map<String, Map<String, Entry>> shelf) {
        Problems problems = reader.problems();
        SourceMap sources = new SourceMap(file, root);
        if (!(root instanceof Node.Fields top) || !Version.isFirst("tipwright-parts", top, problems)) {
            if (!(root instanceof Node.Fields)) {
                problems.add(root.place(), "", "a parts file starts with 'tipwright-parts: 1'; found " + root.words());
            }
            return;
        }
        top.fields().forEach((section, field) -> {
            if (section.equals("tipwright-parts")) {
                return;
            }
            if (!SECTIONS.containsKey(section)) {
                problems.add(
                        field.key(),
                        section,
                        "key " + ErrorText.quoted(section) + " is not known here; "
                                + ErrorText.meant(section, SECTIONS.keySet()));
            } else if (field.value() instanceof Node.Fields entries) {
                entries.fields().forEach((name, entry) -> put(shelf, section, name, entry, sources));
            } else {
                problems.add(
                        field.value().place(),
                        section,
                        "names with their parts are needed here; found "
                                + field.value().words());
            }
        });
    }

    private void put(
            Map<String, Map<String, Entry>> shelf, String section, String name, Node.Field field, SourceMap sources) {
        Problems problems = reader.problems();
        if (!name.matches("[a-z0-9][a-z0-9.-]{0,39}")) {
            problems.add(
                    field.key(),
                    section,
                    ErrorText.quoted(name)
                            + " is no name for a part; use small letters, digits and '-', such as 'yard-40'");
        }
        Entry before =
                shelf.computeIfAbsent(section, s -> new LinkedHashMap<>()).putIfAbsent(name, new Entry(field, sources));
        if (before != null) {
            problems.add(
                    field.key(),
                    section + "." + name,
                    "another part is called '" + name + "', at " + before.field.key() + "; rename one");
        }
    }

    /** A part by name; null with a problem noted. */
    @Nullable
    Object find(String section, String name, Place asked, String path) {
        Entry entry = own.getOrDefault(section, Map.of()).get(name);
        if (entry == null) {
            readShipped(section);
            entry = shipped.getOrDefault(section, Map.of()).get(name);
        }
        if (entry == null) {
            Set<String> names = names(section);
            reader.problems()
                    .add(
                            asked,
                            path,
                            "no part " + ErrorText.quoted(name) + " among the " + section + "; "
                                    + ErrorText.meant(name, names));
            return null;
        }
        return part(section, name, entry);
    }

    /** The names of a section, the design's own first. */
    Set<String> names(String section) {
        readShipped(section);
        Set<String> names =
                new LinkedHashSet<>(own.getOrDefault(section, Map.of()).keySet());
        names.addAll(shipped.getOrDefault(section, Map.of()).keySet());
        return names;
    }

    private @Nullable Object part(String section, String name, Entry entry) {
        if (!entry.read) {
            entry.read = true;
            String path = section + "." + name;
            Class<?> type = SECTIONS.getOrDefault(section, Object.class);
            entry.part = new Binder(reader, entry.sources)
                    .choices()
                    .read(type, entry.field.value(), path, entry.field.key(), EXTRA);
            if (entry.part != null) {
                reader.bound().put(path, entry.part, entry.sources);
            }
        }
        return entry.part;
    }

    /** The remark beside a part; empty when there is none. */
    String note(String section, String name) {
        Entry mine = own.getOrDefault(section, Map.of()).get(name);
        Entry entry = mine == null ? shipped.getOrDefault(section, Map.of()).get(name) : mine;
        if (entry == null || !(entry.field.value() instanceof Node.Fields keys)) {
            return "";
        }
        Node.Field note = keys.fields().get("note");
        return note != null && note.value() instanceof Node.Scalar text ? text.text() : "";
    }

    private void readShipped(String section) {
        MadeOnce<Shipped> known = SHIPPED.get(section);
        if (known != null && shippedRead.add(section)) {
            Shipped file = known.get();
            reader.uses(file.source);
            addNodes(file.source.name(), file.root, shipped);
        }
    }

    /** Reads a parts file that came with the program, so that another thread that reads soon finds it read. */
    static void prepare(String section) {
        MadeOnce<Shipped> known = Objects.requireNonNull(SHIPPED.get(section));
        Objects.requireNonNull(known.get());
    }

    /** A parts file that came with the program. */
    private record Shipped(SourceFile source, Node root) {
        static Shipped read(String file) {
            Problems problems = new Problems();
            try {
                byte[] bytes = NamedFiles.shipped().read(file, LARGEST);
                Node root = YamlText.read(file, new String(bytes, StandardCharsets.UTF_8), problems);
                if (root == null) {
                    throw new IllegalStateException(problems.inOrder().toString());
                }
                return new Shipped(new SourceFile(file, true, bytes), root);
            } catch (IOException lost) {
                throw new IllegalStateException("the program's own parts file " + file + " is lost", lost);
            }
        }
    }
}
