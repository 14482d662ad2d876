// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import tipwright.design.tank.Cases;

/** Names of load cases must be known, and some case must remain. */
final class CaseRules {
    private CaseRules() {}

    static void check(Facts facts) {
        List<String> skip = facts.bound().list("cases.skip", String.class);
        Set<String> left = new TreeSet<>(Cases.BUILT_IN);
        for (int i = 0; i < skip.size(); i++) {
            String path = Paths.item("cases.skip", i + 1);
            String name = skip.get(i);
            if (!Cases.BUILT_IN.contains(name)) {
                facts.wrong(
                        path,
                        "no built-in case " + ErrorText.quoted(name) + "; " + ErrorText.meant(name, Cases.BUILT_IN));
            } else if (!left.remove(name)) {
                facts.wrong(path, ErrorText.quoted(name) + " is named twice; keep one");
            }
        }
        List<String> own = new ArrayList<>();
        for (Cases.Own added : facts.bound().list("cases.add", Cases.Own.class)) {
            own.add(added.name());
            if (Cases.BUILT_IN.contains(added.name())) {
                facts.wrong(
                        Paths.item("cases.add", own.size()) + ".name",
                        ErrorText.quoted(added.name()) + " is a built-in case; choose another name");
            }
        }
        Names.unique(facts, "cases.add", own);
        if (own.isEmpty() && Cases.USUAL.stream().noneMatch(left::contains)) {
            facts.wrong(
                    "cases.skip",
                    "cases: skip: leaves no load case that is always looked at; keep at least one of "
                            + ErrorText.oneOf(Cases.USUAL));
        }
    }
}
