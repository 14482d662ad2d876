// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
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
import tipwright.check.Early;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.key.NameId;
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
    private static final String NOT_YET = "still being worked out";

    private final TicketHost host;
    private final FixRows under;
    private @Nullable CheckRows rows;
    private final Drawer all;
    private final Label big = new Label();
    private final HBox headline = new HBox();
    private final VerdictMark mark = new VerdictMark();
    private final Label waits = FixRows.small("");
    private final GridPane numbers = new GridPane();
    private final Map<String, Label> values = new HashMap<>();
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
        big.setId("verdict");
        big.getStyleClass().add("big");
        big.setWrapText(true);
        headline.getStyleClass().add("line");
        headline.setAlignment(Pos.CENTER_LEFT);
        waits.setId("waits");
        numbers.setId("five-numbers");
        numbers.getStyleClass().add("numbers");
        ColumnConstraints names = new ColumnConstraints();
        names.setMinWidth(USE_PREF_SIZE);
        ColumnConstraints says = new ColumnConstraints();
        says.setHgrow(Priority.ALWAYS);
        numbers.getColumnConstraints().setAll(names, says);
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
        Checked checked = judged.all();
        if (checked == null) {
            early(judged, nodes);
        } else {
            whole(judged, checked, nodes);
        }
        List<Node> fixed =
                getChildren().subList(getChildren().indexOf(all), getChildren().size());
        nodes.addAll(List.copyOf(fixed));
        all.setWords("all " + judged.findings().size() + " checks");
        put(nodes);
        CheckRows open = rows;
        if (rowsToo) {
            all.renew();
        } else if (open != null) {
            open.refresh();
        }
    }

    /** Puts nodes in; those that are there already stay as they are, which saves styling them anew. */
    private void put(List<Node> nodes) {
        getChildren().retainAll(nodes);
        for (int i = 0; i < nodes.size(); i++) {
            if (i >= getChildren().size() || !getChildren().get(i).equals(nodes.get(i))) {
                getChildren().add(i, nodes.get(i));
            }
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
        if (judged.stage() != Judged.Stage.QUICK) {
            nodes.add(FixRows.small(soFar(judged.early())));
        }
        nodes.add(waits(judged));
        nodes.add(numbers(FiveNumbers.soFar(judged.early(), new Style(false, host.inUnits()), NOT_YET)));
        List<Ticket.Item> items =
                judged.stage() == Judged.Stage.QUICK ? List.of() : Ticket.soFar(judged.early(), host.inUnits());
        if (!items.isEmpty()) {
            nodes.add(head("What to fix, so far"));
        }
        for (Ticket.Item item : items) {
            nodes.add(item(item, judged, TriedFixes.NONE, new HashSet<>()));
        }
    }

    /** '61 checks are made: 58 pass, 3 are close; 4 cannot tell.' */
    private static String soFar(Early early) {
        Map<Verdict, Long> count =
                early.certain().collect(Collectors.groupingBy(Finding::verdict, Collectors.counting()));
        long failed = count.getOrDefault(Verdict.FAIL, 0L);
        long close = count.getOrDefault(Verdict.CLOSE, 0L);
        long passed = count.getOrDefault(Verdict.PASS, 0L);
        long missing = count.getOrDefault(Verdict.NOT_CHECKED, 0L);
        return (failed + close + passed)
                + " checks are made: "
                + (failed == 0 ? "" : failed + (failed == 1 ? " fails, " : " fail, "))
                + (close == 0 ? "" : close + (close == 1 ? " is close, " : " are close, "))
                + passed + (passed == 1 ? " passes" : " pass")
                + (missing == 0 ? "." : "; " + missing + " cannot tell.");
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
        nodes.add(numbers(ticket.numbers().stream()
                .map(line -> line.name().equals(FiveNumbers.FILL) && judged.stage() != Judged.Stage.FILLED
                        ? new FiveNumbers.Line(line.name(), NOT_YET)
                        : line)
                .toList()));
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
        big.setText(word);
        Node shape = mark.of(verdict, host.inTheme(), 1.9 * host.em());
        if (!headline.getChildren().contains(shape)) {
            headline.getChildren().setAll(shape, big);
        }
        return headline;
    }

    private HBox marked(Verdict verdict, String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        HBox.setHgrow(label, Priority.ALWAYS);
        HBox line = new HBox(VerdictShape.of(verdict, host.inTheme(), 1.2 * host.em()), label);
        line.getStyleClass().add("line");
        return line;
    }

    private Label waits(Judged judged) {
        waits.setText(judged.waits().isEmpty() ? "" : Text.capital(judged.waits()) + ".");
        return waits;
    }

    private static Label head(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("head");
        return label;
    }

    private GridPane numbers(List<FiveNumbers.Line> lines) {
        for (int i = 0; i < lines.size(); i++) {
            FiveNumbers.Line line = lines.get(i);
            int row = i;
            values.computeIfAbsent(line.name(), name -> number(name, row)).setText(line.says());
        }
        return numbers;
    }

    private Label number(String name, int row) {
        Label head = head(name);
        head.setMinWidth(USE_PREF_SIZE);
        Label value = new Label();
        value.setWrapText(true);
        value.setId("number-" + NameId.of(name.toLowerCase(Locale.ROOT)));
        head.setLabelFor(value);
        numbers.addRow(row, head, value);
        GridPane.setValignment(head, VPos.TOP);
        return value;
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
