// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.lang.annotation.Annotation;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Annotated;
import tipwright.design.key.Loaded;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.quantity.Kind;

/**
 * A record as the file's format sees it.
 *
 * @param keys in the order of the record
 * @param exactlyOne keys of which exactly one is given [set][key]
 * @param maker the record's constructor
 */
record Shape(List<Key> keys, List<List<String>> exactlyOne, Constructor<?> maker) {

    /**
     * A component of a record.
     *
     * @param name as written in files: 'frame-pin'
     * @param type of the value, or of a list's entries
     * @param list whether it is a list
     * @param marks its annotations
     */
    record Key(String name, Class<?> type, boolean list, List<Annotation> marks, boolean mayBeAbsent) {
        <A extends Annotation> @Nullable A mark(Class<A> kind) {
            for (Annotation mark : marks) {
                if (kind.isInstance(mark)) {
                    return kind.cast(mark);
                }
            }
            return null;
        }

        /** Whether it is no key of the file. */
        boolean loaded() {
            return mark(Loaded.class) != null;
        }

        /** What is taken when it is left out, as written; null when it must be given or may be absent. */
        @Nullable
        String preset() {
            Measured measured = mark(Measured.class);
            if (measured != null && !measured.preset().isEmpty()) {
                return measured.preset();
            }
            Preset preset = mark(Preset.class);
            return preset == null ? null : preset.value();
        }

        /** What its quantities are; null where it is none. */
        @Nullable
        Kind kind() {
            Measured measured = mark(Measured.class);
            return measured == null ? null : measured.value();
        }

        /** Whether another key of the record may give it. */
        boolean givenElsewhere() {
            Measured measured = mark(Measured.class);
            return measured != null && measured.given();
        }

        boolean mandatory() {
            return !loaded() && preset() == null && !mayBeAbsent;
        }

        String note() {
            Note note = mark(Note.class);
            return note == null ? "" : note.value();
        }
    }

    private static final ClassValue<Shape> ALL = new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> record) {
            return made(record);
        }
    };

    static Shape of(Class<?> record) {
        return ALL.get(record);
    }

    /**
     * A record, those in it and the choices in it, each once. Makes their shapes on the way, so that another thread that reads soon
     * finds them.
     *
     * @param enough whether to stop
     */
    static Set<Class<?>> below(Class<?> record, BooleanSupplier enough) {
        Set<Class<?>> met = new LinkedHashSet<>(Set.of(record));
        Deque<Class<?>> next = new ArrayDeque<>(List.of(record));
        while (!next.isEmpty() && !enough.getAsBoolean()) {
            Class<?> type = next.removeFirst();
            if (type.isRecord()) {
                for (Key key : of(type).keys) {
                    meet(key.type, met, next);
                }
            } else {
                for (Class<?> permitted : type.getPermittedSubclasses()) {
                    meet(permitted, met, next);
                }
            }
        }
        return met;
    }

    private static void meet(Class<?> type, Set<Class<?>> met, Deque<Class<?>> next) {
        if ((type.isRecord() || type.isSealed()) && met.add(type)) {
            next.addLast(type);
        }
    }

    private static Shape made(Class<?> record) {
        RecordComponent[] components = record.getRecordComponents();
        Annotated marks = Annotated.of(record);
        List<Key> keys = new ArrayList<>();
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            keys.add(key(components[i], marks.components().get(i)));
        }
        try {
            return new Shape(List.copyOf(keys), marks.exactlyOne(), record.getDeclaredConstructor(types));
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static Key key(RecordComponent component, Annotated.OfComponent marks) {
        Type type = component.getType() == List.class ? component.getGenericType() : component.getType();
        boolean list = type instanceof ParameterizedType generic && generic.getRawType() == List.class;
        Class<?> entry = list && type instanceof ParameterizedType generic
                ? (Class<?>) generic.getActualTypeArguments()[0]
                : component.getType();
        boolean given = marks.all().stream().anyMatch(m -> m instanceof Measured measured && measured.given());
        return new Key(fileWord(component.getName()), entry, list, marks.all(), marks.nullable() || given);
    }

    /** 'framePin' as 'frame-pin'. */
    private static String fileWord(String javaName) {
        StringBuilder word = new StringBuilder();
        for (int i = 0; i < javaName.length(); i++) {
            char c = javaName.charAt(i);
            word.append(Character.isUpperCase(c) ? "-" + Character.toLowerCase(c) : c);
        }
        return word.toString();
    }

    /** An enum's constant as written in files: SEMI_ELLIPSOIDAL as 'semi-ellipsoidal'. */
    static String fileWord(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    Object make(@Nullable Object[] values) {
        try {
            return maker.newInstance(values);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
