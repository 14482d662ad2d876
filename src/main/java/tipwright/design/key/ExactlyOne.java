// SPDX-License-Identifier: Apache-2.0
package tipwright.design.key;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** On a record: exactly one of these keys must be given, as written in the file. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@Repeatable(ExactlyOne.Groups.class)
public @interface ExactlyOne {
    String[] value();

    /** Several of them. */
    @Retention(RetentionPolicy.RUNTIME)
    @Target(ElementType.TYPE)
    @interface Groups {
        ExactlyOne[] value();
    }
}
