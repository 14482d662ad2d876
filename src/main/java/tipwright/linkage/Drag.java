// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

/**
 * Friction in the joints, as signed amounts against the motion while tipping: positive brakes the tipping, negative brakes
 * the way back. Arrays are not to be changed.
 *
 * @param joints N m at pins, N at slides [joint]
 * @param onA N m in the actuator's pin on body a
 * @param onB N m in the actuator's pin on body b
 */
@SuppressWarnings("ArrayRecordComponent")
public record Drag(double[] joints, double onA, double onB) {}
