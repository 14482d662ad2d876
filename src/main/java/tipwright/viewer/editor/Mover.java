// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Marks;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.quantity.UnitLabel;
import tipwright.quantity.UnitSystem;

/** Moves points: in a design while dragging, and in its text afterwards. */
final class Mover {
    private static final double INCH = 0.0254;

    private Mover() {}

    /** The design with a point elsewhere; null when only the text can tell what would come of it. */
    static @Nullable Design moved(Design design, Handle handle, Vec2 to) {
        if (handle.path().equals("pivot.at")) {
            return design.withPivot(design.pivot().movedTo(to));
        }
        Map<String, Vec2> places = design.drive().places(design.pivot().at());
        Vec2 drawn = places.get(handle.label().replace(' ', '-'));
        // two names may be one place, and only the text tells them apart
        boolean alone = places.values().stream().filter(p -> p.equals(drawn)).count() == 1;
        return drawn == null || !alone ? null : design.withDrive(design.drive().moved(p -> p.equals(drawn) ? to : p));
    }

    /** A length snapped to what a tape shows in the unit as written: whole millimetres, or sixteenths of an inch. */
    static double onTape(String written, double length) {
        return Marks.rounded(length, inches(written) ? UnitSystem.US : UnitSystem.METRIC);
    }

    /** A length in the unit as written: '-312 mm', '12 3/8 in'. */
    static String rewritten(String written, double length) throws QuantityException {
        return inches(written) ? Marks.show(length, UnitSystem.US) : Quantities.rewrite(written, length, Kind.LENGTH);
    }

    private static boolean inches(String written) {
        for (UnitLabel unit : Quantities.units(Kind.LENGTH)) {
            boolean us = Math.abs(unit.factor() - INCH) < 1e-9 || Math.abs(unit.factor() - 12 * INCH) < 1e-9;
            if (us && (ends(written, unit.name()) || unit.aliases().stream().anyMatch(a -> ends(written, a)))) {
                return true;
            }
        }
        return false;
    }

    private static boolean ends(String written, String unit) {
        int at = written.length() - unit.length();
        return at > 0 && written.endsWith(unit) && !Character.isLetter(written.charAt(at - 1));
    }
}
