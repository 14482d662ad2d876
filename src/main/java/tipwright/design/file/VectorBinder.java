// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/** Reads points '[150 mm, 640 mm, 0 mm]' and directions '[1, 0, 0]' or 'x'. */
final class VectorBinder {
    private static final List<String> AXES = List.of("x", "y", "z", "-x", "-y", "-z");
    private static final double SHORTEST = 1e-9;

    private static final String[] COORDINATES = {".x", ".y", ".z"};

    private final Reader reader;
    private final Problems problems;
    private final QuantityBinder quantities;

    VectorBinder(Reader reader, QuantityBinder quantities) {
        this.reader = reader;
        problems = reader.problems();
        this.quantities = quantities;
    }

    /** A Vec2 or Vec3; null with problems noted. */
    @Nullable
    Object read(Class<?> type, Measured measured, Node node, String path) {
        int size = type == Vec2.class ? 2 : 3;
        boolean direction = measured.value() == Kind.RATIO;
        if (direction
                && node instanceof Node.Scalar word
                && AXES.subList(0, size).contains(word.text().replace("-", ""))) {
            return axis(word, size, path);
        }
        boolean place = !direction && !measured.within();
        if (place && (node instanceof Node.Fields || (node instanceof Node.Scalar name && !name.isNothing()))) {
            return reader.points().place(node, path, size);
        }
        if (!(node instanceof Node.Items list) || list.items().size() != size) {
            boolean more = node instanceof Node.Items items && items.items().size() > size;
            problems.add(
                    node.place(),
                    path,
                    needed(size, direction) + "; found " + node.words()
                            + (more ? " (a ',' starts the next number; decimals take a point)" : ""));
            return null;
        }
        double[] c = new double[3];
        boolean good = true;
        for (int i = 0; i < size; i++) {
            Node item = list.items().get(i);
            Double value = direction
                    ? plain(item, path)
                    : quantities.read(measured, item, path, path + COORDINATES[i], QuantityBinder.NONE);
            good &= value != null;
            c[i] = value == null ? 0 : value;
        }
        if (!good) {
            return null;
        }
        if (direction && Math.sqrt(c[0] * c[0] + c[1] * c[1] + c[2] * c[2]) < SHORTEST) {
            problems.add(node.place(), path, "a direction that points nowhere; " + needed(size, true));
            return null;
        }
        return size == 2 ? new Vec2(c[0], c[1]) : new Vec3(c[0], c[1], c[2]);
    }

    private @Nullable Double plain(Node node, String path) {
        if (node instanceof Node.Scalar scalar
                && scalar.text().matches("[+-]?(\\d{1,9}(\\.\\d{0,15})?|\\.\\d{1,15})")) {
            return Double.valueOf(scalar.text());
        }
        problems.add(
                node.place(), path, node.words() + " does not fit; a direction is plain numbers, such as [1, 0, 0]");
        return null;
    }

    private @Nullable Object axis(Node.Scalar word, int size, String path) {
        int at = AXES.indexOf(word.text());
        if (at < 0) {
            problems.add(
                    word.place(), path, ErrorText.quoted(word.text()) + " is not a direction; " + needed(size, true));
            return null;
        }
        double sign = at < 3 ? 1 : -1;
        double x = at % 3 == 0 ? sign : 0;
        double y = at % 3 == 1 ? sign : 0;
        double z = at % 3 == 2 ? sign : 0;
        return size == 2 ? new Vec2(x, y) : new Vec3(x, y, z);
    }

    private static String needed(int size, boolean direction) {
        if (direction) {
            return size == 2
                    ? "a direction [x, y] is needed, such as [0, -1]"
                    : "a direction is needed, such as x, -y or [1, 0, 0]";
        }
        return size == 2
                ? "a point [x, y] is needed, such as [300 mm, 120 mm]"
                : "a point [x, y, z] is needed, such as [300 mm, 120 mm, 0 mm]";
    }
}
