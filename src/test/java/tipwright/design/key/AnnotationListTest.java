// SPDX-License-Identifier: Apache-2.0
package tipwright.design.key;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStream;
import java.lang.annotation.Annotation;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tipwright.design.Design;
import tipwright.design.tank.Interior;

/** The list that the build writes says of every record of a design what its annotations say. */
class AnnotationListTest {
    private static final Set<Class<?>> ALL = below(Design.class, new LinkedHashSet<>());
    private static final AnnotationList LIST = new AnnotationList(AnnotationList.text(ALL));

    /** Found anew here: every record, and every choice of records, in a design. */
    private static Set<Class<?>> below(Class<?> type, Set<Class<?>> met) {
        if (type.isSealed() && met.add(type)) {
            for (Class<?> permitted : type.getPermittedSubclasses()) {
                below(permitted, met);
            }
        } else if (type.isRecord() && met.add(type)) {
            for (RecordComponent component : type.getRecordComponents()) {
                below(component.getType(), met);
                if (component.getGenericType() instanceof ParameterizedType generic
                        && generic.getActualTypeArguments()[0] instanceof Class<?> entry) {
                    below(entry, met);
                }
            }
        }
        return met;
    }

    @Test
    void saysWhatTheAnnotationsSay() {
        assertThat(ALL).hasSizeGreaterThan(100);
        for (Class<?> type : ALL) {
            Annotated listed = Objects.requireNonNull(LIST.of(type), type.getName());
            Annotated own = Annotated.read(type);
            assertThat(listed.word()).as(type.getName()).isEqualTo(own.word());
            assertThat(listed.exactlyOne()).as(type.getName()).isEqualTo(own.exactlyOne());
            assertThat(listed.components()).as(type.getName()).hasSameSizeAs(own.components());
            for (int i = 0; i < own.components().size(); i++) {
                String what = type.getRecordComponents()[i].toString();
                assertThat(listed.components().get(i).nullable())
                        .as(what)
                        .isEqualTo(own.components().get(i).nullable());
                assertThat(values(listed.components().get(i).all()))
                        .as(what)
                        .isEqualTo(values(own.components().get(i).all()));
            }
        }
    }

    /** What the packaged program reads is the list of these very classes; Maven writes it after it has compiled them. */
    @Test
    void isTheListOfTheBuild() throws Exception {
        try (@Nullable InputStream in = AnnotationList.class.getResourceAsStream(AnnotationList.FILE)) {
            String built =
                    in == null ? AnnotationList.text(ALL) : new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(built.lines().sorted().toList())
                    .isEqualTo(AnnotationList.text(ALL).lines().sorted().toList());
        }
    }

    @Test
    void ofAClassThatIsNotInItNothing() {
        assertThat(LIST.of(String.class)).isNull();
        assertThat(new AnnotationList("").of(Design.class)).isNull();
    }

    /** By hand. */
    @Test
    void readsALine() {
        AnnotationList list = new AnnotationList(
                Interior.class.getName()
                        + "\tshape\t2\ta b\tc d e\t+\tM\tLENGTH\t5 mm\t1 mm\t\t9 mm\tnever\t+\t-\t-\t+\tN\tHow long\t.\t-\tC\t2\t4\t.\t\n");
        Annotated of = Objects.requireNonNull(list.of(Interior.class));
        assertThat(of.word()).isEqualTo("shape");
        assertThat(of.exactlyOne()).containsExactly(List.of("a", "b"), List.of("c", "d", "e"));
        assertThat(of.components().get(0).nullable()).isTrue();
        Measured measured = (Measured) of.components().get(0).all().get(0);
        assertThat(List.of(measured.preset(), measured.atLeast(), measured.above(), measured.atMost()))
                .containsExactly("5 mm", "1 mm", "", "9 mm");
        assertThat(List.of(measured.sheet(), measured.wire(), measured.within(), measured.given()))
                .containsExactly(true, false, false, true);
        assertThat(measured.orWord()).isEqualTo("never");
        assertThat(((Note) of.components().get(0).all().get(1)).value()).isEqualTo("How long");
        assertThat(of.components().get(1).nullable()).isFalse();
        assertThat(((Counted) of.components().get(1).all().get(0)).atMost()).isEqualTo(4);
    }

    private record TwoColumns(@Note("left\tright") String text) {}

    @Test
    void aTabWouldSpoilIt() {
        assertThatThrownBy(() -> AnnotationList.text(List.of(TwoColumns.class)))
                .hasMessage("tab or line break in 'left\tright'");
    }

    @Retention(RetentionPolicy.RUNTIME)
    @Target(ElementType.RECORD_COMPONENT)
    private @interface New {}

    private record Foreign(@New String text) {}

    @Test
    void anAnnotationThatItDoesNotKnow() {
        assertThatThrownBy(() -> AnnotationList.text(List.of(Foreign.class))).hasMessageStartingWith("no letter for");
    }

    /** The values of annotations, by annotation and method. */
    private static Map<String, Object> values(List<Annotation> all) {
        Map<String, Object> values = new TreeMap<>();
        for (Annotation one : all) {
            values.put(one.annotationType().getName(), "");
            for (Method method : one.annotationType().getDeclaredMethods()) {
                try {
                    values.put(one.annotationType().getName() + "." + method.getName(), method.invoke(one));
                } catch (ReflectiveOperationException e) {
                    throw new IllegalStateException(e);
                }
            }
        }
        return values;
    }
}
