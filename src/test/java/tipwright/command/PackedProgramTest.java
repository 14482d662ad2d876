// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tipwright.build.LambdaClasses;

/** The program as it is packaged, with Java's verifier on every class. */
class PackedProgramTest {
    @Test
    void saysWhatTheCompiledOneSays(@TempDir Path folder) throws Exception {
        Path compiled = Path.of(
                Main.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        LambdaClasses.main(new String[] {compiled.toString(), folder.toString()});
        List<String> line = Processes.program("check", "twin-rams");
        int place = line.indexOf("-cp") + 1;
        String all = line.get(place);
        assertThat(all).contains(compiled.toString());
        line.set(place, all.replace(compiled.toString(), folder.toString()));
        assertThat(Processes.run(line, folder, Map.of(), null)).isEqualTo(Cli.run("check", "twin-rams"));
    }
}
