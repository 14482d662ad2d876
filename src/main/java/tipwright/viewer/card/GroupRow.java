// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import tipwright.design.file.FileField;

/** What is wrong with a group as a whole. */
final class GroupRow extends FieldRow {
    private final CardState card;

    GroupRow(CardState card, FileField of) {
        super(of.path());
        this.card = card;
        getChildren().add(problem());
        update(of);
    }

    @Override
    void update(FileField field) {
        show(String.join("\n", card.problems(path())));
        setManaged(!problem().getText().isEmpty());
    }

    @Override
    void takeFocus() {
        problem().requestFocus();
    }
}
