// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import java.util.Locale;
import javafx.animation.AnimationTimer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CaseResult;
import tipwright.design.tank.CaseName;
import tipwright.quantity.Kind;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.dump.Timeline;
import tipwright.viewer.ticket.Judged;

/** Along the foot of the window: what is worst, the force across the bar in which the tilt is dragged, and playing the dump. */
final class Transport extends VBox implements Panel {
    private static final double STEP = Math.toRadians(1);
    /** Most of the width that the headline takes where it stands beside the bar. */
    private static final double FOLDED = 0.52;

    private static final StringConverter<Double> PACE = new StringConverter<>() {
        @Override
        public String toString(@Nullable Double times) {
            return times == null || times == 1 ? "real time" : String.format(Locale.ROOT, "%.0f times faster", times);
        }

        @Override
        public Double fromString(String text) {
            return 1.0;
        }
    };

    private final WindowState shown;
    private final TiltBar bar;
    private final Button headline = new Button();
    private final Label reading = new Label();
    private final Button play = new Button();
    private final ChoiceBox<Double> pace = new ChoiceBox<>();
    private final ChoiceBox<String> cases = new ChoiceBox<>();
    private final Label told = new Label();
    private final Button back = new Button("\u2212 1\u00b0");
    private final Button on = new Button("+ 1\u00b0");
    private final ToggleButton more = new ToggleButton("More curves");
    private final ToggleButton unfold = new ToggleButton("More");
    private final HBox line = new HBox();
    private final HBox first = new HBox();
    private final HBox second = new HBox();
    private final VBox rows = new VBox();
    private final VBox folded = new VBox() {
        @Override
        protected double computeMinWidth(double height) {
            return Math.max(
                    first.prefWidth(-1), Math.min(computePrefWidth(height), FOLDED * Transport.this.getWidth()));
        }
    };
    private final HBox beside = new HBox();
    private final CurvesPane curves;
    private boolean isLow;
    private final AnimationTimer clock;
    private boolean filling;
    private boolean playing;
    private double time;
    private long before;

    Transport(WindowState shown, CurvesPane curves) {
        this.shown = shown;
        getStyleClass().add("strip");
        bar = new TiltBar(shown);
        HBox.setHgrow(bar, Priority.ALWAYS);
        headline.setId("headline");
        headline.setAccessibleText("worst force; goes to its tilt and load case");
        headline.setOnAction(e -> {
            pause();
            shown.goToGoverning();
        });
        headline.setMinWidth(0);
        reading.setId("reading");
        reading.getStyleClass().add("figure");
        reading.setMinWidth(USE_PREF_SIZE);
        told.managedProperty().bind(told.textProperty().isNotEmpty());
        List.of(line, first).forEach(box -> box.setAlignment(Pos.CENTER_LEFT));
        rows.setMinWidth(USE_PREF_SIZE);
        List.of(first, second, line, beside).forEach(box -> box.getStyleClass().add("line"));
        List.of(rows, folded).forEach(box -> box.getStyleClass().add("fold"));
        controls(curves);
        unfold.setId("unfold");
        unfold.setMinWidth(USE_PREF_SIZE);
        unfold.setOnAction(e -> put());
        this.curves = curves;
        put();
        clock = new AnimationTimer() {
            @Override
            public void handle(long now) {
                tick(now);
            }
        };
        clock.start();
        name();
    }

    private static Region gap() {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        return gap;
    }

    /** In a low window the bar of the tilt stands beside the headline, and what is less often used is folded away. */
    void fold(boolean low) {
        // the bar's height goes by the window's
        bar.requestLayout();
        if (low != isLow) {
            isLow = low;
            put();
        }
    }

    private void put() {
        List.of(line, first, second, rows, folded, beside, this)
                .forEach(box -> box.getChildren().clear());
        headline.setWrapText(isLow);
        if (isLow) {
            first.getChildren().setAll(play, unfold, gap(), reading);
            second.getChildren().setAll(back, on, pace, cases, more, told);
            folded.getChildren().setAll(headline, first);
            beside.getChildren().setAll(folded, bar);
            getChildren().setAll(curves, beside);
            if (unfold.isSelected()) {
                getChildren().add(1, second);
            }
        } else {
            line.getChildren().setAll(headline, gap(), told, reading);
            first.getChildren().setAll(play, back, on, pace);
            second.getChildren().setAll(cases, more);
            rows.getChildren().setAll(first, second);
            beside.getChildren().setAll(rows, bar);
            getChildren().setAll(curves, line, beside);
        }
    }

    private void controls(CurvesPane curves) {
        play.setId("play");
        play.setOnAction(e -> toggle());
        back.setId("step-back");
        on.setId("step-on");
        back.setAccessibleText("one degree back");
        on.setAccessibleText("one degree on");
        back.setOnAction(e -> step(-STEP));
        on.setOnAction(e -> step(STEP));
        pace.getItems().setAll(1.0, 4.0, 16.0);
        pace.setValue(4.0);
        pace.setId("pace");
        pace.setAccessibleText("how fast it plays");
        pace.setConverter(PACE);
        cases.setId("case");
        cases.setConverter(new StringConverter<>() {
            @Override
            public String toString(@Nullable String name) {
                DumpStates dump = shown.dump();
                if (name == null || dump == null) {
                    return name == null ? "" : name;
                }
                return CaseName.shown(name, dump.design().tank());
            }

            @Override
            public String fromString(String name) {
                return name;
            }
        });
        cases.setAccessibleText("load case");
        cases.setMaxWidth(Double.MAX_VALUE);
        cases.setOnAction(e -> {
            if (!filling && cases.getValue() != null) {
                shown.setLoadCase(cases.getValue());
            }
        });
        more.setId("more-curves");
        more.setMinWidth(USE_PREF_SIZE);
        curves.visibleProperty().bind(more.selectedProperty());
        told.getStyleClass().addAll("faint", "small");
        told.setId("told");
        HBox.setHgrow(cases, Priority.ALWAYS);
        for (Region region : List.of(play, back, on, pace)) {
            region.setMinWidth(USE_PREF_SIZE);
        }
    }

    private void name() {
        play.setText(playing ? "Pause" : "Play");
    }

    void toggle() {
        if (playing) {
            pause();
        } else {
            start();
        }
    }

    private void start() {
        Timeline timeline = shown.timeline();
        if (timeline == null) {
            return;
        }
        Timeline.Spot spot = shown.spot();
        Timeline.Spot from = Double.isNaN(spot.time()) ? timeline.rising(spot.tilt()) : spot;
        boolean atTop = from != null && from.time() >= timeline.top() && from.motion() >= 0;
        time = from == null || atTop ? 0 : from.time();
        playing = true;
        before = 0;
        name();
        told.setText(timeline.told().show(shown.units()));
    }

    void pause() {
        playing = false;
        name();
    }

    /** Ends with the window. */
    void end() {
        clock.stop();
    }

    boolean playing() {
        return playing;
    }

    void faster(int by) {
        List<Double> all = pace.getItems();
        int i = Math.max(0, Math.min(all.size() - 1, all.indexOf(pace.getValue()) + by));
        pace.setValue(all.get(i));
    }

    /** Goes on by an angle, rad. */
    void step(double by) {
        pause();
        shown.tiltTo(held(shown.spot().tilt() + by));
    }

    /** Goes to the start (0) or the end (1). */
    void jump(int end) {
        pause();
        DumpStates dump = shown.dump();
        if (dump != null) {
            shown.tiltTo(end == 0 ? dump.first() : dump.last());
        }
    }

    private double held(double tilt) {
        DumpStates dump = shown.dump();
        return dump == null ? 0 : Math.max(dump.first(), Math.min(dump.last(), tilt));
    }

    private void tick(long now) {
        Timeline timeline = shown.timeline(playing);
        if (!playing || timeline == null) {
            return;
        }
        if (before != 0) {
            time += 1e-9 * (now - before) * pace.getValue();
            if (time > timeline.total()) {
                time = 0;
            }
        }
        before = now;
        shown.goTo(timeline.at(time));
    }

    @Override
    public void renew() {
        DumpStates dump = shown.dump();
        setDisable(dump == null);
        filling = true;
        List<String> all = dump == null
                ? List.of()
                : dump.analysis().cases().stream().map(CaseResult::name).toList();
        if (!cases.getItems().equals(all)) {
            cases.getItems().setAll(all);
        }
        cases.setValue(dump == null ? null : shown.loadCase());
        filling = false;
        bar.renew();
        judged();
        if (dump == null) {
            pause();
            reading.setText("");
        } else if (playing) {
            Timeline timeline = shown.timeline();
            told.setText(timeline == null ? "" : timeline.told().show(shown.units()));
        }
    }

    @Override
    public void judged() {
        bar.judged();
        Judged judged = shown.judged();
        Governing most = shown.governing();
        headline.setText(judged == null || most == null ? "" : most.headline(judged.early(), shown.units()));
        headline.setVisible(!headline.getText().isEmpty());
    }

    @Override
    public void move(MachineState now) {
        bar.move(now);
        double force = now.raise().force();
        double seconds = shown.spot().time();
        String words = String.format(Locale.ROOT, "%.1f\u00b0: ", Math.toDegrees(now.tilt()))
                + (force >= 0 ? "pushes " : "pulls ")
                + shown.show(Math.abs(force), Kind.FORCE)
                + (Double.isNaN(seconds) ? "" : String.format(Locale.ROOT, ", %.1f s after the start", seconds));
        if (!words.equals(reading.getText())) {
            reading.setText(words);
        }
    }
}
