// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

/**
 * Something that happens during a dump.
 *
 * @param time s from the start
 * @param tilt rad
 */
public record DumpEvent(Kind kind, double time, double tilt) {
    /** What. */
    public enum Kind {
        OPENS("an opening opens"),
        LIP("the slurry reaches the lip"),
        STALLED("the drive stalls"),
        DUTY("the actuator has run as long as its duty rating allows"),
        DRAINED("drained"),
        FULL_TILT("full tilt"),
        END_OF_STROKE("end of the stroke"),
        BACK("stowed again"),
        STUCK("it does not come back");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** As people read it. */
        public String words() {
            return words;
        }
    }
}
