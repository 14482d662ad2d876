// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * A bowed stretch of profile, an arc of circle or ellipse: s = centre + reach sin t, r = offset + swell cos t.
 *
 * @param centre station of the arc's centre, m
 * @param offset radius of the arc's centre, m: 0 on the axis, more for a knuckle
 * @param length half axis along the tank's axis, m
 * @param swell half axis across it, m
 * @param from first angle, rad, in [-pi/2, pi/2]
 * @param to last angle, rad
 */
record ArcStretch(double centre, double offset, double length, double swell, double from, double to)
        implements Stretch {
    @Override
    public void below(Wet wet, Nodes nodes) {
        double a = wet.lean * length;
        double b = wet.rise * swell;
        double reach = Math.sqrt(a * a + b * b);
        double peak = Math.atan2(a, b);
        double over = wet.level - wet.lean * centre;
        // rim above the plane: reach cos(t - peak) > over - rise offset; opposite rim: reach cos(t + peak) > ...
        double x = Math.acos(clamp((over - wet.rise * offset) / reach));
        double y = Math.acos(clamp((-over - wet.rise * offset) / reach));
        double low = Math.min(Math.max(from, Math.max(peak - x, -peak - y)), to);
        double high = Math.max(Math.min(to, Math.min(peak + x, -peak + y)), low);
        if (wet.under(station(0.5 * (from + low)))) {
            full(wet, from, low);
        }
        if (wet.under(station(0.5 * (high + to)))) {
            full(wet, high, to);
        }
        if (high > low && wet.rise > 0) {
            double middle = 0.5 * (low + high);
            double half = 0.5 * (high - low);
            for (int i = 0; i < Nodes.COUNT; i++) {
                double t = middle + half * nodes.place(i);
                double cos = Math.cos(t);
                wet.slice(half * nodes.weight(i) * length * cos, centre + length * Math.sin(t), offset + swell * cos);
            }
        }
    }

    private static double clamp(double cosine) {
        return Math.max(-1, Math.min(1, cosine));
    }

    private double station(double t) {
        return centre + length * Math.sin(t);
    }

    @Override
    public void whole(Wet wet) {
        full(wet, from, to);
    }

    private void full(Wet wet, double t0, double t1) {
        if (t1 > t0) {
            double volume = length * (volumeTo(t1) - volumeTo(t0));
            wet.full(volume, centre * volume + length * length * (momentTo(t1) - momentTo(t0)));
        }
    }

    /** Antiderivative of pi r^2 cos t. */
    private double volumeTo(double t) {
        double s = Math.sin(t);
        double c = Math.cos(t);
        return Math.PI * (offset * offset * s + offset * swell * (t + s * c) + swell * swell * (s - s * s * s / 3));
    }

    /** Antiderivative of pi r^2 sin t cos t. */
    private double momentTo(double t) {
        double s = Math.sin(t);
        double c = Math.cos(t);
        double cc = c * c;
        return Math.PI
                * (0.5 * offset * offset * s * s
                        - offset * swell * cc * c * (2.0 / 3)
                        - 0.25 * swell * swell * cc * cc);
    }

    @Override
    public double radius(double s) {
        double u = (s - centre) / length;
        return u < Math.sin(from) || u > Math.sin(to) ? 0 : offset + swell * Math.sqrt(Math.max(0, 1 - u * u));
    }

    @Override
    public double reach(double lean, double rise) {
        double t = Math.max(from, Math.min(to, Math.atan2(lean * length, rise * swell)));
        return lean * station(t) + rise * (offset + swell * Math.cos(t));
    }

    @Override
    public double[] wall() {
        double area = 0;
        double moment = 0;
        Nodes nodes = new Nodes();
        int panels = 8;
        double half = 0.5 * (to - from) / panels;
        for (int p = 0; p < panels; p++) {
            double middle = from + (2 * p + 1) * half;
            for (int i = 0; i < Nodes.COUNT; i++) {
                double t = middle + half * nodes.place(i);
                double c = Math.cos(t);
                double s = Math.sin(t);
                double strip = 2 * Math.PI * (offset + swell * c) * Math.hypot(length * c, swell * s);
                area += half * nodes.weight(i) * strip;
                moment += half * nodes.weight(i) * strip * (centre + length * s);
            }
        }
        return new double[] {area, moment};
    }

    @Override
    public double[] points(double sag) {
        double size = Math.max(length, swell);
        double step = 2 * Math.acos(Math.max(0.5, 1 - sag / size));
        int count = Math.max(1, (int) Math.ceil((to - from) / step));
        double[] points = new double[2 * count + 2];
        for (int i = 0; i <= count; i++) {
            double t = from + (to - from) * i / count;
            points[2 * i] = station(t);
            points[2 * i + 1] = offset + swell * Math.cos(t);
        }
        return points;
    }

    @Override
    public ArcStretch mirrored() {
        return new ArcStretch(-centre, offset, length, swell, -to, -from);
    }

    @Override
    public ArcStretch moved(double by) {
        return new ArcStretch(centre + by, offset, length, swell, from, to);
    }
}
