// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.photo;

import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.util.Pair;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * How far a lens is off what was tapped and off what lenses commonly are, each over its doubt.
 *
 * @param places of the corners in the sheet's plane, m
 * @param taps of them, pixels
 */
record PhotoFit(double width, double height, List<Vec2> places, List<Vec2> taps, Doubts doubts) {
    /** Two for each corner, four of the lens. */
    static final int OFF = 12;

    private static final double STEP = 1e-7;

    /** With the slopes by its numbers. */
    Pair<RealVector, RealMatrix> valued(RealVector at) {
        double[] numbers = at.toArray();
        double[] here = off(numbers);
        double[][] slopes = new double[OFF][Lens.NUMBERS];
        for (int i = 0; i < Lens.NUMBERS; i++) {
            double[] up = numbers.clone();
            double[] down = numbers.clone();
            up[i] += STEP;
            down[i] -= STEP;
            double[] high = off(up);
            double[] low = off(down);
            for (int k = 0; k < OFF; k++) {
                slopes[k][i] = (high[k] - low[k]) / (2 * STEP);
            }
        }
        return new Pair<>(MatrixUtils.createRealVector(here), MatrixUtils.createRealMatrix(slopes));
    }

    private double[] off(double[] numbers) {
        Lens lens = Lens.of(numbers, width, height);
        double[] off = new double[OFF];
        for (int i = 0; i < 4; i++) {
            Vec2 p = places.get(i);
            Vec2 by = lens.project(new Vec3(p.x(), p.y(), 0)).minus(taps.get(i));
            off[2 * i] = by.x() / doubts.tap();
            off[2 * i + 1] = by.y() / doubts.tap();
        }
        off[8] = numbers[6] / doubts.focal();
        off[9] = numbers[7] / doubts.bend();
        off[10] = numbers[8] / doubts.centre();
        off[11] = numbers[9] / doubts.centre();
        return off;
    }
}
