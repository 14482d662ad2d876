// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.drawing.Drawing;
import tipwright.drawing.Png;
import tipwright.drawing.Svg;
import tipwright.placement.Pin;
import tipwright.placement.PlacementMap;
import tipwright.quantity.UnitSystem;
import tipwright.sheet.MapPicture;

/** Writes the maps of both pins. */
final class MapFiles {
    private static final int CELLS = 150;
    /** Of a mechanism, of which each cell takes a millisecond or two. */
    private static final int FEW_CELLS = 48;

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

    /** The file of each pin that has a map. */
    static Map<Pin, Path> targets(Design design, Path file) {
        String name = String.valueOf(file.getFileName());
        String end = end(file);
        String stem = name.substring(0, name.length() - end.length());
        Map<Pin, Path> all = new EnumMap<>(Pin.class);
        all.put(Pin.FRAME, file);
        if (design.drive().direct()) {
            all.put(Pin.TANK, file.resolveSibling(stem + "-tank" + end));
        }
        return all;
    }

    static void write(Design design, Path file, UnitSystem units, Outputs outputs, PrintWriter out)
            throws CannotComputeException, FailedException {
        String end = end(file);
        Analysis analysis = Analyser.analyse(design);
        boolean straight = design.drive().direct();
        for (Map.Entry<Pin, Path> target : targets(design, file).entrySet()) {
            Pin pin = target.getKey();
            Path to = target.getValue();
            Drawing drawing =
                    MapPicture.of(PlacementMap.of(design, pin, straight ? CELLS : FEW_CELLS), analysis, units);
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
