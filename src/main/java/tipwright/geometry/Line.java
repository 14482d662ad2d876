// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * A straight stretch of profile: shell or cone.
 *
 * @param from first station, m
 * @param to last station, m
 * @param start radius at the first station, m
 * @param end radius at the last station, m
 */
record Line(double from, double to, double start, double end) implements Stretch {
    private double slope() {
        return (end - start) / (to - from);
    }

    @Override
    public void below(Wet wet, Nodes nodes) {
        double m = slope();
        double c = start - m * from;
        double low = from;
        double high = to;
        // where the rim is above the plane: rise r > level - lean s; and the same for the opposite rim
        double k = wet.rise * m + wet.lean;
        double b = wet.level - wet.rise * c;
        if (k > 0) {
            low = Math.max(low, b / k);
        } else if (k < 0) {
            high = Math.min(high, b / k);
        } else if (b >= 0) {
            high = low;
        }
        k = wet.rise * m - wet.lean;
        b = -wet.level - wet.rise * c;
        if (k > 0) {
            low = Math.max(low, b / k);
        } else if (k < 0) {
            high = Math.min(high, b / k);
        } else if (b >= 0) {
            high = low;
        }
        low = Math.min(low, to);
        high = Math.max(Math.min(high, to), low);
        if (wet.under(0.5 * (from + low))) {
            full(wet, from, low);
        }
        if (wet.under(0.5 * (high + to))) {
            full(wet, high, to);
        }
        if (high > low && wet.rise > 0) {
            double middle = 0.5 * (low + high);
            double half = 0.5 * (high - low);
            for (int i = 0; i < Nodes.COUNT; i++) {
                double s = middle + half * nodes.place(i);
                wet.slice(half * nodes.weight(i), s, c + m * s);
            }
        }
    }

    @Override
    public void whole(Wet wet) {
        full(wet, from, to);
    }

    private void full(Wet wet, double a, double b) {
        double h = b - a;
        if (h <= 0) {
            return;
        }
        double ra = start + slope() * (a - from);
        double rb = start + slope() * (b - from);
        double volume = Math.PI * h * (ra * ra + ra * rb + rb * rb) / 3;
        double moment = Math.PI * h * h * (ra * ra + 2 * ra * rb + 3 * rb * rb) / 12;
        wet.full(volume, volume * a + moment);
    }

    @Override
    public double radius(double s) {
        return s < from || s > to ? 0 : start + slope() * (s - from);
    }

    @Override
    public double reach(double lean, double rise) {
        return Math.max(lean * from + rise * start, lean * to + rise * end);
    }

    @Override
    public double[] wall() {
        double area = Math.PI * (start + end) * Math.hypot(to - from, end - start);
        double mean = from + (to - from) * (start + 2 * end) / (3 * (start + end));
        return new double[] {area, area * mean};
    }

    @Override
    public double[] points(double sag) {
        return new double[] {from, start, to, end};
    }

    @Override
    public Line mirrored() {
        return new Line(-to, -from, /* start= */ end, /* end= */ start);
    }

    @Override
    public Line moved(double by) {
        return new Line(from + by, to + by, start, end);
    }
}
