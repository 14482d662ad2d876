// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import tipwright.drawing.Drawing;
import tipwright.drawing.Pane;
import tipwright.drawing.Pen;
import tipwright.geometry.Vec2;
import tipwright.outline.Contour;
import tipwright.outline.MachineOutline.Seen;
import tipwright.outline.PartKind;

/** Draws the machine's outlines on a board, the same in the report, on the sheet and beside the map. */
public final class MachineInk {
    /** What is drawn thin and dashed because the design does not give it, in words. */
    public static final String SKETCHED =
            "Thin dashed lines are sketched: the design does not give them, and nothing of them is checked.";

    private static final int STEEL = 0xe2e2e2;
    private static final int SHELL = 0xf7f7f7;
    private static final int SLURRY = 0xcfdbe6;
    private static final int FAINT = 0x999999;
    private static final double DASH = 0.9;

    /** What lies behind a map. */
    static final Pen BEHIND = Pen.line("machine", FAINT, 0.18);

    private final Drawing.Board board;
    private final UnaryOperator<Vec2> paper;
    private final double scale;

    /**
     * To draw with.
     *
     * @param paper where a point of the machine is on the board, mm
     * @param scale mm on the board for a metre
     */
    public MachineInk(Drawing.Board board, UnaryOperator<Vec2> paper, double scale) {
        this.board = board;
        this.paper = paper;
        this.scale = scale;
    }

    /** Points that tell how much room parts take in a drawing, m: of the ground only how high it is. */
    public static List<Vec2> room(List<Seen> parts) {
        List<Vec2> all = new ArrayList<>();
        double middle = 0;
        for (Seen part : parts) {
            if (part.kind() == PartKind.TANK) {
                middle = part.corners().get(0).x();
            }
            if (part.kind() != PartKind.GROUND && !part.kind().limit()) {
                all.addAll(part.corners());
            }
        }
        for (Seen part : parts) {
            if (part.kind() == PartKind.GROUND) {
                all.add(new Vec2(middle, top(part)));
            }
        }
        return all;
    }

    private static double top(Seen ground) {
        return ground.corners().stream().mapToDouble(Vec2::y).max().orElse(0);
    }

    /** All parts; ground from one x to another, m. */
    public void machine(List<Seen> parts, double west, double east) {
        for (Seen part : parts) {
            if (part.kind() == PartKind.GROUND) {
                double y = top(part);
                board.line(
                        paper.apply(new Vec2(west, y)),
                        paper.apply(new Vec2(east, y)),
                        Pen.line("ground", Ink.BLACK, 0.5));
            } else if (!part.kind().limit()) {
                part.lines().forEach(line -> line(line, part.sketched() ? sketched(part) : pen(part.kind())));
            }
        }
    }

    /** All parts from above: the tank is seen through, what it hides stands out. */
    void plan(List<Seen> parts) {
        for (boolean mechanism : new boolean[] {false, true}) {
            for (Seen part : parts) {
                boolean late =
                        switch (part.kind()) {
                            case LINK, TUBE, ROD, SHAFT, BEARING, PIN, SPRING, WEIGHT -> true;
                            default -> false;
                        };
                if (late == mechanism
                        && part.kind() != PartKind.GROUND
                        && !part.kind().limit()) {
                    part.lines().forEach(line -> line(line, fromAbove(part)));
                }
            }
        }
    }

    private static Pen fromAbove(Seen part) {
        return switch (part.kind()) {
            case TANK -> Pen.line("tank-above", Ink.GREY, 0.3).dashed(3);
            case ATTACHED, OPENING, DOOR -> Pen.line("attached-above", FAINT, 0.18)
                    .dashed(1.5);
            default -> part.sketched() ? sketched(part) : pen(part.kind());
        };
    }

    /** Only what moves, without fill and dashed, where the machine is at another tilt. */
    public void ghost(List<Seen> parts) {
        for (Seen part : parts) {
            boolean shown =
                    switch (part.kind()) {
                        case TANK, ATTACHED -> true;
                        case LINK -> !part.sketched();
                        default -> false;
                    };
            if (shown) {
                String layer = part.kind() == PartKind.LINK ? "links-tipped" : "tank-tipped";
                part.lines()
                        .forEach(line ->
                                line(line, Pen.line(layer, Ink.GREY, 0.25).dashed(1.5)));
            }
        }
    }

    /** What stands still and the stowed tank, as thin lines, and only where they run through a rectangle of the board. */
    public void behind(List<Seen> parts, Pane pane) {
        for (Seen part : parts) {
            boolean shown =
                    switch (part.kind()) {
                        case TANK, ATTACHED, FRAME, REST, CROSS_MEMBER, OBSTACLE, GROUND -> true;
                        default -> false;
                    };
            if (shown) {
                for (Contour line : part.lines()) {
                    List<Vec2> p = line.corners();
                    for (int i = 0; i < p.size(); i++) {
                        List<Vec2> piece = pane.inside(paper.apply(p.get(i)), paper.apply(p.get((i + 1) % p.size())));
                        if (!piece.isEmpty()) {
                            board.path(piece, BEHIND);
                        }
                    }
                }
            }
        }
    }

    /** One line of an outline. */
    private void line(Contour line, Pen pen) {
        if (line instanceof Contour.Circle circle) {
            board.ring(paper.apply(circle.centre()), circle.radius() * scale, pen);
        } else if (line.closed()) {
            board.outline(line.corners().stream().map(paper).toList(), pen);
        } else {
            board.path(
                    line.corners().stream().map(paper).toList(),
                    new Pen(pen.layer(), pen.colour(), pen.width(), pen.dash(), Pen.NONE));
        }
    }

    private static Pen sketched(Seen part) {
        Pen thin = Pen.line("sketched", FAINT, 0.18).dashed(DASH);
        return switch (part.kind()) {
                // Ends and centres are in place, only their thickness is sketched.
            case SPRING, WEIGHT -> Pen.line("assists", Ink.BLACK, 0.25).filled(Ink.WHITE);
            case TUBE, ROD, BEARING, SHAFT, PIN, DOOR, LUG -> thin.filled(Ink.WHITE);
            default -> thin;
        };
    }

    private static Pen pen(PartKind kind) {
        return switch (kind) {
            case TANK -> Pen.line("tank", Ink.BLACK, 0.5).filled(SHELL);
            case CONTENTS -> Pen.area("contents", SLURRY);
            case ATTACHED -> Pen.line("attached", Ink.BLACK, 0.25);
            case OPENING -> Pen.line("openings", Ink.BLACK, 0.9).dashed(1.2);
            case LINK -> Pen.line("links", Ink.BLACK, 0.4).filled(Ink.WHITE);
            case TUBE, ROD -> Pen.line("actuator-body", Ink.BLACK, 0.35).filled(Ink.WHITE);
            case FRAME, REST, CROSS_MEMBER -> Pen.line("frame", Ink.BLACK, 0.25).filled(STEEL);
            case WHEEL -> Pen.line("wheels", Ink.GREY, 0.25);
            case OBSTACLE -> Pen.line("obstacles", Ink.GREY, 0.25).filled(Ink.WHITE);
            case RECEIVER -> Pen.line("receiver", Ink.BLACK, 0.7);
            default -> Pen.line(kind.name().toLowerCase(Locale.ROOT), Ink.BLACK, 0.3)
                    .filled(Ink.WHITE);
        };
    }
}
