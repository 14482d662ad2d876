// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.Arrays;
import java.util.List;
import tipwright.design.key.NameId;

/** The keys that place a point by tape, for reader, schema and editor alike. */
enum PointKey {
    FROM("from", FieldMeaning.Sort.LENGTHS, "Distances by tape from two points or more"),
    SIDE("side", FieldMeaning.Sort.WORD, "Which of the two places that fit"),
    ABOVE(PointSpec.Side.ABOVE),
    BELOW(PointSpec.Side.BELOW),
    TOWARDS_DUMP(PointSpec.Side.TOWARDS_DUMP),
    AWAY_FROM_DUMP(PointSpec.Side.AWAY_FROM_DUMP),
    BETWEEN("between", FieldMeaning.Sort.LIST, "On the line from one point to another; without 'at' in the middle"),
    AT("at", FieldMeaning.Sort.QUANTITY, "How far along that line from the first"),
    Z("z", FieldMeaning.Sort.QUANTITY, "Where it is along the pivot; left out: as the points it is measured from");

    private final String word;
    private final FieldMeaning.Sort sort;
    private final String note;

    PointKey(String word, FieldMeaning.Sort sort, String note) {
        this.word = word;
        this.sort = sort;
        this.note = note;
    }

    PointKey(PointSpec.Side side) {
        this(
                side.word(),
                FieldMeaning.Sort.LENGTHS,
                "So far " + NameId.words(side.word()) + " of a point, level or plumb");
    }

    /** As written in files. */
    String word() {
        return word;
    }

    FieldMeaning.Sort sort() {
        return sort;
    }

    String note() {
        return note;
    }

    /** All of them as written. */
    static List<String> words() {
        return Arrays.stream(values()).map(PointKey::word).toList();
    }

    /** The words for the side that a point lies on. */
    static List<String> sides() {
        return Arrays.stream(PointSpec.Side.values()).map(PointSpec.Side::word).toList();
    }
}
