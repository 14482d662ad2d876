// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.JointPlan;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.drive.Drive;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.linkage.Skeleton;

/** The shipped design of each mechanism passes its checks, and each of its pins and links is checked. */
class MechanismDesignsTest {
    static List<String> all() {
        return List.of(
                "crank-cart",
                "knee-stand",
                "rail-pusher",
                "slide-back",
                "kerb-swing",
                "six-link",
                "twin-rams",
                "stage-tub");
    }

    private static Design read(String name) {
        Reading reading = DesignFile.read(Path.of("geometry", name + ".yaml"));
        if (reading instanceof Reading.Good good) {
            return good.design();
        }
        throw new AssertionError(reading.toString());
    }

    @ParameterizedTest
    @MethodSource("all")
    void passesAndEveryPinIsChecked(String name) throws CannotComputeException {
        Result result = Checker.check(read(name));
        assertThat(result.findings()).noneMatch(f -> f.verdict() == Verdict.FAIL);
        assertThat(result.analysis().stop()).isNull();
        List<String> checked = result.findings().stream()
                .filter(f -> f.verdict() != Verdict.NOT_CHECKED)
                .map(Finding::id)
                .toList();
        for (JointPlan joint : result.analysis().mechanism().joints()) {
            if (!joint.slide() && !joint.name().equals("pivot")) {
                assertThat(checked).contains("pin/" + joint.name());
            }
        }
        Design design = result.analysis().design();
        Skeleton skeleton = design.drive().skeleton(design.pivot().at());
        for (int body = 1; body < skeleton.bodies().size(); body++) {
            if (body != skeleton.tank() && !skeleton.twoPins(body).isEmpty()) {
                assertThat(checked).contains("link/" + skeleton.bodies().get(body));
            }
        }
        assertThat(checked).contains("pin/frame-pin", "shaft/at-bearing-1", "bearing-static/bearing-2");
    }

    @Test
    void everyMechanismHasADesign() {
        Set<Class<?>> shown = new HashSet<>();
        for (String name : all()) {
            shown.add(read(name).drive().getClass());
        }
        assertThat(new ArrayList<>(shown)).containsAll(kinds(Drive.class));
    }

    /** The records of a sealed interface and of those in its permits clause. */
    private static List<Class<?>> kinds(Class<?> type) {
        return Stream.of(type.getPermittedSubclasses())
                .flatMap(c -> c.isInterface() ? kinds(c).stream() : Stream.<Class<?>>of(c))
                .toList();
    }
}
