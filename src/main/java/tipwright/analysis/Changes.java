// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.TelescopicCylinder;
import tipwright.design.drive.Anchor;
import tipwright.design.drive.Assist;
import tipwright.design.drive.ExtensionSpring;
import tipwright.geometry.Vec2;
import tipwright.linkage.Configuration;
import tipwright.linkage.Linkage;
import tipwright.load.TiltGrid;

/**
 * Tilts at which something about the mechanism changes at once: a telescopic cylinder goes from one stage to the next, an actuator
 * comes to an end of its stroke, a spring goes slack.
 */
final class Changes {
    private static final int STEPS = 60;
    private static final double CLOSE = 1e-12;

    private final Linkage linkage;
    private final List<Configuration> configurations;
    private final List<Double> found = new ArrayList<>();

    private Changes(Linkage linkage, List<Configuration> configurations) {
        this.linkage = linkage;
        this.configurations = configurations;
    }

    /** Tilts of a design, rad, in no order. */
    static double[] of(Design design, Linkage linkage, List<Configuration> configurations) {
        Changes changes = new Changes(linkage, configurations);
        for (double length : lengths(design)) {
            changes.find(p -> p.length() - length);
        }
        List<String> bodies = linkage.skeleton().bodies();
        for (Assist assist : design.assists()) {
            if (assist instanceof ExtensionSpring spring) {
                int a = bodies.indexOf(spring.from().body());
                int b = bodies.indexOf(spring.to().body());
                changes.find(p -> place(p, b, spring.to())
                                .minus(place(p, a, spring.from()))
                                .norm()
                        - spring.free());
            }
        }
        return changes.found.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Whether there are any between the tilts of an analysis. */
    static boolean any(Analysis analysis) {
        for (double length : lengths(analysis.design())) {
            if (crossed(analysis.poses(), p -> p.length() - length)) {
                return true;
            }
        }
        List<String> bodies = analysis.mechanism().bodies();
        for (Assist assist : analysis.design().assists()) {
            if (assist instanceof ExtensionSpring spring) {
                int a = bodies.indexOf(spring.from().body());
                int b = bodies.indexOf(spring.to().body());
                ToDoubleFunction<Pose> slack = p -> p.bodies()
                                .get(b)
                                .place(spring.to().at())
                                .minus(p.bodies().get(a).place(spring.from().at()))
                                .norm()
                        - spring.free();
                if (crossed(analysis.poses(), slack)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean crossed(List<Pose> poses, ToDoubleFunction<Pose> value) {
        boolean before = value.applyAsDouble(poses.get(0)) < 0;
        for (Pose pose : poses) {
            if (value.applyAsDouble(pose) < 0 != before) {
                return true;
            }
        }
        return false;
    }

    private static Vec2 place(Configuration configuration, int body, Anchor anchor) {
        return configuration.place(body, anchor.at());
    }

    private static List<Double> lengths(Design design) {
        List<Double> all = new ArrayList<>();
        for (PlacedActuator placed : design.drive().actuators()) {
            Actuator actuator = placed.actuator();
            double end = actuator.closed();
            all.add(end);
            if (actuator instanceof TelescopicCylinder telescopic) {
                for (TelescopicCylinder.Stage stage : telescopic.stages()) {
                    end += stage.stroke();
                    all.add(end);
                }
            } else {
                all.add(end + actuator.stroke());
            }
        }
        return all.stream().distinct().toList();
    }

    private void find(ToDoubleFunction<Configuration> value) {
        for (int i = 1; i < configurations.size(); i++) {
            double before = value.applyAsDouble(configurations.get(i - 1));
            double after = value.applyAsDouble(configurations.get(i));
            if (before < 0 != after < 0) {
                found.add(zero(
                        value,
                        configurations.get(i - 1).tilt(),
                        before,
                        configurations.get(i).tilt(),
                        after));
            }
        }
    }

    /** Regula falsi that halves the value at an end which does not move (the Illinois form). */
    private double zero(ToDoubleFunction<Configuration> value, double from, double atFrom, double to, double atTo) {
        double a = from;
        double fa = atFrom;
        double b = to;
        double fb = atTo;
        for (int i = 0; i < STEPS && b - a > CLOSE; i++) {
            double middle = (a * fb - b * fa) / (fb - fa);
            List<Configuration> there = linkage.sweep(new double[] {middle}).configurations();
            if (there.isEmpty()) {
                break;
            }
            double f = value.applyAsDouble(there.get(0));
            if (Math.abs(f) < CLOSE) {
                return middle;
            }
            if (f < 0 == fb < 0) {
                b = middle;
                fb = f;
                fa *= 0.5;
            } else {
                a = middle;
                fa = f;
                fb *= 0.5;
            }
        }
        return b;
    }

    /** The tilts of a grid with both sides of these. */
    static double[] with(double[] tilts, double[] changes) {
        double[] both = new double[changes.length];
        for (int i = 0; i < both.length; i++) {
            // so that the near side lies before the change and the tilt itself safely after it
            both[i] = changes[i] + 0.5 * TiltGrid.SIDE;
        }
        return TiltGrid.with(tilts, both);
    }
}
