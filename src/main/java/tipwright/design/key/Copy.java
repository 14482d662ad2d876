// SPDX-License-Identifier: Apache-2.0
package tipwright.design.key;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/** Copies of a design's records with some components changed: each component is named, none is counted off. */
public final class Copy {
    private static final ClassValue<Plan> PLANS = new ClassValue<>() {
        @Override
        protected Plan computeValue(Class<?> type) {
            return Plan.of(type);
        }
    };

    private Copy() {}

    /**
     * The same record with one component changed.
     *
     * @throws IllegalArgumentException when the record has no component of that name
     */
    public static <R extends Record> R with(R record, String name, @Nullable Object value) {
        Plan plan = PLANS.get(record.getClass());
        @Nullable Object[] values = plan.values(record);
        values[plan.index(name)] = value;
        return make(record, plan, values);
    }

    /**
     * The same record with every place in it put elsewhere: every point that the file gives as a length, also in records and lists
     * of records of the same package. Directions stay.
     *
     * @param places from a place as drawn to where it goes, m
     */
    public static <R extends Record> R moved(R record, UnaryOperator<Vec2> places) {
        Plan plan = PLANS.get(record.getClass());
        @Nullable Object[] values = plan.values(record);
        Package own = record.getClass().getPackage();
        for (int i = 0; i < values.length; i++) {
            values[i] = moved(values[i], plan.place[i], own, places);
        }
        return make(record, plan, values);
    }

    /**
     * Whether two records of one class are equal in every component but some.
     *
     * @throws IllegalArgumentException when the record has no component of one of the names
     */
    public static <R extends Record> boolean alikeBut(R a, R b, List<String> names) {
        Plan plan = PLANS.get(a.getClass());
        @Nullable Object[] first = plan.values(a);
        @Nullable Object[] second = plan.values(b);
        for (String name : names) {
            second[plan.index(name)] = first[plan.index(name)];
        }
        return Arrays.equals(first, second);
    }

    /** What a record has in a component. */
    public static @Nullable Object value(RecordComponent component, Object record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(component.toString(), e);
        }
    }

    private static @Nullable Object moved(
            @Nullable Object value, boolean place, Package own, UnaryOperator<Vec2> places) {
        if (value instanceof Vec2 at) {
            return place ? places.apply(at) : at;
        }
        if (value instanceof List<?> list) {
            return list.stream().map(v -> moved(v, false, own, places)).toList();
        }
        return value instanceof Record r && own.equals(r.getClass().getPackage()) ? moved(r, places) : value;
    }

    @SuppressWarnings("unchecked") // the constructor is that of the record's own class
    private static <R extends Record> R make(R record, Plan plan, @Nullable Object[] values) {
        return (R) record.getClass().cast(plan.make(values));
    }

    /** How a record is taken apart and put together. */
    private static final class Plan {
        private final RecordComponent[] components;
        /** Whether each component is a point that the file gives as a length [component]. */
        private final boolean[] place;

        private final Constructor<?> constructor;

        private Plan(RecordComponent[] components, boolean[] place, Constructor<?> constructor) {
            this.components = components;
            this.place = place;
            this.constructor = constructor;
        }

        static Plan of(Class<?> type) {
            RecordComponent[] components = type.getRecordComponents();
            boolean[] place = new boolean[components.length];
            List<Annotated.OfComponent> said = Annotated.of(type).components();
            for (int i = 0; i < place.length; i++) {
                place[i] = said.get(i).all().stream()
                        .anyMatch(m -> m instanceof Measured measured && measured.value() == Kind.LENGTH);
            }
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            try {
                return new Plan(components, place, type.getDeclaredConstructor(types));
            } catch (NoSuchMethodException e) {
                throw new IllegalStateException(type + " has no constructor of its components", e);
            }
        }

        int index(String name) {
            for (int i = 0; i < components.length; i++) {
                if (components[i].getName().equals(name)) {
                    return i;
                }
            }
            throw new IllegalArgumentException(constructor.getDeclaringClass() + " has no component " + name);
        }

        @Nullable
        Object[] values(Record record) {
            @Nullable Object[] values = new @Nullable Object[components.length];
            for (int i = 0; i < values.length; i++) {
                values[i] = value(components[i], record);
            }
            return values;
        }

        Object make(@Nullable Object[] values) {
            try {
                return constructor.newInstance(values);
            } catch (InvocationTargetException e) {
                if (e.getCause() instanceof RuntimeException refused) {
                    throw refused;
                }
                throw new IllegalStateException(e);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
