// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.List;

/**
 * Pictures in three dimensions.
 *
 * @param pictures may be empty
 * @param why there is none, or not all of them; empty when there is nothing to say
 */
public record Stills(List<Still> pictures, String why) {
    /** Copies the list. */
    public Stills {
        pictures = List.copyOf(pictures);
    }

    /** None, for a reason. */
    public static Stills none(String why) {
        return new Stills(List.of(), why);
    }

    /**
     * One picture.
     *
     * @param caption what it shows
     * @param png the file
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    public record Still(String caption, byte[] png) {}
}
