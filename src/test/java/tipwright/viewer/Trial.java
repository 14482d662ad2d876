// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.file.Beside;
import tipwright.design.file.DesignFile;
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
        return ((Reading.Good) DesignFile.read("trial.yaml", text(), Beside.shipped())).design();
    }

    public static Analysis analysis() {
        try {
            return Analyser.analyse(design());
        } catch (CannotComputeException e) {
            throw new IllegalStateException(e);
        }
    }
}
