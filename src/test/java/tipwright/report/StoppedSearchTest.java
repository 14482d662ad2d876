// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.placement.Placement;
import tipwright.placement.Placer;

/** A search that was stopped has not found that nothing fits. */
class StoppedSearchTest {
    private static final String BEFORE = "The search was stopped before it found anything: ";

    private static Design shipped(String name) {
        if (DesignFile.shipped(name + ".yaml") instanceof Reading.Good good) {
            return good.design();
        }
        throw new AssertionError(name);
    }

    private static String text(Design design, Placement placement) {
        return PlacementText.of(design, placement, Style.PLAIN).replace("\n", " ");
    }

    private static Placement search(Design design, BooleanSupplier stop) throws CannotComputeException {
        return new Placer(1, 1, 2_000L, stop, progress -> {}).place(design);
    }

    @ParameterizedTest
    @ValueSource(strings = {"silt-trailer", "crank-cart"})
    void stoppedAtOnceItSaysThatNothingIsKnown(String name) throws CannotComputeException {
        Design design = shipped(name);
        Placement found = search(design, () -> true);
        assertThat(found.unknown()).isTrue();
        assertThat(found.misses()).isEmpty();
        assertThat(found.notes()).noneMatch(n -> n.contains("best so far"));
        assertThat(text(design, found))
                .contains(BEFORE + "0 of " + found.whole() + " candidates, 0 %, had been looked at.")
                .contains("This does not mean that nothing fits.", "--candidates")
                .doesNotContain("Nothing fits.");
    }

    @Test
    void stoppedAfterAllWereLookedAtItSaysSo() {
        Design design = shipped("crank-cart");
        Placement found = new Placement(
                java.util.List.of(),
                java.util.List.of(),
                java.util.List.of(),
                java.util.List.of(),
                600,
                0,
                0,
                600,
                true);
        assertThat(text(design, found)).contains(BEFORE + "all 600 candidates had been looked at, but not yet");
    }

    @Test
    void whatWasFoundBeforeTheStopIsTheBestSoFar() throws CannotComputeException {
        Design design = shipped("silt-trailer");
        AtomicBoolean stop = new AtomicBoolean();
        Placement found = new Placer(1, 1, 20_000L, stop::get, p -> stop.set(p.best() != null)).place(design);
        assertThat(found.stopped()).isTrue();
        assertThat(found.answers()).isNotEmpty();
        assertThat(found.notes().get(0)).isEqualTo("stopped before the end: this is the best so far");
        assertThat(found.unknown()).isFalse();
    }
}
