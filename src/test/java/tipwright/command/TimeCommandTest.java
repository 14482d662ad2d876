// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The time line on the command line. */
class TimeCommandTest {
    @Test
    void tellsTheTimeLineOfAShippedDesign() {
        Cli.Outcome outcome = Cli.run("time", "silt-trailer");
        assertThat(outcome.code()).isZero();
        assertThat(outcome.out())
                .contains("How long does a dump take?", "Up 69 s, down 66 s", "full tilt", "stowed again")
                .contains("* tilt   o in the tank", "Time line", "All loads");
        assertThat(outcome.out().lines().mapToInt(String::length).max().orElse(0))
                .isLessThanOrEqualTo(110);
        assertThat(outcome.out()).matches("[\\x20-\\x7e\\n]*");
    }

    @Test
    void jsonHasEveryMoment() throws IOException {
        JsonNode json = new ObjectMapper()
                .readTree(Cli.run("time", "silt-trailer", "--json").out());
        JsonNode line = json.get("time_lines").get(0);
        assertThat(line.get("case").asText()).isEqualTo("draining");
        JsonNode rows = line.get("rows");
        assertThat(rows.size()).isGreaterThan(30);
        assertThat(rows.get(0).get("time_s").asDouble()).isZero();
        assertThat(rows.get(rows.size() - 1).get("time_s").asDouble())
                .isEqualTo(json.get("cycle").get("cycle_s").asDouble());
    }

    @Test
    void aStrokeThatEndsShortOfTheFullTiltIsSaid() {
        assertThat(Cli.run("time", "too-small").out())
                .contains("The actuator is fully out at 10.8 deg and the tank never reaches 60 deg.");
    }

    @Test
    void otherUnits() {
        assertThat(Cli.run("time", "grit-hopper", "--units", "us").out()).contains(" gpm", " gal", " lbf", " psi");
    }

    @Test
    void anUnknownDesignIsNotUnderstood() {
        Cli.Outcome outcome = Cli.run("time", "no-such.yaml");
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).contains("there is no such file");
    }
}
