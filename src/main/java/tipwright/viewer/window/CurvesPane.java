// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import java.util.function.ToDoubleFunction;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import tipwright.analysis.Row;
import tipwright.design.actuator.Actuator;
import tipwright.quantity.Kind;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;

/** The other curves against tilt: pin to pin, the pivot's load; shown when asked for. A click or a drag moves the tilt. */
final class CurvesPane extends HBox implements Panel {
    private final WindowState shown;
    private final TiltPlot length;
    private final TiltPlot pivot;

    CurvesPane(WindowState shown) {
        this.shown = shown;
        setId("curves");
        getStyleClass().add("strip");
        length = new TiltPlot("Pin to pin", shown::tiltTo);
        pivot = new TiltPlot("Pivot load", shown::tiltTo);
        for (TiltPlot plot : List.of(length, pivot)) {
            HBox.setHgrow(plot, Priority.ALWAYS);
            getChildren().add(plot);
        }
        length.setId("plot-length");
        pivot.setId("plot-pivot");
        setVisible(false);
        managedProperty().bind(visibleProperty());
        visibleProperty().addListener((of, was, is) -> {
            MachineState now = shown.now();
            if (is && now != null) {
                renew();
                move(now);
            }
        });
    }

    @Override
    public void renew() {
        DumpStates dump = shown.dump();
        if (dump == null || !isVisible()) {
            return;
        }
        List<Row> rows = dump.loadCase(shown.loadCase()).rows();
        Actuator actuator = dump.design().drive().actuators().get(0).actuator();
        Curve.Limit in = new Curve.Limit(actuator.closed(), "closed");
        Curve.Limit out = new Curve.Limit(actuator.closed() + actuator.stroke(), "fully out");
        length.show(curve(rows, r -> r.pose().length(), Kind.LENGTH, List.of(in, out)), shown.theme(), shown.em());
        pivot.show(curve(rows, r -> r.rest().pivot().norm(), Kind.FORCE, List.of()), shown.theme(), shown.em());
    }

    private Curve curve(List<Row> rows, ToDoubleFunction<Row> value, Kind kind, List<Curve.Limit> limits) {
        double[] tilts = rows.stream().mapToDouble(Row::tilt).toArray();
        double[] values = rows.stream().mapToDouble(value).toArray();
        return new Curve(tilts, values, limits, v -> shown.show(v, kind));
    }

    @Override
    public void move(MachineState now) {
        if (isVisible()) {
            length.cursor(now.tilt(), now.length());
            pivot.cursor(now.tilt(), now.rest().pivot().norm());
        }
    }
}
