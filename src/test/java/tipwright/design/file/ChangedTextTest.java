// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.drive.Straight;
import tipwright.geometry.Vec2;
import tipwright.load.Contents;

/** A changed design is written into its own text, one value each; read again it is the changed design. */
class ChangedTextTest {
    private static final double MARK = 0.0254 / 16;

    private static Reading.Good read(String text) {
        Reading reading = DesignFile.read("x.yaml", text, NamedFiles.shipped());
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Good.class);
        return (Reading.Good) reading;
    }

    private static Reading.Good shipped(String name) {
        return (Reading.Good) DesignFile.shipped(name + ".yaml");
    }

    private static @Nullable String changed(Reading.Good good, Design to) {
        return ChangedText.of(good, to, new Contents(good.design()).capacity(), ChangedTextTest::partName);
    }

    private static @Nullable String partName(Object part) {
        return PartsFile.shipped().parts().stream()
                .filter(p -> p.part().equals(part))
                .map(PartsFile.Part::name)
                .findFirst()
                .orElse(null);
    }

    private static List<String> changedLines(Reading.Good good, String text) {
        List<String> before = good.text().lines().toList();
        List<String> after = text.lines().toList();
        assertThat(after).hasSameSizeAs(before);
        return after.stream().filter(line -> !before.contains(line)).toList();
    }

    @Test
    void aPinThatMovesIsOneValueInItsOwnUnit() {
        Reading.Good good = shipped("silt-trailer");
        Vec2 pin = new Vec2(0.22, -0.395);
        Design to =
                good.design().withDrive(good.design().drive().moved(p -> p.equals(pin) ? new Vec2(0.22, -0.425) : p));
        String text = Objects.requireNonNull(changed(good, to));
        assertThat(changedLines(good, text))
                .containsExactly("    frame-pin: [220 mm, -425 mm]    # in a bracket that hangs between the rails");
        assertThat(read(text).design()).isEqualTo(to);
    }

    private static Vec2 onMark(Vec2 at) {
        return new Vec2(Math.rint(at.x() / MARK) * MARK, Math.rint(at.y() / MARK) * MARK);
    }

    /** What was measured stays under 'points'; where the pin is named, its new coordinates stand. */
    @Test
    void aPinThatIsPlacedByTheTapeGetsCoordinatesWhereItIsNamed() {
        Reading.Good good = shipped("yard-tub");
        Vec2 pin = ((Straight) good.design().drive()).framePin();
        Vec2 lower = onMark(pin).plus(new Vec2(0, -4 * MARK));
        Design to = good.design().withDrive(good.design().drive().moved(p -> p.equals(pin) ? lower : p));
        String text = Objects.requireNonNull(changed(good, to));
        assertThat(changedLines(good, text)).hasSize(1).allMatch(line -> line.contains("frame-pin: ["));
        Design back = read(text).design();
        assertThat(((Straight) back.drive()).framePin().minus(lower).norm()).isLessThan(1e-9);
        assertThat(back.pivot()).isEqualTo(good.design().pivot());
        Vec2 higher = onMark(back.pivot().at()).plus(new Vec2(0, MARK));
        Design up = good.design().withPivot(good.design().pivot().movedTo(higher));
        Design raised = read(Objects.requireNonNull(changed(good, up))).design();
        assertThat(raised.pivot().at().minus(higher).norm()).isLessThan(1e-9);
        // places that were measured from the pivot stay where they are
        assertThat(raised.drive()).isEqualTo(good.design().drive());
    }

    @Test
    void inchesStayFractions() {
        Reading.Good good = shipped("saw-skid");
        Vec2 at = good.design().pivot().at();
        Vec2 higher = at.plus(new Vec2(0, 0.5 * 0.0254));
        String text = Objects.requireNonNull(
                changed(good, good.design().withPivot(good.design().pivot().movedTo(higher))));
        assertThat(changedLines(good, text)).hasSize(1).allMatch(line -> line.contains(" in]"));
        assertThat(read(text).design().pivot().at().minus(higher).norm()).isLessThan(1e-9);
    }

    @Test
    void anotherPartIsItsName() {
        Reading.Good good = shipped("too-small");
        Actuator other = (Actuator) PartsFile.shipped().parts().stream()
                .filter(p -> p.name().equals("mid-12-long"))
                .findFirst()
                .orElseThrow()
                .part();
        Design to = good.design().withDrive(good.design().drive().with(other));
        String text = Objects.requireNonNull(changed(good, to));
        assertThat(changedLines(good, text)).containsExactly("      - {z: 0 mm, actuator: mid-12-long}");
        assertThat(read(text).design()).isEqualTo(to);
    }

    @Test
    void lessInTheTankIsAShareOrAVolumeAsTheFileHasIt() {
        Reading.Good share = shipped("too-small");
        String text = Objects.requireNonNull(
                changed(share, share.design().withSlurry(share.design().slurry().withFill(0.45))));
        assertThat(text).contains("slurry: {fill: 45 %, density");
        Reading.Good volume = read(swap(share.text(), "fill: 85 %", "volume: 600 L"));
        double room = new Contents(volume.design()).capacity();
        text = Objects.requireNonNull(changed(
                volume, volume.design().withSlurry(volume.design().slurry().withFill(0.5))));
        assertThat(read(text).design().slurry().volumeIn(room) / room).isBetween(0.4999, 0.5001);
        assertThat(changedLines(volume, text))
                .hasSize(1)
                .allMatch(line -> line.contains("volume: ") && line.contains(" L,"));
    }

    @Test
    void whatIsNoChangeOfAValueIsNotWritten() {
        Reading.Good good = shipped("too-small");
        PlacedActuator one = good.design().drive().actuators().get(0);
        assertThat(changed(good, good.design().withDrive(good.design().drive().with(List.of(one, one)))))
                .isNull();
        assertThat(changed(good, good.design())).isNull();
    }
}
