// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tipwright.design.around.PinZone;
import tipwright.design.around.Zone;
import tipwright.design.drive.Drive;
import tipwright.design.key.Annotated;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;

/** A zone must be for a place that the mechanism has, and a place has one zone. */
final class PlaceRules {
    private static final String LIST = "mounts.places";

    private final Facts facts;
    private final String drive;
    private final Map<String, Vec2> places;
    private final Map<Vec2, String> zoned = new LinkedHashMap<>();

    private PlaceRules(Facts facts, String drive, Map<String, Vec2> places) {
        this.facts = facts;
        this.drive = drive;
        this.places = places;
    }

    static void check(Facts facts) {
        Drive drive = facts.bound().get("drive", Drive.class);
        Vec2 pivot = facts.bound().get("pivot.at", Vec2.class);
        if (drive != null && pivot != null && MechanismRules.skeleton(facts) != null) {
            new PlaceRules(facts, Annotated.of(drive.getClass()).word(), drive.places(pivot)).check();
        }
    }

    private void check() {
        for (String key : List.of(Drive.FRAME_PIN, Drive.TANK_PIN, Skeleton.PIVOT)) {
            String path = "mounts." + key;
            if (facts.bound().get(path, Zone.class) == null) {
                continue;
            }
            Vec2 place = places.get(key);
            if (place == null) {
                facts.wrong(
                        path,
                        "the mechanism '" + drive + "' has no " + key + "; give the zone in 'places:' to one of "
                                + ErrorText.oneOf(places.keySet()));
            } else {
                once(path, key, place);
            }
        }
        List<PinZone> listed = facts.bound().list(LIST, PinZone.class);
        for (int i = 0; i < listed.size(); i++) {
            String path = Paths.item(LIST, i + 1) + ".pin";
            String name = listed.get(i).pin();
            Vec2 place = places.get(name);
            if (place == null) {
                facts.wrong(
                        path,
                        "the mechanism '" + drive + "' has no pin " + ErrorText.quoted(name) + "; "
                                + ErrorText.meant(name, places.keySet()));
            } else {
                once(path, name, place);
            }
        }
    }

    private void once(String path, String name, Vec2 place) {
        String before = zoned.putIfAbsent(place, name);
        if (before != null) {
            facts.wrong(
                    path,
                    before.equals(name)
                            ? "'" + name + "' has a zone already; keep one of the two"
                            : "'" + name + "' and '" + before
                                    + "' are the same point; give a zone to only one of them");
        }
    }
}
