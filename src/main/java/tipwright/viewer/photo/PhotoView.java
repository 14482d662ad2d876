// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.Bounds;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.geometry.Vec2;
import tipwright.outline.Contour;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachinePose;
import tipwright.outline.PartKind;
import tipwright.outline.View;
import tipwright.viewer.scene.Theme;

/** The photo with what was tapped on it, and the machine's side view as it would lie in it. */
final class PhotoView extends Pane {
    private static final double RADIUS = 12;
    private static final int ROUND = 32;
    private static final double FAR = 20;
    private static final double CLOSEST = 12;

    private final Theme theme;
    private final CornerMoved mover;
    private final ImageView photo = new ImageView();
    private final Pane over = new Pane();
    private final Rectangle frame = new Rectangle();
    private double zoom = 1;
    private double left;
    private double top;
    private Vec2 held = Vec2.ZERO;
    private @Nullable PhotoWork work;
    private @Nullable Analysis analysis;

    /** Is told where a corner was dragged to. */
    interface CornerMoved {
        /** The corner's number and its place, pixels of the photo. */
        void moved(int corner, Vec2 at);
    }

    PhotoView(Theme theme, Consumer<Vec2> tapped, CornerMoved mover) {
        this.theme = theme;
        this.mover = mover;
        setId("photo-view");
        setMinSize(300, 240);
        photo.setId("photo");
        photo.setPreserveRatio(true);
        over.setPickOnBounds(false);
        setClip(frame);
        photo.setOnMouseClicked(e -> {
            if (e.getButton() == MouseButton.PRIMARY && e.isStillSincePress()) {
                tapped.accept(new Vec2(e.getX(), e.getY()).times(1 / scale()));
            }
        });
        setOnScroll(e -> zoom(Math.pow(1.002, e.getDeltaY()), e.getX(), e.getY()));
        setOnMousePressed(e -> held = new Vec2(e.getX(), e.getY()));
        setOnMouseDragged(e -> {
            if (e.getButton() == MouseButton.SECONDARY) {
                left += e.getX() - held.x();
                top += e.getY() - held.y();
                held = new Vec2(e.getX(), e.getY());
                requestLayout();
            }
        });
        getChildren().addAll(photo, over);
    }

    void photo(Image image) {
        photo.setImage(image);
    }

    /** Nearer or farther about a place on the screen. */
    private void zoom(double by, double x, double y) {
        double next = Math.max(1, Math.min(CLOSEST, zoom * by));
        left = x + (left - x) * next / zoom;
        top = y + (top - y) * next / zoom;
        zoom = next;
        if (zoom == 1) {
            left = 0;
            top = 0;
        }
        requestLayout();
    }

    /** Screen pixels for a pixel of the photo. */
    double scale() {
        Image image = photo.getImage();
        return image == null ? 1 : photo.getBoundsInLocal().getWidth() / image.getWidth();
    }

    void show(@Nullable PhotoWork now, @Nullable Analysis machine) {
        work = now;
        analysis = machine;
        draw();
    }

    @Override
    protected void layoutChildren() {
        photo.setFitWidth(zoom * getWidth());
        photo.setFitHeight(zoom * getHeight());
        super.layoutChildren();
        photo.relocate(left, top);
        over.relocate(left, top);
        frame.setWidth(getWidth());
        frame.setHeight(getHeight());
        draw();
    }

    private void draw() {
        List<Node> all = new ArrayList<>();
        PhotoWork w = work;
        if (w != null) {
            PhotoPlane plane = w.plane();
            if (plane != null) {
                machine(plane, all);
                pins(w, all);
            }
            for (int i = 0; i < w.corners().size(); i++) {
                all.add(corner(i, w.corners().get(i)));
            }
        }
        over.getChildren().setAll(all);
    }

    private Circle corner(int number, Vec2 at) {
        Circle ring = ring(at, Color.WHITE);
        ring.setId("photo-corner-" + (number + 1));
        ring.setCursor(Cursor.MOVE);
        ring.setAccessibleText("corner " + (number + 1) + " of the sheet");
        ring.setOnMouseDragged(e -> {
            javafx.geometry.Point2D p = over.sceneToLocal(e.getSceneX(), e.getSceneY());
            ring.setCenterX(p.getX());
            ring.setCenterY(p.getY());
        });
        ring.setOnMouseReleased(
                e -> mover.moved(number, new Vec2(ring.getCenterX(), ring.getCenterY()).times(1 / scale())));
        return ring;
    }

    private Circle ring(Vec2 at, Color colour) {
        Circle ring = new Circle(at.x() * scale(), at.y() * scale(), RADIUS);
        ring.setFill(Color.color(0, 0, 0, 0.25));
        ring.setStroke(colour);
        ring.setStrokeWidth(2.5);
        return ring;
    }

    /** Each pin with its doubt as an ellipse, drawn as large as it is. */
    private void pins(PhotoWork w, List<Node> all) {
        for (Map.Entry<String, PhotoWork.Tap> tap : w.taps().entrySet()) {
            Seen seen = w.seen(tap.getKey());
            PhotoPlane plane = w.plane();
            if (seen == null || plane == null) {
                continue;
            }
            Polygon doubt = new Polygon();
            for (int i = 0; i < ROUND; i++) {
                double t = 2 * Math.PI * i / ROUND;
                Vec2 off = new Vec2(seen.doubt().x() * Math.cos(t), seen.doubt().y() * Math.sin(t));
                add(
                        doubt.getPoints(),
                        plane.pixel(seen.at().plus(off), tap.getValue().z()));
            }
            doubt.setFill(theme.push().deriveColor(0, 1, 1, 0.35));
            doubt.setStroke(theme.push());
            Vec2 at = tap.getValue().at().times(scale());
            Text name = new Text(at.x() + RADIUS, at.y() - RADIUS, tap.getKey());
            name.setFill(Color.WHITE);
            name.setMouseTransparent(true);
            Bounds room = name.getLayoutBounds();
            Rectangle behind =
                    new Rectangle(room.getMinX() - 4, room.getMinY() - 1, room.getWidth() + 8, room.getHeight() + 2);
            behind.setFill(Color.color(0, 0, 0, 0.7));
            behind.setMouseTransparent(true);
            doubt.setMouseTransparent(true);
            all.add(doubt);
            all.add(behind);
            all.add(name);
        }
    }

    /** The side view of the stowed machine, as the file has it. */
    private void machine(PhotoPlane plane, List<Node> all) {
        Analysis known = analysis;
        if (known == null) {
            return;
        }
        MachinePose stowed = MachinePose.of(known.poses().get(0));
        for (MachineOutline.Seen part : new MachineOutline(known).at(stowed, View.SIDE)) {
            boolean shown = !part.kind().limit() && part.kind() != PartKind.GROUND && part.kind() != PartKind.CONTENTS;
            for (Contour line : shown ? part.lines() : List.<Contour>of()) {
                Polyline drawn = new Polyline();
                for (Vec2 p : points(line)) {
                    add(drawn.getPoints(), p.norm() < FAR ? plane.pixel(p, 0) : new Vec2(Double.NaN, 0));
                }
                if (line.closed() && drawn.getPoints().size() > 1) {
                    drawn.getPoints()
                            .addAll(drawn.getPoints().get(0), drawn.getPoints().get(1));
                }
                drawn.setStroke(part.sketched() ? Color.color(1, 1, 1, 0.45) : Color.color(1, 1, 1, 0.85));
                drawn.setStrokeWidth(1.4);
                drawn.setMouseTransparent(true);
                all.add(drawn);
            }
        }
    }

    private static List<Vec2> points(Contour line) {
        if (!(line instanceof Contour.Circle circle)) {
            return line.corners();
        }
        List<Vec2> all = new ArrayList<>();
        for (int i = 0; i < ROUND; i++) {
            double t = 2 * Math.PI * i / ROUND;
            all.add(circle.centre().plus(new Vec2(Math.cos(t), Math.sin(t)).times(circle.radius())));
        }
        return all;
    }

    private void add(List<Double> points, Vec2 pixel) {
        if (Double.isFinite(pixel.x())) {
            points.add(pixel.x() * scale());
            points.add(pixel.y() * scale());
        }
    }
}
