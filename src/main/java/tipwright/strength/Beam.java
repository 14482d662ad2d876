// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * A beam on two rests with forces across it. Source: elementary beam theory.
 *
 * @param from where the first rest is, m
 * @param to where the second rest is, m
 */
public record Beam(double from, double to) {
    /**
     * Bending moment at a place between or beyond the rests, N m, positive where the forces bend it towards them.
     *
     * @param places of the forces, m [force]
     * @param forces N [force]
     */
    public double moment(double at, double[] places, double[] forces) {
        double moment = second(places, forces) * step(at, to) + first(places, forces) * step(at, from);
        for (int i = 0; i < places.length; i++) {
            moment -= forces[i] * step(at, places[i]);
        }
        return moment;
    }

    /** Shear just past a place, N. */
    public double shear(double at, double[] places, double[] forces) {
        double shear = (at >= from ? first(places, forces) : 0) + (at >= to ? second(places, forces) : 0);
        for (int i = 0; i < places.length; i++) {
            shear -= at >= places[i] ? forces[i] : 0;
        }
        return shear;
    }

    /** What the first rest pushes back with, N. */
    public double first(double[] places, double[] forces) {
        double sum = 0;
        for (int i = 0; i < places.length; i++) {
            sum += forces[i] * (to - places[i]) / (to - from);
        }
        return sum;
    }

    /** What the second rest pushes back with, N. */
    public double second(double[] places, double[] forces) {
        double sum = 0;
        for (int i = 0; i < places.length; i++) {
            sum += forces[i] * (places[i] - from) / (to - from);
        }
        return sum;
    }

    /**
     * Deflection between the rests, m: P b x (L^2 - b^2 - x^2) / (6 E I L) on the near side of each force. Forces must act between
     * the rests.
     *
     * @param stiffness E I, N m2
     */
    public double deflection(double at, double[] places, double[] forces, double stiffness) {
        double length = to - from;
        double sum = 0;
        for (int i = 0; i < places.length; i++) {
            boolean near = at <= places[i];
            double b = near ? to - places[i] : places[i] - from;
            double x = near ? at - from : to - at;
            sum += forces[i] * b * x * (length * length - b * b - x * x) / (6 * stiffness * length);
        }
        return sum;
    }

    private static double step(double at, double place) {
        return Math.max(0, at - place);
    }
}
