// SPDX-License-Identifier: Apache-2.0
package tipwright.design.key;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** No key of the file: filled in by the reader from another file that the record names. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Loaded {}
