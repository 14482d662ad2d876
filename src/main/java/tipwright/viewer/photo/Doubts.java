// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.photo;

/**
 * How far off what a photo is worked out from may be, one standard deviation each. Common practice, no source.
 *
 * @param tap of a finger or a mouse, pixels
 * @param place of the sheet's corner by the tape, m
 * @param level of the sheet's lower edge, rad
 * @param focal of the lens before the sheet tells, as a share
 * @param bend of the lens: its first radial term, in squares of the focal length
 * @param centre of the lens off the middle of the picture, as a share of the picture's width
 */
public record Doubts(double tap, double place, double level, double focal, double bend, double centre) {
    /** Of a phone held by hand, a sheet set by spirit level. */
    static final Doubts USUAL = new Doubts(2.5, 0.002, Math.toRadians(0.1), 0.15, 0.02, 0.01);

    /** The same where taps are off by so many pixels. */
    Doubts tapping(double pixels) {
        return new Doubts(pixels, place, level, focal, bend, centre);
    }
}
