// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;
import tipwright.design.around.KeepOut;
import tipwright.geometry.Vec2;
import tipwright.placement.PlacementMap;
import tipwright.sheet.MapShades;

/** A placement map laid over the machine, where its zone is. */
public final class ZoneMap extends Pane {
    private static final double OLD = 0.5;

    private @Nullable PlacementMap shown;
    private @Nullable PlaneView from;
    private @Nullable Theme theme;
    private double letters;

    /** An empty one. */
    public ZoneMap() {
        setMouseTransparent(true);
        setId("zone-map");
    }

    /**
     * Shows a map.
     *
     * @param map null: none
     * @param old whether it is being worked out anew
     * @param em height of the text, pixels
     */
    public void show(@Nullable PlacementMap map, boolean old, PlaneView view, Theme in, double em) {
        setOpacity(old ? OLD : 1);
        boolean same = Objects.equals(map, shown) && in == theme && view.equals(from) && em == letters;
        if (same) {
            return;
        }
        shown = map;
        theme = in;
        letters = em;
        from = view;
        getChildren().clear();
        MapRaster raster = map == null ? null : MapRaster.of(map, view, new MapInk(in));
        if (map == null || raster == null) {
            return;
        }
        ImageView image = new ImageView(MapInk.image(raster.argb(), raster.width(), raster.height()));
        image.setSmooth(false);
        image.setX(raster.x());
        image.setY(raster.y());
        image.setFitWidth(raster.width() * raster.step());
        image.setFitHeight(raster.height() * raster.step());
        getChildren().addAll(image, outline(map, view, in));
        getChildren().addAll(words(map, view, in, em));
    }

    private static Polygon outline(PlacementMap map, PlaneView view, Theme in) {
        Polygon polygon = new Polygon();
        for (Vec2 corner : map.zone()) {
            Vec2 p = view.of(corner);
            polygon.getPoints().addAll(p.x(), p.y());
        }
        polygon.setFill(null);
        polygon.setStroke(in.ink());
        polygon.setStrokeWidth(1.5);
        return polygon;
    }

    private static List<Node> words(PlacementMap map, PlaneView view, Theme in, double em) {
        List<Node> all = new ArrayList<>();
        for (MapShades.Label label : MapShades.labels(map)) {
            Vec2 middle =
                    map.low().plus(new Vec2((label.column() + 0.5) * map.cell(), (label.row() + 0.5) * map.cell()));
            note(all, view.of(middle), label.words(), view, in, em);
        }
        Vec2 high = map.low().plus(new Vec2(map.utilisation()[0].length, map.utilisation().length).times(map.cell()));
        for (KeepOut keepOut : map.keepOuts()) {
            Vec2 middle = middle(keepOut.outline());
            boolean within = middle.x() > map.low().x()
                    && middle.y() > map.low().y()
                    && middle.x() < high.x()
                    && middle.y() < high.y();
            if (within) {
                note(all, view.of(middle), keepOut.name(), view, in, em);
            }
        }
        return all;
    }

    private static Vec2 middle(List<Vec2> points) {
        return new Vec2(
                points.stream().mapToDouble(Vec2::x).average().orElse(0),
                points.stream().mapToDouble(Vec2::y).average().orElse(0));
    }

    private static void note(List<Node> all, Vec2 at, String words, PlaneView view, Theme in, double em) {
        boolean seen = at.x() > 0 && at.y() > 0 && at.x() < view.width() && at.y() < view.height();
        if (!seen) {
            return;
        }
        Text text = new Text(words);
        text.setFont(Font.font("System", FontWeight.BOLD, em));
        text.setFill(in.ink());
        text.setTextOrigin(VPos.TOP);
        double w = text.getLayoutBounds().getWidth();
        double h = text.getLayoutBounds().getHeight();
        text.setX(Math.max(5, Math.min(view.width() - w - 5, at.x() - w / 2)));
        text.setY(at.y() - h / 2);
        Rectangle box = new Rectangle(text.getX() - 4, text.getY() - 1, w + 8, h + 2);
        box.setFill(in.panel().deriveColor(0, 1, 1, 0.9));
        box.setArcWidth(6);
        box.setArcHeight(6);
        // the larger regions come first; the legend has the names of all
        if (all.stream().noneMatch(o -> o.getLayoutBounds().intersects(box.getLayoutBounds()))) {
            all.add(box);
            all.add(text);
        }
    }
}
