// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tipwright.check.rule.Check;

/**
 * What every check says of itself, as it was when somebody looked at it last: a trait that is lost would leave a check out where it
 * belongs. If a change is meant: {@code mvn -q -B test -Dtest=RegisterTest -Dtest.write.regression=true}, and argue it in the commit.
 */
class RegisterTest {
    private static final Path KEPT = Path.of("src/test/resources/tipwright/check/register.txt");

    private static String line(Check check) {
        return String.join(
                " | ",
                check.id(),
                check.title(),
                new TreeSet<>(check.traits()).toString(),
                new TreeSet<>(check.looksAt()).toString(),
                check.bound(check.id()),
                check.opener(),
                check.rule(),
                check.formula(),
                check.source());
    }

    @Test
    void everyCheckSaysOfItselfWhatItSaid() throws IOException {
        List<String> now = Checks.all().stream().map(RegisterTest::line).toList();
        if (Boolean.getBoolean("test.write.regression")) {
            Files.write(KEPT, now);
        }
        assertThat(now).isEqualTo(Files.readAllLines(KEPT));
    }
}
