// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.tank.Door;
import tipwright.design.tank.DoorMass;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec3;

/** Three machines given by tape, scale and plates alone, question by question: not one number was worked out by hand. */
class AskedMachinesTest {
    private static final double LBF = 4.4482216152605;

    @TempDir
    private Path folder;

    private static final List<String> TRAILER = List.of(
            "Pit trailer",
            "in",
            "round",
            "113 1/8",
            "6 ft",
            "6 1/4",
            "3/16 plate",
            "8, 14",
            "80, 50",
            "34, about 55 lb",
            "120 lb",
            "5 gal, 51 1/2 lb, 2 lb",
            "200 gal",
            "74, 12",
            "38",
            "2 in, 5200 lbf",
            "electric",
            "53 7/8 in from mark, 34 1/16 in from pivot, below",
            "45 5/8 in from mark, 27 1/4 in from frame-pin, above",
            "26 3/4, 21",
            "4500 lbf",
            "45 deg");

    private static final List<String> TUB = List.of(
            "Washout tub",
            "mm",
            "tub",
            "1200",
            "5",
            "150, 420",
            "1250, 420",
            "1900, 1100",
            "150, 1100",
            "about 60 kg",
            "10 L, 15.2 kg, 0.7 kg",
            "700 L",
            "1540, 570",
            "1060",
            "50 mm, 23.2 kN",
            "hydraulic",
            "600",
            "1310, -350",
            "1080, 375",
            "745, 600",
            "60 mm, 35 mm",
            "140 bar",
            "yes",
            "78 deg");

    private static final List<String> DRUM = List.of(
            "Slip drum",
            "in",
            "drum",
            "1797 mm",
            "34 3/4",
            "18 ga",
            "2 in, 300 mm",
            "24 1/2 in, 3' 10 5/8\"",
            "about 25 kg",
            "1150 kg/m3",
            "35 gal",
            "27 3/16 in, 1062 mm",
            "30",
            "30 mm, 11.3 kN",
            "winch",
            "15 1/2 in, 7 ft 5 in",
            "2 in, 320 mm",
            "8 in, 1850 mm",
            "1100 lbf",
            "20 mm",
            "120 deg");

    private record Told(Cli.Outcome outcome, Path file) {}

    private Told ask(String name, List<String> typed) {
        Path file = folder.resolve(name);
        String lines = String.join("\n", typed) + "\n";
        Terminal terminal = new Terminal(false, Map.of(), new StringReader(lines));
        return new Told(Cli.run(terminal, "new", "--ask", file.toString()), file);
    }

    private Result checked(String name, List<String> typed) throws Exception {
        assertThat(typed).hasSizeLessThanOrEqualTo(25);
        Told told = ask(name, typed);
        assertThat(told.outcome().err()).isEmpty();
        assertThat(told.outcome().out()).contains("from " + typed.size() + " answers");
        assertThat(told.outcome().out().split("Written: ")[0]).doesNotContain("  ! ");
        assertThat(told.outcome().code()).as(told.outcome().out()).isZero();
        Reading reading = DesignFile.read(told.file());
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Good.class);
        assertThat(((Reading.Good) reading).warnings()).isEmpty();
        return Checker.check(((Reading.Good) reading).design());
    }

    private static Finding of(Result result, String id) {
        return result.findings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Own sums, moments about the pivot in lb in: 200 gal of 9.9 lb/gal are 1980 lb at 31.2 in (the dish lets it forward), the shell
     * (113 in x 72 in x 3/16 in at 0.2836 lb/in3) 433 lb at 30 in, the front head 59 lb at 70 in, cradle 120 lb at 15 in, the door 61 lb
     * at 6 in on the other side: 80,300, against an arm of 28.7 in.
     */
    @Test
    void trailerOnAnElectricActuatorInInches() throws Exception {
        Result result = checked("trailer.yaml", TRAILER);
        assertThat(result.verdict()).isIn(Verdict.PASS, Verdict.CLOSE);
        assertThat(of(result, "push").needs() / LBF).isCloseTo(80300 / 28.7, within(0.04 * 2800));
    }

    /**
     * Own sums: 700 L of 1.45 kg/L are 1015 kg, 0.728 m before the pivot (filled 445 mm deep); 5.2 m2 of 5 mm plate 204 kg at 0.66 m;
     * the rest 60 kg at 0.23 m: 8710 N m against an arm of 0.497 m.
     */
    @Test
    void openTubOnTwoRamsInMillimetres() throws Exception {
        Result result = checked("tub.yaml", TUB);
        assertThat(result.verdict()).isIn(Verdict.PASS, Verdict.CLOSE);
        assertThat(of(result, "push").needs()).isCloseTo(8710 / 0.497, within(0.05 * 17500));
        assertThat(result.analysis().design().drive().actuators()).hasSize(2);
    }

    /**
     * Own sums at 20 deg: 152.4 kg of slurry 0.504 m before the pivot, the drum's 17.5 kg at 0.443 m, the rest 25 kg at 0.428 m: 934 N m
     * against an arm of the rope of 0.660 m.
     */
    @Test
    void drumOnAHandWinchInMixedUnits() throws Exception {
        Result result = checked("drum.yaml", DRUM);
        assertThat(result.verdict()).isIn(Verdict.PASS, Verdict.CLOSE);
        assertThat(of(result, "push").needs()).isZero();
        assertThat(of(result, "pull").needs()).isCloseTo(934 / 0.660, within(0.03 * 1415));
    }

    /** The door by where it hinges: on top unless told; it is named as its opening, so its weight goes with it. */
    @Test
    void doorHingesWhereItIsTold() throws Exception {
        double half = 17 * 0.0254;
        Map<String, Vec3> answers = Map.of(
                "34, about 55 lb",
                new Vec3(0, half, 0),
                "34, about 55 lb, below",
                new Vec3(0, -half, 0),
                "34, about 55 lb, side",
                new Vec3(0, 0, half));
        for (Map.Entry<String, Vec3> told : answers.entrySet()) {
            List<String> typed = new ArrayList<>(TRAILER);
            typed.set(9, told.getKey());
            Told machine =
                    ask("door-" + told.getValue().hashCode() + typed.get(9).length() + ".yaml", typed);
            assertThat(machine.outcome().err()).isEmpty();
            Design design = ((Reading.Good) DesignFile.read(machine.file())).design();
            Opening opening = design.tank().openings().get(0);
            Door door = Objects.requireNonNull(opening.door());
            Vec3 off = door.hinge().minus(opening.middle());
            assertThat(door.latch().minus(opening.middle()).plus(off).norm()).isLessThan(1e-9);
            assertThat(off.minus(told.getValue()).norm()).isLessThan(1e-9);
            assertThat(Objects.requireNonNull(DoorMass.of(design.tank(), opening))
                            .mass())
                    .isCloseTo(55 * 0.45359237, within(1e-6));
        }
    }

    @Test
    void quittingKeepsTheAnswersAndTheSameCommandGoesOn() throws Exception {
        Told first = ask("kept.yaml", TRAILER.subList(0, 9));
        assertThat(first.outcome().code()).isZero();
        assertThat(first.outcome().out()).contains("9 answers are kept in " + first.file() + ".answers");
        assertThat(first.file()).doesNotExist();
        Told second = ask("kept.yaml", TRAILER.subList(9, TRAILER.size()));
        assertThat(second.outcome().code()).as(second.outcome().err()).isZero();
        assertThat(folder.resolve("kept.yaml.answers")).doesNotExist();
        Told whole = ask("whole.yaml", TRAILER);
        assertThat(second.file()).hasSameTextualContentAs(whole.file());
    }

    @Test
    void aFileThatIsThereIsNotAskedOver() throws Exception {
        Path file = folder.resolve("precious.yaml");
        Files.writeString(file, "precious");
        assertThat(ask("precious.yaml", TRAILER).outcome().code()).isEqualTo(3);
        assertThat(file).hasContent("precious");
        assertThat(Cli.run("new", "--ask").code()).isEqualTo(2);
        assertThat(Cli.run("new", "--ask", "--like", "saw-skid", "x.yaml").code())
                .isEqualTo(2);
    }

    @Test
    void aMistakeIsToldAndAskedAgainAndBackGoesBack() {
        Told told = ask("again.yaml", List.of("Pit trailer", "inn", "in", "rund", "round", "back", "drum", "quit"));
        assertThat(told.outcome().out())
                .contains("  ! 'inn' is none of in, mm; did you mean 'in'?")
                .contains("'rund' is none of round, tub, drum; did you mean 'round'?")
                .contains("3 answers are kept");
    }
}
