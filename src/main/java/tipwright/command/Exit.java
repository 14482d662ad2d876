// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import tipwright.check.Result;
import tipwright.check.rule.Verdict;

/** Exit codes; the help of every command lists them. */
final class Exit {
    static final int FINE = 0;
    static final int FAILS = 1;
    static final int NOT_UNDERSTOOD = 2;
    static final int CANNOT_COMPUTE = 3;

    private Exit() {}

    /** A design of which something could not be worked out is not fine, unless it fails anyway. */
    static int of(Result result) {
        if (result.verdict() == Verdict.FAIL) {
            return FAILS;
        }
        return result.timing().lost() ? CANNOT_COMPUTE : FINE;
    }
}
