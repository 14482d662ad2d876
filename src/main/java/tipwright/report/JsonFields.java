// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec3;

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

    /** A list of objects, each on a line of its own. */
    <T> void each(String name, List<T> entries, Entry<T> entry) throws IOException {
        line();
        out.writeArrayFieldStart(name);
        for (T e : entries) {
            line();
            start();
            entry.write(e);
            end();
        }
        out.writeEndArray();
    }

    void list(String name, List<String> texts) throws IOException {
        line();
        out.writeArrayFieldStart(name);
        for (String text : texts) {
            out.writeString(text);
        }
        out.writeEndArray();
    }

    void text(String name, @Nullable String text) throws IOException {
        out.writeFieldName(name);
        if (text == null) {
            out.writeNull();
        } else {
            out.writeString(text);
        }
    }

    void flag(String name, boolean value) throws IOException {
        out.writeFieldName(name);
        out.writeBoolean(value);
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

    /** Each as [x, y, z]. */
    void points(String name, List<Vec3> points) throws IOException {
        out.writeArrayFieldStart(name);
        for (Vec3 p : points) {
            out.writeStartArray();
            value(name, p.x());
            value(name, p.y());
            value(name, p.z());
            out.writeEndArray();
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
