// SPDX-License-Identifier: Apache-2.0
package tipwright;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;

/** What comes of the check of each shipped design: worked out once for all tests of a process. */
public final class ShippedChecks {
    private static final Map<String, Result> KNOWN = new ConcurrentHashMap<>();

    private ShippedChecks() {}

    /** Of a file among those that are shipped: 'saw-skid.yaml'. */
    public static Result of(String file) throws CannotComputeException {
        Result known = KNOWN.get(file);
        if (known == null) {
            known = Checker.check(reading(file).design());
            KNOWN.put(file, known);
        }
        return known;
    }

    /** The same file as it was read. */
    public static Reading.Good reading(String file) {
        return (Reading.Good) DesignFile.shipped(file);
    }
}
