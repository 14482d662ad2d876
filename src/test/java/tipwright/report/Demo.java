// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Row;
import tipwright.analysis.Stop;
import tipwright.check.Checker;
import tipwright.check.HowFull;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Sense;
import tipwright.check.rule.Verdict;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.key.Copy;
import tipwright.load.Emptying;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Results to report on: the shipped demo, and variations of it that need no physics. */
final class Demo {
    private final Checked checked;

    private Demo(Checked checked) {
        this.checked = checked;
    }

    static Demo shipped() {
        Reading.Good good = (Reading.Good) DesignFile.shipped("silt-trailer.yaml");
        try {
            return new Demo(new Checked(Checker.check(good.design()), good.assumptions(), List.of()));
        } catch (CannotComputeException e) {
            throw new AssertionError(e);
        }
    }

    static Finding finding(String id, Verdict verdict, double utilisation, String note) {
        boolean made = verdict != Verdict.NOT_CHECKED;
        return new Finding(
                id,
                "Title of " + id,
                made ? utilisation * 1000 : Double.NaN,
                made ? 2000 : Double.NaN,
                2,
                Kind.FORCE,
                Sense.AT_MOST,
                made ? utilisation : Double.NaN,
                made ? new Extreme(1, Math.toRadians(12), "held", MotionDirection.RAISING) : Extreme.NOWHERE,
                verdict,
                "a handbook",
                Text.words(note));
    }

    Checked checked() {
        return checked;
    }

    Result result() {
        return checked.result();
    }

    Analysis analysis() {
        return checked.result().analysis();
    }

    private Demo with(Result result) {
        return new Demo(new Checked(result, checked.assumptions(), checked.remarks()));
    }

    Demo withFindings(Finding... findings) {
        return with(new Result(analysis(), List.of(findings), result().howFull(), result().timing()));
    }

    Demo withHowFull(@Nullable HowFull howFull) {
        return with(new Result(analysis(), result().findings(), howFull, result().timing()));
    }

    Demo withAnalysis(UnaryOperator<Analysis> change) {
        return with(new Result(change.apply(analysis()), result().findings(), result().howFull(), result().timing()));
    }

    Demo withStop(Stop stop) {
        return withAnalysis(a -> Copy.with(a, "stop", stop));
    }

    Demo withEmptying(Emptying emptying) {
        return withAnalysis(a -> Copy.with(a, "emptying", emptying));
    }

    /** With each row changed. */
    Demo withRows(UnaryOperator<Row> change) {
        return withAnalysis(a -> {
            List<CaseResult> cases = new ArrayList<>();
            for (CaseResult c : a.cases()) {
                cases.add(new CaseResult(c.load(), c.rows().stream().map(change).toList()));
            }
            return new Analysis(
                    a.design(),
                    a.mechanism(),
                    a.poses(),
                    cases,
                    a.emptying(),
                    a.stop(),
                    a.warnings(),
                    a.wind(),
                    a.vessel());
        });
    }

    /** The row with another force of the actuator in all three balances. */
    static Row withForce(Row row, double rest, double raise, double lower) {
        return new Row(
                row.pose(),
                row.load(),
                row.centroid(),
                withForce(row.rest(), rest),
                withForce(row.raise(), raise),
                withForce(row.lower(), lower));
    }

    private static Balance withForce(Balance balance, double force) {
        return new Balance(
                force, balance.pivot(), balance.bearings(), balance.drive(), balance.joints(), balance.couples());
    }
}
