// SPDX-License-Identifier: Apache-2.0
package tipwright.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Extreme;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Sense;
import tipwright.check.rule.Verdict;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;
import tipwright.design.file.Uncertain;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** How sure a verdict is, against the normal approximation where one holds. */
class DoubterTest {
    private static Reading.Good read(String density, String tankPin) throws IOException {
        return read(density, tankPin, "12 kN");
    }

    private static Reading.Good read(String density, String tankPin, String push) throws IOException {
        String text = Files.readString(Path.of("src/test/resources/tipwright/design/file/silt.yaml"))
                .replace("push: 12 kN", "push: " + push)
                .replace("density: 1400 kg/m3", "density: " + density)
                .replace("tank-pin: [-120 mm, 230 mm]", "tank-pin: " + tankPin);
        Reading reading = DesignFile.read("silt.yaml", text, NamedFiles.shipped());
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Good.class);
        return (Reading.Good) reading;
    }

    private static List<Finding> findings(Reading.Good good) throws Exception {
        return Checker.findings(good.design());
    }

    @Test
    void withoutDoubtNothingIsAsked() throws Exception {
        Reading.Good good = read("1400 kg/m3", "[-120 mm, 230 mm]");
        assertThat(good.uncertain()).isEmpty();
        assertThat(Doubter.ask(good, findings(good))).isNull();
    }

    @Test
    void theDoubtIsKeptBesideTheValue() throws Exception {
        Reading.Good good = read("1400 kg/m3 +- 100", "[-120 mm +- 4, 230 mm +- 1 %]");
        assertThat(good.uncertain())
                .extracting(u -> u.path())
                .containsExactly("slurry.density", "drive.straight.tank-pin.x", "drive.straight.tank-pin.y");
        assertThat(good.uncertain().get(0).doubt()).isCloseTo(50, within(1e-9));
        assertThat(good.uncertain().get(1).doubt()).isCloseTo(0.002, within(1e-12));
        assertThat(good.uncertain().get(2).doubt()).isCloseTo(0.00115, within(1e-12));
        assertThat(good.design().slurry().mixtureDensity()).isEqualTo(1400);
    }

    @Test
    void aChangedValueIsReadAnew() throws Exception {
        Reading.Good good = read("1400 kg/m3 +- 100", "[-120 mm, 230 mm]");
        Reading.Good other = (Reading.Good) good.again().with(Map.of("slurry.density", 1500.0));
        assertThat(other.design().slurry().mixtureDensity()).isEqualTo(1500);
        assertThat(good.design().slurry().mixtureDensity()).isEqualTo(1400);
    }

    /**
     * With the density alone in doubt, a design passes while it is below the density where the first check fails; the share of a
     * normal distribution below that is known. Source: normal distribution, by a mathematics library.
     */
    @Test
    void shareAgreesWithTheNormalDistribution() throws Exception {
        double low = 1000;
        double high = 1900;
        Reading.Good strong = read("1400 kg/m3", "[-120 mm, 230 mm]");
        double used = findings(strong).stream()
                .filter(f -> f.id().equals("push"))
                .mapToDouble(Finding::utilisation)
                .findFirst()
                .orElseThrow();
        String push = 12 * used / 0.97 + " kN";
        Reading.Good wide = read("1400 kg/m3 +- 100", "[-120 mm, 230 mm]", push);
        assertThat(fails(wide, low)).isFalse();
        assertThat(fails(wide, high)).isTrue();
        while (high - low > 0.5) {
            double middle = (low + high) / 2;
            if (fails(wide, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        for (double margin : new double[] {-0.8, 0.3, 1.2}) {
            double sigma = 60;
            double mean = low - margin * sigma;
            Reading.Good good = read(mean + " kg/m3 +- " + 2 * sigma, "[-120 mm, 230 mm]", push);
            Sureness sure = Doubter.ask(good, findings(good), 400);
            double expected = new NormalDistribution(0, 1).cumulativeProbability(margin);
            assertThat(sure.passes() / 400.0).isCloseTo(expected, within(0.006));
            assertThat(sure.influences().get(0).value().path()).isEqualTo("slurry.density");
        }
    }

    private static boolean fails(Reading.Good good, double density) throws Exception {
        Reading other = good.again().with(Map.of("slurry.density", density));
        return !(other instanceof Reading.Good sound)
                || findings(sound).stream().anyMatch(f -> f.verdict() == Verdict.FAIL);
    }

    /** The same seed, the same answer; and the value that moves the governing check most comes first. */
    @Test
    void answersTwiceTheSameAndRanks() throws Exception {
        Reading.Good good = read("1400 kg/m3 +- 5 %", "[-120 mm +- 1, 230 mm +- 1]");
        List<Finding> findings = findings(good);
        Sureness one = Doubter.ask(good, findings, 40);
        assertThat(Doubter.ask(good, findings, 40)).isEqualTo(one);
        double before = Double.POSITIVE_INFINITY;
        for (Sureness.Influence influence : one.influences()) {
            assertThat(Math.abs(influence.change())).isLessThanOrEqualTo(before);
            before = Math.abs(influence.change());
        }
    }

    /** Of what depends on the values in a straight line the samples give the slopes themselves; of a curve, what is along the middle. */
    @Test
    void samplesTellTheSlopes() {
        double[] slopes = {0.3, -0.05, 0.0, 0.002};
        List<Uncertain> values = new ArrayList<>();
        for (int i = 0; i < slopes.length; i++) {
            values.add(new Uncertain("value " + i, "1 +- 0.2", Kind.RATIO, 1, 0.1));
        }
        Sampling sampling = new Sampling(values, 60, 7);
        List<Map<String, Double>> used = new ArrayList<>();
        for (int k = 0; k < 60; k++) {
            double straight = 0.7;
            for (int i = 0; i < slopes.length; i++) {
                straight += slopes[i] * sampling.offset(i, k);
            }
            double bent = straight + 0.02 * sampling.offset(0, k) * sampling.offset(0, k);
            used.add(k % 5 == 0 ? Map.of("straight", straight) : Map.of("straight", straight, "bent", bent));
        }
        SampledChanges changes = new SampledChanges(sampling, used);
        assertThat(changes.of(finding("straight"))).containsExactly(slopes, within(1e-12));
        assertThat(changes.of(finding("bent"))).containsExactly(slopes, within(0.01));
        assertThat(changes.of(finding("unknown"))).containsExactly(0, 0, 0, 0);
    }

    /** Read off the samples or found by small steps, the same value decides, by as much. */
    @Test
    void samplesAndStepsAgree() throws Exception {
        Reading.Good good = read("1400 kg/m3 +- 5 %", "[-120 mm +- 1, 230 mm +- 1]");
        List<Finding> findings = findings(good);
        Sureness stepped = Doubter.ask(good, findings, 11);
        Sureness sampled = Doubter.ask(good, findings, 60);
        assertThat(sampled.governing()).isEqualTo(stepped.governing());
        assertThat(sampled.spread()).isCloseTo(stepped.spread(), within(0.03 * stepped.spread()));
        assertThat(sampled.influences().get(0).value())
                .isEqualTo(stepped.influences().get(0).value());
        assertThat(sampled.influences().get(0).change())
                .isCloseTo(stepped.influences().get(0).change(), within(0.03 * stepped.spread()));
    }

    private static Finding finding(String id) {
        return new Finding(
                id, id, 0.7, 1, 1, Kind.RATIO, Sense.AT_MOST, 0.7, Extreme.NOWHERE, Verdict.PASS, "none", Text.NONE);
    }
}
