// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.around.Mounts;
import tipwright.design.around.PinZone;
import tipwright.design.drive.Drive;
import tipwright.design.file.FieldEdit;
import tipwright.design.file.Reading;
import tipwright.design.file.TextEdit;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;

/** Zones of pins in a design's text. */
final class ZoneText {
    private static final String LIST = "mounts.places";

    /** Places whose zones have keys of their own. */
    private static final List<String> OWN = List.of(Drive.FRAME_PIN, Drive.TANK_PIN, Skeleton.PIVOT);

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
                return LIST + "[" + (i + 1) + "].zone";
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
     * The text with a zone for a place of the mechanism, in place of the one it may have; rows of holes of that stay.
     *
     * @param pin any of the names of the place
     * @param outline corners in order, m
     * @throws IllegalArgumentException when it cannot be written
     */
    static String drawn(Reading.Good good, String pin, List<Vec2> outline, UnitSystem tape) {
        Design design = good.design();
        String corners = outline.stream()
                .map(p -> "[" + Marks.show(p.x(), tape) + ", " + Marks.show(p.y(), tape) + "]")
                .collect(Collectors.joining(", ", "[", "]"));
        String zone = "{outline: " + corners + "}";
        String text = good.text();
        String old = path(design, zoned(design, pin));
        if (old != null) {
            return FieldEdit.write(text, old + ".outline", corners);
        }
        boolean own = OWN.contains(pin);
        if (design.mounts() == null) {
            String line = own ? pin + ": " + zone : "places:\n    - {pin: " + pin + ", zone: " + zone + "}";
            return text.stripTrailing() + "\nmounts:\n  " + line + "\n";
        }
        return own
                ? FieldEdit.write(text, "mounts." + pin, zone)
                : FieldEdit.append(text, LIST, "{pin: " + pin + ", zone: " + zone + "}");
    }

    /**
     * The text without the zone of a place, which then stays where it is drawn.
     *
     * @throws IllegalArgumentException when it has none, or it cannot be taken out
     */
    static String takenOut(Reading.Good good, String pin) {
        String path = path(good.design(), zoned(good.design(), pin));
        if (path == null) {
            throw new IllegalArgumentException("the " + NameId.words(pin) + " has no zone");
        }
        return FieldEdit.takeOut(good.text(), path.startsWith(LIST) ? path.substring(0, path.lastIndexOf('.')) : path);
    }

    /** The name under which a place has its zone: two names may be one place. */
    static String zoned(Design design, String pin) {
        Map<String, Vec2> places = design.drive().places(design.pivot().at());
        Vec2 at = places.get(pin);
        Mounts mounts = design.mounts();
        return places.entrySet().stream()
                .filter(e -> mounts != null
                        && mounts.zone(e.getKey()) != null
                        && e.getValue().equals(at))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(pin);
    }
}
