// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.around.Mounts;
import tipwright.drawing.Drawing;
import tipwright.drawing.Png;
import tipwright.drawing.Svg;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;
import tipwright.placement.Pin;
import tipwright.placement.PlacementMap;
import tipwright.quantity.UnitSystem;
import tipwright.sheet.MapPicture;

/** Writes the maps of both pins. */
final class MapFiles {
    /** Along the longer side; the whole check is made in the corners of those on the edge. */
    private static final int CELLS = 60;
    /** Of a mechanism, of which each cell takes a millisecond or two. */
    private static final int FEW_CELLS = 36;

    private static final double PIXELS = 6;

    private MapFiles() {}

    /** What is wrong with a name for a map; null: nothing. */
    static @Nullable String wrong(Path file) {
        String end = end(file);
        return end.equals(".svg") || end.equals(".png")
                ? null
                : "--map: '" + file + "' ends neither in .svg nor in .png; name it such as 'map.svg'";
    }

    private static String end(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.substring(Math.max(0, name.lastIndexOf('.'))).toLowerCase(Locale.ROOT);
    }

    /** The file of each pin that has a map, by the pin's name: the actuator's ends, and every pin of a mechanism that has a zone. */
    static Map<String, Path> targets(Design design, Path file) {
        String name = String.valueOf(file.getFileName());
        String end = end(file);
        String stem = name.substring(0, name.length() - end.length());
        Map<String, Path> all = new LinkedHashMap<>();
        all.put(PlacementMap.name(design, Pin.FRAME), file);
        if (design.drive().direct()) {
            all.put(PlacementMap.name(design, Pin.TANK), file.resolveSibling(stem + "-tank" + end));
        }
        Mounts mounts = design.mounts();
        for (String pin : design.drive().places(design.pivot().at()).keySet()) {
            if (mounts != null && mounts.zone(pin) != null && !pin.equals(Skeleton.PIVOT)) {
                all.putIfAbsent(pin, file.resolveSibling(stem + "-" + pin + end));
            }
        }
        return all;
    }

    /**
     * Draws and writes them.
     *
     * @param best the best answer; what was drawn, when there is none
     * @param drawn the design as drawn
     */
    static void write(Design best, Design drawn, Path file, UnitSystem units, Outputs outputs, PrintWriter out)
            throws CannotComputeException, FailedException {
        String end = end(file);
        Analysis analysis = Analyser.analyse(best);
        int cells = best.drive().direct() ? CELLS : FEW_CELLS;
        Map<String, Vec2> places = drawn.drive().places(drawn.pivot().at());
        for (Map.Entry<String, Path> target : targets(drawn, file).entrySet()) {
            Path to = target.getValue();
            PlacementMap map = PlacementMap.whole(best, target.getKey(), cells);
            Vec2 before = places.getOrDefault(target.getKey(), map.drawn());
            boolean works = PlacementMap.works(best, target.getKey(), before);
            Drawing drawing = MapPicture.of(map, analysis, units, before, works);
            outputs.write(to, stream -> write(drawing, end, stream));
            out.println("map: written to " + to);
        }
    }

    private static void write(Drawing drawing, String end, OutputStream stream) throws IOException {
        if (end.equals(".svg")) {
            stream.write(Svg.of(drawing, true).getBytes(StandardCharsets.UTF_8));
        } else {
            Png.write(drawing, PIXELS, stream);
        }
    }
}
