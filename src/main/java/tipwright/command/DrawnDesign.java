// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import tipwright.design.Design;
import tipwright.design.file.Problem;
import tipwright.design.file.Reading;
import tipwright.design.tank.Cases;
import tipwright.viewer.start.DesignName;

/**
 * A design that is to be drawn.
 *
 * @param name null when it cannot be read; the problems have been told
 */
record DrawnDesign(@Nullable DesignName name, @Nullable Design design, Reading reading) {
    /** Finds and reads it; tells its problems. */
    static DrawnDesign find(@Nullable String asked, CommandLine line) {
        DesignSource source = DesignSource.find(asked, line.getErr());
        if (source.reading() instanceof Reading.Good good) {
            return new DrawnDesign(name(asked, source), good.design(), good);
        }
        for (Problem problem : ((Reading.Bad) source.reading()).problems()) {
            line.getErr().println(problem.text());
        }
        line.getErr().flush();
        return new DrawnDesign(null, null, source.reading());
    }

    /** What the drawing program is to open, whether or not it can be read; null: there is no such thing, as told. */
    static @Nullable DesignName openable(@Nullable String asked, CommandLine line) {
        if (asked != null && DesignSource.isFile(asked)) {
            return new DesignName(asked, false);
        }
        return find(asked, line).name();
    }

    private static DesignName name(@Nullable String asked, DesignSource source) {
        boolean file = asked != null && DesignSource.isFile(asked);
        return new DesignName(source.name(), !file);
    }

    /** A load case that the design has. */
    String loadCase(String asked, CommandLine line) {
        List<String> names = new ArrayList<>(Cases.BUILT_IN);
        Design d = design;
        if (d != null) {
            names.removeAll(d.cases().skip());
            d.cases().add().stream().map(Cases.Own::name).forEach(names::add);
        }
        if (!names.contains(asked)) {
            throw new ParameterException(
                    line,
                    "--case: '" + asked + "' is not a load case of this design; choose from: "
                            + String.join(", ", names));
        }
        return asked;
    }
}
