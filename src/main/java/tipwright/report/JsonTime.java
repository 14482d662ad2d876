// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import java.io.IOException;
import java.io.Writer;
import tipwright.time.Timing;

/** The dump in time as JSON, every moment of it. Source of the form: RFC 8259. */
public final class JsonTime {
    private JsonTime() {}

    /** Writes it in ASCII, a moment on each line; does not close the writer. */
    public static void write(String design, Timing timing, Writer out) throws IOException {
        JsonFactory factory = JsonFactory.builder()
                .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
                .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
                .build();
        try (JsonGenerator generator = factory.createGenerator(out)) {
            JsonFields json = new JsonFields(generator);
            JsonCycle cycle = new JsonCycle(json);
            json.start();
            json.text("design", design);
            json.text("not_known_because", timing.missing());
            cycle.write(timing);
            cycle.timeLine(timing);
            json.end();
            generator.writeRaw('\n');
        }
    }
}
