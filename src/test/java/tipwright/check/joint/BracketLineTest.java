// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.design.Design;
import tipwright.design.drive.Drive;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** Brackets of two actuators: each is in line with the bracket at the other end of its own actuator, or not. */
class BracketLineTest {
    private static Design twin;
    private static double left;
    private static double right;
    private static double shortest;

    @BeforeAll
    static void read() throws Exception {
        twin = ((Reading.Good) DesignFile.shipped("twin-rams.yaml")).design();
        left = twin.drive().actuators().get(0).z();
        right = twin.drive().actuators().get(1).z();
        assertThat(left * right).isNegative();
        shortest = Analyser.analyse(twin).poses().stream()
                .mapToDouble(p -> p.length())
                .min()
                .orElseThrow();
    }

    private static Fastening welded(String joint, double z, Vec3 normal) {
        FilletWeld weld = new FilletWeld(
                new Vec3(0, 0, z), normal, 0.005, 480e6, new FilletWeld.Rectangle(0.1, 0.06), null, null, List.of());
        return new Fastening(joint, null, weld, null, null, null, null, null);
    }

    private static Fastening bolted(String joint, double z) {
        Bolts bolts = new Bolts(new Vec3(0, 0, z), new Vec3(0, 1, 0), List.of(new Vec2(0, 0)), 0.012, null, 800e6);
        return new Fastening(joint, null, null, bolts, null, null, null, null);
    }

    private static double lean(Fastening of, Fastening... others) throws Exception {
        List<Fastening> all = new ArrayList<>(List.of(others));
        all.add(of);
        Analysis analysis = Analyser.analyse(twin.withFastenings(all));
        return BracketLine.lean(analysis, of);
    }

    private static double sine(double off) {
        return off / Math.hypot(off, shortest);
    }

    /** By plane geometry: the sine of what the ends are apart along the pivot over the shortest pin to pin. */
    @Test
    void eachLooksAtTheOtherEndOfItsOwnActuator() throws Exception {
        Vec3 up = new Vec3(0, 1, 0);
        Fastening frame = welded(Drive.FRAME_PIN, left + 0.004, up);
        Fastening near = welded(Drive.ROD_PIN, left - 0.012, up);
        Fastening far = welded(Drive.TANK_PIN, right + 0.070, up);
        assertThat(lean(frame, near, far)).isCloseTo(sine(0.016), within(1e-12));
        assertThat(lean(near, frame, far)).isCloseTo(sine(0.016), within(1e-12));
        assertThat(lean(far, frame, near)).isZero();
        Fastening other = welded(Drive.FRAME_PIN, right - 0.030, up);
        assertThat(lean(far, frame, near, other)).isCloseTo(sine(0.1), within(1e-12));
        assertThat(lean(bolted(Drive.FRAME_PIN, left + 0.010), near, far)).isCloseTo(sine(0.022), within(1e-12));
        // of several at the other end the farthest
        assertThat(lean(frame, near, welded(Drive.TANK_PIN, left + 0.040, up))).isCloseTo(sine(0.036), within(1e-12));
    }

    /** Welded flat to the side of something, a bracket's weld does not tell where its middle is; a bearing's is none of both. */
    @Test
    void whatDoesNotTellDoesNotLean() throws Exception {
        Vec3 up = new Vec3(0, 1, 0);
        Fastening frame = welded(Drive.FRAME_PIN, left + 0.004, up);
        Fastening flat = welded(Drive.ROD_PIN, left - 0.012, new Vec3(0, 0, 1));
        assertThat(lean(frame, flat)).isZero();
        assertThat(lean(flat, frame)).isZero();
        Fastening bearing = welded("bearing-1", left - 0.012, up);
        assertThat(lean(bearing, frame)).isZero();
        assertThat(lean(frame, bearing)).isZero();
        assertThat(lean(frame, new Fastening(Drive.ROD_PIN, null, null, null, null, null, null, null)))
                .isZero();
    }
}
