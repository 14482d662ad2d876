// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import tipwright.geometry.Vec2;

/** A joint between two bodies, by body number; two equations each. */
public sealed interface Joint permits Joint.Pin, Joint.Slide {
    String name();

    /** First body. */
    int a();

    /** Second body. */
    int b();

    /** Where the joint is with the tank stowed, m. */
    Vec2 at();

    /** A point of both bodies stays common. */
    record Pin(String name, int a, int b, Vec2 at) implements Joint {}

    /**
     * The bodies do not turn against each other; the point of b moves along a line fixed in a.
     *
     * @param direction of the line, stowed, any length
     */
    record Slide(String name, int a, int b, Vec2 at, Vec2 direction) implements Joint {}
}
