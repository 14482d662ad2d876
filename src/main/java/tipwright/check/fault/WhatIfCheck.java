// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Check;
import tipwright.check.rule.Concerned;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Then;
import tipwright.check.rule.Titles;
import tipwright.check.rule.Trait;
import tipwright.design.Limits;
import tipwright.design.around.Trouble;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.time.Timing;

/** What could go wrong: each trouble has a verdict of its own. */
public final class WhatIfCheck implements Check {
    /** End of the title of what asks many checks anew. */
    static final String WORST = ": worst check then";

    private final List<Check> rules;

    /**
     * The what-ifs.
     *
     * @param rules that are run anew where a wheel sinks
     */
    public WhatIfCheck(List<Check> rules) {
        this.rules = List.copyOf(rules);
    }

    @Override
    public String id() {
        return "what-if";
    }

    @Override
    public String title() {
        return "If something goes wrong: load";
    }

    @Override
    public String title(String part) {
        return part.isEmpty()
                ? title()
                : switch (part) {
                    case "burst hose" -> "Hose bursts: sinking speed";
                    case "lost power" -> "Power lost: holding the tank";
                    case "load let go at once" -> "Whole load drops out at once: recoil";
                    case "wheel sinks" -> "Wheel sinks: worst check then";
                    case "one carries all" -> "One actuator carries everything: force";
                    case "one runs ahead" -> "One actuator gets ahead of the other: force";
                    case "frozen solid" -> "Frozen solid: worst check then";
                    case "full of rainwater" -> "Full of rainwater: worst check then";
                    case "outlet blocks on the way" -> "Outlet blocks on the way: worst check then";
                    case "cake stuck along the +z side" -> "Half the cake stuck, +z side: worst check then";
                    case "cake stuck along the -z side" -> "Half the cake stuck, -z side: worst check then";
                    case "upset loads" -> "Loads if something goes wrong";
                    case "jam" -> "Tank jams: drive at its hardest";
                    case "jam other parts" -> "Tank jams: other parts";
                    case "valve shuts on the way down" -> "Valve shuts on the way down: shock";
                    case "valve shuts on the way down other parts" -> "Valve shuts on the way down: other parts";
                    case WhatIfStop.OFF -> "Drive stops at once on the way: shock";
                    case WhatIfStop.OFF + " other parts" -> "Drive stops at once on the way: other parts";
                    case WhatIfStop.END -> "Runs against the end of the stroke: shock";
                    case WhatIfStop.END + " other parts" -> "Runs against the end of the stroke: other parts";
                    case WhatIfStop.SADDLE -> "Tank lands on its saddle: force";
                    case WhatIfStop.PRESSED -> "Drive goes on when the tank is down: force on its saddle";
                    case "gas springs hot and new" -> "Gas springs hot and new: worst check then";
                    case "gas springs cold and worn" -> "Gas springs cold and worn: worst check then";
                    default -> part.endsWith(WhatIfShare.ALL)
                            ? WhatIfShare.CARRIES + part.substring(0, part.length() - WhatIfShare.ALL.length())
                            : part.endsWith(WhatIfShare.AHEAD)
                                    ? WhatIfShare.AHEAD_OF
                                            + part.substring(0, part.length() - WhatIfShare.AHEAD.length())
                                    : part.endsWith(" breaks")
                                            ? "Spring breaks: " + part.substring(0, part.length() - " breaks".length())
                                            : Text.capital(part) + ": worst check then";
                };
    }

    @Override
    public String rule() {
        return "A hose bursts: a lock valve holds the load, or it sinks no faster than allowed. Power is lost: the actuator"
                + " holds. The load lets go at once: the actuator bears the recoil. A wheel sinks: every check is made again"
                + " on the slope that follows, and what is no worse there than before is told of that check alone. The tank jams: whatever carries the actuator's force takes its hardest push and"
                + " pull without yielding, and so it does when a valve shuts at once on the way down, when an electric drive or a winch stops at once, and"
                + " when the cylinder runs against its end. The saddle bears the tank that lands on it, and a drive that goes on there. A spring that helps"
                + " breaks, or gas springs are cold and have lost gas, or hot and new: every check is made again. The slurry is frozen"
                + " solid, rain has filled the tank, the load hangs up on the way, or half of the cake stays stuck along one side:"
                + " every check of the load is made again; an actuator that is too weak but holds it is close. With several"
                + " actuators, one takes the whole load, or gets ahead of the others: it must stay within its rating, and what bears it"
                + " within its own.";
    }

    @Override
    public String formula() {
        return "burst: v = Cd a sqrt(2 p / rho) / A, sinking at v (dh/dtilt) / (dL/dtilt) or v F / W; let go: F = 2 F_empty - F_loaded; wheel:"
                + " slope = atan(drop / track); jam: F = relief x area, or where the motor stalls; stops: F + v sqrt(k m),"
                + " on a saddle F + sqrt(F^2 + k m v^2);"
                + " ahead by s: F/n + k s / r^2 with r = dL/dtilt and twist stiffness k";
    }

    @Override
    public String source() {
        return "orifice equation, Cd 0.62 and oil of 870 kg/m3 from memory; suddenly released load on an undamped spring"
                + " overshoots by the step (Roark, from memory); statics";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.NEEDS_TIME, Trait.ABOUT_FAULT);
    }

    @Override
    public String trouble(Finding finding) {
        return Titles.part(finding.title());
    }

    @Override
    public Text says(Finding finding) {
        Then then = finding.then();
        if (then != null) {
            Finding worst = then.worst();
            return then.says(rules.stream()
                    .filter(rule -> rule.owns(worst))
                    .findFirst()
                    .map(rule -> rule.says(worst))
                    .orElse(Text.words(worst.title())));
        }
        if (finding.kind() == Kind.SPEED) {
            return Text.join("; ", List.of(finding.allowed("it sinks at"), finding.note()));
        }
        Text numbers = finding.byWords();
        Text note = numbers.metric().equals(finding.note().metric()) ? Text.NONE : finding.note();
        String what = Titles.what(finding.title());
        return Text.join(
                "; ", List.of(Text.words(what.isEmpty() ? "" : what + ": ").plus(numbers), note));
    }

    @Override
    public Concerned concerned(Analysis analysis, Finding finding) {
        // its note names what is worst then; 'tank' stands in too many sentences
        return new Concerned(
                EnumSet.complementOf(EnumSet.of(PartKind.TANK, PartKind.GROUND)),
                finding.note().show(UnitSystem.METRIC),
                true);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return switch (finding.partId()) {
            case "lost-power", "load-let-go-at-once" -> Fix.force(
                    Fix.HOLD, "an actuator that holds more{}, or " + Fix.ARM, finding, limits);
            case "one-carries-all", "one-runs-ahead" -> Fix.of(
                    "stronger actuators{}, or less in the tank", finding, limits);
            case "burst-hose" -> Text.words("a lock valve on the cylinder port, or a restrictor in it");
            case "jam" -> Text.words("a lower relief setting, or a stronger part where it is worst");
            case "valve-shuts-on-the-way-down" -> Text.words(
                    "a smaller orifice or a throttle, so that it comes down more slowly, or a stronger part where it is worst");
            case "drive-stops-on-the-way" -> Text.words("a slower actuator, or a stronger part where it is worst");
            case "end-of-the-stroke" -> Text.words(
                    "a cylinder with a cushion (what-if.cushion), more stroke, or a slower flow");
            case "drive-goes-on-when-the-tank-is-down" -> Text.words(
                    "a stronger saddle, nearer to the actuator's pin, or a lower relief setting");
            case "lands-on-the-saddle" -> Text.words("softer pads, a stronger saddle, or let it down more slowly");
            case "wheel-sinks", "frozen-solid", "full-of-rainwater", "outlet-blocks-on-the-way" -> Text.words(
                    "same as under the check that is named");
            case "gas-springs-hot-and-new" -> Text.words("gas springs that push less, or that are nearer to the pivot");
            default -> Fix.part(finding, limits);
        };
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        return List.of();
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        return Check.joined(pieces(analysis, () -> timing));
    }

    /** Those troubles that take only the load at rest, not the dump in time. */
    public List<Finding> atRest(Analysis analysis) {
        return Check.joined(kinds(analysis, null));
    }

    /** One for each kind of trouble. */
    @Override
    public List<Supplier<List<Finding>>> pieces(Analysis analysis, Supplier<Timing> timing) {
        return kinds(analysis, timing);
    }

    private List<Supplier<List<Finding>>> kinds(Analysis analysis, @Nullable Supplier<Timing> timing) {
        Findings make = new Findings(this, analysis.design());
        List<Supplier<List<Finding>>> all = new ArrayList<>();
        all.add(() -> WhatIfFall.find(make, analysis));
        all.add(() -> List.of(WhatIfLetGo.find(make, analysis)));
        all.add(() -> List.of(WhatIfWheel.find(make, analysis, rules)));
        all.add(() -> WhatIfUpset.find(make, analysis, rules));
        if (timing != null) {
            all.add(() -> WhatIfJam.find(make, analysis, rules));
            all.add(() -> WhatIfShut.find(make, analysis, timing.get(), rules));
            all.add(() -> WhatIfStop.find(make, analysis, timing.get(), rules));
        }
        all.add(() -> WhatIfHelper.find(make, analysis, rules));
        all.add(() -> WhatIfShare.find(make, analysis, rules));
        return all.stream()
                .<Supplier<List<Finding>>>map(kind -> () -> possible(analysis, kind.get()))
                .toList();
    }

    private static List<Finding> possible(Analysis analysis, List<Finding> all) {
        List<Trouble> never = analysis.design().whatIf().never();
        return all.stream()
                .filter(f -> never.stream().noneMatch(t -> t.is(f.id())))
                .toList();
    }
}
