// SPDX-License-Identifier: Apache-2.0
package tipwright.check.bearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Row;
import tipwright.check.Dumps;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.joint.PlainBush;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.time.Timing;

/** Bearings, bushes, housings and shaft under made-up loads, N: as given at rest, a quarter of that while they move. */
class BearingLoadsTest {
    private static final String BALL = "{kind: ball-insert, bore: 40 mm, c0: 19 kN}";
    private static final String BOX = swap(Examples.BOX, "80 deg", "10 deg");
    private static final Vec3 NONE = Vec3.ZERO;

    private static Balance loaded(Balance b, Vec3 first, Vec3 second) {
        return new Balance(b.force(), b.pivot(), List.of(first, second), b.drive(), b.joints(), b.couples());
    }

    /** The same loads at every tilt. */
    private static Analysis loaded(String yaml, Vec3 first, Vec3 second) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        CaseResult load = analysis.cases().get(0);
        List<Row> rows = new ArrayList<>();
        for (Row r : load.rows()) {
            rows.add(new Row(
                    r.pose(),
                    r.load(),
                    r.centroid(),
                    loaded(r.rest(), first, second),
                    loaded(r.raise(), first.times(0.25), second.times(0.25)),
                    loaded(r.lower(), first.times(0.25), second.times(0.25))));
        }
        return analysis.with(List.of(new CaseResult(load.load(), rows)));
    }

    private static List<Finding> run(Check check, String bearing, Vec3 first, Vec3 second)
            throws CannotComputeException {
        return check.run(loaded(swap(BOX, BALL, bearing), first, second));
    }

    private static void isMissing(Finding finding, String what) {
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(finding.missing()).isTrue();
        assertThat(finding.note().metric()).isEqualTo(what);
    }

    /** P0 = max(0.6 Fr + 0.5 Fa, Fr) (ISO 76); Fr = 5 kN. */
    @Test
    void ballInsertsByTheirStaticEquivalentLoad() throws CannotComputeException {
        List<Finding> all =
                run(new BearingStaticCheck(), BALL, new Vec3(3000, -4000, 9000), new Vec3(-3000, 4000, -1000));
        assertThat(all).extracting(Finding::id).containsExactly("bearing-static/bearing-1", "bearing-static/bearing-2");
        assertThat(all.get(0).demand()).isCloseTo(7500, within(1e-9));
        assertThat(all.get(0).capacity()).isEqualTo(19_000);
        assertThat(all.get(0).worst().direction()).isEqualTo(MotionDirection.RESTING);
        assertThat(all.get(0).title()).isEqualTo("Pillow-block bearing 1 (right): load");
        assertThat(all.get(1).demand()).isCloseTo(5000, within(1e-9));
        BearingStaticCheck check = new BearingStaticCheck();
        assertThat(check.says(all.get(1)).metric()).startsWith("bearing 2 (left) must carry 5 kN and is good for ");
        assertThat(check.part(all.get(1))).isEqualTo("bearing 2");
        assertThat(check.ratesBearing(1, all.get(1))).isTrue();
        assertThat(check.ratesBearing(0, all.get(1))).isFalse();
        assertThat(check.title("")).isEqualTo("Pillow-block bearing: load");
        isMissing(
                run(new BearingStaticCheck(), "{kind: ball-insert, bore: 40 mm}", NONE, NONE)
                        .get(0),
                "bearing.c0 missing");
        assertThat(run(new BearingStaticCheck(), "{kind: bush, bore: 40 mm, length: 50 mm}", NONE, NONE))
                .isEmpty();
    }

    /** p = F / (d b): 5 kN on 40 by 50 mm are 2.5 MPa; what acts along the shaft does not press. */
    @Test
    void bushesByTheirProjectedArea() throws CannotComputeException {
        String bush = "{kind: bush, bore: 40 mm, length: 50 mm, pressure: 10 MPa}";
        List<Finding> all = run(new BushCheck(), bush, new Vec3(3000, -4000, 9000), NONE);
        assertThat(all.get(0).demand()).isCloseTo(2.5e6, within(1e-3));
        assertThat(all.get(0).capacity()).isCloseTo(10e6, within(1e-3));
        assertThat(all.get(0).title()).isEqualTo("Bushing, bearing 1 (right): pressure");
        assertThat(all.get(1).demand()).isZero();
        assertThat(new BushCheck().part(all.get(1))).isEqualTo("bearing 2");
        assertThat(new BushCheck().title("")).isEqualTo("Bushing: pressure");
        assertThat(new BushCheck().title("bearing 1 speed")).isEqualTo("Bushing, bearing 1: pressure times speed");
        isMissing(
                run(new BushCheck(), "{kind: bush, bore: 40 mm, length: 50 mm}", NONE, NONE)
                        .get(0),
                "bearing.pressure missing");
        assertThat(run(new BushCheck(), BALL, NONE, NONE)).isEmpty();
    }

    /**
     * pV: 2.5 MPa times the fastest turning, 0.25 rad/s either way, times half the bore. Two moments at once say nothing, and the pivot
     * turns as the tank does.
     */
    @Test
    void bushesByTheirFastestTurning() throws CannotComputeException {
        String bush = "{kind: bush, bore: 40 mm, length: 50 mm, pressure: 10 MPa, pressure-velocity: 100000 Pa m/s}";
        Analysis analysis = loaded(swap(BOX, BALL, bush), new Vec3(3000, -4000, 0), NONE);
        Timing timing = Dumps.of(
                Dumps.cycle(
                        "draining",
                        0,
                        Dumps.running(0, 0, 1, 0, 0, 1),
                        Dumps.running(1, 0.125, 1, 0, 0, 1),
                        Dumps.running(1, 0.175, 1, 0, 0, 1)),
                Dumps.cycle("held", 0, Dumps.running(4, 0.175, 1, 0, 0, 1), Dumps.running(4.5, 0.05, 1, 0, 0, 1)));
        BushCheck check = new BushCheck();
        List<Finding> all = check.run(analysis, timing);
        assertThat(all)
                .extracting(Finding::id)
                .containsExactly("bush/bearing-1", "bush/bearing-2", "bush/bearing-1-speed", "bush/bearing-2-speed");
        Finding speed = all.get(2);
        assertThat(speed.demand()).isCloseTo(2.5e6 * 0.25 * 0.02, within(1e-3));
        assertThat(speed.capacity()).isCloseTo(100_000, within(1e-6));
        assertThat(check.worked(analysis, speed, UnitSystem.METRIC)).isEmpty();
        assertThat(check.worked(analysis, all.get(0), UnitSystem.METRIC))
                .isEqualTo("p = 5 kN / (40 mm x 50 mm) = 2.5 MPa");
        isMissing(check.run(analysis, Dumps.UNKNOWN).get(2), "actuator.speed missing");
    }

    /** A fifth of C without the maker's figure. */
    @Test
    void theGripAlongTheShaft() throws CannotComputeException {
        Vec3 along = new Vec3(9000, 0, -1500);
        Finding rule = run(new GripCheck(), "{kind: ball-insert, bore: 40 mm, c0: 19 kN, c: 30 kN}", along, NONE)
                .get(0);
        assertThat(rule.demand()).isEqualTo(1500);
        assertThat(rule.capacity()).isCloseTo(6000, within(1e-9));
        assertThat(rule.title()).isEqualTo("Bearing 1 (right): grip on its shaft");
        assertThat(rule.note())
                .isEqualTo(Text.words("along the shaft, against 20 % of C, since its maker gives no rating that way"));
        Finding given = run(
                        new GripCheck(),
                        "{kind: ball-insert, bore: 40 mm, c0: 19 kN, c: 30 kN, axial: 2 kN}",
                        along,
                        NONE)
                .get(0);
        assertThat(given.capacity()).isEqualTo(2000);
        assertThat(given.note()).isEqualTo(Text.words("along the shaft"));
        List<Finding> unknown = run(new GripCheck(), BALL, along, NONE);
        isMissing(unknown.get(0), "bearing.axial or bearing.c missing; up to 1.5 kN along the shaft");
        assertThat(unknown.get(1).verdict()).isEqualTo(Verdict.PASS);
        assertThat(unknown.get(1).demand()).isZero();
        assertThat(new GripCheck().part(unknown.get(1))).isEqualTo("grip of bearing 2");
        assertThat(new GripCheck().title("")).isEqualTo("Bearings: grip on the shaft");
    }

    private static final String HOUSED = "{kind: ball-insert, bore: 40 mm, c0: 19 kN, housing: [%s]}";

    /** The base lies below: pressed onto it 40 kN, to the side 20 kN, between them by a straight line. */
    @ParameterizedTest
    @CsvSource({"0, -8, 40, 0", "8, 0, 20, 90", "-8, 0, 20, 90", "4, -4, 30, 45"})
    void housingsByTheDirectionOfTheLoad(double x, double y, double strength, int off) throws CannotComputeException {
        String housing = HOUSED.formatted("{angle: 90 deg, load: 20 kN}, {angle: 0 deg, load: 40 kN}");
        List<Finding> all =
                run(new BearingHousingCheck(), housing, new Vec3(1000 * x, 1000 * y, 500), new Vec3(0, -1, 0));
        assertThat(all)
                .extracting(Finding::id)
                .containsExactly("bearing-housing/bearing-1", "bearing-housing/bearing-2");
        Finding f = all.get(0);
        assertThat(f.demand()).isCloseTo(1000 * Math.hypot(x, y), within(1e-6));
        assertThat(f.capacity()).isCloseTo(1000 * strength, within(1e-6));
        assertThat(f.note().metric()).isEqualTo("load " + off + " deg off the direction into the base");
        assertThat(f.title()).isEqualTo("Housing of bearing 1 (right): breaking");
        assertThat(new BearingHousingCheck().part(f)).isEqualTo("housing of bearing 1");
    }

    /** Growing up to four degrees and turning from the base: the worst is not the first, and not where the load is least off. */
    @Test
    void theWorstHousingLoadIsFoundAmongAll() throws CannotComputeException {
        String housing = HOUSED.formatted("{angle: 0 deg, load: 40 kN}, {angle: 90 deg, load: 20 kN}");
        Analysis analysis = loaded(swap(BOX, BALL, housing), NONE, NONE);
        List<Row> rows = new ArrayList<>();
        double worst = 0;
        double at = 0;
        for (Row r : analysis.cases().get(0).rows()) {
            double off = 8 * r.tilt();
            double force = 1000 + 3000 * Math.sin(24 * r.tilt());
            Balance b = loaded(r.rest(), new Vec3(force * Math.sin(off), -force * Math.cos(off), 0), NONE);
            rows.add(new Row(r.pose(), r.load(), r.centroid(), b, b, b));
            double used = force / (40_000 - 20_000 * off / (Math.PI / 2));
            at = used > worst ? r.tilt() : at;
            worst = Math.max(worst, used);
        }
        assertThat(at).isPositive().isLessThan(Math.toRadians(10));
        Finding f = new BearingHousingCheck()
                .run(analysis.with(
                        List.of(new CaseResult(analysis.cases().get(0).load(), rows))))
                .get(0);
        assertThat(f.tilt()).isEqualTo(at);
        assertThat(f.utilisation()).isCloseTo(worst * f.factor(), within(1e-9));
    }

    /** The rules themselves, as others ask for them. */
    @Test
    void theRulesOfSingleLoads() {
        Design design = Examples.read(BOX);
        PlainBush bush = new PlainBush(0.04, 0.05, null, null, null);
        assertThat(BushCheck.usage(new Vec2(3000, -4000), bush, 10e6, design.factors())
                        .demand())
                .isCloseTo(2.5e6, within(1e-3));
        assertThat(BearingStaticCheck.usage(new Vec3(3000, -4000, 9000), 19_000, design.factors())
                        .demand())
                .isCloseTo(7500, within(1e-9));
    }

    /** One that points half a degree past the last figure is told, at the last figure itself not. */
    @ParameterizedTest
    @CsvSource({"90, false", "89.5, false", "90.5, true", "90.00001, false", "90.001, true", "180, true"})
    void loadsPastTheLastFigureAreTold(double degrees, boolean told) throws CannotComputeException {
        double a = Math.toRadians(degrees);
        String housing = HOUSED.formatted("{angle: 0 deg, load: 40 kN}, {angle: 90 deg, load: 20 kN}");
        Vec3 load = new Vec3(8000 * Math.sin(a), -8000 * Math.cos(a), 0);
        List<Finding> all = run(new BearingHousingCheck(), housing, new Vec3(0, -1, 0), load);
        assertThat(all).hasSize(told ? 3 : 2);
        if (told) {
            assertThat(all.get(2).id()).isEqualTo("bearing-housing/bearing-2-beyond-the-figures");
            isMissing(
                    all.get(2),
                    "bearing.housing has no figure past 90 deg; loads up to 8.00 kN point as far as "
                            + Math.round(degrees) + " deg off its base");
        }
    }

    @Test
    void whatIsMissingOfAHousingIsNamed() throws CannotComputeException {
        isMissing(
                run(new BearingHousingCheck(), BALL, NONE, NONE).get(0),
                "bearing.housing missing: the maker's figures by direction of load");
        String round = HOUSED.formatted("{angle: 0 deg, load: 40 kN}, {angle: 180 deg, load: 20 kN}");
        List<Finding> all = run(new BearingHousingCheck(), round, new Vec3(0, 8000, 0), NONE);
        assertThat(all).hasSize(2);
        assertThat(all.get(0).capacity()).isCloseTo(20_000, within(1e-6));
        assertThat(all.get(1).demand()).isZero();
        assertThat(all.get(1).note().metric()).isEqualTo("load 0 deg off the direction into the base");
        assertThat(new BearingHousingCheck().title("")).isEqualTo("Bearing housing: breaking");
    }

    private static double combined(double d, double moment, double shear) {
        double bending = 32 * moment / (Math.PI * d * d * d);
        double sheared = 4 * shear / (3 * Math.PI / 4 * d * d);
        return Math.sqrt(bending * bending + 3 * sheared * sheared);
    }

    /** M = F 45 mm; sigma = 32 M / (pi d^3), tau = 4 F / (3 A). */
    @Test
    void stubsBendOverTheirOverhang() throws CannotComputeException {
        String stubs = swap(BOX, "drive:", "  shaft: {diameter: 40 mm, overhang: 45 mm}\ndrive:");
        Analysis analysis = loaded(stubs, new Vec3(3000, -4000, 9000), new Vec3(0, 1000, 0));
        ShaftCheck check = new ShaftCheck();
        List<Finding> all = check.run(analysis);
        assertThat(all).extracting(Finding::id).containsExactly("shaft/at-bearing-1", "shaft/at-bearing-2");
        assertThat(all.get(0).demand()).isCloseTo(combined(0.04, 225, 5000), within(1.0));
        assertThat(all.get(1).demand()).isCloseTo(combined(0.04, 45, 1000), within(1.0));
        assertThat(all.get(0).capacity()).isCloseTo(235e6, within(1e-3));
        assertThat(all.get(0).title()).isEqualTo("Pivot shaft at bearing 1 (right): bending and shear");
        assertThat(check.worked(analysis, all.get(0), UnitSystem.METRIC))
                .startsWith("M = 225 N m, V = 5 kN, d = 40 mm: ");
        List<Finding> none = check.run(loaded(BOX, NONE, NONE));
        assertThat(none).hasSize(1);
        isMissing(none.get(0), "pivot.shaft missing");
        assertThat(check.title("")).isEqualTo("Pivot shaft: bending and shear");
        assertThat(check.worked(loaded(BOX, NONE, NONE), none.get(0), UnitSystem.METRIC))
                .isEmpty();
    }

    /**
     * Bearings at -0.5 m and 0.5 m, gripped at -0.3 m and 0.4 m: past each grip the bearing's load stands out, M = 0.2 F1 and 0.1 F2 in the
     * same direction at the grips; the shear is the load past a grip, and between them what is left of it.
     */
    @Test
    void aShaftThroughBothBendsBetweenThem() throws CannotComputeException {
        String through = swap(
                BOX, "drive:", "  shaft: {diameter: 40 mm, overhang: 0 mm, carried-at: [-300 mm, 400 mm]}\ndrive:");
        ShaftCheck check = new ShaftCheck();
        Analysis first = loaded(through, new Vec3(3000, -4000, 9000), new Vec3(0, 1000, 0));
        List<Finding> all = check.run(first);
        assertThat(all).extracting(Finding::id).containsExactly("shaft/through-both-bearings");
        assertThat(all.get(0).demand()).isCloseTo(combined(0.04, 1000, 5000), within(1.0));
        assertThat(check.worked(first, all.get(0), UnitSystem.METRIC)).isEmpty();
        Finding second = check.run(loaded(through, new Vec3(0, 1000, 0), new Vec3(-6000, 8000, 0)))
                .get(0);
        assertThat(second.demand()).isCloseTo(combined(0.04, 1000, 10_000), within(1.0));
    }
}
