// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import java.util.Locale;
import javafx.animation.AnimationTimer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.dump.Timeline;

/** Plays the dump round and round, steps through it, and scrubs it by tilt. */
final class Transport extends HBox implements Panel {
    private static final double STEP = Math.toRadians(1);

    private final WindowState shown;
    private final Button play = new Button();
    private final Slider slider = new Slider();
    private final ChoiceBox<Double> pace = new ChoiceBox<>();
    private final Label told = new Label();
    private final AnimationTimer clock;
    private boolean following;
    private boolean playing;
    private double time;
    private long before;

    Transport(WindowState shown) {
        this.shown = shown;
        getStyleClass().add("strip");
        setSpacing(10);
        setAlignment(Pos.CENTER_LEFT);
        play.setId("play");
        play.setMinWidth(86);
        play.setOnAction(e -> toggle());
        Button back = new Button("\u2212 1\u00b0");
        Button on = new Button("+ 1\u00b0");
        back.setId("step-back");
        on.setId("step-on");
        back.setOnAction(e -> step(-STEP));
        on.setOnAction(e -> step(STEP));
        slider.setId("tilt");
        slider.setAccessibleText("tilt in degrees");
        slider.setFocusTraversable(false);
        HBox.setHgrow(slider, Priority.ALWAYS);
        slider.valueProperty().addListener((o, was, is) -> {
            if (!following) {
                pause();
                shown.tiltTo(Math.toRadians(is.doubleValue()));
            }
        });
        pace.getItems().setAll(1.0, 4.0, 16.0);
        pace.setValue(4.0);
        pace.setId("pace");
        pace.setConverter(new StringConverter<>() {
            @Override
            public String toString(@Nullable Double times) {
                return times == null || times == 1
                        ? "real time"
                        : String.format(Locale.ROOT, "%.0f times faster", times);
            }

            @Override
            public Double fromString(String text) {
                return 1.0;
            }
        });
        told.getStyleClass().addAll("faint", "small");
        told.setId("told");
        getChildren().addAll(play, back, on, slider, pace, told);
        clock = new AnimationTimer() {
            @Override
            public void handle(long now) {
                tick(now);
            }
        };
        clock.start();
        name();
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
        boolean atTop = from != null && from.time() >= timeline.top() && Double.isNaN(spot.time());
        time = from == null || atTop ? 0 : from.time();
        playing = true;
        before = 0;
        name();
        told.setText(timeline.told());
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
        if (dump == null) {
            pause();
            return;
        }
        following = true;
        slider.setMin(Math.toDegrees(dump.first()));
        slider.setMax(Math.toDegrees(dump.last()));
        following = false;
        if (playing) {
            told.setText(told(shown.timeline()));
        }
    }

    private static String told(@Nullable Timeline timeline) {
        return timeline == null ? "" : timeline.told();
    }

    @Override
    public void move(MachineState now) {
        following = true;
        slider.setValue(Math.toDegrees(now.tilt()));
        following = false;
    }
}
