// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import tipwright.placement.Limit;
import tipwright.placement.PlacementMap;

/**
 * What the cells of a placement map are and how they are shaded, the same on paper and in the window. The ramp gets darker with
 * the utilisation and passes no red against green.
 */
public final class MapShades {
    /** The bands of utilisation in words, the lowest first. */
    public static final List<String> WORDS =
            List.of("up to 50 %", "50 to 60 %", "60 to 70 %", "70 to 80 %", "80 to 90 %", "over 90 %");

    private static final List<Double> ENDS = List.of(0.5, 0.6, 0.7, 0.8, 0.9);
    private static final List<Integer> RAMP = List.of(0xffe945, 0xcbba69, 0x958f78, 0x666970, 0x31446b, 0x00204c);
    private static final List<Limit> LIMITS = Limit.values();
    private static final int LARGE = 50;

    /** What stands where every limit is kept but another check fails. */
    public static final String OTHER = "gap or another check";

    /** Class of such a cell. */
    static final int BARRED = 1 + Limit.values().size();

    /** Colour of such a cell. */
    static final int GREY = 0xdedede;

    private MapShades() {}

    /**
     * The name of a region that does not fit, where the region is widest.
     *
     * @param words what stands against it
     * @param row of the cell
     * @param column of the cell
     */
    public record Label(String words, int row, int column) {}

    /** Class of a cell: -1 outside, 0 fits, else 1 + the hatch of the limit that stands against it. */
    public static int kind(PlacementMap map, int row, int column) {
        double[][] all = map.utilisation();
        if (row < 0 || column < 0 || row >= all.length || column >= all[0].length || Double.isNaN(all[row][column])) {
            return -1;
        }
        if (map.barred()[row][column]) {
            return BARRED;
        }
        Limit limit = map.governing()[row][column];
        return map.fits(row, column) || limit == null ? 0 : 1 + hatch(limit);
    }

    /** Whether some cell keeps every limit but fails another check. */
    public static boolean barred(PlacementMap map) {
        for (boolean[] row : map.barred()) {
            for (boolean cell : row) {
                if (cell) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Number of the hatch of what keeps every limit but fails another check. */
    public static int hatchBarred() {
        return BARRED - 1;
    }

    /** Number of the hatch of a limit. */
    public static int hatch(Limit limit) {
        return LIMITS.indexOf(limit);
    }

    /** Number of the band that a utilisation falls into. */
    public static int band(double utilisation) {
        int band = 0;
        while (band < ENDS.size() && utilisation > ENDS.get(band)) {
            band++;
        }
        return band;
    }

    /** Colour of a band, 0xrrggbb. */
    public static int colour(int band) {
        return RAMP.get(band);
    }

    /** The limits that stand against some cell. */
    public static Set<Limit> against(PlacementMap map) {
        Set<Limit> found = new TreeSet<>();
        for (int r = 0; r < map.utilisation().length; r++) {
            for (int c = 0; c < map.utilisation()[0].length; c++) {
                int kind = kind(map, r, c);
                if (kind > 0 && kind < BARRED) {
                    found.add(LIMITS.get(kind - 1));
                }
            }
        }
        return found;
    }

    /** Labels of the large regions that do not fit, the largest first. */
    public static List<Label> labels(PlacementMap map) {
        int rows = map.utilisation().length;
        int columns = map.utilisation()[0].length;
        List<Label> all = new ArrayList<>();
        List<Regions.Region> regions = new ArrayList<>(Regions.of(rows, columns, (r, c) -> kind(map, r, c)));
        regions.sort(Comparator.comparingInt(Regions.Region::size).reversed());
        for (Regions.Region region : regions) {
            if (region.kind() > 0 && region.size() > rows * columns / LARGE) {
                String words = region.kind() == BARRED
                        ? OTHER
                        : LIMITS.get(region.kind() - 1).words();
                all.add(new Label(words, region.row(), region.column()));
            }
        }
        return all;
    }
}
