// SPDX-License-Identifier: Apache-2.0
package tipwright.design.key;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What is taken when a key that is no quantity is left out: a word for strings and enums, a number for ints, nothing for lists
 * (an empty list) and records (all their own presets).
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Preset {
    String value() default "";
}
