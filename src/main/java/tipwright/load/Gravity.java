// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

/** Standard gravity. */
public final class Gravity {
    /** m/s2. Source: ISO 80000-3, conventional value (from memory). */
    public static final double G = 9.80665;

    private Gravity() {}
}
