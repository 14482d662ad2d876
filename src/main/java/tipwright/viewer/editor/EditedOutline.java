// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.file.FileField;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.quantity.UnitSystem;

/**
 * An outline of a design as it is drawn by hand: its corners with both coordinates, and where they may go. Immutable.
 *
 * @param corners m, in order; corners that are blank or told by the tape stand at the middle of the others
 * @param text of each corner's coordinates as written [corner][x, y]; empty where there is none
 * @param units of the tape
 */
public record EditedOutline(List<Vec2> corners, List<List<String>> text, UnitSystem units) {
    private static final double INCH = 0.0254;
    private static final int LINES = 12;

    /** Copies the lists. */
    public EditedOutline {
        corners = List.copyOf(corners);
        text = List.copyOf(text);
    }

    /** The outline that a list of points makes. */
    public static EditedOutline of(FileField list, UnitSystem units) {
        List<Vec2> known = new ArrayList<>();
        List<List<String>> text = new ArrayList<>();
        for (FileField corner : list.inner()) {
            boolean both = corner.inner().size() == 2;
            List<String> xy = both
                    ? List.of(
                            corner.inner().get(0).text(), corner.inner().get(1).text())
                    : List.of("", "");
            text.add(xy);
            known.add(place(xy));
        }
        double[] sum = new double[3];
        known.stream().filter(c -> !Double.isNaN(c.x())).forEach(c -> {
            sum[0] += c.x();
            sum[1] += c.y();
            sum[2]++;
        });
        Vec2 middle = sum[2] == 0 ? Vec2.ZERO : new Vec2(sum[0] / sum[2], sum[1] / sum[2]);
        return new EditedOutline(
                known.stream().map(c -> Double.isNaN(c.x()) ? middle : c).toList(), text, units);
    }

    private static Vec2 place(List<String> xy) {
        try {
            return new Vec2(Quantities.parse(xy.get(0), Kind.LENGTH), Quantities.parse(xy.get(1), Kind.LENGTH));
        } catch (QuantityException blank) {
            return new Vec2(Double.NaN, Double.NaN);
        }
    }

    /** Number of the first corner without a place, from 0; -1: all have one. */
    public int firstBlank() {
        for (int i = 0; i < text.size(); i++) {
            if (Double.isNaN(place(text.get(i)).x())) {
                return i;
            }
        }
        return -1;
    }

    /** What a place snaps to, m: a millimetre, or an eighth of an inch. */
    public double step() {
        return units == UnitSystem.US ? INCH / 8 : 0.001;
    }

    /** How far the arrow keys move a corner. */
    public String stepWords() {
        return units == UnitSystem.US ? "5/8 in, with Shift 1/8 in" : "5 mm, with Shift 1 mm";
    }

    /** A place on the nearest mark. */
    public Vec2 snapped(Vec2 at) {
        return new Vec2(Math.rint(at.x() / step()) * step(), Math.rint(at.y() / step()) * step());
    }

    /** Between the lines of the grid, m: 1, 2 or 5 of a round length, or inches and feet. */
    public double gridStep() {
        double wanted = Math.max(high().x() - low().x(), high().y() - low().y()) / LINES;
        double[] steps = units == UnitSystem.US
                ? new double[] {INCH, 3 * INCH, 6 * INCH, 12 * INCH, 24 * INCH, 60 * INCH, 120 * INCH}
                : new double[] {0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5};
        for (double step : steps) {
            if (step >= wanted) {
                return step;
            }
        }
        return wanted;
    }

    /** Lower left of what is shown, m. */
    public Vec2 low() {
        return corner(-1);
    }

    /** Upper right of what is shown, m. */
    public Vec2 high() {
        return corner(1);
    }

    /** The box around all corners, a little larger; at least 200 mm each way. */
    private Vec2 corner(int sign) {
        double[] most = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        double[] least = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        for (Vec2 c : corners.isEmpty() ? List.of(Vec2.ZERO) : corners) {
            most[0] = Math.max(most[0], c.x());
            most[1] = Math.max(most[1], c.y());
            least[0] = Math.min(least[0], c.x());
            least[1] = Math.min(least[1], c.y());
        }
        double[] at = new double[2];
        for (int i = 0; i < 2; i++) {
            double half = Math.max(0.1, 0.6 * (most[i] - least[i]));
            at[i] = 0.5 * (most[i] + least[i]) + sign * half;
        }
        return new Vec2(at[0], at[1]);
    }

    /** The edge nearest to a place, by the number of the corner that it starts at, from 0; -1: there are no corners. */
    public int edgeAt(Vec2 at) {
        int best = corners.size() - 1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < corners.size(); i++) {
            Vec2 from = corners.get(i);
            Vec2 way = corners.get((i + 1) % corners.size()).minus(from);
            double along = way.dot(way) == 0
                    ? 0
                    : Math.max(0, Math.min(1, at.minus(from).dot(way) / way.dot(way)));
            double distance = from.plus(way.times(along)).minus(at).norm();
            if (distance < least) {
                least = distance;
                best = i;
            }
        }
        return best;
    }

    /** The middle of the longest edge, on a mark, m. */
    public Vec2 middleOfLongest() {
        Vec2 middle = low().plus(high()).times(0.5);
        double most = 0;
        for (int i = 0; i < corners.size(); i++) {
            Vec2 next = corners.get((i + 1) % corners.size());
            double length = next.minus(corners.get(i)).norm();
            if (length > most) {
                most = length;
                middle = corners.get(i).plus(next).times(0.5);
            }
        }
        return snapped(middle);
    }

    /**
     * A place as it is written.
     *
     * @param i number of the corner in whose units, from 0; -1: in the units of the tape
     */
    public String[] written(int i, Vec2 at) {
        String unit = units == UnitSystem.US ? "1 in" : "1 mm";
        String[] all = new String[2];
        for (int axis = 0; axis < 2; axis++) {
            String had = i < 0 ? "" : text.get(i).get(axis);
            try {
                all[axis] = Mover.rewritten(had.isBlank() ? unit : had, axis == 0 ? at.x() : at.y());
            } catch (QuantityException e) {
                throw new IllegalArgumentException(e.getMessage(), e);
            }
        }
        return all;
    }

    /** A place in words. */
    public String words(Vec2 at) {
        String[] xy = written(-1, at);
        return "x " + xy[0] + ", y " + xy[1];
    }
}
