// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import java.util.function.ToDoubleFunction;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import tipwright.analysis.Row;
import tipwright.design.actuator.Actuator;
import tipwright.quantity.Kind;
import tipwright.viewer.dump.Dump;
import tipwright.viewer.dump.Instant;

/** Force, length and pivot load against tilt, each with the cursor of the tilt shown; a click or a drag moves it. */
final class PlotStrip extends HBox implements Panel {
    private final Desk desk;
    private final Plot force;
    private final Plot length;
    private final Plot pivot;

    PlotStrip(Desk desk) {
        this.desk = desk;
        getStyleClass().add("strip");
        setSpacing(16);
        force = new Plot("Force of the actuators", desk::tiltTo);
        length = new Plot("Pin to pin", desk::tiltTo);
        pivot = new Plot("Pivot load", desk::tiltTo);
        for (Plot plot : List.of(force, length, pivot)) {
            HBox.setHgrow(plot, Priority.ALWAYS);
            getChildren().add(plot);
        }
        force.setId("plot-force");
        length.setId("plot-length");
        pivot.setId("plot-pivot");
    }

    @Override
    public void renew() {
        Dump dump = desk.dump();
        setVisible(dump != null);
        if (dump == null) {
            return;
        }
        List<Row> rows = dump.loadCase(desk.loadCase()).rows();
        Actuator actuator = dump.design().drive().actuators().get(0).actuator();
        int share = dump.design().drive().actuators().size();
        Curve.Limit push = new Curve.Limit(actuator.ratedPush() * share, "rated push");
        Curve.Limit in = new Curve.Limit(actuator.closed(), "closed");
        Curve.Limit out = new Curve.Limit(actuator.closed() + actuator.stroke(), "fully out");
        force.show(curve(rows, r -> r.rest().force(), Kind.FORCE, List.of(push)), desk.theme());
        length.show(curve(rows, r -> r.pose().length(), Kind.LENGTH, List.of(in, out)), desk.theme());
        pivot.show(curve(rows, r -> r.rest().pivot().norm(), Kind.FORCE, List.of()), desk.theme());
    }

    private Curve curve(List<Row> rows, ToDoubleFunction<Row> value, Kind kind, List<Curve.Limit> limits) {
        double[] tilts = rows.stream().mapToDouble(Row::tilt).toArray();
        double[] values = rows.stream().mapToDouble(value).toArray();
        return new Curve(tilts, values, limits, v -> desk.show(v, kind));
    }

    @Override
    public void move(Instant now) {
        force.cursor(now.tilt(), now.rest().force());
        length.cursor(now.tilt(), now.length());
        pivot.cursor(now.tilt(), now.rest().pivot().norm());
    }
}
