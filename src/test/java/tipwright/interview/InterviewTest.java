// SPDX-License-Identifier: Apache-2.0
package tipwright.interview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.analysis.Analyser;
import tipwright.check.Checker;
import tipwright.check.Checks;
import tipwright.check.rule.Check;
import tipwright.check.rule.Verdict;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;
import tipwright.quantity.QuantityException;

class InterviewTest {
    private static Interview with(String... typed) throws QuantityException {
        Interview interview = Interview.start();
        for (String answer : typed) {
            interview = interview.answer(answer);
        }
        return interview;
    }

    private static Interview allUsual(Interview interview) throws QuantityException {
        Interview next = interview;
        while (next.next() != null) {
            next = next.answer("");
        }
        return next;
    }

    static Stream<Arguments> shapes() {
        return Stream.of("in", "mm")
                .flatMap(unit -> Stream.of("round", "tub", "drum").map(shape -> Arguments.of(unit, shape)));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void usualAnswersGiveAMachineThatPasses(String unit, String shape) throws Exception {
        Interview done = allUsual(with("", unit, shape));
        assertThat(done.given()).isLessThanOrEqualTo(25);
        Reading reading = DesignFile.read("asked.yaml", done.design(), NamedFiles.folder(Path.of(".")));
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Good.class);
        assertThat(((Reading.Good) reading).warnings()).isEmpty();
        assertThat(Checker.check(((Reading.Good) reading).design()).findings())
                .allMatch(f -> f.verdict() != Verdict.FAIL);
    }

    /** Whoever measured the tank alone and takes the usual answers to the rest has a machine that tips it all the way. */
    @ParameterizedTest
    @MethodSource("shapes")
    void usualAnswersFollowTheTankThatWasMeasured(String unit, String shape) throws Exception {
        Random random = new Random(20261127);
        for (int run = 0; run < 8; run++) {
            Interview interview = with("", unit, shape);
            double scale = 0.5 + random.nextDouble();
            for (Question q = interview.next(); q != null; q = interview.next()) {
                boolean tape = Set.of("around", "length", "height", "width").contains(q.id());
                boolean first = Set.of("tank-low", "bottom-front").contains(q.id());
                interview = interview.answer(
                        tape
                                ? stretched(interview, scale * (0.9 + 0.2 * random.nextDouble()))
                                : first ? (random.nextInt(41) - 20) + ", " + (10 + random.nextInt(20)) : "");
            }
            Reading reading = DesignFile.read("asked.yaml", interview.design(), NamedFiles.folder(Path.of(".")));
            assertThat(reading).as(interview.saved() + reading).isInstanceOf(Reading.Good.class);
            var analysis = Analyser.analyse(((Reading.Good) reading).design());
            assertThat(analysis.stop()).as(interview.saved()).isNull();
            List<Check> stroke =
                    Checks.all().stream().filter(c -> c.id().equals("stroke")).toList();
            assertThat(Checks.run(stroke, analysis))
                    .as(interview.saved())
                    .hasSizeGreaterThanOrEqualTo(2)
                    .allMatch(f -> f.verdict() != Verdict.FAIL);
        }
    }

    private static String stretched(Interview interview, double scale) {
        Answers a = interview.answers();
        return a.length(scale * a.metres(interview.usual()));
    }

    /** The place opposite the lowest line follows from the tape around the shell. Source: the circle's circumference, pi times across. */
    @Test
    void theUsualHighLineIsWhereTheTapeSaysItIs() throws Exception {
        Interview barrel = with("", "mm", "drum", "1900", "880", "3", "120, 340");
        assertThat(barrel.usual()).isEqualTo("725 mm, 1220 mm");
        Interview shell = with("", "in", "round", "110", "60", "flat", "", "10, 20");
        assertThat(shell.usual()).isEqualTo("70 in, 55 in");
    }

    /** A tub of twice the size everywhere: eight times the slurry, every place twice as far from its first corner. */
    @Test
    void usualPlacesOfATubOfTwiceTheSize() throws Exception {
        Interview tub = with("", "mm", "tub", "2000", "5", "100, 50", "1900, 50", "3100, 1250");
        assertThat(tub.usual()).isEqualTo("100 mm, 1250 mm");
        tub = tub.answer("").answer("").answer("");
        assertThat(tub.usual()).isEqualTo("3600 L");
        tub = tub.answer("");
        assertThat(tub.usual()).isEqualTo("2400 mm, 310 mm");
        assertThat(tub.answer("").usual()).isEqualTo("1720 mm");
    }

    @Test
    void noMachineTakesMoreThanTwentyFiveAnswers() throws Exception {
        int most = 0;
        for (String shape : List.of("round", "tub", "drum")) {
            for (String drive : List.of("electric", "hydraulic", "winch")) {
                Interview interview = with("", "mm", shape);
                for (Question q = interview.next(); q != null; q = interview.next()) {
                    interview = interview.answer(q.id().equals("drive") ? drive : "");
                }
                most = Math.max(most, interview.given());
                assertThat(interview.questions()).isEqualTo(interview.given());
            }
        }
        assertThat(most).isLessThanOrEqualTo(25);
    }

    @Test
    void everyQuestionHasAUsualAnswerThatItTakesAndSaysWhereToMeasure() throws Exception {
        for (Arguments arguments : shapes().toList()) {
            Interview interview =
                    with("", (String) arguments.get()[0], (String) arguments.get()[1]);
            for (Question q = interview.next(); q != null; q = interview.next()) {
                assertThat(interview.usual()).isNotBlank();
                assertThat(interview.tape()).isNotBlank();
                if (interview.answers().unit().equals("mm")) {
                    assertThat(interview.tape()).doesNotContainPattern("\\d (in|lb|gal)\\b");
                }
                interview = interview.answer(interview.usual());
            }
        }
    }

    /** Going back any number of times and answering again ends in the same file. */
    @Test
    void goingBackLosesNothingElse() throws Exception {
        Random random = new Random(20260101);
        String straight = allUsual(with("", "mm", "tub")).design();
        for (int run = 0; run < 50; run++) {
            Interview interview = with("", "mm", "tub");
            for (int i = 0; i < 200 && interview.next() != null; i++) {
                interview = interview.given() > 3 && random.nextInt(3) == 0 ? interview.back() : interview.answer("");
            }
            assertThat(allUsual(interview).design()).isEqualTo(straight);
        }
        assertThat(Interview.start().back()).isEqualTo(Interview.start());
    }

    @Test
    void answersThatAreSavedGoOnWhereTheyWere() throws Exception {
        Interview interview = with("Bob's tank: the 2nd", "in", "round");
        List<Interview> all = new ArrayList<>(List.of(Interview.start(), interview));
        while (interview.next() != null) {
            interview = interview.answer("");
            all.add(interview);
        }
        for (Interview any : all) {
            assertThat(Interview.resumed(any.saved())).isEqualTo(any);
        }
        assertThat(Interview.resumed("name: x\nunit: ells\nshape: tub\n").given())
                .isEqualTo(1);
        assertThat(Interview.resumed("nonsense").given()).isZero();
    }

    @Test
    void aBareNumberIsInTheUnitOfTheTape() throws Exception {
        Interview interview = with("", "mm", "round", "2264");
        assertThat(interview.saved()).endsWith("around: 2264 mm\n");
        assertThat(with("", "in", "round", "89 1/8", "4' 2\"").saved()).endsWith("around: 89 1/8 in\nlength: 4' 2\"\n");
    }

    /** A right triangle of sides 3, 4 and 5. Source: Euclid, Elements, book I, proposition 48. */
    @Test
    void twoDistancesGiveThePlaceOnTheSideThatIsNamed() throws Exception {
        Answers before = new Answers(java.util.Map.of("unit", "mm", "pivot", "500 mm, 0 mm"));
        TapePlace above = TapePlace.read("300 from mark, 400 from pivot, above", before);
        assertThat(above.at().x()).isCloseTo(0.18, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(above.at().y()).isCloseTo(0.24, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(TapePlace.read("300 mm from the mark, 400 mm from pivot, below", before)
                        .at()
                        .y())
                .isNegative();
        assertThat(above.lines()).isEqualTo("{from: {mark: 300 mm, pivot: 400 mm}, side: above}");
        assertThat(TapePlace.read(above.kept(), before)).isEqualTo(above);
    }

    @Test
    void whatCannotBeIsRefusedWithTheReason() throws Exception {
        assertThatThrownBy(() -> with("", "ell")).hasMessageStartingWith("'ell' is none of in, mm");
        assertThatThrownBy(() -> with("", "in", "round", "-5"))
                .hasMessage("'-5 in' is not more than nothing; such as '480 mm'");
        assertThatThrownBy(() -> with("", "in", "round", "5 kg")).hasMessageContaining("5 kg");
        assertThatThrownBy(() -> with("\u0007")).hasMessageContaining("a line");
        Interview low = with("", "in", "round", "", "", "", "", "");
        assertThatThrownBy(() -> low.answer("55 in, 30 in")).hasMessageContaining("the tape around it says");
        assertThatThrownBy(() -> low.answer("1 in, 2 in")).hasMessageContaining("not above and towards the dump end");
        assertThatThrownBy(() -> low.answer("55 in")).hasMessageContaining("a place is two readings");
        assertThatThrownBy(() -> low.answer("5 in from mark, 5 in from tank-low, above"))
                .hasMessageContaining("cannot meet");
    }

    @Test
    void thePictureShowsTankAndPinsWithTheDumpEndToTheRight() throws Exception {
        Interview interview = with("", "in", "round");
        assertThat(interview.picture()).isEmpty();
        String picture = allUsual(interview).picture();
        List<String> lines = picture.lines().toList();
        assertThat(lines).hasSizeLessThanOrEqualTo(18).allMatch(line -> line.length() <= 80);
        assertThat(column(lines, 'P')).isGreaterThan(column(lines, 'F'));
        assertThat(column(lines, 'F')).isGreaterThan(column(lines, 'T'));
        assertThat(picture).contains("P pivot, F frame pin, T tank pin; it dumps to the right");
    }

    private static int column(List<String> lines, char sign) {
        for (String line : lines.subList(0, lines.size() - 1)) {
            if (line.indexOf(sign) >= 0) {
                return line.indexOf(sign);
            }
        }
        return -1;
    }

    @Test
    void idsAreAskedOnceEach() {
        Set<@Nullable String> ids = new java.util.HashSet<>();
        assertThat(Questions.ALL).allMatch(q -> ids.add(q.id()));
    }
}
