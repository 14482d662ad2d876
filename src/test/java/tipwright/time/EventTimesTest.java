// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analysis;
import tipwright.time.DumpEvent.Kind;

/** The time of every event of seeded designs against small steps of one length that know nothing of root finding. */
class EventTimesTest {
    private final Set<Kind> met = EnumSet.noneOf(Kind.class);

    @Test
    void everyEventComesWhenSmallStepsMeetIt() throws Exception {
        for (Analysis analysis : CyclePropertiesTest.analyses(15, 4_000, 40_000, 0.25)) {
            compare(analysis);
        }
        for (Analysis weak : CyclePropertiesTest.analyses(15, 100, 2_500, 0.02)) {
            compare(weak);
        }
        // or the comparison would be of little worth
        assertThat(met).isEqualTo(EnumSet.complementOf(EnumSet.of(Kind.END_OF_STROKE, Kind.STUCK)));
    }

    private void compare(Analysis analysis) throws Exception {
        Cycle dump = Simple.dump(CycleTimer.time(analysis));
        SmallSteps steps = new SmallSteps(analysis);
        List<DumpEvent> expected = steps.happenings();
        for (DumpEvent e : expected) {
            met.add(e.kind());
            assertThat(dump.happenings()).as("%s at %s s", e.kind(), e.time()).anySatisfy(h -> {
                assertThat(h.kind()).isEqualTo(e.kind());
                assertThat(h.time()).isCloseTo(e.time(), within(3 * steps.step() + 1e-3 * e.time()));
                assertThat(h.tilt()).isCloseTo(e.tilt(), within(2e-3));
            });
        }
        if (!steps.stillDraining()) {
            assertThat(kinds(dump.happenings())).isEqualTo(kinds(expected));
        }
    }

    private static List<Kind> kinds(List<DumpEvent> happenings) {
        return happenings.stream().map(DumpEvent::kind).sorted().toList();
    }
}
