// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Text;
import tipwright.remedy.TriedFix;
import tipwright.remedy.TriedFixes;

/** What stands under a check: its fixes as buttons, and how near to its limit it is where it is only close. */
final class FixRows {
    private static final int WAYS = 2;
    private static final String LOOK = "Look for fixes";
    private static final String NONE =
            "No one change that was tried makes it pass well without making something else fail.";

    private final TicketHost host;

    FixRows(TicketHost host) {
        this.host = host;
    }

    /**
     * Under one check.
     *
     * @param said about fixes when there are none; may be empty
     * @param told the fixes that stand under others already; those that are new are added
     */
    List<Node> under(Finding f, Judged judged, TriedFixes fixes, String said, Set<TriedFix> told) {
        List<Node> all = new ArrayList<>();
        List<TriedFix> ways = fixes.of(f);
        int shown = 0;
        for (TriedFix way : ways) {
            ReadyFix ready = judged.fixes().stream()
                    .filter(r -> r.fix().equals(way))
                    .findFirst()
                    .orElse(new ReadyFix(way, null));
            if (shown < WAYS && told.add(way)) {
                all.add(fix(ready, f));
                shown++;
            }
        }
        if (shown == 0 && !ways.isEmpty()) {
            all.add(indented(small("Fix, tried: the same.")));
        } else if (ways.isEmpty() && !said.isEmpty()) {
            all.add(indented(small(said)));
        }
        if (f.verdict() == Verdict.CLOSE) {
            onlyClose(f, judged, ways.isEmpty(), fixes.looked(), all);
        }
        return all;
    }

    /** While something fails, fixes of what is only close are looked for when they are asked for. */
    private void onlyClose(Finding f, Judged judged, boolean none, boolean looked, List<Node> all) {
        double close = judged.early().analysis().design().limits().close();
        if (f.utilisation() > close) {
            all.add(indented(small("Uses %.0f %% of what there is; from %.0f %% on it is close."
                    .formatted(100 * f.utilisation(), 100 * close))));
        }
        boolean fails = judged.verdict() == Verdict.FAIL;
        if (none && (fails ? judged.asked().contains(f.id()) : looked)) {
            all.add(indented(small(NONE)));
        } else if (none && fails && judged.waits().isEmpty()) {
            Button look = new Button(LOOK);
            look.setId("look-" + f.id().replace('/', '-'));
            look.setAccessibleText("look for fixes: " + f.title());
            look.setOnAction(e -> {
                look.setText("Fixes are being tried ...");
                look.setDisable(true);
                host.lookForFixes(f);
            });
            all.add(indented(look));
        }
    }

    private Node fix(ReadyFix ready, Finding f) {
        String text = ready.text();
        if (text == null) {
            return indented(
                    small("Fix, tried: " + ready.says(f, host.inUnits()) + ". Change it in the file or on the card."));
        }
        Button button = new Button(ready.label(host.inUnits()));
        button.setId("fix-" + ready.fix().kind().replaceAll("[^a-z0-9]+", "-"));
        button.getStyleClass().add("fix");
        button.setWrapText(true);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setAccessibleText("Fix: " + ready.says(f, host.inUnits()));
        button.setOnAction(e -> host.apply(ready));
        String rest = ready.rest(f, host.inUnits());
        VBox both = new VBox(button);
        if (!rest.isEmpty()) {
            both.getChildren().add(small(Text.capital(rest) + "."));
        }
        return indented(both);
    }

    /** Text of lesser weight. */
    static Label small(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.getStyleClass().addAll("small", "faint");
        return label;
    }

    private static HBox indented(Region node) {
        HBox box = new HBox(node);
        HBox.setHgrow(node, Priority.ALWAYS);
        box.getStyleClass().add("indented");
        return box;
    }
}
