// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Row;
import tipwright.check.One;
import tipwright.check.rule.Finding;

/** Eyes of a link that is pressed twice as hard as it is pulled: what gives first, with the figures of a plate with a hole; and what is said of a link. */
class LinkEyeTest {
    private static final String EYE = "eye: {width: 60 mm, thickness: 8 mm, hole: 30 mm, end: 40 mm, plates: 2}";

    private static String text(String name) throws IOException {
        return swap(
                Files.readString(Path.of("geometry", name + ".yaml")),
                "tilt: {to: 45 deg}",
                "tilt: {to: 45 deg, step: 9 deg}");
    }

    private static double[] most(String yaml, String link) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        LinkLoad load = new LinkLoad(
                analysis,
                analysis.mechanism().link(analysis.mechanism().bodies().indexOf(link)));
        double[] most = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (CaseResult result : analysis.cases()) {
            for (Row row : result.rows()) {
                for (MotionDirection direction : MotionDirection.ALL) {
                    Balance b = row.balance(direction);
                    most[0] = Math.max(most[0], load.at(row.pose(), b).squeeze());
                    most[1] = Math.max(most[1], load.at(row.pose(), b).draw());
                }
            }
        }
        return most;
    }

    /** Two plates of 8 mm: F / (2 d t), F / (2 t 2 (e - d/2)) over 0.577, F / (2 t (w - d)). */
    @ParameterizedTest
    @CsvSource({
        "44, 30, 60, pull beside the pin",
        "45, 30, 60, the pin pressing in its hole",
        "120, 30, 27, 'tear-out in front of the pin, as yield in pull'",
        "120, 30, 28.5, the pin pressing in its hole",
    })
    void whatGivesFirst(double w, double d, double e, String how) throws IOException, CannotComputeException {
        String eye = "eye: {width: " + w + " mm, thickness: 8 mm, hole: " + d + " mm, end: " + e + " mm, plates: 2}";
        String yaml = swap(text("slide-back"), EYE, eye);
        double[] most = most(yaml, "tie");
        assertThat(most[0]).isGreaterThan(2 * most[1]);
        double pressed = most[0] / (2 * d * 8e-6);
        double torn = most[1] / (4 * 8e-6 * (e - d / 2)) * Math.sqrt(3);
        double beside = most[1] / (2 * 8e-6 * (w - d));
        double worst = Math.max(pressed, Math.max(torn, beside));
        Finding found = One.of(yaml, "link/tie-eye");
        assertThat(found.demand()).isCloseTo(worst, within(1e-9 * worst));
        assertThat(found.note().metric()).isEqualTo(how);
    }

    /** Pressed more than pulled, only the pin's pressing counts. */
    @Test
    void theEyeOfALinkThatIsPressed() throws IOException, CannotComputeException {
        String yaml = text("rail-pusher");
        double[] most = most(yaml, "link");
        assertThat(most[1]).isNegative();
        Finding found = One.of(yaml, "link/link-eye");
        double pressed = most[0] / (2 * 0.04 * 0.02);
        assertThat(found.demand()).isCloseTo(pressed, within(1e-9 * pressed));
        assertThat(found.note().metric()).isEqualTo("the pin pressing in its hole");
        assertThat(One.all(yaml, "link").stream().map(Finding::id)).containsExactly("link/link", "link/link-eye");
        assertThat(One.of(yaml, "link/link").note().metric()).isEqualTo("it as a column about its weaker axis");
    }

    @Test
    void whatIsSaidOfLinksOnBothSidesAndOfOneThatIsOnlyPulled() throws IOException, CannotComputeException {
        assertThat(One.of(text("kerb-swing"), "link/main").note().metric())
                .isEqualTo("each of the two as a column about its weaker axis");
        String yaml = swap(text("kerb-swing"), "to: 45 deg, step: 9 deg", "to: 15 deg, step: 5 deg");
        assertThat(most(yaml, "second")[0]).isNegative();
        Finding pulled = One.of(yaml, "link/second");
        assertThat(pulled.note().metric()).isEqualTo("it is only pulled, never pushed");
        assertThat(pulled.demand()).isZero();
        assertThat(pulled.utilisation()).isZero();
        String bare = yaml.replaceFirst("(?m)^link-sections:(\\n  .*)*", "link-sections: []");
        assertThat(One.of(bare, "link/second").note().metric())
                .isEqualTo("link-sections: 'second' missing; it is only pulled, never pushed");
    }
}
