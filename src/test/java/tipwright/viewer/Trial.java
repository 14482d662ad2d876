// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;

/** The design that the viewer is tried on. */
public final class Trial {
    private Trial() {}

    public static String text() {
        try (InputStream in = Trial.class.getResourceAsStream("trial.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Design design() {
        return design(text());
    }

    private static Design design(String text) {
        return ((Reading.Good) DesignFile.read("trial.yaml", text, NamedFiles.shipped())).design();
    }

    /** The same with zones for both pins. */
    public static String zonedText() {
        return text().stripTrailing()
                + """

                mounts:
                  frame-pin: {outline: [[-300 mm, -480 mm], [350 mm, -480 mm], [350 mm, -250 mm], [-300 mm, -250 mm]]}
                  tank-pin: {outline: [[-450 mm, 180 mm], [150 mm, 180 mm], [150 mm, 250 mm], [-450 mm, 250 mm]]}
                  keep-outs:
                    - {name: axle, outline: [[-60 mm, -450 mm], [60 mm, -450 mm], [60 mm, -400 mm], [-60 mm, -400 mm]]}
                """;
    }

    public static Design zonedDesign() {
        return design(zonedText());
    }

    public static Analysis analysis() {
        try {
            return Analyser.analyse(design());
        } catch (CannotComputeException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A shipped design by its name. */
    public static Analysis shipped(String name) throws CannotComputeException {
        Reading reading = DesignFile.read(Path.of("geometry", name + ".yaml"));
        return Analyser.analyse(((Reading.Good) reading).design());
    }
}
