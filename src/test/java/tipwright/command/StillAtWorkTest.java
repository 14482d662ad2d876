// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PipedReader;
import java.io.PipedWriter;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class StillAtWorkTest {
    @Test
    @Timeout(60)
    void aPersonIsToldAgainAndAgainWithTheReasonOnce() throws IOException {
        PipedReader pipe = new PipedReader();
        PrintWriter err = new PrintWriter(new PipedWriter(pipe), true);
        try (BufferedReader told = new BufferedReader(pipe);
                StillAtWork work = StillAtWork.on(err, true, Duration.ofMillis(1))) {
            assertThat(told.readLine())
                    .isEqualTo(
                            "tipwright: still at work after 0 s; a mesh of many triangles or a fine tilt step takes long");
            assertThat(told.readLine()).isEqualTo("tipwright: still at work after 0 s");
            work.stop();
        }
    }

    @Test
    void aFileIsToldNothing() throws InterruptedException {
        StringWriter text = new StringWriter();
        try (StillAtWork work = StillAtWork.on(new PrintWriter(text), false, Duration.ZERO)) {
            Thread.sleep(50);
            work.stop();
        }
        assertThat(text.toString()).isEmpty();
    }
}
