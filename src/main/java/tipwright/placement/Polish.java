// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

/** Moves the pins of a good candidate to the best place near it. Mutable inside: owned by one caller. */
interface Polish {
    /** A place at least as good for the aim; the pins are on whole tenths of a millimetre, or on holes. */
    Spot refine(Spot start, Aim aim);

    /** The same on whole tenths of a millimetre, or as it is when that is not allowed. */
    Spot rounded(Spot spot);
}
