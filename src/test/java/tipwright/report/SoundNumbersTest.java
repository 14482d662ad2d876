// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.ShippedChecks;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.RandomDesigns;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.quantity.UnitSystem;

/** Nothing that is no number reaches a reader, every capacity has a source, and the headline tells what was not checked. */
class SoundNumbersTest {
    private static final Pattern NO_NUMBER =
            Pattern.compile("(?i)(?<![a-z])(nan|inf|infinity|-?1\\.#\\w+)(?![a-z])|\u221e|\ufffd");
    private static final Style US = new Style(false, UnitSystem.US);
    private static final int EACH = 25;

    /** What 'check --json' says of itself. */
    private static final JsonSchema SCHEMA = schema();

    private static JsonSchema schema() {
        try {
            String text = Files.readString(Path.of("geometry/tipwright-check-output.schema.json"));
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Path> shipped() throws IOException {
        try (Stream<Path> list = Files.list(Path.of("geometry"))) {
            return list.filter(p -> p.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void shippedDesign(Path file) throws IOException, CannotComputeException {
        look(ShippedChecks.of(String.valueOf(file.getFileName())));
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 1207, 20261125})
    void randomDesigns(long seed) throws IOException {
        RandomDesigns designs = new RandomDesigns(seed);
        int computed = 0;
        for (int i = 0; i < EACH; i++) {
            Design design = designs.next();
            try {
                look(Checker.check(design));
                computed++;
            } catch (CannotComputeException told) {
                assertThat(told.getMessage()).isNotBlank();
                assertThat(NO_NUMBER.matcher(told.getMessage()).find())
                        .as(told.getMessage())
                        .isFalse();
            }
        }
        assertThat(computed).isGreaterThan(EACH / 4);
    }

    @Test
    void theSearchFindsWhatItLooksFor() {
        for (String lie : List.of("x NaN y", "\"a\":NaN", "-Infinity N", "inf", "\u221e kN", "nan")) {
            assertThat(NO_NUMBER.matcher(lie).find()).as(lie).isTrue();
        }
        for (String fine : List.of("finance", "information", "inflow 3", "12 kN", "finite")) {
            assertThat(NO_NUMBER.matcher(fine).find()).as(fine).isFalse();
        }
    }

    private static void look(Result result) throws IOException {
        Checked checked = new Checked(result, List.of(), List.of());
        StringWriter json = new StringWriter();
        JsonReport.write(checked, json);
        assertThat(SCHEMA.validate(new ObjectMapper().readTree(json.toString())))
                .isEmpty();
        StringWriter time = new StringWriter();
        JsonTime.write(result.analysis().design().name(), result.timing(), time);
        String text = TextReport.of(checked, Style.PLAIN);
        for (String said : List.of(
                text,
                TextReport.of(checked, US),
                json.toString(),
                CsvReport.of(result.analysis()),
                time.toString(),
                TimeReport.of(result.analysis(), result.timing(), Style.PLAIN),
                TimeReport.of(result.analysis(), result.timing(), US))) {
            assertThat(NO_NUMBER
                            .matcher(said)
                            .results()
                            .map(m ->
                                    said.substring(Math.max(0, m.start() - 80), Math.min(said.length(), m.end() + 40))))
                    .isEmpty();
        }
        long open = 0;
        for (Finding f : result.findings()) {
            assertThat(f.source()).as(f.id()).isNotBlank();
            assertThat(f.note().metric()).as(f.id()).isNotBlank();
            if (f.verdict() == Verdict.NOT_CHECKED) {
                open++;
            } else {
                assertThat(f.demand()).as(f.id() + ": demand").isNotNaN();
                assertThat(f.capacity()).as(f.id() + ": capacity").isFinite();
                assertThat(f.utilisation()).as(f.id() + ": utilisation").isNotNaN();
                boolean lacks = f.has() < f.needs() * (1 - 1e-9);
                assertThat(f.verdict() == Verdict.PASS && lacks)
                        .as(f.id() + " passes with " + f.has() + " where it needs " + f.needs())
                        .isFalse();
            }
        }
        String headline =
                text.lines().filter(l -> l.contains("VERDICT: ")).findFirst().orElseThrow();
        if (open > 0) {
            assertThat(headline).contains(open == 1 ? "1 check cannot tell" : open + " checks cannot tell");
        } else {
            assertThat(headline).doesNotContain("cannot tell");
        }
    }
}
