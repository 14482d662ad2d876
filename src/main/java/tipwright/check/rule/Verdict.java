// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

/** What a check says. */
public enum Verdict {
    PASS("pass", "passes"),
    CLOSE("close", "close"),
    FAIL("fail", "fails"),
    NOT_CHECKED("not checked", "cannot tell");

    private final String word;
    private final String says;

    Verdict(String word, String says) {
        this.word = word;
        this.says = says;
    }

    /** As a person reads it: 'passes', 'close', 'fails', 'cannot tell'. */
    public String says() {
        return says;
    }

    /** As in the JSON. */
    public String word() {
        return word;
    }
}
