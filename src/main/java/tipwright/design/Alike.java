// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Copy;

/**
 * Whether two parts of a design are the same part, though one may be typed in inches and the other in millimetres: numbers count as
 * equal when they differ by less than the digits that people write down.
 */
public final class Alike {
    /** Seven digits. Source: common practice, no source. */
    private static final double ROUNDING = 1e-6;

    private Alike() {}

    /** The same kind of part, with the same values throughout. */
    public static boolean parts(@Nullable Object a, @Nullable Object b) {
        if (a == null || b == null) {
            return a == b;
        }
        if (a instanceof Double x && b instanceof Double y) {
            return x.equals(y) || Math.abs(x - y) <= ROUNDING * Math.max(Math.abs(x), Math.abs(y));
        }
        if (a instanceof List<?> p && b instanceof List<?> q) {
            return lists(p, q);
        }
        if (!a.getClass().isRecord() || !a.getClass().equals(b.getClass())) {
            return a.equals(b);
        }
        for (RecordComponent c : a.getClass().getRecordComponents()) {
            if (!parts(Copy.value(c, a), Copy.value(c, b))) {
                return false;
            }
        }
        return true;
    }

    /** Whether all are the same part. */
    public static boolean all(List<?> parts) {
        return parts.stream().allMatch(p -> parts(p, parts.get(0)));
    }

    private static boolean lists(List<?> p, List<?> q) {
        return p.size() == q.size() && IntStream.range(0, p.size()).allMatch(i -> parts(p.get(i), q.get(i)));
    }
}
