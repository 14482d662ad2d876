// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.bracket;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Tube;
import tipwright.design.drive.Drive;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.design.joint.Lug;
import tipwright.design.joint.PinJoint;
import tipwright.design.key.Copy;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.UnitSystem;
import tipwright.remedy.SoldSize;

/**
 * The sizes of a lug that is being tried.
 *
 * @param pin its dimensions
 * @param width across the lug at the hole, m
 * @param thickness of a plate, m
 * @param leg of its weld, m
 * @param foot length of its foot, m
 * @param fork whether there are two plates
 * @param step to which widths are rounded, m
 */
record Sketch(PinJoint pin, double width, double thickness, double leg, double foot, boolean fork, double step) {
    private static final double WIDE = 2.5;
    private static final double WIDEST = 4;
    private static final double LONGEST = 6;
    private static final double YIELD = 235e6;
    private static final double GAP = 0.001;
    private static final double CHEEK = 0.4;
    private static final double EPS = 1e-6;

    /** Before any is made. */
    static final Sketch NONE = new Sketch(new PinJoint(1, PinJoint.Shear.DOUBLE, 1, 1, 0, YIELD), 1, 1, 1, 1, true, 1);

    /** The smallest that is worth trying. */
    static Sketch first(Design design, LugSite site, UnitSystem units) {
        LugProposal.SoldSizes sold = LugProposal.SoldSizes.of(units);
        double step = step(units);
        PinJoint known = site.known(design);
        PinJoint pin = known == null ? pin(sold.pins().get(0).size(), sold) : known;
        double thickness = site.fork() ? pin.cheek() : pin.lug();
        double leg = least(sold.legs(), thickness);
        double width = up(WIDE * pin.diameter(), step);
        return new Sketch(pin, width, thickness, leg, width, site.fork(), step);
    }

    /** To which sizes are rounded up, m. */
    static double step(UnitSystem units) {
        return units == UnitSystem.METRIC ? 0.005 : 0.0254 / 4;
    }

    private static PinJoint pin(double diameter, LugProposal.SoldSizes sold) {
        double cheek = next(sold.plates(), CHEEK * diameter - EPS, CHEEK * diameter);
        return new PinJoint(diameter, PinJoint.Shear.DOUBLE, diameter, cheek, GAP, YIELD);
    }

    /** Smallest leg on a plate, m. Source: AISC 360 table J2.4, minimum size of fillet welds (from memory). */
    static double least(List<SoldSize> legs, double thickness) {
        double inch = 0.0254;
        double least = thickness <= inch / 4
                ? inch / 8
                : thickness <= inch / 2 ? 3 * inch / 16 : thickness <= 3 * inch / 4 ? inch / 4 : 5 * inch / 16;
        return next(legs, least - 0.0004, least);
    }

    private static double next(List<SoldSize> sizes, double above, double otherwise) {
        return sizes.stream()
                .mapToDouble(SoldSize::size)
                .filter(s -> s > above + EPS)
                .min()
                .orElse(otherwise);
    }

    static double up(double size, double step) {
        return Math.ceil(size / step - 1e-9) * step;
    }

    /** Least height of the pin above the foot, so that metal and the actuator's body find room, m. */
    static double least(Design design, LugSite site) {
        PinJoint known = site.known(design);
        double least = known == null ? 0.02 : 0.9 * known.diameter();
        if (site.actuator()) {
            for (PlacedActuator a : design.drive().actuators()) {
                Tube tube = a.actuator().tube();
                boolean fixed = site.pin().equals(Drive.FRAME_PIN);
                least = Math.max(least, tube != null && fixed ? tube.outside() / 2 : 0);
            }
        }
        return least;
    }

    Lug lug() {
        return new Lug(width, thickness, pin.diameter(), width / 2, fork ? 2 : 1, YIELD);
    }

    /**
     * As it would stand in the design.
     *
     * @param given what the design tells of it already; null: nothing
     */
    Fastening fastening(LugSite site, FootPlace place, @Nullable Fastening given) {
        if (given != null) {
            Fastening put = Copy.with(given, "lug", lug());
            return given.height() == null ? Copy.with(put, "height", place.height()) : put;
        }
        Lug lug = lug();
        double inner = pin.lug() / 2 + pin.gap();
        List<FilletWeld.Seam> seams = new ArrayList<>();
        double[] faces = fork
                ? new double[] {-inner - thickness, -inner, inner, inner + thickness}
                : new double[] {-thickness / 2, thickness / 2};
        for (double v : faces) {
            seams.add(new FilletWeld.Seam(new Vec2(-foot / 2, v), new Vec2(foot / 2, v)));
        }
        Vec2 middle = site.at().minus(place.up().times(place.height()));
        FilletWeld weld = new FilletWeld(
                new Vec3(middle.x(), middle.y(), site.across().get(0)),
                new Vec3(place.up().x(), place.up().y(), 0),
                leg,
                LugShape.ELECTRODE,
                null,
                null,
                null,
                List.copyOf(seams));
        return new Fastening(site.joint(), site.on(), weld, null, lug, null, null, place.height());
    }

    /** The next that does better where a check failed; null: there is none. */
    @Nullable
    Sketch larger(String check, boolean pinKnown, LugProposal.SoldSizes sold) {
        switch (check) {
            case "pin" -> {
                double next = next(sold.pins(), pin.diameter(), Double.NaN);
                if (pinKnown || Double.isNaN(next)) {
                    return null;
                }
                PinJoint put = pin(next, sold);
                double wide = up(WIDE * next, step);
                return new Sketch(
                        put,
                        Math.max(width, wide),
                        Math.max(thickness, fork ? put.cheek() : put.lug()),
                        Math.max(leg, least(sold.legs(), Math.max(thickness, fork ? put.cheek() : put.lug()))),
                        Math.max(foot, wide),
                        fork,
                        step);
            }
            case "weld" -> {
                double next = next(sold.legs(), leg, Double.NaN);
                if (next <= thickness + EPS) {
                    return new Sketch(pin, width, thickness, next, foot, fork, step);
                }
                double longer = up(1.25 * foot, step);
                return longer > LONGEST * width
                        ? thicker(sold)
                        : new Sketch(pin, width, thickness, leg, longer, fork, step);
            }
            case "lug" -> {
                double wider = up(1.15 * width, step);
                if (wider <= WIDEST * pin.diameter()) {
                    return new Sketch(pin, wider, thickness, leg, Math.max(foot, wider), fork, step);
                }
                return thicker(sold);
            }
            default -> {
                return thicker(sold);
            }
        }
    }

    /** The pin's bending follows its thicker plates. */
    private @Nullable Sketch thicker(LugProposal.SoldSizes sold) {
        double next = next(sold.plates(), thickness, Double.NaN);
        if (Double.isNaN(next)) {
            return null;
        }
        PinJoint put = Copy.with(pin, fork ? "cheek" : "lug", next);
        return new Sketch(put, width, next, Math.max(leg, least(sold.legs(), next)), foot, fork, step);
    }
}
