// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.key.FromParts;
import tipwright.design.key.Measured;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/** Example values for error messages. */
final class Samples {
    private Samples() {}

    /** A likely line for a key: 'diameter: 480 mm'. */
    static String line(Shape.Key key) {
        return key.name() + ": " + value(key);
    }

    private static String value(Shape.Key key) {
        Measured measured = key.mark(Measured.class);
        if (measured != null) {
            boolean direction = measured.value() == Kind.RATIO;
            String point = measured.preset().isEmpty() ? measured.value().example() : measured.preset();
            if (key.type() == Vec2.class) {
                point = direction ? "[0, -1]" : "[300 mm, 120 mm]";
            } else if (key.type() == Vec3.class) {
                point = direction ? "[1, 0, 0]" : "[300 mm, 120 mm, 0 mm]";
            }
            return key.list() ? "[" + point + ", ...]" : point;
        }
        if (key.mark(FromParts.class) != null) {
            return "a name from the parts files";
        }
        if (key.list()) {
            return "[...]";
        }
        if (key.type().isRecord()) {
            List<String> inner = new ArrayList<>();
            Shape.of(key.type()).keys().stream()
                    .filter(Shape.Key::mandatory)
                    .forEach(k -> inner.add(k.name() + ": ..."));
            return "{" + String.join(", ", inner) + "}";
        }
        if (key.type().isSealed()) {
            return "{...}";
        }
        if (key.type().isEnum()) {
            return WordBinder.words(key.type()).get(0);
        }
        return key.type() == String.class ? "a text" : key.type() == boolean.class ? "true" : "1";
    }
}
