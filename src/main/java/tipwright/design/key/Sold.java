// SPDX-License-Identifier: Apache-2.0
package tipwright.design.key;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The number is a size that is sold, so that '?' may stand in its place and the program finds it; the series of sizes is named here.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Sold {
    /** 'pin', 'bore', 'leg', 'cylinder', 'cable', 'gauge' or 'fuse'. */
    String value();

    /** A usual size, as a builder would write it: it stands there until the answer is known. */
    String usual();
}
