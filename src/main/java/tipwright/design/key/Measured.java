// SPDX-License-Identifier: Apache-2.0
package tipwright.design.key;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import tipwright.quantity.Kind;

/**
 * Marks a number (double, Double, Vec2, Vec3 or a list of these) as a quantity: how it is written, its default and what is
 * allowed. Held in SI. A component that is not nullable and has no preset must be given.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Measured {
    Kind value();

    /** Taken when the key is left out, as a builder would write it; empty: none. */
    String preset() default "";

    /** Smallest allowed, as a builder would write it; empty: no limit. */
    String atLeast() default "";

    /** Must be larger than this; empty: no limit. */
    String above() default "";

    /** Largest allowed; empty: no limit. */
    String atMost() default "";

    /** A word that may stand in place of the number and means positive infinity, such as 'never'; empty: none. */
    String orWord() default "";

    /** Whether it is the thickness of a sheet or plate, which may be written '16 ga' or '3/16 plate'. */
    boolean sheet() default false;

    /** Whether it is a gauge of wire, which may be written 'AWG 6' or '2/0'. */
    boolean wire() default false;

    /** Whether a Vec2 or Vec3 is no place of the machine: the sizes of a box, or a place within a part. */
    boolean within() default false;

    /** Whether it may be left out where another key of the record gives it; it is then not a number until the record sets it. */
    boolean given() default false;
}
