// SPDX-License-Identifier: Apache-2.0
package tipwright.design.key;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The value may be a name from the parts files ('yard-40') in place of the fields; the section of the parts file is named here. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface FromParts {
    String value();
}
