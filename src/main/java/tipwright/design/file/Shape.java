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
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Loaded;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.quantity.Kind;

/**
 * A record as the file's format sees it.
 *
 * @param keys in the order of the record
 * @param maker the record's constructor
 */
record Shape(List<Key> keys, Constructor<?> maker) {

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
     * Makes the shapes of a record, of those in it and then of the choices in it, so that another thread that reads soon finds them.
     *
     * @param enough whether to stop
     */
    static void ahead(Class<?> record, BooleanSupplier enough) {
        Set<Class<?>> met = new HashSet<>();
        Deque<Class<?>> next = new ArrayDeque<>(List.of(record));
        while (!next.isEmpty() && !enough.getAsBoolean()) {
            Class<?> type = next.removeFirst();
            if (type.isSealed()) {
                next.addAll(List.of(type.getPermittedSubclasses()));
            } else if (type.isRecord()) {
                for (Key key : of(type).keys) {
                    if (key.mark(Measured.class) == null && met.add(key.type)) {
                        next.addLast(key.type);
                    }
                }
            }
        }
    }

    private static Shape made(Class<?> record) {
        RecordComponent[] components = record.getRecordComponents();
        List<Key> keys = new ArrayList<>();
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            keys.add(key(components[i]));
        }
        try {
            return new Shape(List.copyOf(keys), record.getDeclaredConstructor(types));
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static Key key(RecordComponent component) {
        Type type = component.getGenericType();
        boolean list = type instanceof ParameterizedType generic && generic.getRawType() == List.class;
        Class<?> entry = list && type instanceof ParameterizedType generic
                ? (Class<?>) generic.getActualTypeArguments()[0]
                : component.getType();
        return new Key(
                fileWord(component.getName()),
                entry,
                list,
                List.of(component.getAnnotations()),
                component.getAnnotatedType().isAnnotationPresent(Nullable.class) || isGivenElsewhere(component));
    }

    private static boolean isGivenElsewhere(RecordComponent component) {
        Measured measured = component.getAnnotation(Measured.class);
        return measured != null && measured.given();
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

    /** The word that chooses this record of a sealed interface. */
    static String choiceWord(Class<?> record) {
        Choice choice = record.getAnnotation(Choice.class);
        return choice == null ? "" : choice.value();
    }

    Object make(@Nullable Object[] values) {
        try {
            return maker.newInstance(values);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
