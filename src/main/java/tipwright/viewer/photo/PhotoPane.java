// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.photo;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.image.Image;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.card.CardHost;
import tipwright.viewer.editor.Handle;
import tipwright.viewer.editor.Solved;
import tipwright.viewer.scene.Theme;

/** A photo of the machine's side under its side view: four corners of a known sheet are tapped, then each pin. */
public final class PhotoPane extends BorderPane {
    private static final List<String> CORNERS = List.of(
            "the sheet's lower corner away from the dump side",
            "its lower corner on the dump side",
            "its upper corner on the dump side",
            "its upper corner away from the dump side");
    private static final String TOLD =
            "A photo gives a first guess, the tape decides: measure every pin before you cut. The sheet stands upright beside the"
                    + " pivot, its lower edge level; take the photo from the side with the dump end to the right, as far away as you can. Turn the wheel to come nearer before you tap; drag with the right button to move the photo.";

    /** How far off one taps on the screen, one standard deviation, pixels. */
    private static final double BLUNT = 1.2;

    private final CardHost host;
    private final PhotoView view;
    private final Label next = new Label();
    private final Label results = new Label();
    private final ChoiceBox<String> pins = new ChoiceBox<>();
    private final TextField width = field("photo-width");
    private final TextField height = field("photo-height");
    private final TextField cornerX = field("photo-corner-x");
    private final TextField cornerY = field("photo-corner-y");
    private final TextField before = field("photo-before");
    private final TextField sure = field("photo-sure");
    private final Button write = new Button("Write the places into the file");
    private @Nullable PhotoWork work;

    /** Without a photo yet. */
    public PhotoPane(CardHost host, Theme theme) {
        this.host = host;
        setId("photo-pane");
        usual(host.editor().tape() == UnitSystem.US);
        view = new PhotoView(theme, this::tapped, this::moved);
        setCenter(view);
        Label told = new Label(TOLD);
        told.setMinHeight(Region.USE_PREF_SIZE);
        results.setMinHeight(Region.USE_PREF_SIZE);
        next.setMinHeight(Region.USE_PREF_SIZE);
        told.setWrapText(true);
        next.setWrapText(true);
        next.setId("photo-next");
        results.setWrapText(true);
        results.setId("photo-results");
        GridPane grid = new GridPane();
        grid.setHgap(8);
        grid.setVgap(5);
        row(grid, 0, "sheet is wide", width);
        row(grid, 1, "sheet is high", height);
        row(grid, 2, "its first corner: x", cornerX);
        row(grid, 3, "its first corner: y", cornerY);
        pins.setId("photo-pin");
        pins.setAccessibleText("which pin is tapped next");
        grid.addRow(4, new Label("pin to tap"), pins);
        row(grid, 5, "pin stands before the sheet by", before);
        row(grid, 6, "give or take", sure);
        Button anew = new Button("Corners again");
        anew.setId("photo-again");
        anew.setOnAction(e -> {
            PhotoWork w = work;
            if (w != null) {
                w.cornersAnew();
                show();
            }
        });
        write.setId("photo-write");
        write.setOnAction(e -> write());
        for (TextField f : List.of(width, height, cornerX, cornerY)) {
            f.setOnAction(e -> sheet());
            f.focusedProperty().addListener((o, was, is) -> {
                if (!is) {
                    sheet();
                }
            });
        }
        VBox side = new VBox(10, told, next, grid, anew, results, write);
        side.getStyleClass().add("card");
        ScrollPane scroll = new ScrollPane(side);
        scroll.setFitToWidth(true);
        scroll.setPrefWidth(400);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        setRight(scroll);
        refresh();
    }

    private static TextField field(String id) {
        TextField field = new TextField();
        field.setId(id);
        field.setPrefColumnCount(9);
        return field;
    }

    /** A sheet of plywood as it is sold, its corner at the origin, in the plane of the pins. */
    private void usual(boolean inches) {
        width.setText(inches ? "96 in" : "2440 mm");
        height.setText(inches ? "48 in" : "1220 mm");
        List.of(cornerX, cornerY, before).forEach(f -> f.setText(inches ? "0 in" : "0 mm"));
        sure.setText(inches ? "3/8 in" : "10 mm");
    }

    private static void row(GridPane grid, int row, String words, TextField field) {
        Label label = new Label(words);
        label.setLabelFor(field);
        field.setAccessibleText(words);
        grid.addRow(row, label, field);
    }

    /** Takes the pins from the design as it stands now. */
    public void refresh() {
        String chosen = pins.getValue();
        List<String> names =
                host.editor().handles().stream().map(Handle::label).distinct().toList();
        pins.getItems().setAll(names);
        pins.setValue(names.contains(chosen) ? chosen : names.isEmpty() ? null : names.get(0));
        show();
    }

    /** Opens a photo (PNG or JPEG). */
    public void open(Path file) {
        Image image = new Image(file.toUri().toString());
        if (image.isError() || !(image.getWidth() > 0)) {
            host.say(file.getFileName() + " cannot be read as a picture; a PNG or a JPEG can");
            return;
        }
        KnownSheet sheet = read();
        work = new PhotoWork(
                image.getWidth(), image.getHeight(), sheet == null ? new KnownSheet(Vec2.ZERO, 2.44, 1.22) : sheet);
        view.photo(image);
        show();
    }

    private void sheet() {
        KnownSheet sheet = read();
        PhotoWork w = work;
        if (sheet != null && w != null && !sheet.equals(w.sheet())) {
            w.setSheet(sheet);
            show();
        }
    }

    private @Nullable KnownSheet read() {
        double w = length(width);
        double h = length(height);
        Vec2 corner = new Vec2(length(cornerX), length(cornerY));
        return w > 0 && h > 0 && Double.isFinite(corner.x()) && Double.isFinite(corner.y())
                ? new KnownSheet(corner, w, h)
                : null;
    }

    /** NaN and a mark on the field when it is no length. */
    private double length(TextField field) {
        field.getStyleClass().remove("wrong");
        try {
            return Quantities.parse(field.getText(), Kind.LENGTH);
        } catch (QuantityException e) {
            field.getStyleClass().add("wrong");
            host.say(field.getAccessibleText() + ": " + e.getMessage());
            return Double.NaN;
        }
    }

    /** A place in the photo was tapped, pixels. */
    private void tapped(Vec2 at) {
        PhotoWork w = work;
        if (w == null) {
            return;
        }
        w.blunt(BLUNT / view.scale());
        if (w.corners().size() < 4) {
            w.corner(w.corners().size(), at);
        } else {
            double z = length(before);
            double doubt = length(sure);
            String pin = pins.getValue();
            if (pin != null && Double.isFinite(z) && doubt >= 0) {
                w.tap(pin, new PhotoWork.Tap(at, z, doubt / 2));
                int i = pins.getItems().indexOf(pin);
                pins.setValue(
                        pins.getItems().get(Math.min(i + 1, pins.getItems().size() - 1)));
            }
        }
        show();
    }

    /** A corner was dragged elsewhere. */
    private void moved(int corner, Vec2 at) {
        PhotoWork w = work;
        if (w != null) {
            w.blunt(BLUNT / view.scale());
            w.corner(corner, at);
            show();
        }
    }

    private void write() {
        PhotoWork w = work;
        String refused = w == null ? null : w.write(host.editor());
        if (refused != null) {
            host.say(refused);
        } else if (w != null) {
            host.changed();
            host.say("The places are in the file, with their doubt; undo takes them back");
        }
    }

    private void show() {
        PhotoWork w = work;
        Solved solved = host.editor().solved();
        view.show(w, solved == null ? null : solved.analysis());
        write.setDisable(w == null || w.plane() == null || w.taps().isEmpty());
        next.setText(next(w));
        List<String> lines = new ArrayList<>();
        if (w != null) {
            for (String pin : pins.getItems()) {
                w.written(host.editor(), pin).ifPresent(lines::add);
            }
        }
        results.setText(String.join("\n", lines));
    }

    private static String next(@Nullable PhotoWork w) {
        if (w == null) {
            return "Open a photo of the machine's side first.";
        }
        int corners = w.corners().size();
        if (corners < 4) {
            return "Tap " + CORNERS.get(corners) + ".";
        }
        return w.plane() == null
                ? "These four are not the corners of such a sheet as seen from the side: check its size, drag the corners, or"
                        + " begin with them again."
                : "Tap the middle of the pin that is chosen below.";
    }
}
