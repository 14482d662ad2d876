// SPDX-License-Identifier: Apache-2.0
/**
 * Electric actuators and hydraulic cylinders with their ratings; N, m, m/s, A, Pa. A rating that is not known is null.
 */
@NullMarked
package tipwright.design.actuator;

import org.jspecify.annotations.NullMarked;
