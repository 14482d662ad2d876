// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;

/** Runs of checks that another thread may help with: whoever does what, the findings are the same, and nobody waits for good. */
@Timeout(value = 60, unit = TimeUnit.SECONDS)
class OpenRunsTest {
    private static Analysis analysis;
    private static List<Finding> alone;

    @BeforeAll
    static void analyse() throws Exception {
        analysis = Analyser.analyse(((Reading.Good) DesignFile.shipped("silt-trailer.yaml")).design());
        alone = Checks.run(some(), analysis);
    }

    private static List<Check> some() {
        return Checks.all().stream().filter(c -> !c.id().equals("clearance")).toList();
    }

    @Test
    void aHelperChangesNothingAndIsLetGo() throws Exception {
        OpenRuns runs = new OpenRuns();
        Thread helper = new Thread(runs::help);
        helper.start();
        List<List<Finding>> found = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            found.add(runs.findings(new SharedRun(some(), analysis)));
        }
        runs.end();
        helper.join();
        assertThat(found).allSatisfy(one -> assertThat(one).isEqualTo(alone));
    }

    /** A helper that is alone with a run does all of it. */
    @Test
    void whoHelpsDoesWhatNobodyHasBegun() {
        OpenRuns runs = new OpenRuns();
        SharedRun run = new SharedRun(some(), analysis);
        run.help();
        assertThat(runs.findings(run)).isEqualTo(alone);
        runs.end();
        runs.help();
        assertThat(run.findings(some().get(0))).isEqualTo(Checks.run(List.of(some().get(0)), analysis));
    }

    /** One that is told to stop stops, and the one that asked gets its answer. */
    @Test
    void anInterruptedHelperIsNotMissed() throws Exception {
        OpenRuns runs = new OpenRuns();
        Thread helper = new Thread(runs::help);
        helper.start();
        helper.interrupt();
        helper.join();
        assertThat(runs.findings(new SharedRun(some(), analysis))).isEqualTo(alone);
    }
}
