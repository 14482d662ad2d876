// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.file.FieldMeaning;
import tipwright.design.file.FileField;
import tipwright.design.key.NameId;
import tipwright.quantity.Text;

/** What is said about a field on a card. */
final class FieldWords {
    private FieldWords() {}

    /** Its remark with what is allowed. */
    static String remark(FileField field) {
        FieldMeaning m = field.meaning();
        List<String> all = new ArrayList<>();
        if (!m.note().isEmpty()) {
            all.add(m.note());
        }
        if (!m.limits().isEmpty()) {
            all.add(m.limits());
        }
        if (!field.inPlaceOf().isEmpty()) {
            all.add("or " + NameId.words(String.join(" or ", field.inPlaceOf())) + " in its place");
        }
        if (m.asked()) {
            all.add("'?' asks for it");
        }
        return String.join("; ", all);
    }

    /** What stands in an empty field. */
    static String prompt(FileField field) {
        FieldMeaning m = field.meaning();
        if (!plain(m.usual()).isEmpty()) {
            return "usually " + m.usual();
        }
        if (m.sort() == FieldMeaning.Sort.POINT) {
            return "x, y or a point's name";
        }
        return m.example().isEmpty() ? "" : "such as " + m.example();
    }

    /** What is usual, where it is a single value. */
    static String plain(String usual) {
        return usual.startsWith("{") || usual.equals("[]") ? "" : usual;
    }

    /** What a screen reader says: the name and what kind of quantity is meant. */
    static String spoken(FileField field) {
        FieldMeaning m = field.meaning();
        return m.kind() == null
                ? field.label()
                : field.label() + ", a " + m.kind().word();
    }

    /** With a capital. */
    static String title(String label) {
        return Text.capital(label);
    }
}
