// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.check.Checks;
import tipwright.check.fault.WhatIfCheck;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.geometry.Vec2;
import tipwright.load.Gravity;
import tipwright.time.CycleTimer;

/** A tank on four links with the actuator 200 mm off the middle: forces and moments of the tank in space, link by link. */
class TwinLinksTest {
    private static final double SPAN = 0.7;

    private static Analysis swing(String z) throws IOException, CannotComputeException {
        String text = Files.readString(Path.of("geometry", "kerb-swing.yaml"));
        int weights = text.indexOf("\nassists:");
        String bare = weights < 0 ? text : text.replaceAll("(?m)^assists:(\\n  .*)*", "");
        return Analyser.analyse(Examples.read(swap(
                        bare,
                        "site: {grade: 1 deg, cross-slope: 1 deg}",
                        "site: {grade: 1 deg}",
                        "{z: 0 mm, actuator",
                        "{z: " + z + ", actuator")
                + "friction: {pivot: 0, pins: 0}\n"));
    }

    /** The four forces along the links by hand, with the tank's own weight wherever its centroid is across. */
    @Test
    void fourForcesKeepTheTankInSpace() throws IOException, CannotComputeException {
        Analysis analysis = swing("200 mm");
        TwinLinks twins = new TwinLinks(analysis);
        Vec2 mainPin = new Vec2(0.3, 0.24);
        Vec2 secondPin = new Vec2(-0.5, 0.16);
        for (Row row : analysis.cases().get(0).rows()) {
            Pose pose = row.pose();
            Balance b = row.rest();
            Vec2 u1 = at(pose, mainPin).minus(new Vec2(0.45, 0)).unit();
            Vec2 u2 = at(pose, secondPin).minus(new Vec2(0.37, -0.11)).unit();
            double sine = u1.x() * u2.y() - u1.y() * u2.x();
            if (Math.abs(sine) < 0.11) {
                continue;
            }
            Vec2 push = pose.tankPin().minus(pose.framePin()).unit().times(b.force());
            Vec2 weight = analysis.design().site().up().xy().times(-row.load().mass() * Gravity.G);
            // both sides: M u1 + S u2 = -(push + weight); right less left: times half the span the moments
            double[] sum = solve(u1, u2, push.plus(weight).times(-1));
            Vec2 moment = push.times(0.2).plus(weight.times(row.centroid().z()));
            double[] differ = solve(u1, u2, moment.times(-2 / SPAN));
            double second = Math.max(Math.abs(sum[1] + differ[1]), Math.abs(sum[1] - differ[1])) / 2;
            double main = Math.max(Math.abs(sum[0] + differ[0]), Math.abs(sum[0] - differ[0])) / 2;
            assertThat(twins.force(3, pose, b)).isCloseTo(second, within(1e-6 * Math.max(1, second)));
            assertThat(twins.force(1, pose, b)).isGreaterThanOrEqualTo(main - 1e-6);
            for (int k = 0; k < 2; k++) {
                assertThat(twins.force(1, pose, b))
                        .isGreaterThanOrEqualTo(b.bearings().get(k).xy().norm() - 1e-6);
            }
        }
    }

    /** Of two actuators one carries all: the links bear what they bear in the machine with that one alone. */
    @Test
    void linksBearTheOneThatCarriesAll() throws IOException, CannotComputeException {
        Analysis alone = swing("300 mm");
        Design design = alone.design();
        PlacedActuator one = design.drive().actuators().get(0);
        List<PlacedActuator> both = List.of(one, new PlacedActuator(-one.z(), one.actuator()));
        Analysis two = Analyser.analyse(design.withDrive(design.drive().with(both)));
        List<Finding> faults = Checks.all().stream()
                .filter(c -> c instanceof WhatIfCheck)
                .flatMap(c -> c.run(two, CycleTimer.time(two)).stream())
                .toList();
        for (Finding f : new LinkCheck().run(alone)) {
            // a link that both together only press may be drawn by the one
            double shared = new LinkCheck()
                    .run(two).stream()
                            .filter(g -> g.id().equals(f.id()))
                            .mapToDouble(Finding::utilisation)
                            .findFirst()
                            .orElse(0);
            assertThat(f.utilisation()).as(f.id()).isGreaterThan(1.05 * shared);
            assertThat(faults)
                    .filteredOn(
                            g -> g.id().endsWith(new LinkCheck().part(f).replace(' ', '-') + "-when-one-carries-all"))
                    .singleElement()
                    .satisfies(g -> assertThat(g.utilisation()).isCloseTo(f.utilisation(), within(1e-9)));
        }
    }

    @Test
    void inTheMiddleEachBearsHalf() throws IOException, CannotComputeException {
        Analysis analysis = swing("0 mm");
        TwinLinks twins = new TwinLinks(analysis);
        for (Row row : analysis.cases().get(0).rows()) {
            for (int joint = 1; joint < 4; joint++) {
                double all = row.rest().joints().get(joint).norm();
                assertThat(twins.force(joint, row.pose(), row.rest())).isCloseTo(all / 2, within(1e-9 * all));
            }
        }
    }

    private static Vec2 at(Pose pose, Vec2 stowed) {
        return pose.bodies().get(pose.tank()).place(stowed);
    }

    /** x and y with x a + y b = c, by Cramer. */
    private static double[] solve(Vec2 a, Vec2 b, Vec2 c) {
        double det = a.x() * b.y() - a.y() * b.x();
        return new double[] {(c.x() * b.y() - c.y() * b.x()) / det, (a.x() * c.y() - a.y() * c.x()) / det};
    }
}
