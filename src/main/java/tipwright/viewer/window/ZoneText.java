// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.around.Mounts;
import tipwright.design.around.PinZone;
import tipwright.design.file.FieldEdit;
import tipwright.design.file.Place;
import tipwright.design.file.Reading;
import tipwright.design.file.TextEdit;
import tipwright.geometry.Vec2;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;

/** Zones of pins in a design's text. */
final class ZoneText {
    private ZoneText() {}

    /** Where the zone of a pin stands in the file: 'mounts.frame-pin'; null: it has none. */
    static @Nullable String path(Design design, String pin) {
        Mounts mounts = design.mounts();
        if (mounts == null || mounts.zone(pin) == null) {
            return null;
        }
        List<PinZone> named = mounts.places();
        for (int i = 0; i < named.size(); i++) {
            if (named.get(i).pin().equals(pin)) {
                return "mounts.places[" + (i + 1) + "].zone";
            }
        }
        return "mounts." + pin;
    }

    /**
     * The text with one corner of a zone elsewhere, on a mark of the tape.
     *
     * @param number of the corner, from 0
     * @throws IllegalArgumentException when it cannot be written there
     */
    static String corner(String text, String path, int number, Vec2 to, UnitSystem tape) {
        String at = path + ".outline[" + (number + 1) + "]";
        return TextEdit.point(text, at, Marks.show(to.x(), tape), Marks.show(to.y(), tape));
    }

    /**
     * The text with a zone for a pin, in place of the one it may have.
     *
     * @param outline corners in order, m
     * @throws IllegalArgumentException when it cannot be written
     */
    static String drawn(Reading.Good good, String pin, List<Vec2> outline, UnitSystem tape) {
        String zone = "{outline: "
                + outline.stream()
                        .map(p -> "[" + Marks.show(p.x(), tape) + ", " + Marks.show(p.y(), tape) + "]")
                        .collect(Collectors.joining(", ", "[", "]"))
                + "}";
        String text = good.text();
        String path = path(good.design(), pin);
        if (path != null) {
            Place old = good.places().find(path);
            if (old == null) {
                throw new IllegalArgumentException("the zone of the " + pin + " is not found in the file");
            }
            // a zone in several lines is taken out by the rules of the file; one in braces is replaced where it stands
            String written = text.substring(old.start(), old.end());
            if (written.startsWith("{")) {
                return text.substring(0, old.start()) + zone + text.substring(old.end());
            }
            text = FieldEdit.takeOut(text, path);
            return added(text, null, pin, zone);
        }
        return added(text, good.places().find("mounts"), pin, zone);
    }

    private static String added(String text, @Nullable Place mounts, String pin, String zone) {
        if (mounts == null) {
            return text.stripTrailing() + "\nmounts:\n  " + pin + ": " + zone + "\n";
        }
        if (text.startsWith("{", mounts.start())) {
            return text.substring(0, mounts.start() + 1) + pin + ": " + zone + ", "
                    + text.substring(mounts.start() + 1);
        }
        String indent = " ".repeat(mounts.column() - 1);
        return text.substring(0, mounts.start()) + pin + ": " + zone + "\n" + indent + text.substring(mounts.start());
    }
}
