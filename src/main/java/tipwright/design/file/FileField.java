// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import java.util.stream.Stream;

/**
 * Something that a design file holds, or may hold, at a path.
 *
 * @param path from the top: 'tank.openings[1].diameter'
 * @param meaning what its key is
 * @param label what a person calls it: 'frame pin'
 * @param written whether it stands in the file
 * @param text a single value as written, the kind of a group with kinds, else the text of the whole; empty when not written
 * @param inPlaceOf keys of which exactly one is given, this one left out
 * @param inner the fields in it: of a group all that it may hold, of a list its entries, of a point its coordinates or readings
 */
public record FileField(
        String path,
        FieldMeaning meaning,
        String label,
        boolean written,
        String text,
        List<String> inPlaceOf,
        List<FileField> inner) {
    /** Copies the lists. */
    public FileField {
        inPlaceOf = List.copyOf(inPlaceOf);
        inner = List.copyOf(inner);
    }

    /** This and all in it, from the top. */
    public Stream<FileField> all() {
        return Stream.concat(Stream.of(this), inner.stream().flatMap(FileField::all));
    }
}
