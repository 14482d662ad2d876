// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.tank.CaseName;
import tipwright.report.RemedyText;

/** All checks, the worst first, each with a bar that ends at its limit; a click goes to the tilt and load case that govern. */
final class CheckRows extends VBox {
    private static final double BAR = 4.6;
    private static final double SHOWN = 1.5;

    private final TicketHost host;
    private final Design design;
    private final Function<Finding, List<Node>> fixes;
    private final Map<Finding, VBox> open = new LinkedHashMap<>();

    /**
     * Rows, all folded.
     *
     * @param fixes what stands under a check as to fixes, made each time it is asked for
     */
    CheckRows(TicketHost host, List<Finding> findings, Design design, Function<Finding, List<Node>> fixes) {
        this.host = host;
        this.design = design;
        this.fixes = fixes;
        setId("checks");
        for (Finding f : findings) {
            getChildren().add(row(f, RemedyText.of(f, design.limits(), host.inUnits())));
        }
    }

    private VBox row(Finding f, String fix) {
        Label title = new Label(f.title());
        title.setWrapText(true);
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        Label share = new Label(share(f));
        share.setMinWidth(USE_PREF_SIZE);
        HBox line = new HBox(VerdictShape.of(f.verdict(), host.inTheme(), 1.2 * host.em()), title, bar(f), share);
        line.getStyleClass().add("line");
        line.setAlignment(Pos.CENTER_LEFT);
        Label more = new Label(note(f) + where(f) + (fix.isEmpty() ? "" : "\n" + fix) + "\nSource: " + f.source());
        more.getStyleClass().addAll("small", "faint");
        more.setWrapText(true);
        VBox row = new VBox(line);
        row.getStyleClass().add("row");
        row.setId("check-" + f.id().replace('/', '-'));
        row.setFocusTraversable(true);
        row.setAccessibleRole(AccessibleRole.BUTTON);
        row.setAccessibleText(f.title() + ": " + f.verdict().says() + ". " + note(f));
        Runnable asked = () -> {
            host.goTo(f);
            if (open.remove(f) != null) {
                row.getChildren().setAll(line);
            } else {
                VBox under = new VBox(more);
                // a button in it is no click on the row
                under.setOnMouseClicked(MouseEvent::consume);
                under.setOnKeyPressed(KeyEvent::consume);
                open.put(f, under);
                row.getChildren().setAll(line, under);
                fill(f, under);
            }
        };
        row.setOnMouseClicked(e -> asked.run());
        row.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.SPACE) {
                asked.run();
                e.consume();
            }
        });
        return row;
    }

    private void fill(Finding f, VBox under) {
        under.getChildren().remove(1, under.getChildren().size());
        under.getChildren().addAll(fixes.apply(f));
    }

    /** Shows the fixes that are known now under the rows that are open. */
    void refresh() {
        open.forEach(this::fill);
    }

    private String note(Finding f) {
        return f.note().show(host.inUnits());
    }

    private static String share(Finding f) {
        if (f.verdict() == Verdict.NOT_CHECKED || Double.isNaN(f.utilisation())) {
            return f.verdict().says();
        }
        String number =
                f.utilisation() > 9.99 ? "over 999 %" : String.format(Locale.ROOT, "%.0f %%", 100 * f.utilisation());
        return f.verdict() == Verdict.PASS ? number : number + " " + f.verdict().says();
    }

    private String where(Finding f) {
        String at = Double.isNaN(f.tilt())
                ? ""
                : String.format(Locale.ROOT, "\nWorst at %.1f\u00b0", Math.toDegrees(f.tilt()));
        return f.loadCase() == null
                ? at
                : at + (at.isEmpty() ? "\nLoad case " : ", load case ") + CaseName.shown(f.loadCase(), design.tank());
    }

    private Pane bar(Finding f) {
        Pane bar = new Pane();
        double em = host.em();
        double wide = BAR * em;
        bar.setMinSize(wide, em);
        bar.setPrefSize(wide, em);
        bar.setMaxSize(wide, em);
        if (f.verdict() == Verdict.NOT_CHECKED || Double.isNaN(f.utilisation())) {
            return bar;
        }
        double full = wide / SHOWN;
        Rectangle back = new Rectangle(0, 0.2 * em, wide, 0.6 * em);
        back.setFill(host.inTheme().raised());
        Rectangle used = new Rectangle(0, 0.2 * em, Math.max(1, Math.min(SHOWN, f.utilisation()) * full), 0.6 * em);
        used.setFill(host.inTheme().verdict(f.verdict()));
        Line limit = new Line(full, 0, full, em);
        limit.setStroke(host.inTheme().ink());
        limit.setStrokeWidth(2);
        bar.getChildren().addAll(back, used, limit);
        return bar;
    }
}
