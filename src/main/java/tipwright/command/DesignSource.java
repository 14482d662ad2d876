// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Place;
import tipwright.design.file.Problem;
import tipwright.design.file.Reading;
import tipwright.design.file.ShippedDesigns;
import tipwright.quantity.Spelling;
import tipwright.remedy.OpenSizes;
import tipwright.remedy.SizeAnswer;

/**
 * A design as asked for on the command line.
 *
 * @param name as shown
 * @param inPlaceOfFile whether it came with the program because no file has that name
 * @param sizes answers to the question marks in it
 */
record DesignSource(String name, boolean inPlaceOfFile, Reading reading, List<SizeAnswer> sizes) {
    /** Checked when no design is named. */
    static final String DEMO = "silt-trailer";

    /** A file; or, where there is none of that name, a design that came with the program; null: the demo. */
    static DesignSource find(@Nullable String asked) {
        if (asked == null) {
            return shipped(DEMO, false);
        }
        Path file;
        try {
            file = Path.of(asked);
        } catch (InvalidPathException e) {
            return bad(asked, "is no name for a file");
        }
        if (Files.exists(file)) {
            return answered(new DesignSource(asked, false, DesignFile.read(file), List.of()));
        }
        String bare = asked.endsWith(".yaml") ? asked.substring(0, asked.length() - ".yaml".length()) : asked;
        if (bare.matches("[a-z0-9-]+") && ShippedDesigns.has(bare)) {
            return shipped(bare, true);
        }
        return bad(asked, "there is no such file; " + instead(bare));
    }

    /** The same, telling what was taken for each question mark in it. */
    static DesignSource find(@Nullable String asked, PrintWriter err) {
        DesignSource source = find(asked);
        for (SizeAnswer size : source.sizes) {
            size.written()
                    .forEach((path, answer) -> err.println("tipwright: " + path + ": '?' is taken as " + answer
                            + (size.normal() == null ? ", which does not pass" : "")));
        }
        return source;
    }

    private static DesignSource answered(DesignSource source) {
        Reading.Open open = source.reading instanceof Reading.Bad bad ? bad.open() : null;
        if (open == null) {
            return source;
        }
        Boxes boxes = Boxes.of(source, open.design(), List.of());
        OpenSizes.Answered answered = OpenSizes.of(open, boxes.shop(open.units()));
        return new DesignSource(source.name, source.inPlaceOfFile, answered.reading(), answered.answers());
    }

    /** Whether a file has this name. */
    static boolean isFile(String name) {
        try {
            return Files.exists(Path.of(name));
        } catch (InvalidPathException e) {
            return false;
        }
    }

    private static DesignSource shipped(String name, boolean inPlaceOfFile) {
        return new DesignSource(name, inPlaceOfFile, DesignFile.shipped(name + ".yaml"), List.of());
    }

    private static String instead(String bare) {
        List<String> names = ShippedDesigns.names();
        String near = Spelling.nearest(bare, names);
        return near == null
                ? "designs that come with the program: " + String.join(", ", names)
                : "did you mean the example '" + near + "'?";
    }

    private static DesignSource bad(String name, String message) {
        Reading bad = new Reading.Bad(List.of(new Problem(Place.whole(name), "", message)));
        return new DesignSource(name, false, bad, List.of());
    }
}
