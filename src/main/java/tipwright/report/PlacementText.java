// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.drive.Drive;
import tipwright.design.tank.CaseName;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;
import tipwright.placement.Aim;
import tipwright.placement.Answer;
import tipwright.placement.Candidate;
import tipwright.placement.PlacedPoint;
import tipwright.placement.Placement;
import tipwright.quantity.Kind;
import tipwright.quantity.Marks;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;

/** Tells in plain words where the mounts may go. */
public final class PlacementText {
    private static final int BESIDE = 4;

    private PlacementText() {}

    /** The text, lines ended by '\n'. */
    public static String of(Design design, Placement placement, Style style) {
        List<String> lines = new ArrayList<>();
        lines.add(style.heading(design.name() + ": where the mounts may go"));
        String how = placement.step() > 0
                ? " positions tried, apart by " + show(placement.step(), Kind.LENGTH, style.units())
                : " candidates spread over the zones";
        lines.add("  " + placement.candidates() + how + "; " + placement.fitting() + " may do");
        for (String note : placement.notes()) {
            lines.add("  note: " + note);
        }
        if (placement.answers().isEmpty()) {
            nothing(design, placement, style, lines);
        } else {
            answers(design, placement.answers(), style, lines);
            lines.add("");
            lines.add(style.heading("To use number 1, put this into your design file"));
            lines.addAll(PasteText.lines(design, placement.answers().get(0), style.units()));
        }
        return String.join("\n", lines) + "\n";
    }

    private static void answers(Design design, List<Answer> answers, Style style, List<String> lines) {
        boolean straight = design.drive().direct();
        if (!straight) {
            places(answers, style, lines);
        }
        table(answers, straight, style, lines);
        apart(answers, style, lines);
        governing(answers, style, lines);
    }

    private static void nothing(Design design, Placement placement, Style style, List<String> lines) {
        lines.add("");
        if (!placement.nearly().isEmpty()) {
            lines.add("Nothing fits. What nearly fits, and what fails of it:");
            answers(design, placement.nearly(), style, lines);
            return;
        }
        if (placement.unknown()) {
            lines.addAll(Prose.wrap("", stopped(placement)));
            return;
        }
        lines.add("No position works."
                + (placement.misses().isEmpty() ? "" : " Any one of these changes would make one possible:"));
        for (String miss : placement.misses()) {
            lines.add("  " + miss);
        }
    }

    private static String stopped(Placement placement) {
        long share = 100 * placement.candidates() / Math.max(1, placement.whole());
        String looked = placement.candidates() < placement.whole()
                ? placement.candidates() + " of " + placement.whole() + " candidates, " + share
                        + " %, had been looked at"
                : "all " + placement.candidates()
                        + " candidates had been looked at, but not yet what lies between the best of them";
        return "The search was stopped before it found anything: " + looked
                + ". This does not mean that nothing fits. Let it run to"
                + " its end, or have fewer candidates looked at with --candidates for a quicker first answer.";
    }

    /** Where each place of a mechanism is put, an answer a column, a few of them side by side. */
    private static void places(List<Answer> answers, Style style, List<String> lines) {
        for (int from = 0; from < answers.size(); from += BESIDE) {
            int to = Math.min(answers.size(), from + BESIDE);
            lines.add("");
            Table table = new Table("l".repeat(1 + to - from));
            List<String> head = new ArrayList<>(List.of("number"));
            for (int i = from; i < to; i++) {
                head.add(Integer.toString(i + 1));
            }
            table.row(head.toArray(new String[0]));
            for (PlacedPoint seat : answers.get(0).candidate().seats()) {
                List<String> row = new ArrayList<>(List.of(seat.name()));
                answers.subList(from, to).forEach(a -> row.add(PasteText.point(a.place(seat.name()), style.units())));
                table.row(row.toArray(new String[0]));
            }
            lines.addAll(table.lines("  "));
        }
    }

    private static void table(List<Answer> answers, boolean straight, Style style, List<String> lines) {
        lines.add("");
        Table table = new Table(straight ? "rlllrrrrl" : "rlrrrrl");
        List<String> head = new ArrayList<>(List.of(""));
        if (straight) {
            head.addAll(List.of("frame pin", "tank pin"));
        }
        head.addAll(List.of("actuator", "used", "force", "up", "price", "best for"));
        table.row(head.toArray(new String[0]));
        int number = 0;
        for (Answer answer : answers) {
            Candidate candidate = answer.candidate();
            number++;
            List<String> row = new ArrayList<>(List.of(Integer.toString(number)));
            if (straight) {
                row.add(PasteText.point(answer.place(Drive.FRAME_PIN), style.units()));
                row.add(PasteText.point(answer.place(answer.design().drive().rodPinName()), style.units()));
            }
            row.addAll(List.of(
                    candidate.actuator().name(),
                    percent(candidate.utilisation()),
                    show(candidate.force(), Kind.FORCE, style.units()),
                    Double.isFinite(candidate.time()) ? Math.round(candidate.time()) + " s" : "-",
                    Double.isFinite(candidate.price()) ? Quantities.number(candidate.price()) : "-",
                    answer.aims().isEmpty()
                            ? "(good all round)"
                            : answer.aims().stream().map(Aim::words).collect(Collectors.joining(", "))));
            table.row(row.toArray(new String[0]));
        }
        lines.addAll(table.lines("  "));
        lines.addAll(
                Prose.wrap(
                        "  ",
                        "used: of what the fullest part may bear; force: the largest; up: time to raise against the heaviest load at"
                                + " each tilt, at the actuator's own voltage or flow; price: in the currency of the parts file"));
    }

    /** What the tape reads from pin to pin, tank stowed. */
    private static void apart(List<Answer> answers, Style style, List<String> lines) {
        lines.add("");
        lines.add(style.heading("Pin to pin, tank stowed"));
        Table table = new Table("rlll");
        table.row("", "the actuator's two pins", "pivot to frame pin", "pivot to tank pin");
        int number = 0;
        for (Answer answer : answers) {
            Design put = answer.design();
            Vec2 pivot = put.pivot().at();
            Skeleton skeleton = put.drive().skeleton(pivot);
            Vec2 frame = skeleton.actuator().onA();
            Vec2 tank = skeleton.actuator().onB();
            number++;
            table.row(
                    Integer.toString(number),
                    Marks.show(tank.minus(frame).norm(), style.units()),
                    Marks.show(frame.minus(pivot).norm(), style.units()),
                    Marks.show(tank.minus(pivot).norm(), style.units()));
        }
        lines.addAll(table.lines("  "));
    }

    private static void governing(List<Answer> answers, Style style, List<String> lines) {
        lines.add("");
        lines.add(style.heading("Closest to failing, after all checks"));
        int number = 0;
        for (Answer answer : answers) {
            number++;
            Finding f = answer.governing();
            String where = f == null || Double.isNaN(f.tilt())
                    ? ""
                    : " at " + show(f.tilt(), Kind.ANGLE, style.units())
                            + (f.loadCase() == null
                                    ? ""
                                    : ", "
                                            + CaseName.shown(
                                                    f.loadCase(),
                                                    answer.design().tank()));
            String what = f == null ? answer.candidate().governing().words() : f.title();
            Verdict verdict = !answer.failed().isEmpty() ? Verdict.FAIL : f == null ? Verdict.PASS : f.verdict();
            String failed = answer.failed().isEmpty()
                    ? ""
                    : "; fails: " + answer.failed().stream().map(Finding::title).collect(Collectors.joining(", "));
            lines.add("  " + number + "  "
                    + style.verdict(
                            verdict, what + " " + percent(answer.candidate().utilisation())) + where + failed);
        }
    }

    private static String show(double si, Kind kind, UnitSystem units) {
        return Quantities.show(si, kind, units);
    }

    private static String percent(double share) {
        return Math.round(1000 * share) / 10.0 + " %";
    }
}
