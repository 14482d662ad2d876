// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/** Smallest and largest of something. */
public record Range(double low, double high) {
    public double span() {
        return high - low;
    }
}
