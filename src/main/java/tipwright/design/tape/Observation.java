// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tape;

/** Something that was measured between points, or that must hold between them. */
public sealed interface Observation {
    /** What the tape reads, m. */
    double measured();

    /** Standard doubt, m, more than 0. */
    double doubt();

    /** What it would read between these places (points x 3, m). */
    double computed(double[][] places);

    /** Adds its derivatives by the coordinates, points x 3. */
    void derivatives(double[][] places, double[][] to);

    /**
     * How far apart two points are.
     *
     * @param from number of a point
     * @param to number of a point
     */
    record Distance(int from, int to, double measured, double doubt) implements Observation {
        @Override
        public double computed(double[][] places) {
            return apart(places[from], places[to]);
        }

        @Override
        public void derivatives(double[][] places, double[][] d) {
            double length = Math.max(computed(places), 1e-12);
            for (int i = 0; i < 3; i++) {
                double share = (places[to][i] - places[from][i]) / length;
                d[to][i] += share;
                d[from][i] -= share;
            }
        }
    }

    /**
     * How far one point is from another along an axis.
     *
     * @param axis 0 for x, 1 for y, 2 for z
     */
    record Step(int from, int to, int axis, double measured, double doubt) implements Observation {
        @Override
        public double computed(double[][] places) {
            return places[to][axis] - places[from][axis];
        }

        @Override
        public void derivatives(double[][] places, double[][] d) {
            d[to][axis] += 1;
            d[from][axis] -= 1;
        }
    }

    /** How far a coordinate of a point is from the middle of two others; measured is 0. */
    record Middle(int first, int second, int point, int axis, double doubt) implements Observation {
        @Override
        public double measured() {
            return 0;
        }

        @Override
        public double computed(double[][] places) {
            return places[point][axis] - 0.5 * (places[first][axis] + places[second][axis]);
        }

        @Override
        public void derivatives(double[][] places, double[][] d) {
            d[point][axis] += 1;
            d[first][axis] -= 0.5;
            d[second][axis] -= 0.5;
        }
    }

    /** How far a point is off the line through two others in the side view; measured is 0. */
    record OnLine(int first, int second, int point, double doubt) implements Observation {
        @Override
        public double measured() {
            return 0;
        }

        @Override
        public double computed(double[][] places) {
            double ux = places[second][0] - places[first][0];
            double uy = places[second][1] - places[first][1];
            double px = places[point][0] - places[first][0];
            double py = places[point][1] - places[first][1];
            return (ux * py - uy * px) / Math.max(Math.hypot(ux, uy), 1e-12);
        }

        @Override
        public void derivatives(double[][] places, double[][] d) {
            double ux = places[second][0] - places[first][0];
            double uy = places[second][1] - places[first][1];
            double length = Math.max(Math.hypot(ux, uy), 1e-12);
            double px = places[point][0] - places[first][0];
            double py = places[point][1] - places[first][1];
            double along = (ux * px + uy * py) / (length * length);
            double nx = -uy / length;
            double ny = ux / length;
            d[point][0] += nx;
            d[point][1] += ny;
            d[second][0] -= along * nx;
            d[second][1] -= along * ny;
            d[first][0] -= (1 - along) * nx;
            d[first][1] -= (1 - along) * ny;
        }
    }

    /** Between two places, m. */
    static double apart(double[] a, double[] b) {
        return Math.sqrt((a[0] - b[0]) * (a[0] - b[0]) + (a[1] - b[1]) * (a[1] - b[1]) + (a[2] - b[2]) * (a[2] - b[2]));
    }
}
