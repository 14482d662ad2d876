// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

/**
 * Why the motion stops.
 *
 * @param kind what happens
 * @param tilt rad, the last tilt that is reached
 */
public record SweepStop(Kind kind, double tilt) {
    /** What happens. */
    public enum Kind {
        /** The bodies cannot be put together at the first tilt. */
        CANNOT_ASSEMBLE,
        /** The joints do not let the tank tip further: the constraint Jacobian is singular. */
        JAMMED,
        /** The actuator's line passes through the point about which its moving pin turns: it has no arm left. */
        DEAD_CENTRE,
        /** The motion could only go on by a jump to another way of assembling the same bodies. */
        BRANCH_JUMP,
        /** It takes so many small steps that it was given up. */
        NOT_FOLLOWED
    }
}
