// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.nio.charset.Charset;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How Java sees names of files, which the locale of the process decides before the program starts; the launcher sees to it, but the
 * program can be started without that.
 *
 * @param charset of names
 * @param folder that the process was started in, as Java sees it
 */
record Locality(Charset charset, String folder) {
    /** What Java puts for what it cannot read. */
    private static final char LOST = '\ufffd';

    /** That of this process. */
    static Locality here() {
        String name = System.getProperty("sun.jnu.encoding", "UTF-8");
        Charset charset = Charset.isSupported(name) ? Charset.forName(name) : Charset.defaultCharset();
        return new Locality(charset, System.getProperty("user.dir", ""));
    }

    /** A sentence when a name got lost on its way to the program; null: all is well. */
    @Nullable
    String fault(List<String> arguments) {
        if (charset.newEncoder().canEncode(LOST)) {
            return null;
        }
        if (!charset.newEncoder().canEncode(folder)) {
            return "Java cannot read the name of this folder" + why();
        }
        for (String argument : arguments) {
            if (!charset.newEncoder().canEncode(argument)) {
                return "Java cannot read the name '" + argument + "'" + why();
            }
        }
        return null;
    }

    private static String why() {
        return ": the locale of this terminal (LC_ALL, LC_CTYPE or LANG) lacks letters of it; set LC_ALL=C.UTF-8 and run it"
                + " again";
    }
}
