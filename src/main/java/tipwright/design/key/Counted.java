// SPDX-License-Identifier: Apache-2.0
package tipwright.design.key;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** On a whole number: its limits; on a list: how many entries it may have. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Counted {
    int atLeast() default 0;

    int atMost() default 1000;
}
