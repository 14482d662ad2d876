// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import tipwright.check.joint.SteelBehindCheck;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.around.CrossMember;
import tipwright.design.around.Frame;
import tipwright.design.drive.Anchor;
import tipwright.design.drive.Counterweight;
import tipwright.design.drive.Drive;
import tipwright.design.drive.Free;
import tipwright.design.drive.LinkPart;
import tipwright.design.joint.Fastening;
import tipwright.design.key.Annotated;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Skeleton;
import tipwright.placement.Answer;
import tipwright.placement.PlacedPoint;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;

/** Lines of a design file that make an answer of the search the design. */
final class PasteText {
    private static final double ON_MARK = 1e-6;

    private final Design design;
    private final Answer answer;
    private final UnitSystem units;
    private final List<String> lines = new ArrayList<>();

    private PasteText(Design design, Answer answer, UnitSystem units) {
        this.design = design;
        this.answer = answer;
        this.units = units;
    }

    /** The lines for an answer to a design. */
    static List<String> lines(Design design, Answer answer, UnitSystem units) {
        PasteText text = new PasteText(design, answer, units);
        text.pivot();
        text.drive(answer.design().drive());
        text.links(answer.design());
        text.fastenings(answer.design());
        return text.lines;
    }

    private void pivot() {
        for (PlacedPoint seat : answer.candidate().seats()) {
            if (seat.name().equals(Skeleton.PIVOT) && !seat.at().equals(seat.drawn())) {
                lines.add("pivot:");
                lines.add("  at: " + point(seat.at(), units));
            }
        }
    }

    private void drive(Drive moved) {
        lines.add("drive:");
        lines.add("  " + Annotated.of(moved.getClass()).word() + ":");
        if (design.drive() instanceof Free drawn && moved instanceof Free free) {
            free(drawn, free);
        } else {
            moved.places(answer.design().pivot().at()).forEach((name, at) -> {
                boolean could = moved.direct()
                        || answer.candidate().seats().stream()
                                .anyMatch(seat -> seat.name().equals(name));
                if (could && !name.equals(Skeleton.PIVOT)) {
                    lines.add("    " + name + ": " + point(at, units));
                }
            });
        }
        lines.add("    actuators:");
        for (PlacedActuator placed : moved.actuators()) {
            String z = "      - {z: " + length(placed.z(), units) + ", actuator: ";
            boolean drawn =
                    design.mounts() != null && design.mounts().actuators().isEmpty();
            lines.add(
                    drawn
                            ? z + "...}   # as it is"
                            : z + answer.candidate().actuator().name() + "}");
        }
    }

    /** The entries of a free mechanism that moved; the others stay as they are. */
    private void free(Free drawn, Free moved) {
        List<String> pins = new ArrayList<>();
        for (int i = 0; i < drawn.pins().size(); i++) {
            Vec2 at = moved.pins().get(i).at();
            if (at != null && !at.equals(drawn.pins().get(i).at())) {
                pins.add("      - {name: " + drawn.pins().get(i).name() + ", at: " + point(at, units) + "}");
            }
        }
        entries("pins", pins);
        List<String> slides = new ArrayList<>();
        for (int i = 0; i < drawn.slides().size(); i++) {
            Vec2 at = moved.slides().get(i).at();
            if (!at.equals(drawn.slides().get(i).at())) {
                slides.add("      - {name: " + drawn.slides().get(i).name() + ", at: " + point(at, units) + "}");
            }
        }
        entries("slides", slides);
        anchor("from", moved.from());
        anchor("to", moved.to());
    }

    private void entries(String key, List<String> entries) {
        if (!entries.isEmpty()) {
            lines.add("    " + key + ":   # the rest of these entries stays as it is");
            lines.addAll(entries);
        }
    }

    private void anchor(String key, Anchor anchor) {
        lines.add("    " + key + ": {body: " + anchor.body() + ", at: " + point(anchor.at(), units) + "}");
    }

    /** What is drawn of the links and hangs on them, where it went along. */
    private void links(Design moved) {
        if (!moved.links().equals(design.links())) {
            lines.add("links:");
            for (LinkPart link : moved.links()) {
                String outline =
                        link.outline().stream().map(p -> point(p, units)).collect(Collectors.joining(", "));
                String z = link.z().stream().map(at -> length(at, units)).collect(Collectors.joining(", "));
                lines.add("  - {body: " + link.body() + ", outline: [" + outline + "]"
                        + (z.isEmpty() ? "" : ", z: [" + z + "]") + "}");
            }
        }
        List<String> weights = new ArrayList<>();
        for (int i = 0; i < moved.assists().size(); i++) {
            if (moved.assists().get(i) instanceof Counterweight w
                    && !w.equals(design.assists().get(i))) {
                weights.add("  - {name: " + w.name() + ", centre: " + point(w.centre(), units) + "}");
            }
        }
        if (!weights.isEmpty()) {
            lines.add("assists:   # the rest of these entries stays as it is");
            lines.addAll(weights);
        }
    }

    /** What holds the pins, and the tube under the frame pin, where they went along. */
    private void fastenings(Design moved) {
        List<String> entries = new ArrayList<>();
        Set<String> untold = new LinkedHashSet<>();
        for (int i = 0; i < moved.fastenings().size(); i++) {
            Fastening f = moved.fastenings().get(i);
            if (!f.equals(design.fastenings().get(i))) {
                entries.add("  - {" + String.join(", ", keys(f)) + "}");
                if (SteelBehindCheck.untold(answer.findings(), f.joint())) {
                    untold.add(NameId.words(f.joint()));
                }
            }
        }
        if (!entries.isEmpty()) {
            lines.add("# Brackets go with their pins, along the plate that they stand on.");
            if (!untold.isEmpty()) {
                lines.add("# See that there is steel behind them there: " + String.join(", ", untold) + ".");
            }
            lines.add("fastenings:   # the rest of these entries stays as it is");
            lines.addAll(entries);
        }
        Frame frame = moved.frame();
        CrossMember member = frame == null ? null : frame.crossMember();
        if (member != null
                && design.frame() != null
                && !member.equals(design.frame().crossMember())) {
            lines.add("frame:   # the rest stays as it is");
            lines.add("  cross-member: {at: " + point(member.at(), units) + "}");
        }
    }

    private List<String> keys(Fastening f) {
        List<String> keys = new ArrayList<>(List.of("joint: " + f.joint()));
        f.places().forEach((piece, at) -> keys.add(piece + ": {at: " + point(at, units) + "}"));
        if (f.height() != null) {
            keys.add("height: " + length(f.height(), units));
        }
        return keys;
    }

    private static String point(Vec3 p, UnitSystem units) {
        return "[" + length(p.x(), units) + ", " + length(p.y(), units) + ", " + length(p.z(), units) + "]";
    }

    static String point(Vec2 p, UnitSystem units) {
        return "[" + length(p.x(), units) + ", " + length(p.y(), units) + "]";
    }

    /** As on the tape where it is on a mark; else to a tenth of a millimetre or a thousandth of an inch. */
    static String length(double m, UnitSystem units) {
        boolean metric = units == UnitSystem.METRIC;
        if (Math.abs(m - Marks.rounded(m, units)) < ON_MARK) {
            return Marks.show(m, units);
        }
        BigDecimal value = BigDecimal.valueOf(m / (metric ? 0.001 : 0.0254))
                .setScale(metric ? 1 : 3, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return value.toPlainString() + (metric ? " mm" : " in");
    }
}
