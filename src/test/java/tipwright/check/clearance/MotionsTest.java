// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.BodyPosition;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Pose;
import tipwright.design.Design;
import tipwright.design.drive.TiltRange;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.geometry.Vec2;

/** Between two poses of one sweep every part is where a finer sweep has it. */
class MotionsTest {
    private static final int FINER = 4;

    /** Number of the pose with a tilt, rad, and the share of the way to the next; tilts at which something changes are there twice. */
    private static double where(List<Pose> poses, double tilt) {
        int i = 0;
        while (i + 2 < poses.size() && poses.get(i + 1).tilt() <= tilt + 1e-12) {
            i++;
        }
        double from = poses.get(i).tilt();
        double step = poses.get(i + 1).tilt() - from;
        return i + Math.max(0, Math.min(1, (tilt - from) / step));
    }

    /** How far parts are off the finer sweep at most, m, within 1 m of the datum. */
    private static double worst(String name, double step) throws CannotComputeException {
        Design design = ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
        TiltRange t = design.tilt();
        double to = t.from() + step * Math.floor((t.to() - t.from()) / step);
        Analysis coarse = Analyser.analyse(design.withTilt(new TiltRange(t.from(), to, step)));
        Analysis fine = Analyser.analyse(design.withTilt(new TiltRange(t.from(), to, step / FINER)));
        Motions motions = new Motions(coarse);
        double worst = 0;
        for (int i = 0; i + FINER < fine.poses().size(); i++) {
            Pose pose = fine.poses().get(i);
            double at = where(coarse.poses(), pose.tilt());
            assertThat(motions.tilt(at)).isCloseTo(pose.tilt(), within(1e-9));
            for (int body = 0; body < pose.bodies().size(); body++) {
                BodyPosition there = motions.body(body).at(at);
                for (Vec2 p : new Vec2[] {Vec2.ZERO, new Vec2(1, 0), new Vec2(0, 1)}) {
                    Vec2 off = there.place(p).minus(pose.bodies().get(body).place(p));
                    worst = Math.max(worst, off.norm());
                }
            }
            Vec2 rod = motions.rod().at(at).place(Vec2.ZERO);
            Vec2 tube = motions.tube().at(at).place(new Vec2(pose.length(), 0));
            worst = Math.max(worst, rod.minus(pose.tankPin()).norm());
            worst = Math.max(worst, tube.minus(pose.tankPin()).norm());
        }
        return worst;
    }

    @ParameterizedTest
    @ValueSource(strings = {"crank-cart", "knee-stand", "kerb-swing", "six-link", "slide-back"})
    void linksBetweenPosesAreOffByTheSquareOfTheStep(String name) throws CannotComputeException {
        double whole = worst(name, Math.toRadians(1));
        double half = worst(name, Math.toRadians(0.5));
        assertThat(whole).isLessThan(0.5e-3);
        assertThat(half).isLessThan(whole / 3);
    }

    @Test
    void tankOnAFixedPivotIsExact() throws CannotComputeException {
        assertThat(worst("silt-trailer", Math.toRadians(5))).isLessThan(1e-9);
    }
}
