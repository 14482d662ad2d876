// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Row;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;
import tipwright.strength.EquivalentLoad;
import tipwright.time.Cycle;
import tipwright.time.CycleTimer;

/** Answers that run through all of the program, from a design file to a finding. */
final class WholeDesigns {
    private static final String STRAIGHT = ReferenceTables.text("straight-drive.yaml");
    private static final String SINE = ReferenceTables.text("sine-drive.yaml");
    private static final String ELECTRIC =
            """
            {kind: electric, closed: 550 mm, stroke: 750 mm, push: 5 kN, pull: 5 kN, voltage: 12 V,
                     duty: 25 %, speed: {no-load: 20 mm/s, rated: 10 mm/s}, current: {no-load: 2 A, rated: 20 A}}}
            """;
    private static final double TIME_TOLERANCE = 1e-9;

    private WholeDesigns() {}

    static void addTo(Figures figures) {
        figures.add("equivalent-plain", () -> EquivalentLoad.ofRest(8, 4));
        figures.add("equivalent-axial", () -> EquivalentLoad.ofRest(2, 5));
        figures.add("split-near", () -> bearing(0));
        figures.add("split-far", () -> bearing(1));
        figures.add("bush-pressure", WholeDesigns::bush);
        figures.add("raise-cylinder", () -> cycle(SINE).raise());
        figures.add("back", () -> cycle(SINE).lower());
        figures.add("raise-electric", () -> cycle(electric()).raise());
        figures.add("peak-current", () -> cycle(electric()).peaks().current());
    }

    /** The drive of closed form with an electric actuator on a stiff supply. */
    private static String electric() {
        int from = SINE.indexOf("{kind: hydraulic");
        int to = SINE.indexOf("tilt:");
        return (SINE.substring(0, from) + ELECTRIC + SINE.substring(to))
                .replaceAll("supply: .*", "supply: {kind: battery, voltage: 12 V}");
    }

    private static Design read(String yaml) {
        Reading reading = DesignFile.read("validation.yaml", yaml, NamedFiles.shipped());
        if (reading instanceof Reading.Good good) {
            return good.design();
        }
        throw new IllegalStateException(reading.toString());
    }

    private static double bearing(int i) throws CannotComputeException {
        var rows = Analyser.analyse(read(STRAIGHT)).cases().get(0).rows();
        Row last = rows.get(rows.size() - 1);
        return last.rest().bearings().get(i).norm();
    }

    private static double bush() throws CannotComputeException {
        for (Finding finding : Checker.findings(read(STRAIGHT))) {
            if (finding.id().equals("bush/bearing-1")) {
                return finding.demand() / 1e6;
            }
        }
        return Double.NaN;
    }

    private static Cycle cycle(String yaml) throws CannotComputeException {
        Cycle dump =
                CycleTimer.time(Analyser.analyse(read(yaml)), TIME_TOLERANCE).dump();
        if (dump == null) {
            throw new IllegalStateException("no time line");
        }
        return dump;
    }
}
