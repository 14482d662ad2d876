// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.function.DoublePredicate;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Solid;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;

/**
 * What the rules look at and where they note what they find.
 *
 * @param bound what has been understood
 * @param sources places in the design file
 * @param problems errors
 * @param warnings what is odd but allowed
 * @param solid the inside of the tank; null when there is no sound one
 */
record Facts(Bound bound, SourceMap sources, Problems problems, Problems warnings, @Nullable Solid solid) {
    /** A number at a path of the design; null when it is missing or bad. */
    @Nullable
    Double number(String path) {
        return bound.get(path, Double.class);
    }

    /** Notes an error at the value of this path, or the nearest value above it. */
    void wrong(String path, String message) {
        problems.add(sources.nearest(path), path, message);
    }

    /** Notes something odd. */
    void odd(String path, String message) {
        warnings.add(sources.nearest(path), path, message);
    }

    /** A value in metric units, for messages. */
    static String say(double si, Kind kind) {
        return Quantities.show(si, kind, UnitSystem.METRIC);
    }

    /** A share as per cent, for messages. */
    static String percent(double share) {
        return Quantities.show(share, Quantities.unit(Kind.RATIO, "%"));
    }

    /** Whether a number is there and passes. */
    static boolean is(@Nullable Double number, DoublePredicate test) {
        return number != null && test.test(number);
    }
}
