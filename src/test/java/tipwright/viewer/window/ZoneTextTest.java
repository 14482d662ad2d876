// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.design.Design;
import tipwright.design.NumberedPlace;
import tipwright.design.around.Mounts;
import tipwright.design.around.Zone;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;
import tipwright.geometry.Vec2;

/** Zones of every place of every shipped mechanism, written into the file and taken out again. */
class ZoneTextTest {
    private static final List<String> DESIGNS = List.of(
            "silt-trailer", "saw-skid", "crank-cart", "six-link", "slide-back", "kerb-swing", "knee-stand", "yard-tub");

    private static Reading.Good read(String text) {
        Reading reading = DesignFile.read("x.yaml", text, NamedFiles.shipped());
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Good.class);
        return (Reading.Good) reading;
    }

    private static List<Vec2> square(Vec2 at) {
        return List.of(
                at.plus(new Vec2(-0.1, -0.1)),
                at.plus(new Vec2(0.1, -0.1)),
                at.plus(new Vec2(0.1, 0.1)),
                at.plus(new Vec2(-0.1, 0.1)));
    }

    private static Zone zone(Design design, String pin) {
        Mounts mounts = Objects.requireNonNull(design.mounts());
        return Objects.requireNonNull(mounts.zone(ZoneText.zoned(design, pin)));
    }

    @Test
    void everyPlaceOfEveryMechanismGetsOne() {
        int drawn = 0;
        for (String name : DESIGNS) {
            Reading.Good good = (Reading.Good) DesignFile.shipped(name + ".yaml");
            for (NumberedPlace place : NumberedPlace.of(good.design())) {
                List<Vec2> corners = square(place.at());
                Reading.Good one = read(ZoneText.drawn(good, place.key(), corners, good.units()));
                assertThat(one.text().lines())
                        .as(name + " " + place.key())
                        .containsAll(
                                good.text().lines().filter(l -> l.contains("#")).toList());
                Zone zone = zone(one.design(), place.key());
                for (int i = 0; i < corners.size(); i++) {
                    assertThat(zone.outline().get(i).minus(corners.get(i)).norm())
                            .as(name + " " + place.key())
                            .isLessThan(0.0015);
                }
                Reading.Good none = read(ZoneText.takenOut(one, place.key()));
                Mounts left = none.design().mounts();
                assertThat(left == null || left.zone(ZoneText.zoned(none.design(), place.key())) == null)
                        .isTrue();
                drawn++;
            }
        }
        assertThat(drawn).isGreaterThan(40);
    }

    @Test
    void rowsOfHolesStayWithAZoneThatIsDrawnAnew() {
        Reading.Good good = (Reading.Good) DesignFile.shipped("crank-cart.yaml");
        Reading.Good one = read(ZoneText.drawn(good, "frame-pin", square(new Vec2(-1.19, -0.29)), good.units()));
        assertThat(zone(one.design(), "frame-pin").holes())
                .isEqualTo(zone(good.design(), "frame-pin").holes())
                .isNotNull();
    }

    @Test
    void zonesWithoutAKeyOfTheirOwnStandOneBelowTheOther() {
        Reading.Good good = (Reading.Good) DesignFile.shipped("crank-cart.yaml");
        String text = ZoneText.takenOut(good, "crank-pivot");
        Reading.Good without = read(text);
        String again = ZoneText.drawn(
                without, "crank-pivot", List.of(new Vec2(0, 0), new Vec2(0.1, 0), new Vec2(0, 0.1)), without.units());
        assertThat(again)
                .contains(
                        "\n    - {pin: crank-pivot, zone: {outline: [[0 mm, 0 mm], [100 mm, 0 mm], [0 mm, 100 mm]]}}\n");
    }
}
