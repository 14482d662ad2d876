// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.HeldFast;
import tipwright.analysis.Mechanism;
import tipwright.analysis.Row;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Then;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.Factors;
import tipwright.design.drive.Drive;
import tipwright.design.joint.Fastening;
import tipwright.design.key.Copy;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec2;
import tipwright.load.LoadCase;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/**
 * What bears the actuators' force and nothing else: rod, pins, lugs, welds and bolts at its two ends, cross member, and the links, pins
 * and fastenings that hand it on to the tank, as far as they bear the same wherever the tank is held. Under a force that comes once, when
 * something goes wrong, it has to stay below yield, with no factor; each part is judged by its own check.
 */
final class DrivePath {
    /** What the name of those parts of a trouble that cannot be told ends with. */
    static final String OTHERS = " other parts";

    private static final Set<String> PINS = Set.of(Drive.FRAME_PIN, Drive.ROD_PIN, Drive.TANK_PIN);

    private final Findings make;
    private final Analysis analysis;
    private final List<Check> rules;
    private final HeldFast held;
    /** Joints that hand on the actuators' force, and links all of whose joints do. */
    private final Set<String> driven = new HashSet<>();

    private final Set<String> links = new HashSet<>();

    DrivePath(Findings make, Analysis analysis, List<Check> rules) {
        this.make = make;
        this.analysis = analysis;
        this.rules = rules.stream()
                .filter(c -> c.traits().contains(Trait.BEARS_DRIVE))
                .toList();
        this.held = HeldFast.of(analysis);
        Mechanism mechanism = analysis.mechanism();
        for (int i = 0; i < mechanism.joints().size(); i++) {
            if (held.driven(i)) {
                driven.add(mechanism.joints().get(i).name());
            }
        }
        for (int body = 1; body < mechanism.bodies().size(); body++) {
            if (body != mechanism.tank() && held.drivenBody(mechanism, body)) {
                links.add(NameId.of(mechanism.bodies().get(body)));
            }
        }
    }

    /**
     * The worst of its parts, and those that cannot be told. All actuators share as they do in the dump.
     *
     * @param part name of the trouble
     * @param how what pushes or pulls, in front of the word and the force
     * @param push greatest push of all actuators at a row, N, 0 or more
     * @param pull greatest pull, N, 0 or more
     */
    List<Finding> under(String part, String how, ToDoubleFunction<Row> push, ToDoubleFunction<Row> pull) {
        Untold untold = new Untold(make);
        List<Finding> all = new ArrayList<>(under(part, how, push, pull, untold::takes));
        all.addAll(untold.told(part + OTHERS));
        return all;
    }

    /** Whether a part is one of those that cannot be told. */
    interface Taken {
        boolean takes(Check check, Finding finding);
    }

    /** The worst of its parts but for those that cannot be told; the same parameters. */
    List<Finding> under(String part, String how, ToDoubleFunction<Row> push, ToDoubleFunction<Row> pull, Taken untold) {
        Analysis strained = strained(part, push, pull);
        List<Finding> told = new ArrayList<>();
        for (Check check : rules) {
            List<Finding> found =
                    check.run(strained).stream().filter(this::isOnIt).toList();
            for (Finding f : found) {
                boolean there = f.verdict() != Verdict.NOT_CHECKED || isThere(check.run(analysis), f.id());
                if (there && !untold.takes(check, f)) {
                    told.add(f);
                }
            }
        }
        return told.isEmpty() ? List.of() : List.of(worst(part, how, strained, told));
    }

    /** Whether a part is looked at in the whole design too, and does not stand for parts that do not bear the actuator. */
    private static boolean isThere(List<Finding> all, String id) {
        return all.stream().anyMatch(f -> f.id().equals(id));
    }

    private boolean isOnIt(Finding f) {
        return !f.checkId().startsWith("bearing")
                && !f.isOf("bush")
                && !f.isOf("shaft")
                && (!f.isOf("link") || links.stream().anyMatch(l -> (f.partId() + "-").startsWith(l + "-")))
                && (!f.isOf("pin")
                        || PINS.contains(f.partId())
                        || driven.stream().anyMatch(j -> NameId.of(j).equals(f.partId())));
    }

    private Finding worst(String part, String how, Analysis strained, List<Finding> told) {
        Finding worst = told.get(0);
        for (Finding f : told) {
            worst = f.worseThan(worst) ? f : worst;
        }
        Balance balance = worst.worst().balance(strained.cases());
        double force = balance == null ? 0 : balance.force();
        List<String> others = new ArrayList<>();
        for (Finding f : told) {
            if (f.verdict() == Verdict.FAIL && !f.id().equals(worst.id())) {
                others.add(f.title());
            }
        }
        Text cause = Text.of(
                how + " {} with {}",
                Text.words(force < 0 ? "pulls" : "pushes"),
                Text.amount(Math.abs(force), Kind.FORCE));
        Extreme where = Extreme.at(worst.worst().value(), worst.tilt());
        return make.of(part, new Then(worst, cause, others), where);
    }

    /** The same machine under these forces alone: it pushes on its way up and pulls on its way back. */
    private Analysis strained(String name, ToDoubleFunction<Row> push, ToDoubleFunction<Row> pull) {
        Design design = analysis.design();
        List<Fastening> fastenings = design.fastenings().stream()
                .filter(f -> PINS.contains(f.joint()) || driven.contains(f.joint()))
                .toList();
        CaseResult any = analysis.cases().get(0);
        List<Row> rows = any.rows().stream()
                .map(row -> new Row(
                        row.pose(),
                        row.load(),
                        row.centroid(),
                        at(row, row.rest(), 0),
                        at(row, row.raise(), push.applyAsDouble(row)),
                        at(row, row.lower(), -pull.applyAsDouble(row))))
                .toList();
        LoadCase load = any.load();
        LoadCase named = new LoadCase(name, LoadCase.NEVER, load.states(), load.contents());
        return analysis.with(List.of(new CaseResult(named, rows)))
                .of(Copy.with(design.withFastenings(fastenings), "factors", Factors.none()));
    }

    private Balance at(Row row, Balance b, double force) {
        List<Vec2> joints = held.joints(analysis.at(row.tilt()), force);
        return new Balance(force, b.pivot(), b.bearings(), b.drive(), joints, b.couples());
    }
}
