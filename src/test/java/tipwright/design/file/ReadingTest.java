// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import tipwright.design.Design;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.HydraulicActuator;
import tipwright.design.drive.Straight;
import tipwright.design.joint.BallInsert;
import tipwright.design.tank.CylinderInterior;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** What a sound file gives: the design, every default that was taken, and what is odd. */
class ReadingTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-12);

    private static Reading.Good good(String text) {
        Reading reading = DesignFile.read("silt.yaml", text, NamedFiles.folder(Path.of("src")));
        assertThat(reading).as(String.valueOf(reading)).isInstanceOf(Reading.Good.class);
        return (Reading.Good) reading;
    }

    private static Reading.Good edited(String from, String to) throws IOException {
        String text = ErrorTextTest.resource("silt.yaml");
        assertThat(text).contains(from);
        return good(text.replace(from, to));
    }

    @Test
    void everyValueArrivesInSi() throws IOException {
        Design design = good(ErrorTextTest.resource("silt.yaml")).design();
        assertThat(design.name()).isEqualTo("Silt tank");
        assertThat(design.site().grade()).isCloseTo(Math.toRadians(2), EXACT);
        CylinderInterior cylinder = (CylinderInterior) design.tank().interior();
        assertThat(cylinder.axis()).isEqualTo(new Vec3(1, 0, 0));
        assertThat(cylinder.diameter()).isEqualTo(0.76);
        assertThat(cylinder.centre()).isEqualTo(new Vec3(0, 0.64, 0));
        assertThat(cylinder.heads()).containsExactly(CylinderInterior.HeadShape.FLAT);
        assertThat(design.tank().attached()).extracting(a -> a.centre().y()).containsExactly(0.24, 1.0);
        Opening opening = design.tank().openings().get(0);
        assertThat(opening.rim()).isEqualTo(Opening.Rim.CIRCLE);
        assertThat(opening.normal()).isEqualTo(new Vec3(1, 0, 0));
        assertThat(design.slurry().fill()).isCloseTo(0.85, EXACT);
        assertThat(design.slurry().volume()).isNull();
        assertThat(design.slurry().release()).isCloseTo(Math.toRadians(40), EXACT);
        assertThat(design.pivot().at()).isEqualTo(new Vec2(0.52, 0.19));
        assertThat(design.pivot().bearings())
                .extracting(b -> b.bearing().bore())
                .containsExactly(0.04, 0.04);
        Straight straight = (Straight) design.drive();
        assertThat(straight.framePin()).isEqualTo(new Vec2(-0.1, -0.35));
        ElectricActuator actuator =
                (ElectricActuator) straight.actuators().get(0).actuator();
        assertThat(actuator.push()).isEqualTo(12_000);
        assertThat(actuator.hold()).isNull();
        assertThat(actuator.tube()).isNotNull();
    }

    @Test
    void metricAndInchesMixFreely() throws IOException {
        Design design =
                edited("at: [520 mm, 190 mm]", "at: [1 ft 8 1/2 in, 0.19 m]").design();
        assertThat(design.pivot().at().x()).isCloseTo(20.5 * 0.0254, EXACT);
        assertThat(design.pivot().at().y()).isCloseTo(0.19, EXACT);
    }

    @Test
    void oneValueStandsForAListOfOne() throws IOException {
        String text =
                "openings: {name: top, rim: rectangle, width: 300 mm, height: 300 mm, centre: [0 m, 1020 mm, 0 m], normal: y}";
        Design design = good(ErrorTextTest.resource("silt.yaml")
                        .replaceAll("(?s)openings:.*?slurry:", text + "\nslurry:"))
                .design();
        assertThat(design.tank().openings())
                .singleElement()
                .extracting(Opening::name)
                .isEqualTo("top");
        assertThat(edited("length: 1300 mm", "length: 1300 mm, heads: [flat, hemispherical]")
                        .design()
                        .tank()
                        .interior())
                .extracting(i -> ((CylinderInterior) i).heads().size())
                .isEqualTo(2);
    }

    @Test
    void releaseMayBeNever() throws IOException {
        assertThat(edited("release: 40 deg", "release: never").design().slurry().release())
                .isInfinite();
        assertThat(edited("  release: 40 deg\n", "").design().slurry().release())
                .isInfinite();
    }

    @Test
    void aPartsNameStandsForItsFields() throws IOException {
        Design design = good(ErrorTextTest.resource("silt.yaml")).design();
        assertThat(design.pivot().bearings().get(0).bearing())
                .isInstanceOf(BallInsert.class)
                .extracting(b -> ((BallInsert) b).c0())
                .isEqualTo(19_000.0);
        Reading.Good hydraulic = (Reading.Good) DesignFile.shipped("grit-hopper.yaml");
        assertThat(hydraulic.design().drive().actuators().get(0).actuator()).isInstanceOf(HydraulicActuator.class);
    }

    @Test
    void everyDefaultThatWasTakenIsTold() throws IOException {
        List<String> told = good(ErrorTextTest.resource("silt.yaml")).assumptions().stream()
                .map(Assumption::text)
                .toList();
        assertThat(told)
                .contains(
                        "tank.wall.density: 7850 kg/m3 taken (Of the plate; 7850 kg/m3 for steel)",
                        "slurry.packing: 60 % taken (Share of solids in a settled cake by volume; about 60 % for sand)",
                        "friction.pins: 0.15 taken (Coefficient in the actuator's pins)",
                        "factors.bearing-static: 2.0 taken (Static safety s0 wanted of a rolling bearing (ISO 76))",
                        "tank.interior.heads: flat taken (One for both ends, or two with the -axis end first)",
                        "pivot.bearings[2].locating: no taken (yes: this one takes the load along the axis; left out: the first does)",
                        "tilt.step: 1 deg taken (Step between the tilts that are calculated)");
        assertThat(told).noneMatch(t -> t.startsWith("site.grade") || t.startsWith("tank.interior.knuckle"));
    }

    /** A default is told exactly when its key is not in the file. */
    @Test
    void noDefaultIsToldForAKeyThatIsGiven() throws IOException {
        Reading.Good reading = good(ErrorTextTest.resource("silt.yaml"));
        for (Assumption assumption : reading.assumptions()) {
            assertThat(reading.places().find(assumption.path()))
                    .as(assumption.path())
                    .isNull();
        }
        Reading.Good more = edited("tilt: {to: 45 deg}", "tilt: {to: 45 deg, step: 2 deg}\nfriction: {pins: 0.2}");
        assertThat(more.assumptions()).extracting(Assumption::path).doesNotContain("tilt.step", "friction.pins");
        assertThat(more.assumptions()).hasSize(reading.assumptions().size() - 2);
    }

    @Test
    void whatIsOddIsTold() throws IOException {
        assertThat(good(ErrorTextTest.resource("silt.yaml")).warnings()).isEmpty();
        assertThat(edited("normal: x", "normal: x\n      opens-at: 50 deg").warnings())
                .extracting(Problem::text)
                .containsExactly(
                        "silt.yaml:16:17: tank.openings[1].opens-at: past the end of the tilt range: it never opens");
        assertThat(edited("frame-pin: [-100 mm, -350 mm]", "frame-pin: [-100 in, -350 in]")
                        .warnings())
                .extracting(Problem::text)
                .containsExactly(
                        "silt.yaml:29:16: drive.straight.frame-pin: 9150 mm away from the tank; is the unit right?");
        assertThat(good(ErrorTextTest.resource("silt.yaml").replaceAll("(?s)  openings:.*?slurry:", "slurry:"))
                        .warnings())
                .extracting(Problem::text)
                .containsExactly("silt.yaml:4:1: tank: no openings: nothing can leave the tank, however far it tips");
    }
}
