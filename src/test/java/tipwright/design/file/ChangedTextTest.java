// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.key.Copy;
import tipwright.design.supply.Battery;
import tipwright.design.supply.Cable;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Contents;

/** A changed design is written into its own text, one value each; read again it is the changed design. */
class ChangedTextTest {
    private static Reading.Good read(String text) {
        Reading reading = DesignFile.read("x.yaml", text, NamedFiles.shipped());
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Good.class);
        return (Reading.Good) reading;
    }

    private static Reading.Good shipped(String name) {
        return (Reading.Good) DesignFile.shipped(name + ".yaml");
    }

    private static @Nullable String changed(Reading.Good good, Design to) {
        return ChangedText.of(
                good,
                to,
                new Contents(good.design()).capacity(),
                ChangedTextTest::partName,
                t -> DesignFile.read("x.yaml", t, NamedFiles.shipped()));
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

    private static Design with(Design design, PlacedActuator... placed) {
        return design.withDrive(design.drive().with(List.of(placed)));
    }

    private static List<String> added(Reading.Good good, String text) {
        List<String> more = new ArrayList<>(text.lines().toList());
        good.text().lines().forEach(more::remove);
        return more;
    }

    @Test
    void aSecondActuatorStandsBehindTheFirst() {
        Reading.Good good = shipped("silt-trailer");
        PlacedActuator one = good.design().drive().actuators().get(0);
        Design two = with(good.design(), Copy.with(one, "z", -0.225), Copy.with(one, "z", 0.225));
        String text = Objects.requireNonNull(changed(good, two));
        assertThat(text)
                .contains(
                        """
                            actuators:
                              - {z: -225 mm, actuator: mid-12-long}
                              - {z: 225 mm, actuator: mid-12-long}
                            frame-pin-joint:"""
                                .indent(4)
                                .stripTrailing()
                                .substring(4));
        assertThat(read(text).design()).isEqualTo(two);
    }

    @Test
    void aCopyKeepsTheLinesOfWhatItIsACopyOf() {
        Reading.Good good = shipped("yard-tub");
        PlacedActuator one = good.design().drive().actuators().get(0);
        double off = 8.5 * 0.0254;
        Design two = with(good.design(), Copy.with(one, "z", -off), Copy.with(one, "z", off));
        String text = Objects.requireNonNull(changed(good, two));
        assertThat(added(good, text))
                .startsWith("      - z: -8 1/2 in", "      - z: 8 1/2 in", "        actuator:")
                .contains("          rod: {diameter: 1 3/8 in, length: 19 1/2 in, yield: 50 ksi, modulus: 29700 ksi}")
                .hasSize(15);
        List<String> left = new ArrayList<>(good.text().lines().toList());
        text.lines().forEach(left::remove);
        assertThat(left).containsExactly("      - z: 0 in");
        String back = Objects.requireNonNull(changed(read(text), good.design()));
        assertThat(back).isEqualTo(good.text());
    }

    @Test
    void dataInLinesGiveWayToAName() {
        Reading.Good good = shipped("yard-tub");
        Actuator other = (Actuator) PartsFile.shipped().parts().stream()
                .filter(p -> p.name().equals("mid-12"))
                .findFirst()
                .orElseThrow()
                .part();
        String text = Objects.requireNonNull(
                changed(good, good.design().withDrive(good.design().drive().with(other))));
        assertThat(text).contains("      - z: 0 in\n        actuator: mid-12\n    frame-pin-joint:");
        assertThat(read(text).design().drive().actuators().get(0).actuator()).isEqualTo(other);
    }

    @Test
    void aPartThatIsInNoPartsFileIsWrittenWithItsData() {
        Reading.Good good = shipped("silt-trailer");
        ElectricActuator drawn =
                (ElectricActuator) good.design().drive().actuators().get(0).actuator();
        Design to = good.design().withDrive(good.design().drive().with(Copy.with(drawn, "push", 15e3)));
        String text = Objects.requireNonNull(changed(good, to));
        assertThat(added(good, text))
                .hasSize(1)
                .allMatch(l -> l.startsWith(
                        "      - {z: 0 mm, actuator: {kind: electric, closed: 690 mm, stroke: 620 mm, push: 15 kN,"));
    }

    @Test
    void keysComeAndGo() {
        Reading.Good good = shipped("silt-trailer");
        Battery battery = (Battery) good.design().supply();
        Cable thicker = Copy.with(Copy.with(Objects.requireNonNull(battery.cable()), "section", null), "awg", 2.0);
        Design to = Copy.with(
                Copy.with(good.design(), "supply", Copy.with(battery, "cable", thicker)),
                "whatIf",
                Copy.with(good.design().whatIf(), "lockValve", true));
        String text = Objects.requireNonNull(changed(good, to));
        assertThat(added(good, text))
                .containsExactly(
                        "  cable: {length: 4 m, rating: 80 A, awg: 2}",
                        "what-if: {track: 1.5 m, structure: 5000 N/mm, saddle-stiffness: 3000 N/mm, saddle-rating: 40 kN,"
                                + " lock-valve: yes}");
        assertThat(read(text).design()).isEqualTo(to);
        Reading.Good bare = read(good.text().replaceFirst("(?m)^what-if: .*\n", ""));
        Design locked =
                Copy.with(bare.design(), "whatIf", Copy.with(bare.design().whatIf(), "lockValve", true));
        assertThat(added(bare, Objects.requireNonNull(changed(bare, locked))))
                .containsExactly("what-if: {lock-valve: yes}");
    }

    @Test
    void aPlaceByTheTapeGetsOtherReadings() {
        Reading.Good good = shipped("yard-tub");
        Vec2 at = good.design().pivot().at();
        Vec2 higher = at.plus(new Vec2(0, 0.0254));
        String text = Objects.requireNonNull(
                changed(good, good.design().withPivot(good.design().pivot().movedTo(higher))));
        assertThat(text).contains("side: above}").contains("  at: pivot\n");
        Design now = read(text).design();
        assertThat(now.pivot().at().minus(higher).norm()).isLessThan(0.0016);
        // what was measured from the pivot stays where it was
        Vec2 frame = good.design().drive().places(at).get("frame-pin");
        assertThat(now.drive().places(higher).get("frame-pin").minus(frame).norm())
                .isLessThan(0.0016);
        assertThat(changedLines(good, text)).hasSize(2);
    }

    @Test
    void whatWouldReadBackAsSomethingElseIsNotWritten() {
        Reading.Good good = shipped("yard-tub");
        assertThat(changed(good, good.design())).isNull();
        // a direction that is given by a word
        Opening door = good.design().tank().openings().get(0);
        Opening leaning = Copy.with(door, "normal", new Vec3(0.8, 0.6, 0));
        assertThat(changed(
                        good,
                        Copy.with(
                                good.design(), "tank", Copy.with(good.design().tank(), "openings", List.of(leaning)))))
                .isNull();
    }

    @Test
    void aPlaceThatOthersHangOnIsWrittenByItself() {
        Reading.Good good = shipped("yard-tub");
        // the cradle's cross pipe is placed from the tank pin and would go along
        Vec2 pin = good.design().drive().places(good.design().pivot().at()).get("tank-pin");
        Vec2 there = pin.plus(new Vec2(0.0254, 0));
        Design to = good.design().withDrive(good.design().drive().moved(p -> p.equals(pin) ? there : p));
        String text = Objects.requireNonNull(changed(good, to));
        assertThat(changedLines(good, text)).singleElement().asString().startsWith("    tank-pin: [");
        Design now = read(text).design();
        assertThat(now.drive()
                        .places(now.pivot().at())
                        .get("tank-pin")
                        .minus(there)
                        .norm())
                .isLessThan(1e-6);
        assertThat(now.tank()).isEqualTo(good.design().tank());
    }

    @Test
    void aTankFromAMeshIsNoReasonNotToWrite() {
        Reading.Good good = shipped("wash-tub");
        Design to = good.design().withSlurry(good.design().slurry().withFill(0.65));
        assertThat(changedLines(good, Objects.requireNonNull(changed(good, to))))
                .singleElement()
                .asString()
                .startsWith("slurry: {fill: 65 %, ");
    }
}
