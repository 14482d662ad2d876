// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Examples;

/** A tank that has run dry stays so, and a dump that would never end is given up with a word on where. */
class RunsDryTest {
    /** Ten times what the shipped designs take. */
    private static final long ENOUGH = 40_000;

    private static String shipped(String name) throws IOException {
        return Files.readString(Path.of("geometry", name + ".yaml"));
    }

    private static String changed(String text, String from, String to) {
        assertThat(text).contains(from);
        return text.replace(from, to);
    }

    /** Sizes at which the volume comes to rest on the very mark below which nothing is left. */
    @ParameterizedTest
    @CsvSource({
        "stage-tub,  diameter: 740 mm, diameter: 753.36 mm, ,              ",
        "slide-back, length: 1300 mm,  length: 1284.59 mm,  ,              ",
        "kerb-swing, length: 1300 mm,  length: 1271.6 mm,   rated: 7 mm/s, rated: 7.0914 mm/s"
    })
    void aVolumeThatRestsOnTheMarkEndsTheDump(
            String name, String from, String to, @Nullable String second, @Nullable String secondTo)
            throws IOException {
        String text = changed(shipped(name), from, to);
        if (second != null && secondTo != null) {
            text = changed(text, second, secondTo);
        }
        Effort effort = new Effort(ENOUGH);
        Timing timing = CycleTimer.time(Simple.analysis(Examples.read(text)), CycleTimer.TOLERANCE, effort);
        assertThat(timing.missing()).isNull();
        Cycle dump = Simple.dump(timing);
        assertThat(dump.complete()).isTrue();
        assertThat(dump.happenings().stream().map(DumpEvent::kind))
                .doesNotHaveDuplicates()
                .contains(DumpEvent.Kind.DRAINED, DumpEvent.Kind.BACK);
    }

    @Test
    void aDumpThatTakesTooLongIsGivenUpWithItsTimeAndTilt() throws IOException {
        Timing timing = CycleTimer.time(
                Simple.analysis(Examples.read(shipped("stage-tub"))), CycleTimer.TOLERANCE, new Effort(100));
        assertThat(timing.lost()).isTrue();
        assertThat(timing.cycles()).isEmpty();
        assertThat(timing.missing())
                .matches("the dump in time could not be worked out: it did not converge [0-9.]+ s after the start, "
                        + "at a tilt of [0-9.]+ deg, after 100 evaluations");
    }
}
