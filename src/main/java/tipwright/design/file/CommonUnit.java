// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;

/** Which unit a file uses most. */
final class CommonUnit {
    private CommonUnit() {}

    /** The label of the unit in which most quantities of a kind are written; empty when there are none. */
    static String of(Node root, Kind kind) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        count(root, kind, counts);
        return counts.entrySet().stream()
                .max(Comparator.comparingInt(Map.Entry::getValue))
                .map(Map.Entry::getKey)
                .orElse("");
    }

    private static void count(Node node, Kind kind, Map<String, Integer> counts) {
        if (node instanceof Node.Fields group) {
            group.fields().values().forEach(field -> count(field.value(), kind, counts));
        } else if (node instanceof Node.Items list) {
            list.items().forEach(item -> count(item, kind, counts));
        } else if (node instanceof Node.Scalar scalar && isNumber(scalar.text())) {
            try {
                String unit = Quantities.estimate(scalar.text(), kind, "").unit();
                if (!unit.isEmpty()) {
                    counts.merge(unit, 1, Integer::sum);
                }
            } catch (QuantityException other) {
                return; // a quantity of another kind, or none
            }
        }
    }

    private static boolean isNumber(String text) {
        return text.length() < 40
                && text.chars().anyMatch(Character::isDigit)
                && !Character.isDigit(text.charAt(text.length() - 1));
    }
}
