// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import java.util.Arrays;

/**
 * How far the wave of one pole of the shell's equation moves under a load over a stretch of the shell's length: u'' - kappa^2 u = -p
 * with u = 0 at both ends, where p is 1 over the stretch, or runs from -1 to 1 along it. In closed form, by the function of Green, so
 * that no sum along the shell is needed. Complex numbers are held in pairs of fields: a workspace for one thread.
 */
final class ShellWave {
    private final double length;
    private final double from;
    private final double to;
    private double kr;
    private double ki;
    /** 1 / (2 kappa (1 - exp(-2 kappa L))). */
    private double scaleR;

    private double scaleI;
    private double inverseR;
    private double inverseI;

    /** Of the even load, the odd load, and their slopes: real part and imaginary part of each in turn. */
    final double[] answer = new double[8];

    ShellWave(double length, double from, double to) {
        this.length = length;
        this.from = from;
        this.to = to;
    }

    /** Takes the pole s of the shell's equation; kappa is the root of -s with a positive real part. */
    void pole(double sr, double si) {
        double size = Math.hypot(sr, si);
        kr = Math.sqrt((size - sr) / 2);
        ki = kr > 0 ? -si / (2 * kr) : Math.sqrt(size);
        double decay = Math.exp(-2 * kr * length);
        double er = 1 - decay * Math.cos(2 * ki * length);
        double ei = decay * Math.sin(2 * ki * length);
        double dr = 2 * (kr * er - ki * ei);
        double di = 2 * (kr * ei + ki * er);
        double square = dr * dr + di * di;
        scaleR = dr / square;
        scaleI = -di / square;
        double kappa = kr * kr + ki * ki;
        inverseR = kr / kappa;
        inverseI = -ki / kappa;
    }

    /** Fills {@link #answer} for a place along the shell. */
    void at(double x) {
        Arrays.fill(answer, 0);
        double middle = Math.min(Math.max(x, from), to);
        // On the near side the wave falls with the distance x - xi, on the far side with xi - x.
        piece(from, middle, x, false);
        piece(middle, to, x, true);
        ends(x);
        for (int i = 0; i < 8; i += 2) {
            double r = answer[i];
            answer[i] = r * scaleR - answer[i + 1] * scaleI;
            answer[i + 1] = r * scaleI + answer[i + 1] * scaleR;
        }
    }

    private void piece(double low, double high, double x, boolean beyond) {
        if (high <= low) {
            return;
        }
        int way = beyond ? 1 : -1;
        // exp(-kappa |x - xi|) and its echo exp(-kappa (2 L - |x - xi|)), which runs the other way.
        for (int end = 0; end < 2; end++) {
            double xi = end == 0 ? low : high;
            int sign = end == 0 ? -1 : 1;
            double gap = Math.abs(x - xi);
            term(gap, xi, -way * sign, way, way);
            term(2 * length - gap, xi, way * sign, -way, -way);
        }
    }

    /** Images at both ends, which hold the ends still. */
    private void ends(double x) {
        for (int end = 0; end < 2; end++) {
            double xi = end == 0 ? from : to;
            int sign = end == 0 ? -1 : 1;
            term(x + xi, xi, sign, 1, -1);
            term(2 * length - x - xi, xi, -sign, -1, 1);
        }
    }

    /**
     * Adds the primitive of exp(-kappa d) p at one limit: factor exp(-kappa d) (p / kappa + way p' / kappa^2), and its slope along
     * x, which is slope times kappa as much.
     */
    private void term(double distance, double xi, int factor, int way, int slope) {
        if (kr * distance > 45) {
            return;
        }
        double er = factor;
        double ei = 0;
        if (distance != 0) {
            double decay = factor * Math.exp(-kr * distance);
            er = decay * Math.cos(ki * distance);
            ei = -decay * Math.sin(ki * distance);
        }
        double ar = er * inverseR - ei * inverseI;
        double ai = er * inverseI + ei * inverseR;
        double half = (to - from) / 2;
        double level = (xi - from) / half - 1;
        double rise = way / half;
        double qr = level + rise * inverseR;
        double qi = rise * inverseI;
        double br = ar * qr - ai * qi;
        double bi = ar * qi + ai * qr;
        answer[0] += ar;
        answer[1] += ai;
        answer[2] += br;
        answer[3] += bi;
        answer[4] += slope * (ar * kr - ai * ki);
        answer[5] += slope * (ar * ki + ai * kr);
        answer[6] += slope * (br * kr - bi * ki);
        answer[7] += slope * (br * ki + bi * kr);
    }
}
