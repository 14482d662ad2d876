// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Lists parts files. */
public final class PartsFile {
    private PartsFile() {}

    /**
     * A part with a name.
     *
     * @param section 'actuators' or 'bearings'
     * @param part an Actuator or a Bearing
     * @param note a remark; may be empty
     */
    public record Part(String section, String name, Object part, String note) {}

    /**
     * What a parts file holds.
     *
     * @param problems all that is wrong; parts that are wrong are left out
     */
    public record Contents(List<Part> parts, List<Problem> problems) {
        /** Copies the lists. */
        public Contents {
            parts = List.copyOf(parts);
            problems = List.copyOf(problems);
        }
    }

    /** The parts that came with the program. */
    public static Contents shipped() {
        return contents(new Reader(NamedFiles.shipped(), Map.of(), Map.of()));
    }

    /** The parts of a file on disk and, after them, those that came with the program. */
    public static Contents read(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        Path name = file.getFileName();
        Reader reader = new Reader(NamedFiles.folder(folder == null ? file : folder), Map.of(), Map.of());
        String own = name == null ? file.toString() : name.toString();
        reader.shelf().addOwn(own, Place.whole(file.toString()), "");
        return contents(reader);
    }

    private static Contents contents(Reader reader) {
        List<Part> parts = new ArrayList<>();
        for (String section : PartsShelf.SECTIONS.keySet()) {
            for (String name : reader.shelf().names(section)) {
                Object part = reader.part(section, name, Place.whole(""), "");
                if (part != null) {
                    parts.add(new Part(section, name, part, reader.shelf().note(section, name)));
                }
            }
        }
        Problems problems = reader.problems();
        for (SizeQuestion q : reader.questions()) {
            problems.add(q.place(), q.path(), "'?' asks for a size; only a design file can ask, so write a value here");
        }
        Rules.check(reader.bound(), new SourceMap("", null), problems, new Problems());
        return new Contents(parts, problems.inOrder());
    }
}
