// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec2;
import tipwright.placement.FollowingParts;
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

    /** The design with a point elsewhere and all that goes along with it; null when only the text can tell what would come of it. */
    static @Nullable Design moved(Design design, Handle handle, Vec2 to) {
        if (handle.path().equals(Handle.PIVOT)) {
            return followed(design, design.withPivot(design.pivot().movedTo(to)), handle, to);
        }
        Vec2 drawn = drawn(design, handle);
        return drawn == null
                ? null
                : followed(design, design.withDrive(design.drive().moved(p -> p.equals(drawn) ? to : p)), handle, to);
    }

    /** A design in which a point is elsewhere already, with all that goes along with the point; itself where only the text tells which it is. */
    static Design followed(Design before, Design moved, Handle handle, Vec2 to) {
        Vec2 drawn = drawn(before, handle);
        return drawn == null ? moved : FollowingParts.of(moved, before, p -> p.equals(drawn) ? to : p);
    }

    /** Where a design has a point, m; null where two names may be one place, and only the text tells them apart. */
    private static @Nullable Vec2 drawn(Design design, Handle handle) {
        Vec2 pivot = design.pivot().at();
        if (handle.path().equals(Handle.PIVOT)) {
            return pivot;
        }
        Map<String, Vec2> places = design.drive().places(pivot);
        Vec2 drawn = places.get(NameId.of(handle.label()));
        return places.values().stream().filter(p -> p.equals(drawn)).count() == 1 ? drawn : null;
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
