// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Writes fields; a number that does not exist becomes null, and {@link #missing} then says why. */
final class JsonFields {
    private final JsonGenerator out;
    private final List<String> absent = new ArrayList<>();

    JsonFields(JsonGenerator out) {
        this.out = out;
    }

    /** Writes one entry of a list. */
    @FunctionalInterface
    interface Entry<T> {
        void write(T entry) throws IOException;
    }

    void start() throws IOException {
        absent.clear();
        out.writeStartObject();
    }

    void start(String name) throws IOException {
        line();
        out.writeFieldName(name);
        start();
    }

    void end() throws IOException {
        out.writeEndObject();
    }

    void startList(String name) throws IOException {
        line();
        out.writeArrayFieldStart(name);
    }

    void startRow() throws IOException {
        line();
        start();
    }

    void endList() throws IOException {
        out.writeEndArray();
    }

    /** A list of objects, each on a line of its own. */
    <T> void each(String name, List<T> entries, Entry<T> entry) throws IOException {
        startList(name);
        for (T e : entries) {
            startRow();
            entry.write(e);
            end();
        }
        endList();
    }

    void list(String name, List<String> texts) throws IOException {
        startList(name);
        for (String text : texts) {
            out.writeString(text);
        }
        endList();
    }

    void text(String name, @Nullable String text) throws IOException {
        out.writeFieldName(name);
        if (text == null) {
            out.writeNull();
        } else {
            out.writeString(text);
        }
    }

    void nothing(String name) throws IOException {
        line();
        out.writeNullField(name);
    }

    void number(String name, double value) throws IOException {
        out.writeFieldName(name);
        value(name, value);
    }

    void numbers(String name, double... values) throws IOException {
        out.writeArrayFieldStart(name);
        for (double value : values) {
            value(name, value);
        }
        out.writeEndArray();
    }

    /** Numbers in a list of lists. */
    void numbersIn(String name, double... values) throws IOException {
        out.writeStartArray();
        for (double value : values) {
            value(name, value);
        }
        out.writeEndArray();
    }

    private void value(String name, double value) throws IOException {
        if (Double.isFinite(value)) {
            out.writeNumber(Rounded.text(value));
        } else {
            out.writeNull();
            if (!absent.contains(name)) {
                absent.add(name);
            }
        }
    }

    /** Says why numbers of this object are null; writes nothing when none is. */
    void missing(String why) throws IOException {
        if (!absent.isEmpty()) {
            out.writeStringField("null_because", String.join(", ", absent) + ": " + why);
            absent.clear();
        }
    }

    private void line() throws IOException {
        out.writeRaw('\n');
    }
}
