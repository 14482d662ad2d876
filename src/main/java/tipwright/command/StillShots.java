// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import tipwright.design.Design;
import tipwright.document.Stills;
import tipwright.document.Stills.Still;
import tipwright.quantity.UnitSystem;
import tipwright.report.Scratch;
import tipwright.viewer.start.DesignName;
import tipwright.viewer.start.DrawingPrograms;
import tipwright.viewer.start.FrameOrder;

/**
 * Takes the pictures of a report.
 *
 * @param environment variables of the process
 */
record StillShots(DesignSource source, Design design, UnitSystem units, Map<String, String> environment) {
    private static final int WIDTH = 800;
    private static final int HEIGHT = 450;
    private static final List<String> CASES = List.of("draining", "held", "empty");

    /** Takes them; a report is of use without them, so whatever stops it becomes a sentence. */
    Stills take() {
        try (Scratch scratch = Scratch.open()) {
            Path folder = scratch.folder("stills");
            String fault = DrawingPrograms.quietStills(order(folder), environment);
            return fault.isEmpty() ? new Stills(pictures(folder), "") : Stills.none("No pictures: " + fault);
        } catch (IOException e) {
            return Stills.none("No pictures: " + e.getMessage());
        }
    }

    private FrameOrder order(Path folder) {
        String shown = CASES.stream()
                .filter(c -> !design.cases().skip().contains(c))
                .findFirst()
                .orElse("heel");
        boolean file = !source.inPlaceOfFile() && Files.exists(Path.of(source.name()));
        return new FrameOrder(
                new DesignName(source.name(), !file),
                folder,
                List.of(),
                shown,
                WIDTH,
                HEIGHT,
                false,
                true,
                units,
                null);
    }

    private static List<Still> pictures(Path folder) throws IOException {
        List<Still> all = new ArrayList<>();
        for (Path file : files(folder)) {
            String name = String.valueOf(file.getFileName());
            String tilt = name.replaceAll("^tilt-0?|\\.png$", "");
            all.add(new Still("At " + tilt + " deg of tilt, seen from a corner", Files.readAllBytes(file)));
        }
        return all;
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted(Comparator.comparing(Path::toString)).toList();
        }
    }
}
