// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;

/** Names in a list must tell its entries apart. */
final class Names {
    private Names() {}

    static void unique(Facts facts, String list, List<String> names) {
        for (int i = 1; i < names.size(); i++) {
            int first = names.indexOf(names.get(i));
            if (first < i) {
                facts.wrong(
                        Paths.item(list, i + 1) + ".name",
                        "another one is already named " + ErrorText.quoted(names.get(i)) + " (entry " + (first + 1)
                                + "); give each its own name");
            }
        }
    }
}
