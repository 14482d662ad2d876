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

/** Force, length and pivot load against tilt, each with the cursor of the tilt shown; a click or a drag moves it. */
final class PlotStrip extends HBox implements Panel {
    private final WindowState shown;
    private final TiltPlot force;
    private final TiltPlot length;
    private final TiltPlot pivot;

    PlotStrip(WindowState shown) {
        this.shown = shown;
        getStyleClass().add("strip");
        setSpacing(16);
        force = new TiltPlot("Force of the actuators", shown::tiltTo);
        length = new TiltPlot("Pin to pin", shown::tiltTo);
        pivot = new TiltPlot("Pivot load", shown::tiltTo);
        for (TiltPlot plot : List.of(force, length, pivot)) {
            HBox.setHgrow(plot, Priority.ALWAYS);
            getChildren().add(plot);
        }
        force.setId("plot-force");
        length.setId("plot-length");
        pivot.setId("plot-pivot");
    }

    @Override
    public void renew() {
        DumpStates dump = shown.dump();
        setVisible(dump != null);
        if (dump == null) {
            return;
        }
        List<Row> rows = dump.loadCase(shown.loadCase()).rows();
        Actuator actuator = dump.design().drive().actuators().get(0).actuator();
        int share = dump.design().drive().actuators().size();
        Curve.Limit push = new Curve.Limit(actuator.ratedPush() * share, "rated push");
        Curve.Limit in = new Curve.Limit(actuator.closed(), "closed");
        Curve.Limit out = new Curve.Limit(actuator.closed() + actuator.stroke(), "fully out");
        force.show(curve(rows, r -> r.rest().force(), Kind.FORCE, List.of(push)), shown.theme());
        length.show(curve(rows, r -> r.pose().length(), Kind.LENGTH, List.of(in, out)), shown.theme());
        pivot.show(curve(rows, r -> r.rest().pivot().norm(), Kind.FORCE, List.of()), shown.theme());
    }

    private Curve curve(List<Row> rows, ToDoubleFunction<Row> value, Kind kind, List<Curve.Limit> limits) {
        double[] tilts = rows.stream().mapToDouble(Row::tilt).toArray();
        double[] values = rows.stream().mapToDouble(value).toArray();
        return new Curve(tilts, values, limits, v -> shown.show(v, kind));
    }

    @Override
    public void move(MachineState now) {
        force.cursor(now.tilt(), now.rest().force());
        length.cursor(now.tilt(), now.length());
        pivot.cursor(now.tilt(), now.rest().pivot().norm());
    }
}
