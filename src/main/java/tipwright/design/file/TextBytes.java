// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** Bytes of a file as UTF-8 text. */
final class TextBytes {
    private TextBytes() {}

    /** The text; null with a problem noted when the bytes are no UTF-8 text. */
    static @Nullable String decode(String file, byte[] bytes, Problems problems) {
        CharBuffer out = CharBuffer.allocate(bytes.length);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError() || text.indexOf('\0') >= 0) {
            int end = result.isError() ? text.length() : text.indexOf('\0');
            problems.add(
                    Place.of(file, text, end),
                    "",
                    result.isError()
                            ? "not UTF-8 text from here on; save the file as UTF-8 in a text editor"
                            : "not a text file (a zero byte)");
            return null;
        }
        return text.startsWith("\ufeff") ? text.substring(1) : text;
    }
}
