// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import tipwright.check.rule.Verdict;
import tipwright.design.around.Receiver;
import tipwright.design.tank.CaseName;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Fill;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.dump.MachineState;

/** Words and figures on the picture: tilt, load case, the size of each arrow, and what the colours mean. */
public final class SceneText extends Pane {
    private static final double MARGIN = 22;
    /** Of small letters over the usual ones. */
    private static final double SMALL = 0.85;
    /** How much a plate under letters hides of what is behind. */
    private static final double PLATE = 0.65;

    private static final double LEAST = 5e-5;
    private static final int MOST_LABELS = 4;
    private static final String MADE_UP = "only drawn, not in the file";
    /** From the near edge of the pit to its name, m. */
    private static final double AHEAD = 0.6;
    /** Letters by the height of the picture, which they go with in pictures without a window, pixels. */
    private static final double OF_HEIGHT = 1 / 44.0;

    /** Smallest and largest letters beside the height of a window's text. */
    private static final double LEAST_EM = 0.93;

    private static final double MOST_EM = 1.25;

    /** How many letters wide a picture has to be for long sentences. */
    private static final double WIDE = 52;
    /** The same for what the picture shows that the file does not give. */
    private static final double BROAD = 90;
    /** Share of the width of a picture that a line of the legend may take, or it runs into the machine or the metre bar. */
    private static final double ONE_LINE = 0.38;
    /** The same of its height; where the legend would take more, it tells only what the file does not give. */
    private static final double LOW = 0.36;

    private Theme theme = Theme.DARK;
    private UnitSystem units = UnitSystem.METRIC;
    private String note = "";
    private boolean brief;
    private double em;
    private boolean wide = true;

    SceneText() {
        setMouseTransparent(true);
    }

    void setTheme(Theme other) {
        theme = other;
    }

    UnitSystem units() {
        return units;
    }

    /** In which units; true when they are others than before. */
    boolean setUnits(UnitSystem other) {
        boolean changed = units != other;
        units = other;
        return changed;
    }

    /**
     * Letters as high as a window's text or a little higher, pixels; without a window they go by the picture alone. True when the size is
     * another than before.
     */
    boolean setTextSize(double pixels) {
        boolean changed = em != pixels;
        em = pixels;
        return changed;
    }

    private double size(double height) {
        double byHeight = height * OF_HEIGHT;
        return em > 0
                ? Math.max(LEAST_EM * em, Math.min(MOST_EM * em, byHeight))
                : Math.max(11, Math.min(20, byHeight));
    }

    /** A line under the load case, such as the time or where the motion stops. */
    public void setNote(String text) {
        note = text;
    }

    /** Whether the title is all there is, to leave the picture to something else; true when that is new. */
    boolean setBrief(boolean only) {
        boolean other = only != brief;
        brief = only;
        return other;
    }

    void show(MachineScene machine, MachineState now, Camera camera, double width, double height) {
        List<Node> all = new ArrayList<>();
        double size = size(height);
        wide = width > WIDE * size;
        title(all, machine, now, size);
        if (brief) {
            all.add(0, behind(all, size));
            getChildren().setAll(all);
            return;
        }
        List<Node> title = List.copyOf(all);
        all.clear();
        title.forEach(line -> all.add(plate(List.of(line), 0.15 * size)));
        all.addAll(title);
        Rectangle legend = legend(all, machine, now, size, width, height);
        MachineScene.Anchors anchors = machine.anchors(now);
        List<double[]> taken = new ArrayList<>();
        double each = now.rest().force() / Math.max(1, anchors.pushes().size());
        List<MarkPart.Label> labels = machine.labels(now);
        for (MarkPart.Label l : labels.subList(0, Math.min(MOST_LABELS, labels.size()))) {
            Color colour = theme.verdict(l.mark().failing() ? Verdict.FAIL : Verdict.CLOSE);
            String words =
                    (l.mark().failing() ? "FAILS  " : "CLOSE  ") + l.mark().label();
            tag(all, taken, words, l.at(), colour, camera, size, width, height);
        }
        // at rest: on the way up friction asks for more
        String verb = each >= 0 ? "holds " : "holds back ";
        for (Vec3 p : anchors.pushes()) {
            tag(all, taken, verb + show(Math.abs(each), Kind.FORCE), p, theme.push(), camera, size, width, height);
        }
        for (int i = 0; i < anchors.loads().size(); i++) {
            String load = show(now.rest().bearings().get(i).norm(), Kind.FORCE);
            tag(
                    all,
                    taken,
                    machine.dump().design().pivot().name(i) + "  " + load,
                    anchors.loads().get(i),
                    theme.bearing(),
                    camera,
                    size,
                    width,
                    height);
        }
        Vec2 bar = camera.project(anchors.bar(), width, height);
        Vec2 end = camera.project(anchors.bar().plus(new Vec3(1, 0, 0)), width, height);
        Text metre =
                text(units == UnitSystem.US ? "1 m = 3.28 ft" : "1 m", SMALL * size, theme.ink(), FontWeight.NORMAL);
        Vec2 room = new Vec2(metre.getLayoutBounds().getWidth(), 1.2 * size);
        BarName.Box under =
                new BarName.Box(0, legend.getY() - room.y(), legend.getX() + legend.getWidth() + 0.5 * size, height);
        Vec2 beside = BarName.place(bar, end, room, under, 0.9 * size, new Vec2(width, height));
        name(all, metre, beside.x(), beside.y(), legend, size, height);
        Receiver receiver = machine.dump().design().receiver();
        if (receiver != null && anchors.pit().walled()) {
            double in = Math.min(AHEAD, (anchors.pit().east() - anchors.pit().west()) / 2);
            Vec3 edge = new Vec3(anchors.pit().west() + in, anchors.pit().top(), 0);
            Vec2 at = camera.project(edge, width, height);
            Text pit = text(receiver.name(), SMALL * size, theme.ink(), FontWeight.NORMAL);
            room = new Vec2(pit.getLayoutBounds().getWidth(), 1.2 * size);
            double low = BarName.off(at.plus(new Vec2(0, 0.4 * size)), room, bar, end, 0.9 * size);
            name(all, pit, at.x(), low, legend, size, height);
        }
        // letters after all else: one kind after the other is drawn sooner than both in turn
        all.sort(Comparator.comparing(Text.class::isInstance));
        getChildren().setAll(all);
    }

    /** What something on the ground is called, on a plate, beside the legend where the two would meet and above the foot of the picture. */
    private void name(List<Node> all, Text name, double x, double y, Rectangle legend, double size, double height) {
        double right = legend.getX() + legend.getWidth();
        double low = Math.min(height - 1.4 * size, y);
        boolean meets = x < right + 0.5 * size && low + 1.2 * size > legend.getY();
        name.setX(meets ? right + 0.8 * size : x);
        name.setY(low);
        boolean taken = all.stream()
                .anyMatch(n -> n instanceof Text && n.getLayoutBounds().intersects(name.getLayoutBounds()));
        name.setY(taken ? low - 1.6 * size : low);
        all.add(plate(List.of(name), 0.3 * size));
        all.add(name);
    }

    /** Keeps letters apart from what they lie over; not seen in large pictures without a window. */
    private Rectangle plate(List<Node> words, double edge) {
        javafx.geometry.Bounds first = words.get(0).getLayoutBounds();
        double west = first.getMinX();
        double east = first.getMaxX();
        double top = first.getMinY();
        double low = first.getMaxY();
        for (Node word : words) {
            west = Math.min(west, word.getLayoutBounds().getMinX());
            east = Math.max(east, word.getLayoutBounds().getMaxX());
            top = Math.min(top, word.getLayoutBounds().getMinY());
            low = Math.max(low, word.getLayoutBounds().getMaxY());
        }
        Rectangle plate = new Rectangle(west - edge, top - edge, east - west + 2 * edge, low - top + 2 * edge);
        plate.setArcWidth(8);
        plate.setArcHeight(8);
        plate.setFill(em == 0 && wide ? Color.TRANSPARENT : theme.back().deriveColor(0, 1, 1, PLATE));
        return plate;
    }

    private String show(double si, Kind kind) {
        return Quantities.show(si, kind, units);
    }

    private Rectangle behind(List<Node> words, double size) {
        double right = words.stream()
                .mapToDouble(n -> n.getLayoutBounds().getMaxX())
                .max()
                .orElse(0);
        double low = words.stream()
                .mapToDouble(n -> n.getLayoutBounds().getMaxY())
                .max()
                .orElse(0);
        Rectangle box = new Rectangle(MARGIN - size, MARGIN - size, right - MARGIN + 2 * size, low - MARGIN + 2 * size);
        box.setArcWidth(10);
        box.setArcHeight(10);
        box.setFill(theme.panel().deriveColor(0, 1, 1, 0.88));
        return box;
    }

    private void title(List<Node> all, MachineScene machine, MachineState now, double size) {
        String tilt = String.format(Locale.ROOT, "%.1f\u00b0", Math.toDegrees(now.tilt()));
        double y = MARGIN;
        y = line(all, machine.dump().design().name(), size, theme.ink(), FontWeight.BOLD, y);
        String about =
                CaseName.about(machine.loadCase(), machine.dump().design().tank());
        y = line(
                all,
                CaseName.shown(machine.loadCase(), machine.dump().design().tank()) + (wide ? ": " + about : ""),
                SMALL * size,
                theme.faint(),
                FontWeight.NORMAL,
                y + 0.15 * size);
        y = line(all, "tilt " + tilt, 2.1 * size, theme.ink(), FontWeight.BOLD, y + 0.3 * size);
        Fill fill = now.fill();
        String inside = fill == null || fill.volume() < LEAST
                ? "nothing inside, "
                : Quantities.rough(fill.volume(), Kind.VOLUME, units) + " inside, ";
        y = line(all, inside + show(now.mass(), Kind.MASS) + " in all", size, theme.ink(), FontWeight.NORMAL, y);
        if (!note.isEmpty()) {
            line(all, note, SMALL * size, theme.faint(), FontWeight.NORMAL, y + 0.15 * size);
        }
    }

    private static double line(List<Node> all, String words, double size, Color colour, FontWeight weight, double y) {
        Text text = text(words, size, colour, weight);
        text.setX(MARGIN);
        text.setY(y);
        all.add(text);
        return y + 1.3 * size;
    }

    /** Puts the legend in, every line on a plate of its own; returns the room that it takes. */
    private Rectangle legend(
            List<Node> into, MachineScene machine, MachineState now, double size, double width, double height) {
        boolean broad = (em == 0 && wide) || width > BROAD * size;
        double row = 1.5 * size;
        double small = SMALL * size;
        List<Node> all = new ArrayList<>();
        List<Runnable> rows = new ArrayList<>();
        double[] y = {0};
        Fill fill = now.fill();
        boolean cake = fill != null && fill.stuff() == Fill.Stuff.CAKE;
        String drawn = show(ArrowPart.told(machine.newtonsPerMetre(), units), Kind.FORCE)
                + (units == UnitSystem.US ? " for each foot of arrow" : " for each metre of arrow");
        rows.add(() -> swatch(
                all,
                fill == null ? null : cake ? theme.cakeSurface() : theme.liquidSurface(),
                fill == null ? "nothing inside" : cake ? "settled solids" : "liquid slurry",
                y[0],
                small));
        rows.add(() -> arrow(all, theme.push(), "actuator on tank" + (wide ? ", " + drawn : ""), y[0], small));
        rows.add(() -> arrow(
                all, theme.bearing(), wide ? "tank on each bearing, same scale" : "tank on bearing", y[0], small));
        rows.add(
                () -> dot(all, theme.centroid(), wide ? "centre of mass and its path" : "centre of mass", y[0], small));
        if (!machine.dump().design().obstacles().isEmpty()) {
            rows.add(() -> swatch(all, theme.obstacle(), "must not be hit", y[0], small));
        }
        MachineScene.Sketch sketch = machine.sketch();
        if (!sketch.words().isEmpty()) {
            String what = String.join(", ", sketch.words());
            Text line = text(what + ": " + MADE_UP, small, theme.ink(), FontWeight.NORMAL);
            boolean fits = broad && line.getLayoutBounds().getWidth() < ONE_LINE * width;
            String words = fits ? line.getText() : wide ? MADE_UP + ":" : MADE_UP;
            rows.add(() -> swatch(all, theme.cradle(), words, y[0], small));
            if (wide && !fits) {
                rows.add(() -> beside(all, what, y[0], small));
            }
        }
        rows.subList(0, row * rows.size() > LOW * height ? rows.size() - 1 : 0).clear();
        y[0] = height - MARGIN - row * rows.size();
        for (Runnable r : rows) {
            int first = all.size();
            r.run();
            into.add(plate(all.subList(first, all.size()), 0.2 * size));
            y[0] += row;
        }
        into.addAll(all);
        return plate(all, 0.2 * size);
    }

    private void swatch(
            List<Node> all, @org.jspecify.annotations.Nullable Color c, String words, double y, double size) {
        Rectangle box = new Rectangle(MARGIN, y + 0.1 * size, 1.5 * size, size);
        box.setFill(c == null ? Color.TRANSPARENT : c);
        box.setStroke(theme.faint());
        all.add(box);
        beside(all, words, y, size);
    }

    private void arrow(List<Node> all, Color c, String words, double y, double size) {
        double m = y + 0.6 * size;
        Line shaft = new Line(MARGIN, m, MARGIN + size, m);
        shaft.setStroke(c);
        shaft.setStrokeWidth(0.28 * size);
        Polygon head = new Polygon(
                MARGIN + 0.9 * size, m - 0.4 * size, MARGIN + 1.6 * size, m, MARGIN + 0.9 * size, m + 0.4 * size);
        head.setFill(c);
        all.addAll(List.of(shaft, head));
        beside(all, words, y, size);
    }

    private void dot(List<Node> all, Color c, String words, double y, double size) {
        all.add(new Circle(MARGIN + 0.75 * size, y + 0.6 * size, 0.45 * size, c));
        beside(all, words, y, size);
    }

    private void beside(List<Node> all, String words, double y, double size) {
        Text text = text(words, size, theme.ink(), FontWeight.NORMAL);
        text.setX(MARGIN + 2.2 * size);
        text.setY(y);
        all.add(text);
    }

    private void tag(
            List<Node> all,
            List<double[]> taken,
            String words,
            Vec3 at,
            Color colour,
            Camera camera,
            double size,
            double width,
            double height) {
        Vec2 p = camera.project(at, width, height);
        if (Double.isNaN(p.x())) {
            return;
        }
        Text text = text(words, 0.95 * size, theme.ink(), FontWeight.BOLD);
        double w = text.getLayoutBounds().getWidth() + size;
        double h = 1.5 * size;
        double x = Math.max(4, Math.min(width - w - 4, p.x() + 0.9 * size));
        double y = Math.max(4, Math.min(height - h - 4, p.y() - h / 2));
        // a tag may be moved onto another one: go on until it is free
        for (int round = 0; round <= taken.size(); round++) {
            for (double[] other : taken) {
                boolean over =
                        x < other[0] + other[2] && other[0] < x + w && y < other[1] + other[3] && other[1] < y + h;
                y = over ? other[1] + other[3] + 3 : y;
            }
        }
        taken.add(new double[] {x, y, w, h});
        Rectangle box = new Rectangle(x, y, w, h);
        box.setArcWidth(8);
        box.setArcHeight(8);
        box.setFill(theme.panel().deriveColor(0, 1, 1, 0.88));
        box.setStroke(colour);
        box.setStrokeWidth(1.6);
        Line lead = new Line(p.x(), p.y(), x, y + h / 2);
        lead.setStroke(colour);
        text.setX(x + size / 2);
        text.setY(y + 0.22 * size);
        all.addAll(List.of(lead, box, text));
    }

    private static Text text(String words, double size, Color colour, FontWeight weight) {
        Text text = new Text(words);
        text.setFont(Font.font("System", weight, size));
        text.setFill(colour);
        text.setTextOrigin(VPos.TOP);
        return text;
    }
}
