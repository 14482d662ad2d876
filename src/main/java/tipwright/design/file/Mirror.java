// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tipwright.design.Design;
import tipwright.design.key.Annotated;
import tipwright.design.key.Measured;
import tipwright.design.tank.BoxInterior;
import tipwright.design.tank.MeshInterior;
import tipwright.design.tape.NamedPoints;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * Turns a design that was drawn from the other side: x of every place and direction changes its sign, and nothing else does; words
 * such as 'towards-dump' keep their meaning. Comments, order and units stay.
 */
public final class Mirror {
    private final String text;
    private final TreeMap<Integer, Edit> edits = new TreeMap<>();

    private Mirror(String text) {
        this.text = text;
    }

    private record Edit(int end, String value) {}

    /** Why a file cannot be turned; the message tells it. */
    public static final class CannotTurnException extends Exception {
        private static final long serialVersionUID = 1L;

        CannotTurnException(String message) {
            super(message);
        }
    }

    /**
     * The text of the turned design.
     *
     * @param name of the file, for messages
     * @throws CannotTurnException when it is no design at all, or its inside is a mesh
     */
    public static String turned(String name, String text) throws CannotTurnException {
        Problems problems = new Problems();
        Node root = YamlText.read(name, text, problems);
        if (!problems.isEmpty() || !(root instanceof Node.Fields top)) {
            List<Problem> all = problems.inOrder();
            throw new CannotTurnException(
                    all.isEmpty()
                            ? name + ": a design starts with 'tipwright: 1'"
                            : all.get(0).text());
        }
        Mirror mirror = new Mirror(text);
        mirror.record(Design.class, top, false);
        return mirror.edited();
    }

    private String edited() {
        StringBuilder all = new StringBuilder(text);
        for (Map.Entry<Integer, Edit> edit : edits.descendingMap().entrySet()) {
            all.replace(edit.getKey(), edit.getValue().end(), edit.getValue().value());
        }
        return all.toString();
    }

    /**
     * Turns a record's keys.
     *
     * @param upright whether places within it are in a plane that stands upright across the machine, where x plays no part
     */
    private void record(Class<?> type, Node node, boolean upright) throws CannotTurnException {
        if (!(node instanceof Node.Fields group)) {
            return;
        }
        if (type == MeshInterior.class) {
            throw new CannotTurnException(
                    "the inside of the tank is a mesh, which is another file; turn it in the program that drew it");
        }
        boolean stands = upright || standsUpright(group);
        for (Shape.Key key : Shape.of(type).keys()) {
            Node.Field field = group.fields().get(key.name());
            boolean size = type == BoxInterior.class && key.name().equals("size");
            if (field != null && !size) {
                value(key, field.value(), stands);
            }
        }
    }

    /** Whether its 'normal' lies along the machine. */
    private static boolean standsUpright(Node.Fields group) {
        Node.Field normal = group.fields().get("normal");
        if (normal == null) {
            return false;
        }
        if (normal.value() instanceof Node.Scalar word) {
            return word.text().equals("x") || word.text().equals("-x");
        }
        return normal.value() instanceof Node.Items list
                && list.items().size() == 3
                && !isZero(list.items().get(0))
                && isZero(list.items().get(1));
    }

    private static boolean isZero(Node node) {
        return node instanceof Node.Scalar number && number.text().chars().noneMatch(c -> c >= '1' && c <= '9');
    }

    private void value(Shape.Key key, Node node, boolean upright) throws CannotTurnException {
        Class<?> type = key.type();
        if (type == NamedPoints.class) {
            if (node instanceof Node.Fields points) {
                points.fields().values().forEach(field -> first(field.value()));
            }
            return;
        }
        Measured measured = key.mark(Measured.class);
        boolean place = type == Vec2.class || type == Vec3.class;
        if (place && measured != null) {
            boolean direction = measured.value() == Kind.RATIO;
            if (measured.within() && upright) {
                return;
            }
            boolean many = key.list()
                    && node instanceof Node.Items list
                    && !list.items().isEmpty()
                    && !(list.items().get(0) instanceof Node.Scalar);
            if (many) {
                ((Node.Items) node).items().forEach(this::first);
            } else if (direction && node instanceof Node.Scalar word) {
                axis(word);
            } else {
                first(node);
            }
            return;
        }
        if (key.list() && node instanceof Node.Items list) {
            for (Node item : list.items()) {
                group(type, item, upright);
            }
            return;
        }
        group(type, node, upright);
    }

    private void group(Class<?> type, Node node, boolean upright) throws CannotTurnException {
        if (type.isRecord()) {
            record(type, node, upright);
            return;
        }
        if (!type.isSealed() || !(node instanceof Node.Fields group)) {
            return;
        }
        String by = Annotated.of(type).word();
        for (Map.Entry<String, Class<?>> each : ChoiceBinder.words(type).entrySet()) {
            Node.Field field = group.fields().get(by.isEmpty() ? each.getKey() : by);
            if (field != null && by.isEmpty()) {
                record(each.getValue(), field.value(), upright);
            } else if (field != null
                    && field.value() instanceof Node.Scalar word
                    && word.text().equals(each.getKey())) {
                record(each.getValue(), group, upright);
            }
        }
    }

    /** Turns the first number of a point. */
    private void first(Node node) {
        if (node instanceof Node.Items list
                && !list.items().isEmpty()
                && list.items().get(0) instanceof Node.Scalar x
                && !isZero(x)) {
            put(x, negated(x.text()));
        }
    }

    private void axis(Node.Scalar word) {
        if (word.text().equals("x")) {
            put(word, "-x");
        } else if (word.text().equals("-x")) {
            put(word, "x");
        }
    }

    private void put(Node.Scalar old, String value) {
        int start = old.place().start();
        int end = old.place().end();
        String written = text.substring(start, end);
        int at = written.indexOf(old.text());
        if (at >= 0) {
            edits.put(start + at, new Edit(start + at + old.text().length(), value));
        }
    }

    /** A quantity with the other sign: '24 in' and '-24 in', 'about 3 ft' and 'about -3 ft'. */
    private static String negated(String quantity) {
        int digits = 0;
        while (digits < quantity.length()
                && !Character.isDigit(quantity.charAt(digits))
                && quantity.charAt(digits) != '.') {
            digits++;
        }
        String before = quantity.substring(0, digits).stripTrailing();
        String number = quantity.substring(digits);
        boolean minus = before.endsWith("-") || before.endsWith("\u2212") || before.endsWith("\u2013");
        boolean plus = before.endsWith("+");
        String words = minus || plus ? before.substring(0, before.length() - 1) : quantity.substring(0, digits);
        return words + (minus ? "" : "-") + number;
    }
}
