// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;

/** The designs that come with the program, checked. */
final class ShippedResults {
    private static final Path FOLDER = Path.of("geometry");

    private ShippedResults() {}

    static List<String> names() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(p -> p.getFileName().toString())
                    .filter(n -> n.endsWith(".yaml"))
                    .map(n -> n.substring(0, n.length() - ".yaml".length()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(String name) {
        try {
            return Files.readString(FOLDER.resolve(name + ".yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Checked checked(String name) throws CannotComputeException {
        Reading.Good good = (Reading.Good) DesignFile.shipped(name + ".yaml");
        return new Checked(Checker.check(good.design()), good.assumptions(), List.of());
    }

    static Checked of(String text) throws CannotComputeException {
        Reading.Good good = (Reading.Good) DesignFile.read("a.yaml", text, NamedFiles.folder(FOLDER));
        return new Checked(Checker.check(good.design()), good.assumptions(), List.of());
    }
}
