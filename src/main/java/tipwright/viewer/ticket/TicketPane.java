// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.remedy.TriedFix;
import tipwright.remedy.TriedFixes;
import tipwright.report.Checked;
import tipwright.report.FiveNumbers;
import tipwright.report.Style;
import tipwright.report.Ticket;
import tipwright.viewer.scene.Theme;

/** The ticket: the verdict in two halves, the five numbers, what to fix with buttons that do it; all checks only when asked for. */
public final class TicketPane extends VBox {
    private final TicketHost host;
    private final FixRows under;
    private @Nullable CheckRows rows;
    private final Drawer all;
    private @Nullable Judged shown;
    private @Nullable Theme theme;
    private @Nullable UnitSystem units;
    private double em;

    /** An empty ticket; the last nodes stand under it, folded. */
    public TicketPane(TicketHost host, Node... below) {
        this.host = host;
        under = new FixRows(host);
        setId("ticket");
        getStyleClass().addAll("card", "ticket");
        all = new Drawer("all-checks", "all checks", this::rows);
        getChildren().add(all);
        getChildren().addAll(below);
    }

    private Node rows() {
        Judged judged = Objects.requireNonNull(shown);
        List<Finding> findings = judged.findings().stream()
                .sorted(Comparator.comparing(Finding::verdict, TicketPane::worstFirst)
                        .thenComparingDouble(f -> Double.isNaN(f.utilisation()) ? 0 : -f.utilisation()))
                .toList();
        CheckRows made = new CheckRows(host, findings, judged.early().analysis().design(), this::fixes);
        rows = made;
        return made;
    }

    /** What stands under a check among all of them. */
    private List<Node> fixes(Finding f) {
        Judged judged = shown;
        Checked checked = judged == null ? null : judged.checked();
        return judged == null || checked == null
                ? List.of()
                : under.under(f, judged, checked.fixes(), "", new HashSet<>());
    }

    private static int worstFirst(Verdict a, Verdict b) {
        List<Verdict> order = List.of(Verdict.FAIL, Verdict.CLOSE, Verdict.PASS, Verdict.NOT_CHECKED);
        return order.indexOf(a) - order.indexOf(b);
    }

    /** Shows what is known; null: there is nothing to show. */
    public void show(@Nullable Judged judged) {
        setVisible(judged != null);
        boolean alike = theme == host.inTheme() && units == host.inUnits() && em == host.em();
        boolean same = isShown(judged);
        Judged before = shown;
        shown = judged;
        if (judged == null || (same && alike)) {
            return;
        }
        boolean rowsToo = same || before == null || !before.findings().equals(judged.findings());
        theme = host.inTheme();
        units = host.inUnits();
        em = host.em();
        List<Node> nodes = new ArrayList<>();
        Checked checked = judged.checked();
        if (checked == null) {
            early(judged, nodes);
        } else {
            whole(judged, checked, nodes);
        }
        List<Node> fixed =
                getChildren().subList(getChildren().indexOf(all), getChildren().size());
        nodes.addAll(List.copyOf(fixed));
        all.setWords("all " + judged.findings().size() + " checks");
        getChildren().setAll(nodes);
        CheckRows open = rows;
        if (rowsToo) {
            all.renew();
        } else if (open != null) {
            open.refresh();
        }
    }

    /** Whether it is the very one that is shown: comparing all that is in it would take long. */
    private boolean isShown(@Nullable Object judged) {
        Object before = shown;
        return judged == before;
    }

    private void early(Judged judged, List<Node> nodes) {
        boolean fails = judged.verdict() == Verdict.FAIL;
        nodes.add(headline(judged.verdict(), fails ? "FAILS" : "NO FAILURE SO FAR"));
        nodes.add(waits(judged));
        nodes.add(numbers(FiveNumbers.known(judged.early(), new Style(false, host.inUnits()))));
    }

    private void whole(Judged judged, Checked checked, List<Node> nodes) {
        Ticket ticket = Ticket.of(checked, host.inUnits());
        nodes.add(headline(ticket.verdict(), ticket.word()));
        for (Ticket.Half half : ticket.halves()) {
            nodes.add(marked(half.verdict(), half.sentence()));
        }
        ticket.sure().forEach(line -> nodes.add(FixRows.small(line)));
        if (!judged.waits().isEmpty()) {
            nodes.add(waits(judged));
        }
        nodes.add(numbers(ticket.numbers()));
        boolean bad = ticket.items().stream().anyMatch(Ticket.Item::bad);
        nodes.add(head(bad ? "What to fix" : "Closest to failing"));
        Set<TriedFix> told = new HashSet<>();
        for (Ticket.Item item : ticket.items()) {
            nodes.add(item(item, judged, checked.fixes(), told));
        }
        if (ticket.more() > 0) {
            nodes.add(FixRows.small(ticket.more() + " more: see all checks."));
        }
        for (var mistake : checked.mistakes()) {
            nodes.add(marked(Verdict.CLOSE, mistake.show(host.inUnits())));
        }
        checked.warnings().forEach(line -> nodes.add(marked(Verdict.CLOSE, line)));
        if (!ticket.cannotTell().isEmpty()) {
            nodes.add(marked(Verdict.NOT_CHECKED, "Cannot tell: " + String.join("; ", ticket.cannotTell()) + "."));
        }
    }

    private Node headline(Verdict verdict, String word) {
        Label label = new Label(word);
        label.setId("verdict");
        label.getStyleClass().add("big");
        label.setWrapText(true);
        HBox line = new HBox(VerdictShape.of(verdict, host.inTheme(), 1.9 * host.em()), label);
        line.getStyleClass().add("line");
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    private HBox marked(Verdict verdict, String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        HBox.setHgrow(label, Priority.ALWAYS);
        HBox line = new HBox(VerdictShape.of(verdict, host.inTheme(), 1.2 * host.em()), label);
        line.getStyleClass().add("line");
        return line;
    }

    private static Label waits(Judged judged) {
        Label label = FixRows.small(judged.waits().isEmpty() ? "" : Text.capital(judged.waits()) + ".");
        label.setId("waits");
        return label;
    }

    private static Label head(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("head");
        return label;
    }

    private static GridPane numbers(List<FiveNumbers.Line> lines) {
        GridPane grid = new GridPane();
        grid.setId("five-numbers");
        grid.getStyleClass().add("numbers");
        ColumnConstraints names = new ColumnConstraints();
        names.setMinWidth(USE_PREF_SIZE);
        ColumnConstraints says = new ColumnConstraints();
        says.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().setAll(names, says);
        for (int i = 0; i < lines.size(); i++) {
            Label name = head(lines.get(i).name());
            name.setMinWidth(USE_PREF_SIZE);
            Label value = new Label(lines.get(i).says());
            value.setWrapText(true);
            value.setId("number-"
                    + lines.get(i).name().toLowerCase(java.util.Locale.ROOT).replace(' ', '-'));
            name.setLabelFor(value);
            grid.addRow(i, name, value);
            GridPane.setValignment(name, VPos.TOP);
        }
        return grid;
    }

    private Node item(Ticket.Item item, Judged judged, TriedFixes fixes, Set<TriedFix> told) {
        Finding f = item.finding();
        HBox line = marked(f.verdict(), item.sentence());
        line.getStyleClass().add("row");
        line.setId("item-" + f.id().replace('/', '-'));
        line.setFocusTraversable(true);
        line.setAccessibleRole(AccessibleRole.BUTTON);
        line.setAccessibleText(f.verdict().says() + ": " + item.sentence() + " Shows where it is worst.");
        line.setOnMouseClicked(e -> host.goTo(f));
        line.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.SPACE) {
                host.goTo(f);
                e.consume();
            }
        });
        VBox box = new VBox(line);
        box.getChildren().addAll(under.under(f, judged, fixes, item.fix(), told));
        return box;
    }
}
