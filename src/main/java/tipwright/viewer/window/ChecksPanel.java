// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import org.jspecify.annotations.Nullable;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Limits;
import tipwright.design.tank.CaseName;
import tipwright.quantity.UnitSystem;
import tipwright.report.RemedyText;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.editor.Solved;
import tipwright.viewer.scene.Theme;

/** All checks, the worst first, each with a bar that ends at its limit; a click goes to the tilt and load case that govern. */
final class ChecksPanel extends VBox implements Panel {
    private static final double BAR = 66;
    private static final double SHOWN = 1.5;

    private final WindowState state;
    private final Label verdict = new Label();
    private final HBox headline = new HBox(10);
    private final VBox rows = new VBox();
    private List<Finding> shown = List.of();
    private @Nullable Theme drawn;
    private @Nullable UnitSystem units;

    ChecksPanel(WindowState state) {
        this.state = state;
        getStyleClass().add("card");
        setSpacing(4);
        verdict.setId("verdict");
        verdict.getStyleClass().add("big");
        headline.setAlignment(Pos.CENTER_LEFT);
        rows.setId("checks");
        getChildren().addAll(headline, rows);
    }

    @Override
    public void renew() {
        Solved solved = state.editor().solved();
        setVisible(solved != null);
        boolean same = Objects.equals(drawn, state.theme()) && Objects.equals(units, state.units());
        if (solved == null || (same && solved.findings().equals(shown))) {
            return;
        }
        units = state.units();
        Limits limits = solved.analysis().design().limits();
        shown = solved.findings();
        drawn = state.theme();
        Verdict worst = solved.verdict();
        long unchecked =
                shown.stream().filter(f -> f.verdict() == Verdict.NOT_CHECKED).count();
        verdict.setText(
                switch (worst) {
                    case FAIL -> "FAILS";
                    case CLOSE -> "CLOSE";
                    case PASS, NOT_CHECKED -> "PASSES";
                });
        String waits = String.join(", ", solved.later());
        Label more = new Label(
                !waits.isEmpty()
                        ? "updates when you let go: " + waits
                        : unchecked == 0 ? "" : unchecked + " cannot tell");
        more.getStyleClass().addAll("faint", "small");
        headline.getChildren().setAll(VerdictShape.of(worst, state.theme(), 26), verdict, more);
        rows.getChildren().clear();
        for (Finding f : shown) {
            String mend = RemedyText.of(f, limits, state.units());
            rows.getChildren().add(row(f, mend));
            if (f.verdict() == Verdict.FAIL && !mend.isEmpty()) {
                rows.getChildren().add(advice(mend));
            }
        }
    }

    private static Label advice(String mend) {
        Label label = new Label(mend);
        label.getStyleClass().addAll("faint", "small");
        label.setWrapText(true);
        label.setPadding(new Insets(0, 8, 4, 33));
        return label;
    }

    private HBox row(Finding f, String mend) {
        Label title = new Label(f.title());
        title.setMinWidth(60);
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        Label share = new Label(share(f));
        share.setMinWidth(f.verdict() == Verdict.PASS ? 44 : USE_PREF_SIZE);
        share.setAlignment(Pos.CENTER_RIGHT);
        HBox row = new HBox(8, VerdictShape.of(f.verdict(), state.theme(), 17), title, bar(f), share);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("row");
        row.setId("check-" + f.id().replace('/', '-'));
        row.setFocusTraversable(true);
        row.setAccessibleText(
                f.title() + ": " + f.verdict().says() + ". " + f.note().show(state.units()));
        row.setOnMouseClicked(e -> goTo(f));
        row.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER) {
                goTo(f);
                e.consume();
            }
        });
        Tooltip tip = new Tooltip(f.note().show(state.units()) + where(f) + (mend.isEmpty() ? "" : "\n" + mend)
                + "\nSource: " + f.source());
        tip.setWrapText(true);
        tip.setMaxWidth(420);
        Tooltip.install(row, tip);
        return row;
    }

    private static String share(Finding f) {
        if (f.verdict() == Verdict.NOT_CHECKED || Double.isNaN(f.utilisation())) {
            return f.verdict().says();
        }
        String number =
                f.utilisation() > 9.99 ? "over 999 %" : String.format(Locale.ROOT, "%.0f %%", 100 * f.utilisation());
        return f.verdict() == Verdict.PASS ? number : number + " " + f.verdict().says();
    }

    private static String where(Finding f) {
        String at = Double.isNaN(f.tilt())
                ? ""
                : String.format(Locale.ROOT, "\nWorst at %.1f\u00b0", Math.toDegrees(f.tilt()));
        return f.loadCase() == null
                ? at
                : at + (at.isEmpty() ? "\nLoad case " : ", load case ") + CaseName.shown(f.loadCase());
    }

    private Pane bar(Finding f) {
        Pane bar = new Pane();
        bar.setMinSize(BAR, 14);
        bar.setPrefSize(BAR, 14);
        bar.setMaxSize(BAR, 14);
        if (f.verdict() == Verdict.NOT_CHECKED || Double.isNaN(f.utilisation())) {
            return bar;
        }
        double full = BAR / SHOWN;
        Rectangle back = new Rectangle(0, 3, BAR, 8);
        back.setFill(state.theme().raised());
        Rectangle used = new Rectangle(0, 3, Math.max(1, Math.min(SHOWN, f.utilisation()) * full), 8);
        used.setFill(state.theme().verdict(f.verdict()));
        Line limit = new Line(full, 0, full, 14);
        limit.setStroke(state.theme().ink());
        limit.setStrokeWidth(2);
        bar.getChildren().addAll(back, used, limit);
        return bar;
    }

    private void goTo(Finding f) {
        String c = f.loadCase();
        if (c != null) {
            state.setLoadCase(c);
        }
        if (!Double.isNaN(f.tilt())) {
            state.tiltTo(f.tilt());
        }
    }

    @Override
    public void move(MachineState now) {
        // checks look at every tilt: nothing moves with the one shown
    }
}
