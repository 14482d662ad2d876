// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.check.actuator.PushCheck;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.quantity.Kind;
import tipwright.time.CycleTimer;

/** Where passing turns to failing, held against curves whose border is known. */
class BorderTest {
    private static final double CLOSE = 0.004;

    private final Findings make = new Findings(new PushCheck(), Examples.read(Examples.BOX));

    private List<Finding> found(double used) {
        return List.of(make.compare("", used, 1, 1, Kind.RATIO, Extreme.NOWHERE, ""));
    }

    /** Rising curves that bend either way and go through 1 at a known place; now and then one that says nothing but yes or no. */
    private record Curve(double border, DoubleUnaryOperator used) {
        static Curve of(Random random) {
            double border = 0.02 + 0.96 * random.nextDouble();
            double power = Math.exp(2 * (random.nextDouble() - 0.5));
            double steep = Math.exp(4 * (random.nextDouble() - 0.5));
            boolean mute = random.nextInt(4) == 0;
            return new Curve(border, x -> {
                double rise = Math.signum(x - border) * Math.pow(Math.abs(x - border), power) * steep;
                return mute ? rise > 0 ? Double.POSITIVE_INFINITY : 0.5 : 1 + rise;
            });
        }
    }

    @RepeatedTest(100)
    void bothWaysFindIt(RepetitionInfo run) throws CannotComputeException {
        Random random = new Random(run.getCurrentRepetition());
        Curve curve = Curve.of(random);
        boolean downwards = random.nextBoolean();
        DoubleUnaryOperator at = downwards ? x -> curve.used().applyAsDouble(1 - x) : curve.used();
        double good = downwards ? 1 : 0;
        double border = downwards ? 1 - curve.border() : curve.border();
        List<Double> asked = new ArrayList<>();
        Border.Findings look = x -> {
            asked.add(x);
            return found(at.applyAsDouble(x));
        };
        List<Finding> passes = found(at.applyAsDouble(good));
        List<Finding> fails = found(at.applyAsDouble(1 - good));
        holds(Border.between(good, passes, 1 - good, fails, CLOSE, look), border);
        assertThat(asked).hasSizeLessThan(20);
        asked.clear();
        Border.Pair pair = (first, second) -> List.of(look.of(first), look.of(second));
        holds(Border.byTwo(good, passes, 1 - good, fails, CLOSE, pair), border);
        assertThat(asked).hasSizeLessThan(30).allMatch(x -> x > 0 && x < 1);
    }

    private static void holds(Border found, double border) {
        assertThat(border).isBetween(Math.min(found.good(), found.bad()), Math.max(found.good(), found.bad()));
        assertThat(Math.abs(found.bad() - found.good())).isLessThanOrEqualTo(CLOSE);
        assertThat(FillSweep.failure(found.findings())).isNull();
    }

    /** How full a machine may be is the same whether another thread helps or not. */
    @RepeatedTest(2)
    void theSameWithAndWithoutHelp() throws CannotComputeException {
        var design = Examples.read(tipwright.Swap.swap(Examples.BOX, "push: 12 kN", "push: 5.5 kN"));
        HowFull helped = Checker.check(design).howFull();
        FillSweep sweep = FillSweep.of(Analyser.analyse(design), FillSweep.fills(Analyser.analyse(design)));
        Analysis analysis = Analyser.analyse(design);
        Fullness.Stated stated =
                () -> Conditions.inTime(analysis, Checks.run(Fullness.TIMED, analysis, CycleTimer.time(analysis)));
        HowFull alone = Fullness.of(sweep, design, stated, true, new OpenRuns(), Double.NaN);
        assertThat(helped).isEqualTo(alone);
    }
}
