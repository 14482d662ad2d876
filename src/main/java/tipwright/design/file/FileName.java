// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Judges names of files written in a design. */
final class FileName {
    private FileName() {}

    /** What is wrong with a name; null when nothing is. */
    static @Nullable String wrong(String name) {
        if (name.startsWith("/") || name.startsWith("~") || name.matches("[A-Za-z]:.*")) {
            return "absolute name " + ErrorText.quoted(name) + "; name a file beside the design, such as 'shop.yaml'";
        }
        if (name.indexOf('\\') >= 0 || name.indexOf(':') >= 0 || name.chars().anyMatch(Character::isISOControl)) {
            return "file name not allowed: " + ErrorText.quoted(name) + "; use letters, digits, '-', '.' and '/'";
        }
        if (List.of(name.split("/", -1)).contains("..")) {
            return "'..' in " + ErrorText.quoted(name)
                    + " is in another folder; copy it into the folder of your design";
        }
        return null;
    }
}
