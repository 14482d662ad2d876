// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Counted;
import tipwright.design.key.FromParts;
import tipwright.design.key.Measured;
import tipwright.design.key.Sold;
import tipwright.design.tank.UsualSlurry;
import tipwright.design.tape.NamedPoints;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * What a key of the design file is, as its record says: the same that reader and schema follow.
 *
 * @param key as written: 'frame-pin'; of a list's entry the list's
 * @param type that the reader makes of it, or of a list's entries
 * @param note its remark; may be empty
 * @param usual what is taken when it is left out, as written; empty: nothing in particular
 * @param limits what is allowed, in words; may be empty
 * @param kind of quantity; null for what has no unit
 * @param mandatory whether it has to be given
 * @param words that may stand there, or kinds to choose from; empty: it is free
 * @param by key that tells kinds apart; empty: the kind is the only key
 * @param section of the parts files that may give it by name; empty: none
 * @param asked whether '?' may stand there
 * @param example a likely value; may be empty
 * @param atLeast fewest entries of a list, smallest whole number
 * @param atMost most entries of a list, largest whole number
 * @param entry what a list's entries are; null when it is no list
 */
public record FieldMeaning(
        String key,
        Sort sort,
        Class<?> type,
        String note,
        String usual,
        String limits,
        @Nullable Kind kind,
        boolean mandatory,
        List<String> words,
        String by,
        String section,
        boolean asked,
        String example,
        int atLeast,
        int atMost,
        @Nullable FieldMeaning entry) {

    /** What stands there. */
    public enum Sort {
        QUANTITY,
        TEXT,
        COUNT,
        NUMBER,
        WORD,
        POINT,
        DIRECTION,
        /** Sizes along the axes, or a place within a part: always by coordinates. */
        SIZES,
        /** A group of keys. */
        GROUP,
        /** A group of keys that depend on its kind. */
        KINDS,
        LIST,
        /** Points by names of the builder's choice. */
        POINTS,
        /** Lengths from points by their names. */
        LENGTHS
    }

    private static final int MANY = 1000;
    private static final String NO_KEYS = "{}";
    private static final String NO_ENTRIES = "[]";

    /** Copies the list. */
    public FieldMeaning {
        words = List.copyOf(words);
    }

    /** Whether a whole number can be one thing only. */
    public boolean fixed() {
        return sort == Sort.COUNT && atLeast == atMost;
    }

    /** Whether it holds other fields. */
    public boolean isGroup() {
        return switch (sort) {
            case GROUP, KINDS, LIST, POINTS, LENGTHS -> true;
            default -> false;
        };
    }

    /** Whether what is taken when a key is left out is a group or a list with nothing in it. */
    static boolean isNone(String usual) {
        return usual.equals(NO_KEYS) || usual.equals(NO_ENTRIES);
    }

    private static final ClassValue<List<FieldMeaning>> KEYS = new ClassValue<>() {
        @Override
        protected List<FieldMeaning> computeValue(Class<?> record) {
            return Shape.of(record).keys().stream()
                    .filter(key -> !key.loaded())
                    .map(FieldMeaning::of)
                    .toList();
        }
    };

    /** The keys of a record, in its order. */
    static List<FieldMeaning> keys(Class<?> record) {
        return KEYS.get(record);
    }

    static FieldMeaning of(Shape.Key key) {
        return key.list() ? list(key, of(key, true)) : of(key, false);
    }

    private static FieldMeaning list(Shape.Key key, FieldMeaning entry) {
        Counted counted = key.mark(Counted.class);
        int least = counted == null ? 0 : counted.atLeast();
        int most = counted == null ? MANY : counted.atMost();
        return new FieldMeaning(
                key.name(),
                Sort.LIST,
                key.type(),
                key.note(),
                usual(key),
                entry.limits,
                entry.kind,
                key.mandatory(),
                List.of(),
                "",
                "",
                false,
                "",
                least,
                most,
                entry);
    }

    private static FieldMeaning of(Shape.Key key, boolean entry) {
        Class<?> type = key.type();
        Measured measured = key.mark(Measured.class);
        FromParts parts = key.mark(FromParts.class);
        Choice choice = type.getAnnotation(Choice.class);
        Counted counted = key.mark(Counted.class);
        return new FieldMeaning(
                key.name(),
                sort(type, measured),
                type,
                key.note(),
                entry ? "" : usual(key),
                measured == null ? counted(key) : QuantityBinder.allowed(measured),
                measured == null ? null : measured.value(),
                entry || key.mandatory(),
                words(type, measured),
                choice == null ? "" : choice.value(),
                parts == null ? "" : parts.value(),
                parts != null || key.mark(Sold.class) != null,
                example(type, measured),
                counted == null ? 0 : counted.atLeast(),
                counted == null ? Integer.MAX_VALUE : counted.atMost(),
                null);
    }

    /** A key of a point that the tape places. */
    static FieldMeaning of(PointKey key) {
        return new FieldMeaning(
                key.word(),
                key.sort(),
                String.class,
                key.note(),
                "",
                "",
                Kind.LENGTH,
                false,
                key.sort() == Sort.WORD ? PointKey.sides() : List.of(),
                "",
                "",
                false,
                key.sort() == Sort.QUANTITY ? Kind.LENGTH.example() : "",
                2,
                2,
                key.sort() == Sort.LIST ? plain("", Sort.TEXT) : null);
    }

    /** A length from a point, or a point's name. */
    static FieldMeaning plain(String key, Sort sort) {
        Kind kind = sort == Sort.TEXT ? null : Kind.LENGTH;
        Class<?> type = sort == Sort.POINT ? Vec3.class : String.class;
        String example = kind == null ? "" : kind.example();
        return new FieldMeaning(
                key, sort, type, "", "", "", kind, false, List.of(), "", "", false, example, 0, 0, null);
    }

    /** The file as a whole. */
    static FieldMeaning whole(Class<?> record) {
        return new FieldMeaning(
                "", Sort.GROUP, record, "", "", "", null, true, List.of(), "", "", false, "", 0, 0, null);
    }

    private static Sort sort(Class<?> type, @Nullable Measured measured) {
        if (type == Vec2.class || type == Vec3.class) {
            boolean direction = measured != null && measured.value() == Kind.RATIO;
            return direction ? Sort.DIRECTION : measured != null && measured.within() ? Sort.SIZES : Sort.POINT;
        }
        if (measured != null) {
            return Sort.QUANTITY;
        }
        if (type == NamedPoints.class) {
            return Sort.POINTS;
        }
        if (type == UsualSlurry.class || type.isEnum() || type == boolean.class) {
            return Sort.WORD;
        }
        if (type.isSealed()) {
            return Sort.KINDS;
        }
        if (type.isRecord()) {
            return Sort.GROUP;
        }
        return type == int.class ? Sort.COUNT : type == Double.class ? Sort.NUMBER : Sort.TEXT;
    }

    private static List<String> words(Class<?> type, @Nullable Measured measured) {
        if (type == UsualSlurry.class) {
            return UsualSlurry.all().stream().map(UsualSlurry::name).toList();
        }
        if (type == boolean.class) {
            return List.of("yes", "no");
        }
        if (type.isEnum()) {
            return WordBinder.words(type);
        }
        if (type.isSealed()) {
            return List.copyOf(ChoiceBinder.words(type).keySet());
        }
        return measured == null || measured.orWord().isEmpty() ? List.of() : List.of(measured.orWord());
    }

    private static String usual(Shape.Key key) {
        String preset = key.preset();
        if (preset == null || preset.isEmpty()) {
            return preset == null ? "" : key.list() ? NO_ENTRIES : NO_KEYS;
        }
        return key.type() == boolean.class ? (preset.equals("true") ? "yes" : "no") : preset;
    }

    private static String counted(Shape.Key key) {
        Counted counted = key.mark(Counted.class);
        if (counted == null || key.type() != int.class) {
            return "";
        }
        return counted.atLeast() == counted.atMost()
                ? "allowed: " + counted.atLeast()
                : "allowed: " + counted.atLeast() + " to " + counted.atMost();
    }

    private static String example(Class<?> type, @Nullable Measured measured) {
        if (type == Vec2.class || type == Vec3.class) {
            return "";
        }
        return measured == null
                ? ""
                : measured.sheet() ? "3 mm" : measured.value().example();
    }
}
