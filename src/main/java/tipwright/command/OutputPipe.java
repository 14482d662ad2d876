// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** An output of the process; when its reader has closed the pipe ('| head'), the rest is dropped without a word. */
final class OutputPipe extends OutputStream {
    private final FileOutputStream to;
    private boolean closedByReader;

    private OutputPipe(FileDescriptor to) {
        this.to = new FileOutputStream(to);
    }

    /** A writer to it, in UTF-8. */
    static PrintWriter writer(FileDescriptor to) {
        return new PrintWriter(new OutputStreamWriter(new OutputPipe(to), StandardCharsets.UTF_8));
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
        if (closedByReader) {
            return;
        }
        try {
            to.write(bytes, from, count);
        } catch (IOException e) {
            if (!String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT).contains("pipe")) {
                throw e;
            }
            closedByReader = true;
        }
    }
}
