// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tipwright.analysis.Analysis;
import tipwright.analysis.JointPlan;
import tipwright.analysis.Placement;
import tipwright.analysis.Pose;
import tipwright.design.Design;
import tipwright.design.around.Frame;
import tipwright.design.around.Ground;
import tipwright.design.around.SidePart;
import tipwright.design.drive.LinkPart;
import tipwright.design.tank.Attached;
import tipwright.design.tank.Opening;
import tipwright.geometry.Hull;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.report.Scale;
import tipwright.sheet.AssistSketch;

/** The machine from the side, stowed and at its full tilt, to one scale. */
final class MachineView {
    private static final double WIDTH = 760;
    private static final double HIGHEST = 270;
    private static final double MARGIN = 26;
    private static final double BELOW = 22;
    /** Of the tank's curved walls in the drawing, m. */
    private static final double SAG = 2e-3;

    private static final double BAR = 0.5;

    private final Analysis analysis;
    private final Design design;
    private final Scale angle = Scale.angle();
    private final StringBuilder svg = new StringBuilder();
    private double scale = 1;
    private Vec2 corner = Vec2.ZERO;

    MachineView(Analysis analysis) {
        this.analysis = analysis;
        this.design = analysis.design();
    }

    static final String LEGEND =
            "P: pivot. F: actuator's pin on the frame. T: actuator's moving pin. The bar is 500 mm (19.7 in) long.";

    /** What is added to the legend where there are springs or weights. */
    static final String ASSISTS =
            " Springs as zigzags, gas springs as tube and rod, weights as crossed blocks or rings: their ends and centres are in"
                    + " place, their thickness is only sketched.";

    Figure figure() {
        List<Pose> poses = analysis.poses();
        Pose stowed = poses.get(0);
        Pose tipped = poses.get(poses.size() - 1);
        Box box = Box.around(everything(stowed), everything(tipped));
        double half = WIDTH / 2;
        scale = Math.min((half - 2 * MARGIN) / box.width(), (HIGHEST - 2 * MARGIN) / box.height());
        double height = box.height() * scale + 2 * MARGIN + BELOW;
        view(stowed, box, MARGIN, "stowed, " + angle.show(stowed.tilt()));
        view(tipped, box, half + MARGIN, "tipped, " + angle.show(tipped.tilt()));
        bar(height);
        String caption = "From the side, at " + angle.show(stowed.tilt()) + " and at " + angle.show(tipped.tilt());
        String element = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + n(WIDTH) + " " + n(height)
                + "\" font-family=\"" + Fonts.FAMILY + "\" font-size=\"13\">" + svg + "</svg>";
        return new Figure(element, "Side view of the machine, stowed and tipped", caption);
    }

    private List<Vec2> everything(Pose pose) {
        List<Vec2> all = new ArrayList<>(tank(pose));
        all.add(pose.framePin());
        all.add(pose.tankPin());
        all.add(design.pivot().at());
        still().forEach(p -> all.addAll(p.outline()));
        attached(pose).forEach(all::addAll);
        links(pose).forEach(all::addAll);
        assists(pose).forEach(s -> all.addAll(s.points()));
        Ground ground = design.ground();
        if (ground != null) {
            all.add(new Vec2(pose.framePin().x(), ground.y()));
        }
        return all;
    }

    private List<SidePart> still() {
        Frame frame = design.frame();
        List<SidePart> all = new ArrayList<>(frame == null ? List.of() : frame.members());
        all.addAll(design.obstacles());
        return all;
    }

    private List<Vec2> tank(Pose pose) {
        List<Vec2> outline = design.tank().outline();
        if (outline.isEmpty()) {
            Mesh mesh = design.tank().interior().solid().mesh(SAG);
            List<Vec2> points = new ArrayList<>();
            for (int i = 0; i < mesh.xyz().length / 3; i++) {
                points.add(mesh.vertex(i).xy());
            }
            outline = Hull.around(points);
        }
        return place(outline, pose, pose.tank());
    }

    private List<List<Vec2>> attached(Pose pose) {
        return design.tank().attached().stream()
                .map(Attached::outline)
                .filter(o -> !o.isEmpty())
                .map(o -> place(o, pose, pose.tank()))
                .toList();
    }

    private List<List<Vec2>> links(Pose pose) {
        List<List<Vec2>> all = new ArrayList<>();
        for (int body = 1; body < pose.bodies().size(); body++) {
            if (body == pose.tank()) {
                continue;
            }
            String name = pose.bodies().get(body).body();
            List<Vec2> pins = new ArrayList<>();
            for (JointPlan joint : analysis.mechanism().joints()) {
                if (joint.a() == body || joint.b() == body) {
                    pins.add(pose.bodies().get(body).place(joint.at()));
                }
            }
            if (analysis.mechanism().actuatorTo() == body) {
                pins.add(pose.tankPin());
            }
            all.add(pins);
            for (LinkPart part : design.links()) {
                if (part.body().equals(name)) {
                    all.add(place(part.outline(), pose, body));
                }
            }
        }
        return all;
    }

    private List<AssistSketch.Stroke> assists(Pose pose) {
        return AssistSketch.of(design, (body, stowed) -> pose.bodies().get(body).place(stowed));
    }

    private static List<Vec2> place(List<Vec2> stowed, Pose pose, int body) {
        Placement placement = pose.bodies().get(body);
        return stowed.stream().map(placement::place).toList();
    }

    private void view(Pose pose, Box box, double left, String title) {
        corner = new Vec2(left - box.low().x() * scale, MARGIN + box.high().y() * scale);
        Ground ground = design.ground();
        if (ground != null) {
            line(new Vec2(box.low().x(), ground.y()), new Vec2(box.high().x(), ground.y()), 2.5, "");
        }
        still().forEach(p -> polygon(p.outline(), "#d9d9d9", 1, ""));
        polygon(tank(pose), "#f2f2f2", 2, "");
        attached(pose).forEach(o -> polygon(o, "none", 1, "4 3"));
        for (Opening opening : design.tank().openings()) {
            opening(opening, pose);
        }
        links(pose).forEach(o -> polygon(o, "#ffffff", 3, ""));
        for (AssistSketch.Stroke s : assists(pose)) {
            String path = path(s.points()) + (s.closed() ? "Z" : "");
            stroke(path, s.closed() ? "#ffffff" : "none", s.thin() ? 0.8 : 1.5, "");
        }
        actuator(pose);
        pin(pose.framePin(), "F");
        pin(pose.tankPin(), "T");
        pin(pivot(pose), "P");
        text(left + box.width() * scale / 2, MARGIN - 10, title, "middle");
    }

    /** The axis of the bearings; it moves where the machine carries it along. */
    private Vec2 pivot(Pose pose) {
        int joint = analysis.mechanism().pivot();
        if (joint < 0) {
            return design.pivot().at();
        }
        JointPlan plan = analysis.mechanism().joints().get(joint);
        return pose.bodies().get(plan.b()).place(plan.at());
    }

    private void opening(Opening opening, Pose pose) {
        List<Vec3> rim = opening.rimPoints();
        Vec2 first = rim.get(0).xy();
        Vec2 low = farthest(rim, first);
        Vec2 high = farthest(rim, low);
        List<Vec2> ends = place(List.of(low, high), pose, pose.tank());
        line(ends.get(0), ends.get(1), 5, "3 2");
    }

    private static Vec2 farthest(List<Vec3> rim, Vec2 from) {
        Vec2 best = from;
        for (Vec3 p : rim) {
            best = p.xy().minus(from).norm() > best.minus(from).norm() ? p.xy() : best;
        }
        return best;
    }

    /** The body as thick as drawn in; the rod thinner. */
    private void actuator(Pose pose) {
        double closed = design.drive().actuators().get(0).actuator().closed();
        Vec2 along = pose.tankPin().minus(pose.framePin());
        Vec2 end = pose.framePin().plus(along.times(Math.min(1, 0.85 * closed / pose.length())));
        line(pose.framePin(), pose.tankPin(), 3, "");
        line(pose.framePin(), end, 8, "");
    }

    private void pin(Vec2 at, String letter) {
        Vec2 p = paper(at);
        svg.append("<circle cx=\"" + n(p.x()) + "\" cy=\"" + n(p.y())
                + "\" r=\"4\" fill=\"#ffffff\" stroke=\"#000000\" stroke-width=\"2\"/>");
        svg.append("<rect x=\"" + n(p.x() + 6) + "\" y=\"" + n(p.y() + 1)
                + "\" width=\"12\" height=\"14\" fill=\"#ffffff\"/>");
        text(p.x() + 12, p.y() + 12.5, letter, "middle");
    }

    private void bar(double height) {
        double y = height - 10;
        double left = WIDTH / 2 - BAR * scale / 2;
        svg.append("<path d=\"M" + n(left) + " " + n(y - 5) + "v10m0 -5h" + n(BAR * scale)
                + "m0 -5v10\" fill=\"none\" stroke=\"#000000\" stroke-width=\"1.5\"/>");
        text(left - 8, y + 4, "500 mm", "end");
    }

    private void polygon(List<Vec2> points, String fill, double width, String dash) {
        stroke(path(points) + "Z", fill, width, dash);
    }

    private String path(List<Vec2> points) {
        StringBuilder path = new StringBuilder();
        for (Vec2 point : points) {
            Vec2 p = paper(point);
            path.append(path.isEmpty() ? "M" : "L").append(n(p.x())).append(' ').append(n(p.y()));
        }
        return path.toString();
    }

    private void line(Vec2 from, Vec2 to, double width, String dash) {
        Vec2 a = paper(from);
        Vec2 b = paper(to);
        stroke("M" + n(a.x()) + " " + n(a.y()) + "L" + n(b.x()) + " " + n(b.y()), "none", width, dash);
    }

    private void stroke(String path, String fill, double width, String dash) {
        svg.append("<path d=\"" + path + "\" fill=\"" + fill + "\" stroke=\"#000000\" stroke-linejoin=\"round\""
                + " stroke-width=\"" + n(width) + "\"" + (dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"")
                + "/>");
    }

    private void text(double x, double y, String text, String anchor) {
        svg.append("<text x=\"" + n(x) + "\" y=\"" + n(y) + "\" text-anchor=\"" + anchor + "\">" + Markup.safe(text)
                + "</text>");
    }

    private Vec2 paper(Vec2 p) {
        return new Vec2(corner.x() + p.x() * scale, corner.y() - p.y() * scale);
    }

    private static String n(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    /** The room that points take. */
    private record Box(Vec2 low, Vec2 high) {
        static Box around(List<Vec2> a, List<Vec2> b) {
            Vec2 low = a.get(0);
            Vec2 high = low;
            List<Vec2> all = new ArrayList<>(a);
            all.addAll(b);
            for (Vec2 p : all) {
                low = new Vec2(Math.min(low.x(), p.x()), Math.min(low.y(), p.y()));
                high = new Vec2(Math.max(high.x(), p.x()), Math.max(high.y(), p.y()));
            }
            return new Box(low, high);
        }

        double width() {
            return high.x() - low.x();
        }

        double height() {
            return high.y() - low.y();
        }
    }
}
