// SPDX-License-Identifier: Apache-2.0
package tipwright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each library stays inside the packages that need it, and nothing of the program is static and changing. */
class FencesTest {
    private static final JavaClasses CLASSES = Production.classes();

    /** Library, and the packages that may see it. */
    private static final Map<String, String[]> FENCES = Map.ofEntries(
            Map.entry("javafx..", of("viewer")),
            Map.entry("picocli..", of("command")),
            Map.entry("org.ejml..", of("linkage", "strength")),
            Map.entry("org.locationtech.jts..", of("outline", "check", "placement", "geometry")),
            Map.entry("org.apache.pdfbox..", of("drawing", "report")),
            Map.entry(
                    "org.hipparchus..",
                    of("analysis", "check.clearance", "time", "placement", "design.tape", "doubt", "viewer.photo")),
            Map.entry("org.snakeyaml..", of("design.file")),
            Map.entry("com.fasterxml.jackson..", of("report", "design.file")),
            Map.entry("com.openhtmltopdf..", of("document")),
            Map.entry("org.jfree..", of("document")),
            Map.entry("org.apache.batik..", of("drawing")),
            Map.entry("org.objectweb.asm..", of("build")),
            Map.entry("de.rototor..", of("drawing")));

    private static String[] of(String... packages) {
        String[] all = new String[packages.length];
        for (int i = 0; i < packages.length; i++) {
            all[i] = "tipwright." + packages[i] + "..";
        }
        return all;
    }

    static Set<String> libraries() {
        return FENCES.keySet();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    void libraryStaysInside(String library) {
        noClasses()
                .that()
                .resideOutsideOfPackages(FENCES.get(library))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .check(CLASSES);
    }

    @Test
    void staticFieldsAreFinal() {
        fields().that().areStatic().should().beFinal().check(CLASSES);
    }

    @Test
    void arraysThatAreStaticArePrivate() {
        fields().that()
                .areStatic()
                .and()
                .doNotHaveModifier(JavaModifier.SYNTHETIC)
                .and()
                .haveRawType(DescribedPredicate.describe("an array", JavaClass::isArray))
                .should()
                .bePrivate()
                .check(CLASSES);
    }

    @Test
    void nothingIsSynchronized() {
        noMethods().should().haveModifier(JavaModifier.SYNCHRONIZED).check(CLASSES);
    }
}
