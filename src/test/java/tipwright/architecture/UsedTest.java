// SPDX-License-Identifier: Apache-2.0
package tipwright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tipwright.design.key.Choice;

/** The program holds nothing that neither it nor a test uses; private members are the compiler's business. */
class UsedTest {
    private static final JavaClasses CLASSES = new ClassFileImporter().importPackages("tipwright");

    /** Called by Java or by a library. */
    private static final Set<String> ENTRY_POINTS =
            Set.of("main", "values", "valueOf", "toString", "equals", "hashCode");

    @Test
    void everyMethodIsCalled() {
        Set<String> unused = new TreeSet<>();
        for (JavaClass type : production()) {
            for (JavaMethod method : type.getMethods()) {
                if (!isExempt(method) && !isCalled(method)) {
                    unused.add(method.getFullName());
                }
            }
        }
        assertThat(unused).isEmpty();
    }

    @Test
    void everyClassIsUsed() {
        Set<String> unused = new TreeSet<>();
        for (JavaClass type : production()) {
            boolean used = type.getDirectDependenciesToSelf().stream()
                    .anyMatch(d -> !outermost(d.getOriginClass()).equals(outermost(type)));
            boolean own = outermost(type).equals(type) && !type.getSimpleName().equals("package-info");
            if (!used && own && !holdsConstantsOnly(type) && !isFoundByName(type)) {
                unused.add(type.getName());
            }
        }
        assertThat(unused).isEmpty();
    }

    /** The compiler copies constants into their users, so that nobody is seen to use their class. */
    private static boolean holdsConstantsOnly(JavaClass type) {
        return type.getMethods().isEmpty()
                && type.getFields().stream().allMatch(f -> f.getModifiers().contains(JavaModifier.FINAL));
    }

    /** Programs are started, and choices of the design file found, by their names. */
    private static boolean isFoundByName(JavaClass type) {
        return type.isAnnotatedWith(Choice.class)
                || type.getMethods().stream().anyMatch(m -> m.getName().equals("main"));
    }

    private static List<JavaClass> production() {
        return CLASSES.stream()
                .filter(c -> c.getSource().stream().noneMatch(s -> s.toString().contains("/test-classes/")))
                .toList();
    }

    private static JavaClass outermost(JavaClass type) {
        return type.getEnclosingClass().map(UsedTest::outermost).orElse(type);
    }

    private static boolean isExempt(JavaMethod method) {
        return method.getModifiers().contains(JavaModifier.PRIVATE)
                || method.getModifiers().contains(JavaModifier.SYNTHETIC)
                || ENTRY_POINTS.contains(method.getName())
                || isOfAnAnnotation(method)
                || isRecordPart(method)
                || overridesForeign(method);
    }

    private static boolean isOfAnAnnotation(JavaMethod method) {
        return method.getOwner().isAnnotation();
    }

    /** Accessors of record components: reader and reports find many of them by reflection. */
    private static boolean isRecordPart(JavaMethod method) {
        return method.getOwner().isRecord()
                && method.getRawParameterTypes().isEmpty()
                && method.getOwner().tryGetField(method.getName()).isPresent();
    }

    /** Whether the method is one that a library or the JDK declared and calls. */
    private static boolean overridesForeign(JavaMethod method) {
        return supertypes(method.getOwner())
                .filter(t -> !t.getPackageName().startsWith("tipwright"))
                .anyMatch(t -> t.getAllMethods().stream().anyMatch(m -> sameSignature(m, method)));
    }

    private static boolean isCalled(JavaMethod method) {
        return Stream.concat(Stream.of(method), related(method))
                .anyMatch(m -> accesses(m).stream().anyMatch(a -> !isRecursion(a, method)));
    }

    /** The same method of our own super- and subtypes: a call to one may be a call to the other. */
    private static Stream<JavaMethod> related(JavaMethod method) {
        JavaClass owner = method.getOwner();
        return Stream.concat(supertypes(owner), owner.getAllSubclasses().stream())
                .flatMap(t -> t.getMethods().stream())
                .filter(m -> sameSignature(m, method));
    }

    private static Stream<JavaClass> supertypes(JavaClass type) {
        return Stream.concat(type.getAllRawSuperclasses().stream(), type.getAllRawInterfaces().stream());
    }

    private static boolean sameSignature(JavaMethod a, JavaMethod b) {
        return a.getName().equals(b.getName())
                && a.getRawParameterTypes().size() == b.getRawParameterTypes().size();
    }

    private static List<JavaAccess<?>> accesses(JavaMethod method) {
        List<JavaAccess<?>> all = new ArrayList<>();
        all.addAll(method.getCallsOfSelf());
        all.addAll(method.getReferencesToSelf());
        return all;
    }

    private static boolean isRecursion(JavaAccess<?> access, JavaMethod method) {
        return access.getOrigin().equals(method);
    }
}
