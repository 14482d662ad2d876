// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.around.Footing;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.FilletWeld;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** A machine and its mirror image in the side view's plane, on ground that leans the other way, are used alike. Source: symmetry. */
public class MirrorTest {
    /** Numbers that are measured along the pivot, or lean along it. */
    private static final List<String> ALONG = List.of("z", "carriedAt", "crossSlope");

    static List<String> designs() throws IOException {
        return RegressionTest.designs();
    }

    @ParameterizedTest
    @MethodSource("designs")
    void mirrorImageFindsTheSame(String file) throws IOException, CannotComputeException, ReflectiveOperationException {
        Design design = RegressionTest.coarse(Examples.read(Files.readString(Path.of(file))));
        List<Finding> here = Checker.findings(design);
        List<Finding> there = Checker.findings(mirrored(design));
        assertThat(there).hasSameSizeAs(here);
        for (int i = 0; i < here.size(); i++) {
            Finding a = here.get(i);
            String id = otherSide(a.id());
            Finding b = id.equals(a.id())
                    ? there.get(i)
                    : there.stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
            assertThat(b.verdict()).as(a.id()).isEqualTo(a.verdict());
            if (a.verdict() != Verdict.NOT_CHECKED && Double.isFinite(a.demand()) && Double.isFinite(b.demand())) {
                assertThat(b.demand())
                        .as("%s: %s; %s", a.id(), a.note().metric(), b.note().metric())
                        .isCloseTo(a.demand(), within(1e-6 * Math.abs(a.demand()) + 1e-9));
            }
        }
    }

    /** What is on the one side is on the other in the mirror. */
    private static String otherSide(String id) {
        return id.contains("+z") ? id.replace("+z", "-z") : id.replace("-z", "+z");
    }

    /** A design with left and right exchanged. */
    public static Design mirrored(Design design) throws ReflectiveOperationException {
        return (Design) mirrored(design, "", false);
    }

    /**
     * A value of a design, seen in the mirror.
     *
     * @param name of the component that it is
     * @param across whether the second coordinate of a point in a plane is z
     */
    private static Object mirrored(Object value, String name, boolean across) throws ReflectiveOperationException {
        if (value instanceof Vec3 v) {
            return name.equals("size") ? v : new Vec3(v.x(), v.y(), -v.z());
        }
        if (value instanceof Vec2 v) {
            return across ? new Vec2(v.x(), -v.y()) : v;
        }
        if (value instanceof Double d) {
            return ALONG.contains(name) ? -d : d;
        }
        if (value instanceof List<?> all) {
            Object[] made = new Object[all.size()];
            for (int i = 0; i < made.length; i++) {
                made[i] = mirrored(all.get(i), name, across);
            }
            return List.of(made);
        }
        return value instanceof Record r ? mirrored(r, across) : value;
    }

    private static Object mirrored(Record record, boolean across) throws ReflectiveOperationException {
        boolean inPlane = across
                || record instanceof Footing
                || (record instanceof Bolts b && upright(b.normal()))
                || (record instanceof FilletWeld w && upright(w.normal()));
        RecordComponent[] components = record.getClass().getRecordComponents();
        Class<?>[] types = Stream.of(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        Object[] values = new Object[components.length];
        for (int i = 0; i < values.length; i++) {
            var get = components[i].getAccessor();
            get.setAccessible(true);
            Object value = get.invoke(record);
            values[i] = value == null ? null : mirrored(value, components[i].getName(), inPlane);
        }
        Constructor<?> make = record.getClass().getDeclaredConstructor(types);
        make.setAccessible(true);
        return make.newInstance(values);
    }

    /** Whether the plane's second direction is z rather than y. */
    private static boolean upright(Vec3 normal) {
        return Math.hypot(normal.x(), normal.y()) > 0;
    }
}
