// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tipwright.ShippedChecks;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.PartsFile;
import tipwright.design.file.Reading;
import tipwright.quantity.UnitSystem;
import tipwright.remedy.FixSearch;
import tipwright.remedy.Shop;

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
        return new Checked(ShippedChecks.of(name + ".yaml"), good.assumptions(), List.of());
    }

    /** With the changes that were tried on it. */
    static Checked withFixes(String name) throws CannotComputeException {
        Checked checked = checked(name);
        List<ListedActuator> actuators = new ArrayList<>();
        for (PartsFile.Part part : PartsFile.shipped().parts()) {
            if (part.part() instanceof Actuator actuator) {
                actuators.add(new ListedActuator(part.name(), actuator));
            }
        }
        Shop shop = new Shop(UnitSystem.METRIC, actuators, List.of());
        return new Checked(
                checked.result(),
                checked.assumptions(),
                checked.remarks(),
                FixSearch.of(checked.result(), () -> shop, false),
                null,
                List.of());
    }

    static Checked of(String text) throws CannotComputeException {
        Reading.Good good = (Reading.Good) DesignFile.read("a.yaml", text, NamedFiles.folder(FOLDER));
        return new Checked(Checker.check(good.design()), good.assumptions(), List.of());
    }
}
