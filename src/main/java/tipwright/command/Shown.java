// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import tipwright.design.file.Reading;
import tipwright.quantity.UnitSystem;

/** The option '--units' of all commands that show a design's figures. */
final class Shown {
    @Option(
            names = "--units",
            paramLabel = "SYSTEM",
            description = "Show results in metric or us units. Default: the units most lengths in the file use.")
    private @Nullable UnitSystem units;

    /** The units asked for, or else those of the design. */
    UnitSystem units(Reading reading) {
        if (units != null) {
            return units;
        }
        return reading instanceof Reading.Good good ? good.units() : UnitSystem.METRIC;
    }
}
