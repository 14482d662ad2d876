// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import tipwright.analysis.Analysis;
import tipwright.analysis.BodyPosition;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.design.NumberedPlace;
import tipwright.design.tank.CaseName;
import tipwright.geometry.Vec2;
import tipwright.outline.Contour;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachineOutline.Seen;
import tipwright.outline.MachinePose;
import tipwright.outline.PartKind;
import tipwright.outline.Room;
import tipwright.outline.View;

/**
 * The side view that a page tips: the outlines once, and at each tilt where every body is. Parts whose shape changes have their
 * outline at each tilt. All in mm.
 */
final class TiltPicture {
    private static final double MM = 1000;
    private static final double MARGIN = 0.06;
    private static final double LETTERS = 0.034;
    /** Corners that change less are left out, m. */
    private static final double TOLERANCE = 0.004;

    private static final int TUBE = -1;
    private static final int ROD = -2;
    private static final int NONE = -1;

    private final Analysis analysis;
    private final PlaceMarks marks;
    private final MachineOutline machine;
    private final List<Seen> fixed;
    private final Map<String, Integer> slots = new LinkedHashMap<>();
    private final Map<String, PartKind> kinds = new HashMap<>();
    private final Map<String, Integer> shapes = new LinkedHashMap<>();
    private final List<List<int[]>> seen = new ArrayList<>();

    /** Of an analysed design with these load cases. */
    TiltPicture(Analysis analysis, List<CaseResult> cases) {
        this.analysis = analysis;
        this.marks = new PlaceMarks(analysis);
        this.machine = new MachineOutline(analysis);
        this.fixed = machine.fixed().stream().filter(s -> !s.kind().limit()).toList();
        for (CaseResult c : cases) {
            boolean shut = CaseName.of(c.name()).map(CaseName::outletShut).orElse(false);
            List<int[]> rows = new ArrayList<>();
            for (Row row : c.rows()) {
                MachinePose now = MachinePose.of(row);
                rows.add(look(machine.changing(shut ? now.doorsShut() : now, View.SIDE)));
            }
            seen.add(rows);
        }
    }

    /** Numbers of the shapes that are seen, by slot. */
    private int[] look(List<Seen> parts) {
        Map<Integer, Integer> found = new HashMap<>();
        for (Seen part : parts) {
            String key = part.kind() + " " + part.name();
            kinds.put(key, part.kind());
            int slot = slots.computeIfAbsent(key, k -> slots.size());
            found.put(slot, shapes.computeIfAbsent(path(part.lines()), k -> shapes.size()));
        }
        int[] here = new int[slots.size()];
        for (int i = 0; i < here.length; i++) {
            here[i] = found.getOrDefault(i, NONE);
        }
        return here;
    }

    /** The element, at the first tilt of the first load case. */
    String svg() {
        Room room = machine.room();
        double left = room.low().x() * MM;
        double width = room.high().x() * MM - left;
        double low = room.low().y() * MM;
        double height = room.high().y() * MM - low;
        double edge = MARGIN * Math.max(width, height);
        StringBuilder out = new StringBuilder("<svg id=\"machine\" xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" ")
                .append("aria-label=\"Side view of the machine at the tilt that is set below\" viewBox=\"")
                .append(String.format(
                        Locale.ROOT,
                        "%d %d %d %d",
                        Math.round(left - edge),
                        Math.round(-low - height - edge),
                        Math.round(width + 2 * edge),
                        Math.round(height + 2 * edge)))
                .append("\"><g transform=\"scale(1 -1)\">\n");
        for (PartKind kind : PartKind.values()) {
            layer(out, kind.layer(), left - edge, left + width + edge);
        }
        out.append("</g>\n");
        double size = LETTERS * Math.max(width, height);
        for (Map.Entry<NumberedPlace, Vec2> pin :
                marks.at(analysis.poses().get(0)).entrySet()) {
            int number = pin.getKey().number();
            out.append("<g class=\"letter\" data-pin=\"").append(number).append("\" transform=\"translate(");
            out.append(mm(pin.getValue().x()))
                    .append(' ')
                    .append(mm(-pin.getValue().y()));
            out.append(String.format(
                    Locale.ROOT,
                    ")\"><circle r=\"%d\"/><text y=\"%d\" font-size=\"%d\">%d</text></g>%n",
                    Math.round(size * 0.62),
                    Math.round(size * 0.36),
                    Math.round(size),
                    number));
        }
        return out.append("</svg>").toString();
    }

    /** Everything of one layer: of each kind, since the layers are those of the kinds. */
    private void layer(StringBuilder out, int wanted, double west, double east) {
        for (Seen part : fixed) {
            if (part.kind().layer() == wanted) {
                String d = part.kind() == PartKind.GROUND ? ground(part, west, east) : path(part.lines());
                out.append("<path class=\"").append(style(part)).append('"').append(placed(part));
                out.append(" d=\"").append(d).append("\"/>\n");
            }
        }
        slots.forEach((key, slot) -> {
            PartKind kind = kinds.get(key);
            if (kind != null && kind.layer() == wanted) {
                int first = seen.isEmpty() || seen.get(0).isEmpty()
                        ? NONE
                        : at(seen.get(0).get(0), slot);
                String d = first < 0 ? "" : List.copyOf(shapes.keySet()).get(first);
                out.append("<path class=\"")
                        .append(word(kind))
                        .append("\" data-slot=\"")
                        .append(slot);
                out.append("\" d=\"").append(d).append("\"/>\n");
            }
        });
    }

    private static String ground(Seen part, double west, double east) {
        double y = part.corners().stream().mapToDouble(Vec2::y).max().orElse(0);
        return "M" + Math.round(west) + " " + mm(y) + "H" + Math.round(east);
    }

    private String placed(Seen part) {
        int frame = frame(part);
        if (frame == 0) {
            return "";
        }
        return " data-frame=\"" + frame + "\" transform=\""
                + turned(frame, analysis.poses().get(0)) + "\"";
    }

    private String turned(int frame, Pose pose) {
        double[] at = position(frame, pose);
        return "translate(" + plain(at[0]) + " " + plain(at[1]) + ") rotate(" + plain(at[2]) + ")";
    }

    /** Body that a part moves with; the frame of the machine, which stands still, is 0. */
    private static int frame(Seen part) {
        return switch (part.kind()) {
            case TUBE -> TUBE;
            case ROD -> ROD;
            default -> part.body();
        };
    }

    /** x, y in mm and the turn in degrees, positive from x to y. */
    private static double[] position(int frame, Pose pose) {
        BodyPosition at = frame >= 0
                ? pose.bodies().get(frame)
                : MachinePose.alongActuator(pose.framePin(), pose.tankPin(), frame == TUBE);
        return new double[] {
            tenth(at.origin().x() * MM),
            tenth(at.origin().y() * MM),
            Math.rint(-Math.toDegrees(at.turn()) * 1000) / 1000
        };
    }

    private static double tenth(double value) {
        return Math.rint(value * 10) / 10;
    }

    /** The fields of the table that move the picture, as JSON without its braces. */
    String json() {
        Set<Integer> frames = new TreeSet<>();
        fixed.forEach(part -> frames.add(frame(part)));
        frames.remove(0);
        StringBuilder out = new StringBuilder("\"frames\":{");
        String next = "";
        for (int frame : frames) {
            out.append(next).append('"').append(frame).append("\":[");
            out.append(poses(pose -> numbers(position(frame, pose)))).append(']');
            next = ",";
        }
        out.append("},\n\"pins\":{");
        next = "";
        for (NumberedPlace pin : marks.at(analysis.poses().get(0)).keySet()) {
            out.append(next).append('"').append(pin.number()).append("\":[");
            out.append(poses(pose -> {
                Vec2 at = marks.at(pose).getOrDefault(pin, Vec2.ZERO);
                return numbers(new double[] {Math.rint(at.x() * MM), Math.rint(at.y() * MM)});
            }));
            out.append(']');
            next = ",";
        }
        return out.append("},\n\"shapes\":[\"")
                .append(String.join("\",\n\"", shapes.keySet()))
                .append("\"]")
                .toString();
    }

    private String poses(java.util.function.Function<Pose, String> of) {
        return String.join(",", analysis.poses().stream().map(of).toList());
    }

    /** By slot the number of its shape at each tilt, -1 for none: of one load case, as JSON. */
    String shapes(int loadCase) {
        List<String> rows = new ArrayList<>();
        for (int[] row : seen.get(loadCase)) {
            double[] all = new double[slots.size()];
            for (int i = 0; i < all.length; i++) {
                all[i] = at(row, i);
            }
            rows.add(numbers(all));
        }
        return "[" + String.join(",", rows) + "]";
    }

    private static int at(int[] row, int slot) {
        return slot < row.length ? row[slot] : NONE;
    }

    private static String numbers(double[] values) {
        StringBuilder out = new StringBuilder("[");
        for (int i = 0; i < values.length; i++) {
            out.append(i == 0 ? "" : ",").append(plain(values[i]));
        }
        return out.append(']').toString();
    }

    private static String plain(double value) {
        long whole = Math.round(value);
        return value == whole ? Long.toString(whole) : Double.toString(value);
    }

    private static long mm(double m) {
        return Math.round(m * MM);
    }

    private static String style(Seen part) {
        return word(part.kind()) + (part.sketched() ? " sketched" : "");
    }

    private static String word(PartKind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String path(List<Contour> lines) {
        StringBuilder out = new StringBuilder();
        for (Contour line : lines) {
            if (line instanceof Contour.Circle circle) {
                long r = Math.max(1, mm(circle.radius()));
                out.append('M')
                        .append(mm(circle.centre().x()) - r)
                        .append(' ')
                        .append(mm(circle.centre().y()));
                out.append("a").append(r + " " + r + " 0 1 0 " + 2 * r + " 0");
                out.append("a").append(r + " " + r + " 0 1 0 " + -2 * r + " 0Z");
            } else {
                polyline(out, line);
            }
        }
        return out.toString().replace(" -", "-");
    }

    /** Corners in whole mm; those that hardly change the line are left out. */
    private static void polyline(StringBuilder out, Contour line) {
        List<long[]> kept = new ArrayList<>();
        for (Vec2 corner : line.simpler(TOLERANCE).corners()) {
            long[] p = {mm(corner.x()), mm(corner.y())};
            int n = kept.size();
            if (n == 0 || kept.get(n - 1)[0] != p[0] || kept.get(n - 1)[1] != p[1]) {
                kept.add(p);
            }
        }
        for (int i = 0; i < kept.size(); i++) {
            long[] before = i == 0 ? new long[2] : kept.get(i - 1);
            out.append(i == 0 ? "M" : i == 1 ? "l" : " ").append(kept.get(i)[0] - before[0]);
            out.append(' ').append(kept.get(i)[1] - before[1]);
        }
        out.append(line.closed() && !kept.isEmpty() ? "Z" : "");
    }
}
