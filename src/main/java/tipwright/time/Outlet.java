// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.tank.Tank;
import tipwright.design.tank.Vent;
import tipwright.geometry.NotConvergedException;
import tipwright.geometry.Vec3;
import tipwright.load.Gravity;

/**
 * All openings of a tank together with its vent.
 *
 * <p>In a closed tank as much air must come in as slurry leaves: through the vent and through the part of the open openings that
 * stands above the slurry. The air's orifice equation gives the vacuum, dp = rho_air / 2 (Q / sum Cd A)2, the vacuum takes dp / (rho g)
 * off every head, and both flows are brought to agree. Air that gulps in through a drowned opening is left out, so a drowned tank
 * without a vent does not run at all. Source: Torricelli's law for both, air as incompressible at a small vacuum, rho_air 1.20 kg/m3
 * (from memory).
 */
public final class Outlet {
    private static final double AIR = 1.20;
    private static final double AIR_COEFFICIENT = 0.62;
    private static final int LIMIT = 80;
    private static final double CLOSE = 1e-11;

    private final List<Rim> rims;
    private final @Nullable Vent vent;
    private final double density;

    /**
     * The way out of a tank.
     *
     * @param density of what leaves, kg/m3
     */
    public Outlet(Tank tank, double density) {
        this.rims = tank.openings().stream().map(Rim::new).toList();
        this.vent = tank.vent();
        this.density = density;
    }

    /**
     * What leaves.
     *
     * @param rate m3/s
     * @param vacuum Pa below the outside
     */
    public record Flow(double rate, double vacuum) {
        static final Flow NONE = new Flow(0, 0);
    }

    /**
     * What leaves at a tilt.
     *
     * @param tilt rad; tells which openings are open
     * @param up unit vector against gravity in the tank's axes
     * @param level of the surface along it, m
     */
    public Flow at(double tilt, Vec3 up, double level) {
        double free = rate(tilt, up, level);
        if (vent == null || free <= 0) {
            return free > 0 ? new Flow(free, 0) : Flow.NONE;
        }
        double air = vent.coefficient() * vent.area() + AIR_COEFFICIENT * exposed(tilt, up, level);
        if (air <= 0) {
            return new Flow(0, head(tilt, up, level) * density * Gravity.G);
        }
        return balanced(tilt, up, level, free, air);
    }

    /** Whether all that is open is under the surface, so that no air gets in that way. */
    public boolean drowned(double tilt, Vec3 up, double level) {
        return rate(tilt, up, level) > 0 && exposed(tilt, up, level) <= 1e-9;
    }

    /**
     * Looks for the flow at which slurry and air agree; the slurry's flow falls and the air's rises with the vacuum. Regula falsi,
     * with the Illinois rule against one end that stays; halving where that is slow, which is with next to no air.
     */
    private Flow balanced(double tilt, Vec3 up, double level, double free, double air) {
        double low = 0;
        double high = free;
        double atLow = free;
        double atHigh = rate(tilt, up, level - suction(free, air)) - free;
        double rate = free;
        for (int i = 0; atHigh < -CLOSE * free && high - low > CLOSE * free; i++) {
            if (i == LIMIT) {
                throw new NotConvergedException(
                        "did not converge: how much slurry leaves and how much air comes in at a tilt of "
                                + Math.rint(Math.toDegrees(tilt) * 100) / 100 + " deg");
            }
            rate = i < LIMIT / 2 ? (low * atHigh - high * atLow) / (atHigh - atLow) : 0.5 * (low + high);
            double at = rate(tilt, up, level - suction(rate, air)) - rate;
            if (Math.abs(at) <= CLOSE * free) {
                break;
            }
            if (at > 0) {
                low = rate;
                atLow = at;
                atHigh *= 0.5;
            } else {
                high = rate;
                atHigh = at;
                atLow *= 0.5;
            }
        }
        // with next to no air the flow is nothing and the vacuum holds the whole column
        double most = head(tilt, up, level) * density * Gravity.G;
        return new Flow(rate, Math.min(most, 0.5 * AIR * (rate / air) * (rate / air)));
    }

    /** Height of slurry that the vacuum holds back, m. */
    private double suction(double rate, double air) {
        return 0.5 * AIR * (rate / air) * (rate / air) / (density * Gravity.G);
    }

    private double rate(double tilt, Vec3 up, double level) {
        double sum = 0;
        for (Rim rim : rims) {
            sum += rim.open(tilt) ? rim.flow(up, level) : 0;
        }
        return sum;
    }

    private double exposed(double tilt, Vec3 up, double level) {
        double sum = 0;
        for (Rim rim : rims) {
            sum += rim.open(tilt) ? Math.max(0, rim.area() - rim.wetArea(up, level)) : 0;
        }
        return sum;
    }

    /** Depth of the deepest open rim below the surface, m. */
    private double head(double tilt, Vec3 up, double level) {
        double most = 0;
        for (Rim rim : rims) {
            most = rim.open(tilt) ? Math.max(most, rim.deepest(up, level)) : most;
        }
        return most;
    }
}
