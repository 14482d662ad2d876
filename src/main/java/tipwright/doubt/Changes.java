// SPDX-License-Identifier: Apache-2.0
package tipwright.doubt;

import tipwright.check.rule.Finding;

/** How much of a rating a check uses more or less when a value is off. */
interface Changes {
    /** Change of a finding's utilisation by one standard doubt of each value, in their order; 0 where it does not say. */
    double[] of(Finding finding);
}
