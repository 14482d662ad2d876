// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

/** What is in the tank while it moves one way. */
interface Load {
    /**
     * How it stands.
     *
     * @param force of all actuators in slow motion with friction, N; positive pushes
     * @param rest the same at rest without friction, N
     * @param volume of the contents, m3
     * @param discharge m3/s
     * @param vacuum Pa below the outside
     * @param level of the surface along the direction against gravity, in the tank's axes, m; NaN where it is not followed
     */
    record Standing(double force, double rest, double volume, double discharge, double vacuum, double level) {}

    /** At a tilt, rad, with a volume, m3, of contents. */
    Standing at(double tilt, double volume);

    /** Most that could still run out at this tilt, m3. */
    double excess(double tilt, double volume);

    /** How fast contents that follow the tilt leave with it, m3 per rad; 0 for a liquid, which follows its own time. */
    double slide(double tilt);

    /** From here on nothing leaves: it is empty. */
    void runDry();
}
