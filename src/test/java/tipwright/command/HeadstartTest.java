// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tipwright.design.file.Reading;

/** What is read while the command line is understood is what the command asks for. */
class HeadstartTest {
    @TempDir
    private Path folder;

    @Test
    void givesTheDesignOfTheArgumentsAndNoOther() throws Exception {
        Path own = folder.resolve("own.yaml");
        Files.writeString(own, "tipwright: 1\nname: own\n");
        String[] args = {"check", own.toString()};

        Headstart begun = Headstart.begin(args);

        assertThat(begun.design(own.toString()).name()).isEqualTo(own.toString());
        assertThat(begun.design(own.toString()).reading()).isInstanceOf(Reading.Bad.class);
        assertThat(begun.design(null).name()).isEqualTo(DesignSource.DEMO);
        assertThat(begun.design("saw-skid").inPlaceOfFile()).isTrue();
    }

    @Test
    void takesAnOptionForNoName() {
        Headstart begun = Headstart.begin(new String[] {"check", "--full"});

        assertThat(begun.name()).isNull();
        assertThat(begun.design(null).reading()).isInstanceOf(Reading.Good.class);
    }

    @Test
    void readsNothingForOtherCommands() {
        assertThat(Headstart.begin(new String[] {"units", "length"})).isEqualTo(Headstart.NONE);
    }
}
