// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.geometry.Vec2;

/**
 * What holds for every mechanism at every tilt: joints stay together, every body is in balance, the actuator does the work.
 * Source: Newton's laws and the principle of virtual work.
 */
class MechanismPropertyTest {
    private interface Look {
        void at(Linkage linkage, Configuration configuration, Reactions reactions, List<Push> pushes);
    }

    static List<String> names() {
        List<String> names = new ArrayList<>(Mechanisms.names());
        names.add(Mechanisms.ON_A_CRANK);
        return names;
    }

    private static void forAll(String name, Look look) throws LinkageException {
        SplittableRandom random = new SplittableRandom(name.hashCode());
        Skeleton drawn = Mechanisms.skeleton(name);
        int looks = 0;
        for (int i = 0; i < 20; i++) {
            Linkage linkage = Linkage.of(i == 0 ? drawn : Mechanisms.shaken(drawn, random, 0.05));
            List<Push> pushes = Mechanisms.weights(linkage.skeleton());
            for (Configuration p : linkage.sweep(Mechanisms.tilts(0.7, 15)).configurations()) {
                if (linkage.condition(p) > 1e-3 && p.transmission() > 0.1) {
                    look.at(linkage, p, Objects.requireNonNull(linkage.reactions(p, pushes, null)), pushes);
                    looks++;
                }
            }
        }
        assertThat(looks).isGreaterThan(150);
    }

    @ParameterizedTest
    @MethodSource("names")
    void constraintsVanish(String name) throws LinkageException {
        forAll(name, (linkage, p, r, pushes) -> {
            for (Joint j : linkage.skeleton().joints()) {
                Vec2 gap = p.place(j.b(), j.at()).minus(p.place(j.a(), j.at()));
                if (j instanceof Joint.Slide slide) {
                    Vec2 along = slide.direction().unit().tilted(p.turn(j.a()));
                    assertThat(along.cross(gap)).isCloseTo(0, within(1e-12));
                    assertThat(p.turn(j.b())).isCloseTo(p.turn(j.a()), within(1e-12));
                } else {
                    assertThat(gap.norm()).as(j.name()).isLessThan(1e-12);
                }
            }
            assertThat(p.turn(linkage.skeleton().tank())).isCloseTo(p.tilt(), within(1e-14));
        });
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyBodyIsInBalance(String name) throws LinkageException {
        forAll(name, (linkage, p, r, pushes) -> {
            Skeleton s = linkage.skeleton();
            double scale = Math.abs(r.force()) + 640 * Mechanisms.GRAVITY;
            for (int body = 1; body < s.bodies().size(); body++) {
                Vec2 force = Vec2.ZERO;
                double moment = 0;
                for (Push w : pushes) {
                    if (w.body() == body) {
                        force = force.plus(w.force());
                        moment += p.place(body, w.at()).cross(w.force());
                    }
                }
                for (int i = 0; i < s.joints().size(); i++) {
                    Joint j = s.joints().get(i);
                    double side = j.a() == body ? 1 : j.b() == body ? -1 : 0;
                    Vec2 f = r.joints().get(i).times(side);
                    scale = Math.max(scale, f.norm());
                    force = force.plus(f);
                    // Couples are positive clockwise, cross products counterclockwise.
                    moment +=
                            p.place(j.b(), j.at()).cross(f) - side * r.couples().get(i);
                }
                Strut strut = s.actuator();
                double side = strut.b() == body ? 1 : strut.a() == body ? -1 : 0;
                Vec2 push = p.line().times(side * r.force());
                force = force.plus(push);
                moment += (side > 0 ? p.onB() : p.onA()).cross(push);
                assertThat(force.norm()).isLessThan(1e-9 * scale);
                assertThat(moment).isCloseTo(0, within(1e-9 * scale));
            }
        });
    }

    @ParameterizedTest
    @MethodSource("names")
    void virtualWorkOfTheLoadsIsTheActuators(String name) throws LinkageException {
        forAll(name, (linkage, p, r, pushes) -> {
            double power = 0;
            double gross = 0;
            for (Push w : pushes) {
                double one = w.force().dot(p.velocity(w.body(), w.at()));
                power += one;
                gross += Math.abs(one);
            }
            assertThat(r.force() * p.arm()).isCloseTo(-power, within(1e-9 * gross));
        });
    }

    @ParameterizedTest
    @MethodSource("names")
    void frictionTakesWorkBothWays(String name) throws LinkageException {
        forAll(name, (linkage, p, r, pushes) -> {
            double[] some = new double[linkage.skeleton().joints().size()];
            Arrays.fill(some, 3.0);
            double expected = Math.abs(p.turnRate(linkage.skeleton().actuator().a())
                            - p.lineRate(linkage.skeleton().actuator()))
                    + 2
                            * Math.abs(p.turnRate(linkage.skeleton().actuator().b())
                                    - p.lineRate(linkage.skeleton().actuator()));
            for (Joint j : linkage.skeleton().joints()) {
                expected += 3 * Math.abs(p.jointRate(j));
            }
            Reactions braked = Objects.requireNonNull(linkage.reactions(p, pushes, new Drag(some, 1, 2)));
            double extra = (braked.force() - r.force()) * p.arm();
            assertThat(extra).isCloseTo(expected, within(1e-9 * (expected + Math.abs(r.force()))));
        });
    }

    @ParameterizedTest
    @MethodSource("names")
    void ratesAreThoseOfASmallStep(String name) throws LinkageException {
        forAll(name, (linkage, p, r, pushes) -> {
            double step = 1e-5;
            if (p.tilt() < step) {
                return; // a sweep begins at the stowed tank
            }
            Motion both = sweep(linkage, p.tilt() - step, p.tilt() + step);
            if (both.configurations().size() < 2) {
                return; // the dead centre lies in this step
            }
            Configuration before = both.configurations().get(0);
            Configuration after = both.configurations().get(1);
            assertThat((after.length() - before.length()) / (2 * step)).isCloseTo(p.arm(), near(p.arm()));
            Strut strut = linkage.skeleton().actuator();
            double turned = Math.asin(-before.line().cross(after.line()));
            assertThat(turned / (2 * step)).isCloseTo(p.lineRate(strut), near(p.lineRate(strut)));
            for (Joint j : linkage.skeleton().joints()) {
                assertThat((way(after, j) - way(before, j)) / (2 * step))
                        .as(j.name())
                        .isCloseTo(p.jointRate(j), near(p.jointRate(j)));
            }
        });
    }

    /** What a step of 1e-5 rad is off by, with room for curved motion. */
    private static Offset<Double> near(double rate) {
        return within(1e-6 * (1 + Math.abs(rate)));
    }

    private static Motion sweep(Linkage linkage, double... tilts) {
        return linkage.sweep(tilts);
    }

    /** How far a joint has turned, rad, or slid, m. */
    private static double way(Configuration p, Joint j) {
        return j instanceof Joint.Slide slide
                ? slide.direction()
                        .unit()
                        .tilted(p.turn(j.a()))
                        .dot(p.place(j.b(), j.at()).minus(p.place(j.a(), j.at())))
                : p.turn(j.b()) - p.turn(j.a());
    }

    @ParameterizedTest
    @MethodSource("names")
    void forcesOfLoadsAddUp(String name) throws LinkageException {
        forAll(name, (linkage, p, r, pushes) -> {
            ReactionSolver solver = linkage.reactionSolver();
            assertThat(solver.moveTo(p)).isTrue();
            double[][] kept = new double[pushes.size()][solver.size()];
            for (int i = 0; i < kept.length; i++) {
                solver.clear();
                Push w = pushes.get(i);
                solver.push(
                        w.body(),
                        w.at().x(),
                        w.at().y(),
                        w.force().x(),
                        w.force().y());
                assertThat(solver.solve()).isTrue();
                solver.keep(kept[i]);
            }
            double[] shares = new double[kept.length];
            Arrays.fill(shares, 1);
            double[] none = new double[solver.size()];
            solver.combine(none, kept, shares);
            double close = 1e-9 * (Math.abs(r.force()) + 640 * Mechanisms.GRAVITY);
            assertThat(solver.force()).isCloseTo(r.force(), within(close));
            for (int i = 0; i < r.joints().size(); i++) {
                assertThat(solver.jointX(i)).isCloseTo(r.joints().get(i).x(), within(close));
                assertThat(solver.jointY(i)).isCloseTo(r.joints().get(i).y(), within(close));
                assertThat(solver.couple(i)).isCloseTo(r.couples().get(i), within(close));
            }
            shares[0] = -2.5;
            solver.combine(kept[0], kept, shares);
            double[] sum = new double[solver.size()];
            solver.keep(sum);
            int last = sum.length - 1;
            double expected = -1.5 * kept[0][last];
            for (int i = 1; i < kept.length; i++) {
                expected += kept[i][last];
            }
            assertThat(sum[last]).isCloseTo(expected, within(close));
            assertThat(last).isEqualTo(2 * r.joints().size());
        });
    }
}
