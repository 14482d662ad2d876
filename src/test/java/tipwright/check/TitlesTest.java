// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tipwright.check.rule.Check;

/** A finding about no part in particular is called what its check is called. */
class TitlesTest {
    @Test
    void withoutAPartItIsTheCheckItself() {
        for (Check check : Checks.all()) {
            assertThat(check.title("")).as(check.id()).isEqualTo(check.title());
        }
    }
}
