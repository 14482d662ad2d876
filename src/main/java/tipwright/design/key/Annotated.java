// SPDX-License-Identifier: Apache-2.0
package tipwright.design.key;

import java.lang.annotation.Annotation;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the annotations of a design's records say. A program that was packaged has them in a {@link AnnotationList} beside its classes: Java
 * takes a good part of a short check to read annotations.
 *
 * @param word of {@link Choice}: on a sealed interface the key that tells its records apart, on a record of it its word; empty: none
 * @param exactlyOne keys of a record of which exactly one is given [set][key]
 * @param components of a record, in its order
 */
public record Annotated(String word, List<List<String>> exactlyOne, List<OfComponent> components) {

    /**
     * What is said of a component.
     *
     * @param all its annotations
     * @param nullable whether there may be nothing in it
     */
    public record OfComponent(List<Annotation> all, boolean nullable) {
        public OfComponent {
            all = List.copyOf(all);
        }
    }

    public Annotated {
        exactlyOne = List.copyOf(exactlyOne);
        components = List.copyOf(components);
    }

    private static final ClassValue<Annotated> ALL = new ClassValue<>() {
        @Override
        protected Annotated computeValue(Class<?> type) {
            Annotated listed = AnnotationList.shipped().of(type);
            return listed == null ? read(type) : listed;
        }
    };

    /** Of a record or a sealed interface. */
    public static Annotated of(Class<?> type) {
        return ALL.get(type);
    }

    /** From the annotations themselves. */
    static Annotated read(Class<?> type) {
        Choice choice = type.getAnnotation(Choice.class);
        List<List<String>> sets = Arrays.stream(type.getAnnotationsByType(ExactlyOne.class))
                .map(one -> List.of(one.value()))
                .toList();
        List<OfComponent> components = new ArrayList<>();
        if (type.isRecord()) {
            for (RecordComponent component : type.getRecordComponents()) {
                components.add(new OfComponent(
                        List.of(component.getAnnotations()),
                        component.getAnnotatedType().isAnnotationPresent(Nullable.class)));
            }
        }
        return new Annotated(choice == null ? "" : choice.value(), sets, components);
    }
}
