// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import tipwright.design.key.Note;

/**
 * Where one pin of the mechanism may go.
 *
 * @param pin its name in the mechanism
 */
public record PinZone(
        @Note("Name of the pin, such as crank-pivot") String pin,
        @Note("Where this pin may go, tank stowed") Zone zone) {}
