// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec3;

/**
 * A point as its file tells it.
 *
 * @param name as others call it; empty where it is written in place
 * @param marks what places it; empty where its coordinates are given
 * @param side which of two places is meant; null when none is said
 * @param z along the pivot axis, m; null when not said
 * @param fixed its coordinates, m; null where marks place it
 */
record PointSpec(
        String name,
        Place place,
        String path,
        List<Mark> marks,
        @Nullable Side side,
        @Nullable Double z,
        @Nullable Vec3 fixed) {

    /** Directions in the side view. */
    enum Side {
        ABOVE("above", 1, 1),
        BELOW("below", 1, -1),
        TOWARDS_DUMP("towards-dump", 0, 1),
        AWAY_FROM_DUMP("away-from-dump", 0, -1);

        private final String word;
        private final int axis;
        private final int sign;

        Side(String word, int axis, int sign) {
            this.word = word;
            this.axis = axis;
            this.sign = sign;
        }

        String word() {
            return word;
        }

        /** 0 for x, 1 for y. */
        int axis() {
            return axis;
        }

        int sign() {
            return sign;
        }

        static @Nullable Side of(String word) {
            for (Side side : values()) {
                if (side.word.equals(word)) {
                    return side;
                }
            }
            return null;
        }
    }

    /** How a mark places a point. */
    enum How {
        DISTANCE,
        STEP,
        SAME,
        ALONG,
        MIDDLE
    }

    /**
     * One thing that places a point.
     *
     * @param side of a step; null for all else
     * @param to the points that it refers to, one or two
     * @param length m; 0 where none is read
     * @param doubt standard, m; 0 where none is read
     * @param said as written
     */
    record Mark(
            How how,
            @Nullable Side side,
            List<String> to,
            Place place,
            String path,
            double length,
            double doubt,
            String said) {}

    boolean has(How how) {
        return marks.stream().anyMatch(m -> m.how() == how);
    }
}
