// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

/** What a check says. */
public enum Verdict {
    PASS("pass"),
    CLOSE("close"),
    FAIL("fail"),
    NOT_CHECKED("not checked");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** As shown and as in the JSON. */
    public String word() {
        return word;
    }
}
