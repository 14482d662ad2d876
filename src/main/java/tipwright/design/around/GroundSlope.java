// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.key.Copy;

/**
 * Ground on which a machine may stand that may stand any way round: it slopes as much as it may, down one way alone.
 *
 * @param direction that it falls, rad from +x to +z
 * @param words which ground it is
 * @param site as stated, but on this ground
 */
public record GroundSlope(double direction, String words, Site site) {
    private static final String[] DOWN = {
        "the dump side", "the dump side and +z", "+z", "the far side and +z",
        "the far side", "the far side and -z", "-z", "the dump side and -z"
    };

    /** Each way and half way between, eight in order; none where a site says nothing of it. */
    public static List<GroundSlope> anyWay(Site site) {
        List<GroundSlope> all = new ArrayList<>();
        for (int i = 0; i < DOWN.length && site.anyWay() > 0; i++) {
            double direction = 2 * Math.PI * i / DOWN.length;
            double steep = Math.tan(site.anyWay());
            Site sloping = site.leaning(Math.atan(steep * Math.cos(direction)), Math.atan(steep * Math.sin(direction)));
            all.add(new GroundSlope(direction, "ground down to " + DOWN[i], Copy.with(sloping, "anyWay", 0.0)));
        }
        return all;
    }
}
