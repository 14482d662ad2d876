// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.Arrays;

/** Joins the vertices of a mesh that are at exactly the same place. */
final class Weld {
    private Weld() {}

    static Mesh of(Mesh mesh) {
        double[] xyz = mesh.xyz();
        int n = xyz.length / 3;
        int[] table = new int[Integer.highestOneBit(Math.max(8, n)) * 4];
        Arrays.fill(table, -1);
        double[] kept = new double[xyz.length];
        int[] number = new int[n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            // adding 0 turns -0 into 0
            double x = xyz[3 * i] + 0.0;
            double y = xyz[3 * i + 1] + 0.0;
            double z = xyz[3 * i + 2] + 0.0;
            int slot = slot(table, kept, x, y, z);
            if (table[slot] < 0) {
                table[slot] = count;
                kept[3 * count] = x;
                kept[3 * count + 1] = y;
                kept[3 * count + 2] = z;
                count++;
            }
            number[i] = table[slot];
        }
        return new Mesh(Arrays.copyOf(kept, 3 * count), corners(mesh.corners(), number));
    }

    private static int slot(int[] table, double[] kept, double x, double y, double z) {
        long hash = Double.doubleToLongBits(x);
        hash = 31 * hash + Double.doubleToLongBits(y);
        hash = 31 * hash + Double.doubleToLongBits(z);
        // round coordinates differ in their high bits only, which a product alone would not bring down
        hash = (hash ^ (hash >>> 32)) * 0x9E3779B97F4A7C15L;
        hash = (hash ^ (hash >>> 32)) * 0x9E3779B97F4A7C15L;
        int mask = table.length - 1;
        int slot = (int) (hash >>> 32) & mask;
        while (table[slot] >= 0) {
            int v = 3 * table[slot];
            if (kept[v] == x && kept[v + 1] == y && kept[v + 2] == z) {
                return slot;
            }
            slot = (slot + 1) & mask;
        }
        return slot;
    }

    private static int[] corners(int[] old, int[] number) {
        int[] corners = new int[old.length];
        int k = 0;
        for (int t = 0; t < old.length; t += 3) {
            int a = number[old[t]];
            int b = number[old[t + 1]];
            int c = number[old[t + 2]];
            if (a != b && b != c && c != a) {
                corners[k++] = a;
                corners[k++] = b;
                corners[k++] = c;
            }
        }
        return Arrays.copyOf(corners, k);
    }
}
