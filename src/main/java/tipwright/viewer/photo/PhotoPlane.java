// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.photo;

import java.util.List;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * How a photo lies to the side view, found from the four corners of a sheet of known size: where the camera stood, and its lens as far as
 * the corners tell it beside what lenses commonly are. From that a tap has a place, also before or behind the sheet, and its doubt.
 *
 * <p>Source: R. Hartley and A. Zisserman, Multiple View Geometry, chapters 4 (homography from four points), 5 (propagation of
 * covariance) and 8 (pose from a plane), from memory; least squares with observations of the lens's own numbers.
 */
public final class PhotoPlane {
    /**
     * Both coordinates are within so many standard deviations in 95 of 100: 2.24 if all were straight lines and normal, and a tenth
     * more for what is neither.
     */
    private static final double SURE = 2.5;

    private static final int MOST = 300;

    /** What is left over of the taps and the lens, in standard deviations: more is no such rectangle. */
    private static final double WORST = 6;

    private static final double STEP = 1e-6;

    private final double width;
    private final double height;
    private final KnownSheet sheet;
    private final Doubts doubts;
    private final double[] found;
    private final RealMatrix axes;

    private PhotoPlane(double width, double height, KnownSheet sheet, Doubts doubts, double[] found, RealMatrix axes) {
        this.width = width;
        this.height = height;
        this.sheet = sheet;
        this.doubts = doubts;
        this.found = found;
        this.axes = axes;
    }

    /**
     * Finds it.
     *
     * @param width of the picture, pixels
     * @param height of the picture, pixels
     * @param taps of the sheet's corners, in the order of {@link KnownSheet}, pixels, y down
     * @return null when the taps are not the corners of a rectangle as seen from the machine's side: crossed, in a line, mirrored
     */
    public static @Nullable PhotoPlane of(
            double width, double height, KnownSheet sheet, List<Vec2> taps, Doubts doubts) {
        List<Vec2> places =
                sheet.corners().stream().map(p -> p.minus(sheet.middle())).toList();
        if (taps.size() != 4 || !around(taps)) {
            return null;
        }
        try {
            PhotoFit fit = new PhotoFit(width, height, places, taps, doubts);
            Optimum best = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(1e-13)
                    .withParameterRelativeTolerance(1e-12)
                    .optimize(new LeastSquaresBuilder()
                            .start(PhotoGuess.of(width, height, places, taps))
                            .model(fit::valued)
                            .target(new double[PhotoFit.OFF])
                            .maxEvaluations(MOST)
                            .maxIterations(MOST)
                            .build());
            double[] found = best.getPoint().toArray();
            boolean before = Lens.of(found, width, height).at().z() > 0;
            return best.getCost() < WORST && before
                    ? new PhotoPlane(width, height, sheet, doubts, found, axes(best.getCovariances(1e-14)))
                    : null;
        } catch (MathRuntimeException lost) {
            return null;
        }
    }

    /** Axes of a doubt, as long as one standard deviation, in columns. */
    private static RealMatrix axes(RealMatrix covariance) {
        RealMatrix even = covariance.add(covariance.transpose()).scalarMultiply(0.5);
        EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(even);
        RealMatrix axes = eigen.getV();
        for (int i = 0; i < Lens.NUMBERS; i++) {
            double length = Math.sqrt(Math.max(0, eigen.getEigenvalue(i)));
            axes.setColumnVector(i, axes.getColumnVector(i).mapMultiply(length));
        }
        return axes;
    }

    /** Whether the corners go round as they should, without a dent: to the left of each edge as one sees it. */
    private static boolean around(List<Vec2> taps) {
        for (int i = 0; i < 4; i++) {
            Vec2 a = taps.get(i);
            Vec2 b = taps.get((i + 1) % 4);
            Vec2 c = taps.get((i + 2) % 4);
            if (!(b.minus(a).cross(c.minus(b)) < 0)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Where something is that was tapped.
     *
     * @param tap pixels, y down
     * @param z how far it stands before the sheet, towards the camera, m; behind: negative
     * @param zDoubt one standard deviation of that, m
     */
    public Seen at(Vec2 tap, double z, double zDoubt) {
        Vec2 here = place(found, tap, z);
        Vec2 right = place(found, tap.plus(new Vec2(0.5, 0)), z).minus(place(found, tap.minus(new Vec2(0.5, 0)), z));
        Vec2 down = place(found, tap.plus(new Vec2(0, 0.5)), z).minus(place(found, tap.minus(new Vec2(0, 0.5)), z));
        Vec2 near = place(found, tap, z + STEP).minus(here).times(1 / STEP);
        Vec2 away = here.minus(sheet.corner());
        Vec2 lens = lens(here, tap, z);
        double alongX = spread(lens.x(), right.x(), down.x(), near.x() * zDoubt, doubts.level() * away.y());
        double alongY = spread(lens.y(), right.y(), down.y(), near.y() * zDoubt, doubts.level() * away.x());
        return new Seen(here, new Vec2(alongX, alongY));
    }

    /**
     * How far off the place may be for not knowing better where the camera stood and what its lens is, m: the larger way to either side
     * along each axis of the doubt, since a small sheet far away makes that anything but a straight line.
     */
    private Vec2 lens(Vec2 here, Vec2 tap, double z) {
        double x = 0;
        double y = 0;
        for (int i = 0; i < Lens.NUMBERS; i++) {
            double farX = 0;
            double farY = 0;
            for (double sign : new double[] {-SURE, SURE}) {
                double[] other = found.clone();
                for (int k = 0; k < other.length; k++) {
                    other[k] += sign * axes.getEntry(k, i);
                }
                Vec2 off = place(other, tap, z).minus(here);
                farX = Math.max(farX, Math.abs(off.x()));
                farY = Math.max(farY, Math.abs(off.y()));
            }
            x += farX * farX;
            y += farY * farY;
        }
        return new Vec2(Math.sqrt(x), Math.sqrt(y));
    }

    private double spread(double lens, double right, double down, double near, double level) {
        double tap = doubts.tap() * Math.hypot(right, down);
        return Math.hypot(
                lens, SURE * Math.sqrt(tap * tap + near * near + level * level + doubts.place() * doubts.place()));
    }

    private Vec2 place(double[] numbers, Vec2 tap, double z) {
        return Lens.of(numbers, width, height).onPlane(tap, z).plus(sheet.middle());
    }

    /** Where a place of the side view is in the picture, pixels; z towards the camera, m. */
    public Vec2 pixel(Vec2 at, double z) {
        Vec2 p = at.minus(sheet.middle());
        return Lens.of(found, width, height).project(new Vec3(p.x(), p.y(), z));
    }
}
