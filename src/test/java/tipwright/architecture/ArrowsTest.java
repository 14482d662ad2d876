// SPDX-License-Identifier: Apache-2.0
package tipwright.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.report.WholeFile;

/** Data flows one way through the packages: each may only depend on those below it. */
class ArrowsTest {
    private static final JavaClasses CLASSES = Production.classes();

    /** Package, and which others of ours it may use; DEVELOPERS.md shows the same table. */
    private static final Map<String, List<String>> MAY_USE = table();

    private static Map<String, List<String>> table() {
        Map<String, List<String>> table = new LinkedHashMap<>();
        table.put("quantity", List.of());
        table.put("geometry", List.of("quantity"));
        table.put("fluid", List.of());
        table.put("linkage", List.of("geometry"));
        table.put("design", List.of("quantity", "geometry", "linkage"));
        table.put("interview", List.of("quantity", "geometry", "design"));
        table.put("strength", List.of("design", "geometry", "quantity"));
        table.put("load", List.of("design", "geometry"));
        table.put("analysis", List.of("design", "load", "linkage", "geometry"));
        table.put("time", List.of("analysis", "design", "load", "linkage", "geometry", "fluid"));
        table.put("outline", List.of("analysis", "design", "load", "linkage", "geometry"));
        table.put(
                "check",
                List.of("outline", "time", "analysis", "strength", "design", "load", "geometry", "quantity", "fluid"));
        table.put("doubt", List.of("check", "time", "analysis", "design", "load", "geometry", "quantity"));
        table.put("drawing", List.of("geometry"));
        List<String> below = new ArrayList<>(table.keySet());
        for (String upper :
                List.of("placement", "remedy", "validation", "sheet", "report", "document", "viewer", "command")) {
            table.put(upper, List.copyOf(below));
            below.add(upper);
        }
        table.put("build", List.of());
        return table;
    }

    static Set<String> packages() {
        return MAY_USE.keySet();
    }

    @ParameterizedTest
    @MethodSource("packages")
    void packageUsesOnlyThoseBelowIt(String name) {
        List<String> allowed = new ArrayList<>(MAY_USE.getOrDefault(name, List.of()));
        allowed.add(name);
        String[] allowedPackages =
                allowed.stream().map(p -> "tipwright." + p + "..").toArray(String[]::new);
        classes()
                .that()
                .resideInAPackage("tipwright." + name + "..")
                .should()
                .onlyDependOnClassesThat(not(resideInAPackage("tipwright..")).or(resideInAnyPackage(allowedPackages)))
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    @Test
    void everyPackageIsInTheTable() {
        Set<String> found = new TreeSet<>();
        for (JavaClass c : CLASSES) {
            found.add(c.getPackageName().replaceFirst("^tipwright\\.", "").replaceFirst("\\..*", ""));
        }
        assertThat(MAY_USE.keySet()).containsAll(found);
        assertThat(found)
                .contains(
                        "quantity", "geometry", "linkage", "design", "load", "analysis", "check", "report", "command");
    }

    @Test
    void packagesAreFreeOfRings() {
        slices().matching("tipwright.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    /** What a command reads it cannot write over. */
    @Test
    void commandsWriteFilesInOnePlace() {
        noClasses()
                .that()
                .resideInAPackage("tipwright.command..")
                .and()
                .doNotHaveSimpleName("Outputs")
                .should()
                .callMethod(WholeFile.class, "write", Path.class, WholeFile.Content.class)
                .check(CLASSES);
    }

    @Test
    void designSeesOnlyTheInputRecordsOfLinkage() {
        DescribedPredicate<JavaClass> input = resideInAPackage("tipwright.linkage")
                .and(DescribedPredicate.describe("an input record", c -> Set.of("Skeleton", "Joint", "Strut")
                        .contains(outermost(c).getSimpleName())));
        noClasses()
                .that()
                .resideInAPackage("tipwright.design..")
                .should()
                .dependOnClassesThat(resideInAPackage("tipwright.linkage..").and(not(input)))
                .check(CLASSES);
    }

    private static JavaClass outermost(JavaClass c) {
        return c.getEnclosingClass().map(ArrowsTest::outermost).orElse(c);
    }
}
