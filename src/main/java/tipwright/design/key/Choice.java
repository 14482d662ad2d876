// SPDX-License-Identifier: Apache-2.0
package tipwright.design.key;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * On a sealed interface: which key tells its records apart ('shape', 'kind'); with an empty key the map has exactly one entry and
 * its name tells ('straight: {...}'). On a record of it: the word. The permits clause is the registry.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Choice {
    String value() default "";
}
