// SPDX-License-Identifier: Apache-2.0
package tipwright.check.mistake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.Swap;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.design.file.Mirror;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Slips are told with their figures, and sound designs are left alone. */
class MistakesTest {
    static List<Path> designs() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("geometry"))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("designs")
    void soundDesignsAreLeftAlone(Path file) throws IOException, CannotComputeException {
        assertThat(told(Files.readString(file))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"silt-trailer", "twin-rams", "saw-skid"})
    void aMachineDrawnTheOtherWayRoundIsTold(String name) throws Exception {
        String turned = Mirror.turned("a.yaml", Files.readString(Path.of("geometry", name + ".yaml")));
        assertThat(told(turned)).contains("dump towards -x").contains("tipwright mirror FILE");
    }

    @Test
    void aPivotBehindTheLoadIsTold() throws IOException, CannotComputeException {
        String text = Files.readString(Path.of("geometry/silt-trailer.yaml"));
        assertThat(told(Swap.swap(
                        text,
                        "at: [600 mm, 380 mm]",
                        "at: [-200 mm, 380 mm]",
                        "tank-pin: [-70 mm, 250 mm]",
                        "tank-pin: [-500 mm, 250 mm]")))
                .contains("beyond the pivot");
    }

    /** Each is a slip between units, in the file as a builder would make it, and what is told of it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{z: -450 mm, bearing: yard-40} | {z: -450 in, bearing: yard-40} | inches for millimetres",
                "wall: {thickness: 5 mm, density: 7850 kg/m3} | wall: {thickness: 5 in} | wall's unit right",
                "frame-pin-joint: {diameter: 25 mm | frame-pin-joint: {diameter: 25 in | pin's unit right",
                "wall: {thickness: 5 mm, density: 7850 kg/m3} | mass: {empty: 9 kg, centre: [0 mm, 640 mm, 0 mm]} | less than its steel",
                "wall: {thickness: 5 mm, density: 7850 kg/m3} | mass: {empty: 1540 kg, centre: [0 mm, 640 mm, 0 mm], thickness: 5 mm} | newtons",
                "frame-pin: [220 mm, -395 mm] | frame-pin: [585 mm, 390 mm] | almost on the line"
            })
    void aSlipIsTold(String from, String to, String says) throws IOException, CannotComputeException {
        String text = Files.readString(Path.of("geometry/silt-trailer.yaml"));
        assertThat(told(Swap.swap(text, from, to))).contains(says);
    }

    /** The force that is told is the largest of all, and the times are that over the weight, rounded down. */
    @Test
    void theForceOnTheLineIsTheLargest() throws IOException, CannotComputeException {
        String text = Swap.swap(
                Files.readString(Path.of("geometry/silt-trailer.yaml")),
                "frame-pin: [220 mm, -395 mm]",
                "frame-pin: [585 mm, 390 mm]");
        Analysis analysis = Analyser.analyse(Examples.read(text));
        double times = 0;
        double force = 0;
        for (CaseResult load : analysis.cases()) {
            for (Row row : load.rows()) {
                for (Balance b : List.of(row.rest(), row.raise(), row.lower())) {
                    double most = Math.max(
                            Math.abs(b.force()),
                            Math.max(
                                    b.bearings().get(0).norm(),
                                    b.bearings().get(1).norm()));
                    double here = most / (row.load().mass() * 9.80665);
                    force = here > times ? most : force;
                    times = Math.max(times, here);
                }
            }
        }
        assertThat(told(text))
                .contains(Text.amount(force, Kind.FORCE).metric() + ", " + (long) Math.floor(times)
                        + " times their weight");
    }

    private static String told(String text) throws CannotComputeException {
        return Mistakes.of(Analyser.analyse(Examples.read(text))).stream()
                .map(Text::metric)
                .collect(Collectors.joining("\n"));
    }
}
