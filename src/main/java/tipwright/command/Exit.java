// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import tipwright.check.rule.Verdict;

/** Exit codes; the help of every command lists them. */
final class Exit {
    static final int FINE = 0;
    static final int FAILS = 1;
    static final int NOT_UNDERSTOOD = 2;
    static final int CANNOT_COMPUTE = 3;

    private Exit() {}

    static int of(Verdict verdict) {
        return verdict == Verdict.FAIL ? FAILS : FINE;
    }
}
