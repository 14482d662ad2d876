// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

/** What those who run checks have to know of one. */
public enum Trait {
    /** More in the tank may make it fail: it counts when the fullest tank is looked for. */
    DEPENDS_ON_FILL,
    /** Where the mounts are may make it fail: it counts when they are looked for. */
    BOUNDS_MOUNTS,
    /** It bounds the mounts, but so seldom or at such cost that only those candidates are asked that would be the best. */
    ASKED_LATE,
    /** Its part bears the actuators' force: it is made anew for the case that one of several carries all. */
    BEARS_DRIVE,
    /** It finds nothing without the dump in time. */
    NEEDS_TIME,
    /** Without the dump in time it only estimates what it finds with it. */
    BETTER_IN_TIME,
    /** With the dump in time it finds something more; what it finds without stays as it is. */
    MORE_IN_TIME,
    /** Of the dump in time it looks at the normal one alone. */
    OF_NORMAL_DUMP,
    /** One of the five numbers is told against what its part is rated for: it is made before all others. */
    TELLS_RATING,
    /** It takes much longer than the others: it waits while something is being moved. */
    SLOW,
    /** It adds up over all tilts: it cannot look at some of them alone. */
    OVER_ALL_TILTS,
    /** What it finds comes about only if something goes wrong. */
    ABOUT_FAULT,
    /** If its part breaks, the tank comes down. */
    CARRIES_TANK,
    /** It looks at what stands around: a report shows it there. */
    ABOUT_SURROUNDINGS,
    /** It looks at how the machine stands or hangs: a report shows it there. */
    ABOUT_STANDING
}
