// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import java.util.List;
import tipwright.quantity.Kind;

/**
 * How often a welded detail bears a range of stress. Holds for steel between -60 and 150 C that is kept from rust, and for ranges below
 * 1.5 times the yield.
 *
 * <p>Source: EN 1993-1-9 7.1 (worked values of a public library's tests, read): slopes 3 and 5 with a cut-off for direct stress, slope
 * 5 with a cut-off for shear.
 *
 * @param category range of stress that the detail bears 2 million times, Pa
 * @param shear whether it is a range of shear
 * @param factor gamma Mf, that the category is divided by; see {@link #factor(boolean, boolean)}
 */
public record FatigueCurve(double category, boolean shear, double factor) {
    /** Category of the root of a fillet weld that carries the load, Pa. Source: EN 1993-1-9 table 8.5 (from memory). */
    public static final double FILLET_ROOT = 36e6;

    private static final double AT_CATEGORY = 2e6;
    private static final double KNEE = 5e6;
    private static final double CUT_OFF = 1e8;

    /** @throws IllegalArgumentException if the category is not above 0 or the factor is below 1 */
    public FatigueCurve {
        Precondition.positive("category", category);
        Precondition.times("the factor on stress", factor, 1, 10);
    }

    /** A range of stress and how often it comes: Pa, times. */
    public record Range(double stress, double times) {
        /** @throws IllegalArgumentException if one is below 0 */
        public Range {
            Precondition.notNegative("stress", stress);
            Precondition.notNegative("times", times);
        }
    }

    /**
     * Factor gamma Mf. Source: EN 1993-1-9 table 3.1 (from memory).
     *
     * @param inspected whether cracks are looked for and would be found in time (damage tolerant), not 'safe life'
     * @param grave whether a break may kill or maim
     */
    public static double factor(boolean inspected, boolean grave) {
        if (inspected) {
            return grave ? 1.15 : 1.00;
        }
        return grave ? 1.35 : 1.15;
    }

    /**
     * Category of a plate welded along the stress, Pa, by its length in m. Source: EN 1993-1-9 table 8.4 (from memory): up to 50 mm 80,
     * up to 80 mm 71, up to 100 mm 63, longer 56 MPa.
     */
    public static double attachmentAlong(double length) {
        Precondition.positive("length", length);
        if (length <= 0.050) {
            return 80e6;
        }
        if (length <= 0.080) {
            return 71e6;
        }
        return length <= 0.100 ? 63e6 : 56e6;
    }

    /**
     * Category of a plate welded across the stress, Pa, by its length along the stress with its welds, m, up to 80 mm. Source: EN
     * 1993-1-9 table 8.4 (from memory): up to 50 mm 80, up to 80 mm 71 MPa.
     */
    public static double attachmentAcross(double length) {
        Precondition.positive("length", length);
        Precondition.within("the length of the bracket", Kind.LENGTH, length, 0, 0.080);
        return length <= 0.050 ? 80e6 : 71e6;
    }

    /** Range below which direct stress does harm on the flatter slope only, Pa; of shear the category itself plays no such part. */
    public double knee() {
        return category / factor * Math.pow(AT_CATEGORY / KNEE, 1.0 / 3);
    }

    /** Range below which there is no harm at all, Pa. */
    public double cutOff() {
        return shear
                ? category / factor * Math.pow(AT_CATEGORY / CUT_OFF, 0.2)
                : knee() * Math.pow(KNEE / CUT_OFF, 0.2);
    }

    /** How often a range is borne; without end below the cut-off. */
    public double cycles(double range) {
        Precondition.notNegative("range", range);
        if (range < cutOff()) {
            return Double.POSITIVE_INFINITY;
        }
        double borne = category / factor;
        if (shear) {
            return AT_CATEGORY * Math.pow(borne / range, 5);
        }
        double cubic = AT_CATEGORY * Math.pow(borne / range, 3);
        return range >= knee() ? cubic : KNEE * Math.pow(knee() / range, 5);
    }

    /** Greatest range that is borne so often, Pa: the other way round of {@link #cycles}; never less than the cut-off. */
    public double bearable(double times) {
        Precondition.notNegative("times", times);
        if (times == 0) {
            return 10 * category;
        }
        double borne = category / factor;
        if (shear) {
            return Math.max(cutOff(), borne * Math.pow(AT_CATEGORY / times, 0.2));
        }
        return times <= KNEE
                ? borne * Math.cbrt(AT_CATEGORY / times)
                : Math.max(cutOff(), knee() * Math.pow(KNEE / times, 0.2));
    }

    /** Share of the life that some ranges use up: above 1 it breaks. Source: Miner's sum, EN 1993-1-9 A.5 (from memory). */
    public double damage(List<Range> ranges) {
        double sum = 0;
        for (Range range : ranges) {
            sum += range.times() / cycles(range.stress());
        }
        return sum;
    }

    /**
     * Range that counts, Pa, of a stress that swings between two: all of the pull and 60 % of the push. Source: EN 1993-1-9 7.2 (from
     * memory); only for parts that are not welded, or whose welds are stress-relieved. As welded, the whole swing counts.
     */
    public static double relieved(double least, double most) {
        if (!(least <= most)) {
            throw new IllegalArgumentException("the least stress must not be above the most");
        }
        double pull = Math.max(0, most) - Math.max(0, least);
        double push = Math.min(0, most) - Math.min(0, least);
        return pull + 0.6 * push;
    }
}
