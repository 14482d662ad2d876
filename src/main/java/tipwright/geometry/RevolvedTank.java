// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.List;

/**
 * A cylinder about any axis with a head on each end; inside dimensions. Cuts are exact up to the quadrature along the
 * axis of exact circular segments.
 *
 * <p>Source: circular segment area r^2 acos(-d/r) + d sqrt(r^2 - d^2), moment (2/3) (r^2 - d^2)^1.5, any calculus text
 * (from memory).
 */
public final class RevolvedTank implements Solid {
    /** Below this sine between the plane's normal and the axis the plane counts as square to the axis. */
    private static final double SQUARE = 1e-9;

    private final Vec3 middle;
    private final Vec3 axis;
    private final double radius;
    private final List<Stretch> profile;
    private final Stretch[] stretches;
    private final Nodes nodes = new Nodes();
    private final Moments whole;
    private final MadeOnce<Skin> skin = new MadeOnce<>(this::makeSkin);

    private RevolvedTank(Vec3 middle, Vec3 axis, double radius, List<Stretch> profile) {
        this.middle = middle;
        this.axis = axis;
        this.radius = radius;
        this.profile = profile;
        this.stretches = profile.toArray(new Stretch[0]);
        Wet all = new Wet(1, 0, 0);
        for (Stretch stretch : stretches) {
            stretch.whole(all);
        }
        this.whole = new Moments(all.volume, middle.times(all.volume).plus(axis.times(all.along)), 0);
    }

    /**
     * A tank.
     *
     * @param middleOfShell middle of the straight shell on the axis, m
     * @param axis direction of the axis, any length but 0; points to the plus end
     * @param diameter inside, m
     * @param shellLength straight shell between the heads' tangent lines, m, 0 or more
     * @throws ShapeException if a dimension is not usable
     */
    public static RevolvedTank of(
            Vec3 middleOfShell, Vec3 axis, double diameter, double shellLength, Head minusEnd, Head plusEnd) {
        Vec3 unit = axis.unit();
        if (!Double.isFinite(unit.norm()) || !Double.isFinite(middleOfShell.norm())) {
            throw new ShapeException("the tank needs a finite centre and an axis that is not zero");
        }
        if (!(diameter > 0 && diameter < 1e6)) {
            throw new ShapeException("the tank's diameter must be above 0, not " + diameter + " m");
        }
        if (!(shellLength >= 0 && shellLength < 1e6)) {
            throw new ShapeException("the tank's shell length must be 0 or more, not " + shellLength + " m");
        }
        if (shellLength + minusEnd.depth(diameter) + plusEnd.depth(diameter) <= 0) {
            throw new ShapeException("a tank with two flat heads needs a shell longer than 0");
        }
        List<Stretch> profile = List.copyOf(Profile.of(diameter, shellLength, minusEnd, plusEnd));
        return new RevolvedTank(middleOfShell, unit, 0.5 * diameter, profile);
    }

    /** Inside diameter, m. */
    public double diameter() {
        return 2 * radius;
    }

    /** Middle of the straight shell, m. */
    public Vec3 middle() {
        return middle;
    }

    @Override
    public Moments below(Plane plane) {
        Vec3 n = plane.normal();
        double lean = n.dot(axis);
        Vec3 cross = n.minus(axis.times(lean));
        double rise = cross.norm();
        double level = -plane.height(middle);
        if (rise < SQUARE) {
            rise = 0;
            lean = Math.copySign(1, lean);
        }
        Wet wet = new Wet(lean, rise, level);
        for (Stretch stretch : stretches) {
            stretch.below(wet, nodes);
        }
        if (wet.volume <= 0) {
            return Moments.NOTHING;
        }
        double x = middle.x() * wet.volume + axis.x() * wet.along;
        double y = middle.y() * wet.volume + axis.y() * wet.along;
        double z = middle.z() * wet.volume + axis.z() * wet.along;
        if (rise == 0) {
            return new Moments(wet.volume, new Vec3(x, y, z), disc(level / lean));
        }
        double across = wet.across / rise;
        Vec3 first = new Vec3(x + cross.x() * across, y + cross.y() * across, z + cross.z() * across);
        return new Moments(wet.volume, first, wet.section);
    }

    private double disc(double station) {
        double r = 0;
        for (Stretch stretch : stretches) {
            r = Math.max(r, stretch.radius(station));
        }
        return Math.PI * r * r;
    }

    @Override
    public Moments whole() {
        return whole;
    }

    @Override
    public Range extent(Vec3 direction) {
        double lean = direction.dot(axis);
        double rise = direction.minus(axis.times(lean)).norm();
        double high = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        for (Stretch stretch : stretches) {
            high = Math.max(high, stretch.reach(lean, rise));
            low = Math.min(low, -stretch.reach(-lean, rise));
        }
        double base = direction.dot(middle);
        return new Range(base + low, base + high);
    }

    @Override
    public Skin skin() {
        return skin.get();
    }

    private Skin makeSkin() {
        double area = 0;
        double moment = 0;
        for (Stretch stretch : stretches) {
            double[] wall = stretch.wall();
            area += wall[0];
            moment += wall[1];
        }
        double[] first = stretches[0].points(radius);
        double[] last = stretches[stretches.length - 1].points(radius);
        double minusPlate = Math.PI * first[1] * first[1];
        double plusPlate = Math.PI * last[last.length - 1] * last[last.length - 1];
        area += minusPlate + plusPlate;
        moment += minusPlate * first[0] + plusPlate * last[last.length - 2];
        return new Skin(area, middle.plus(axis.times(moment / area)));
    }

    @Override
    public Mesh mesh(double sag) {
        return RevolvedMesh.of(middle, axis, radius, profile, sag);
    }

    /** Always: every head bulges outward. */
    @Override
    public boolean convex() {
        return true;
    }
}
