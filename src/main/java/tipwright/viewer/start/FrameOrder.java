// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.start;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.quantity.UnitSystem;

/**
 * What stills to make.
 *
 * @param design of which
 * @param out folder to write to
 * @param tilts rad; empty: five over the range
 * @param loadCase name
 * @param width of a still, pixels
 * @param height of a still, pixels
 * @param moving whether to make an animated picture too
 * @param light whether on a light ground
 * @param units of the figures
 * @param view word of the place to look from; null: from a corner
 */
public record FrameOrder(
        DesignName design,
        Path out,
        List<Double> tilts,
        String loadCase,
        int width,
        int height,
        boolean moving,
        boolean light,
        UnitSystem units,
        @Nullable String view) {
    /** Copies the list. */
    public FrameOrder {
        tilts = List.copyOf(tilts);
    }

    /** As arguments for the program that draws. */
    List<String> arguments() {
        List<String> all = new ArrayList<>();
        all.add(design.name());
        all.add(Boolean.toString(design.shipped()));
        all.add(out.toString());
        all.add(String.join(",", tilts.stream().map(t -> Double.toString(t)).toList()));
        all.add(loadCase);
        all.add(Integer.toString(width));
        all.add(Integer.toString(height));
        all.add(Boolean.toString(moving));
        all.add(Boolean.toString(light));
        all.add(units.name());
        all.add(view == null ? "" : view);
        return all;
    }

    /** From the arguments of the program that draws. */
    public static FrameOrder of(String[] args) {
        List<Double> tilts = new ArrayList<>();
        for (String part : args[3].split(",")) {
            if (!part.isEmpty()) {
                tilts.add(Double.valueOf(part));
            }
        }
        return new FrameOrder(
                new DesignName(args[0], Boolean.parseBoolean(args[1])),
                Path.of(args[2]),
                tilts,
                args[4],
                Integer.parseInt(args[5]),
                Integer.parseInt(args[6]),
                Boolean.parseBoolean(args[7]),
                Boolean.parseBoolean(args[8]),
                UnitSystem.valueOf(args[9]),
                args[10].isEmpty() ? null : args[10]);
    }
}
