// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Pose;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.key.NameId;
import tipwright.design.tank.CaseName;
import tipwright.design.tank.Slurry;
import tipwright.design.tape.NamedPoints;
import tipwright.quantity.Kind;
import tipwright.quantity.Marks;
import tipwright.quantity.Quantities;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;

/** The order of work: tack, measure, weld, dry run, water, full; what to watch, and what comes before anyone reaches in. */
final class WorkPages {
    private static final double HALF = 0.5;
    /** About so many lines tell the runs: they and the cautions stay together where a page has room for both. */
    private static final int RUN_LINES = 20;

    private static final double WATER = 1000;

    private final Pager pager;
    private final Analysis analysis;
    private final Design design;
    private final UnitSystem units;
    private final List<String> cautions;

    /**
     * To write with.
     *
     * @param cautions a sentence each
     */
    WorkPages(Pager pager, Analysis analysis, UnitSystem units, List<String> cautions) {
        this.pager = pager;
        this.analysis = analysis;
        this.units = units;
        this.cautions = cautions;
        design = analysis.design();
    }

    void all() throws CannotComputeException {
        pager.page(design.name() + ": order of work");
        reachIn();
        tack();
        measure();
        weld();
        pager.keep(RUN_LINES + cautions.size());
        runs();
        pager.keep(cautions.size());
        pager.heading("Cautions");
        cautions.forEach(c -> pager.item("-", c));
    }

    private void steps(String heading, String... steps) {
        pager.heading(heading);
        for (int i = 0; i < steps.length; i++) {
            pager.item((i + 1) + ".", steps[i]);
        }
    }

    private void reachIn() {
        steps(
                "Every time before anyone reaches in",
                "Lower the tank until it rests, or stand it on a fixed prop that carries its full weight. An actuator is not a prop.",
                "Lock the main switch off, or shut the pump down and lock its valve; the key goes into the pocket of whoever"
                        + " reaches in. Let stored pressure down.",
                "Try the switch: nothing may move. Let pressure or vacuum out of the tank before anything that keeps it shut is undone.");
    }

    private void tack() {
        steps(
                "1. Tack",
                "Set the frame level on blocks; mark the datum on it with a punch, as on the page of places.",
                "Put the shaft through both bearings before their mounts are tacked, so that the two line up.",
                "Put each pin through its lugs, with the eye or a spacer of its width between them, and tack the lugs with the pin in.",
                "Set the tank down stowed, on its rest or on blocks, and tack what sits on it.");
    }

    private void measure() {
        pager.heading("2. Measure what was tacked, and write it down");
        TapeBack back = new TapeBack(design, units);
        List<String[]> rows = new ArrayList<>();
        back.readings()
                .forEach((name, all) -> all.forEach(r -> rows.add(new String[] {
                    name,
                    (r.how().equals("from") ? "straight from " : NameId.words(r.how()) + " ") + r.to(),
                    Marks.show(r.length(), units),
                    ""
                })));
        pager.table("llrb", new String[] {"point", "", "should be", "measured"}, rows);
        pager.line(
                "The design file takes these readings back in this form: put what you measured in place of the numbers, and the"
                        + " names in place of the coordinates (at: pivot). The check then uses the machine that you built.");
        NamedPoints old = design.points();
        if (old != null && !old.places().isEmpty()) {
            pager.line("These lines take the place of the 'points:' that the file has.");
        }
        for (String line : back.lines()) {
            if (line.startsWith(" ")) {
                pager.item("", line.strip());
            } else {
                pager.line(line);
            }
        }
        pager.down(1);
        Marking marking = Marking.of(design);
        List<String[]> square = new ArrayList<>();
        for (String[] row : Across.diagonals(design, marking, units)) {
            square.add(new String[] {row[0], row[1], "", row[2], ""});
        }
        pager.table(
                "lrbrb",
                new String[] {
                    "to", design.pivot().name(0), "measured", design.pivot().name(1), "measured"
                },
                square);
    }

    private void weld() {
        steps(
                "3. Weld",
                "Short runs, from side to side and from end to end, with the pins in their holes; let each cool.",
                "Measure again when all is cold. Pins and shaft must still turn by hand.");
    }

    private void runs() throws CannotComputeException {
        pager.heading("4. Try it: empty, then with water, then full");
        List<String[]> rows = new ArrayList<>();
        run("empty", analysis, CaseName.EMPTY, rows);
        Slurry water = design.slurry();
        String shut = design.tank().pours() ? "" : ", outlet shut";
        run("half full of water" + shut, wet(water.withFill(HALF).withDensity(WATER)), CaseName.HELD, rows);
        run("full of what it is for" + shut, analysis, CaseName.HELD, rows);
        pager.table(
                "lrrr", new String[] {"run", "most push of all actuators", "at a tilt of", "of what is rated"}, rows);
        List<Pose> poses = analysis.poses();
        Pose home = poses.get(0);
        Pose full = poses.get(poses.size() - 1);
        pager.item(
                "a.",
                "Empty, without the actuator: lift the tank with a hoist from stowed to "
                        + Text.degrees(full.tilt(), 1).metric()
                        + " and back. Watch every gap: hoses, all that swings open, frame, wheels. Nothing may touch.");
        pager.item(
                "b.",
                "Empty, with the actuator: set its stops so that it is " + Marks.show(home.length(), units)
                        + " from pin to pin stowed and " + Marks.show(full.length(), units)
                        + " at full tilt; it must not reach its own end first. Watch the angle with a level, and current or"
                        + " pressure: they rise with the push in the list.");
        pager.item(
                "c.",
                "With water, half full, nobody near the dump end: stop at every 10 deg. Watch for leaks, paint that cracks beside"
                        + " welds, a lug that leans, a wheel or foot that lifts, a wall that draws in while it drains.");
        pager.item(
                "d.",
                "Full: first half of the slurry, then all of it. Watch the same, and whether the load leaves when it should; a cake"
                        + " that hangs on at full tilt is let down slowly, not shaken loose.");
        pager.item("e.", "After ten dumps: look at all welds, pins, bolts and cables again, tank down and locked out.");
    }

    private @Nullable Analysis wet(Slurry water) {
        try {
            return Analyser.analyse(design.withSlurry(water));
        } catch (CannotComputeException e) {
            return null;
        }
    }

    private void run(String name, @Nullable Analysis run, CaseName which, List<String[]> rows) {
        List<CaseResult> cases = run == null
                ? List.of()
                : run.cases().stream().filter(c -> c.name().equals(which.key())).toList();
        if (cases.isEmpty()) {
            rows.add(new String[] {name, "cannot tell", "", ""});
            return;
        }
        Extreme most = Extreme.largest(cases, MotionDirection.RAISING, row -> row.balance(MotionDirection.RAISING)
                .force());
        double rated = design.drive().actuators().stream()
                .map(PlacedActuator::actuator)
                .mapToDouble(a -> a.ratedPush())
                .sum();
        rows.add(new String[] {
            name,
            most.value() > 0 ? Quantities.show(most.value(), Kind.FORCE, units) : "none",
            Text.degrees(most.tilt(), 0).metric(),
            String.format(Locale.ROOT, "%d %%", Math.round(100 * Math.max(0, most.value()) / rated))
        });
    }
}
