// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.photo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.TextEdit;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Marks;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.editor.DesignEditor;
import tipwright.viewer.editor.Handle;

/** What has been tapped in one photo so far, and what follows from it. Mutable; owned by one thread. */
final class PhotoWork {

    private final double width;
    private final double height;
    private final List<Vec2> corners = new ArrayList<>();
    private final Map<String, Tap> taps = new LinkedHashMap<>();
    private KnownSheet sheet;
    private double blunt = Doubts.USUAL.tap();
    private @Nullable PhotoPlane plane;

    /**
     * A pin that was tapped.
     *
     * @param at pixels of the photo
     * @param z how far it stands before the sheet, towards the camera, m
     * @param zDoubt one standard deviation, m
     */
    record Tap(Vec2 at, double z, double zDoubt) {}

    /** On a photo of so many pixels. */
    PhotoWork(double width, double height, KnownSheet sheet) {
        this.width = width;
        this.height = height;
        this.sheet = sheet;
    }

    KnownSheet sheet() {
        return sheet;
    }

    void setSheet(KnownSheet other) {
        sheet = other;
        solve();
    }

    List<Vec2> corners() {
        return List.copyOf(corners);
    }

    /** Puts the next corner, or the one of a number elsewhere. */
    void corner(int number, Vec2 at) {
        if (number < corners.size()) {
            corners.set(number, at);
        } else if (corners.size() < 4) {
            corners.add(at);
        }
        solve();
    }

    /** Begins again with the corners; what was tapped of the machine stays. */
    void cornersAnew() {
        corners.clear();
        blunt = Doubts.USUAL.tap();
        solve();
    }

    private void solve() {
        plane = corners.size() < 4 ? null : PhotoPlane.of(width, height, sheet, corners, Doubts.USUAL.tapping(blunt));
    }

    /** How far off a tap may be, one standard deviation, pixels of the photo: the more the smaller it is shown. The worst so far counts. */
    void blunt(double pixels) {
        blunt = Math.max(blunt, pixels);
    }

    /** How the photo lies; null: not known yet, or the corners are none of such a sheet. */
    @Nullable
    PhotoPlane plane() {
        return plane;
    }

    void tap(String label, Tap tap) {
        taps.put(label, tap);
    }

    Map<String, Tap> taps() {
        return Map.copyOf(taps);
    }

    /** Where a pin is; null when it was not tapped, or nothing is known yet. */
    @Nullable
    Seen seen(String label) {
        Tap tap = taps.get(label);
        PhotoPlane known = plane;
        return tap == null || known == null ? null : known.at(tap.at, tap.z, tap.zDoubt);
    }

    /**
     * Writes the places of all pins that were tapped, with their doubt, into the file's text: one step of undo.
     *
     * @return why not; null when it was done
     */
    @Nullable
    String write(DesignEditor editor) {
        List<Handle> handles = editor.handles();
        return editor.rebuild(text -> {
            String written = text;
            for (Handle handle : handles) {
                Seen seen = seen(handle.label());
                if (seen != null) {
                    written = TextEdit.point(
                            written,
                            handle.path(),
                            doubted(handle.x(), seen.at().x(), seen.doubt().x(), editor.tape()),
                            doubted(handle.y(), seen.at().y(), seen.doubt().y(), editor.tape()));
                }
            }
            return written;
        });
    }

    /** What would be written for a pin: 'pivot: x 600 mm +- 6 mm, y 380 mm +- 5 mm'. */
    Optional<String> written(DesignEditor editor, String label) {
        Seen seen = seen(label);
        if (seen == null) {
            return Optional.empty();
        }
        Vec2 at = seen.at();
        Vec2 doubt = seen.doubt();
        return editor.handles().stream()
                .filter(h -> h.label().equals(label))
                .findFirst()
                .map(h -> label + ": x " + doubted(h.x(), at.x(), doubt.x(), editor.tape()) + ", y "
                        + doubted(h.y(), at.y(), doubt.y(), editor.tape()));
    }

    /** '223 mm +- 6 mm', in the unit as written. */
    static String doubted(String old, double place, double doubt, UnitSystem tape) {
        double step = Marks.step(tape);
        String bare = old.replaceAll("\\s*(\\+-|\u00b1).*", "").replaceFirst("^about\\s+", "");
        try {
            return Quantities.rewrite(bare, Marks.rounded(place, tape), Kind.LENGTH)
                    + " +- "
                    + Quantities.rewrite(bare, step * Math.ceil(doubt / step), Kind.LENGTH);
        } catch (QuantityException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }
}
