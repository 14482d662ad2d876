// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.util.List;

/** Signs that a design may hold and a typeface, a file format or a printer may choke on. */
public final class HardSigns {
    private HardSigns() {}

    /** 44 of them. */
    public static List<String> all() {
        return List.of(
                // A tractor, the diameter sign, other emoji, alone and joined.
                "\ud83d\ude9c",
                "\u2300",
                "\ud83d\ude00",
                "\ud83d\udc68\u200d\ud83d\udd27",
                "\ud83c\udde9\ud83c\uddea",
                "\u2764\ufe0f",
                "1\u20e3",
                // Scripts: Thai, Arabic, Hebrew, Devanagari, Chinese, Japanese, Korean, Georgian, Lao, old signs.
                "\u0e16\u0e31\u0e07",
                "\u062e\u0632\u0627\u0646",
                "\u05de\u05d9\u05db\u05dc",
                "\u091f\u0902\u0915\u0940",
                "\u6c34\u7bb1",
                "\u30bf\u30f3\u30af",
                "\ud0f1\ud06c",
                "\u10e2\u10d0\u10dc\u10d9\u10d8",
                "\u0e96",
                "\ud808\udc00",
                "\ud835\udc9c",
                // Letters that are there.
                "\u00d8",
                "\u00fc",
                "\u03bb",
                "\u0416",
                "\u0301",
                // Signs of drawings.
                "\u2205",
                "\u2316",
                "\u23e4",
                "\u27c2",
                "\u33a1",
                "\u2264",
                // Control characters.
                "\u0001",
                "\u0007",
                "\u001b[2J",
                "\n",
                "\r",
                "\t",
                "\u007f",
                "\u0085",
                "\u009b",
                // Formatting, breaks, and what is no character.
                "\u202e",
                "\u00ad",
                "\u2028",
                "\ufeff",
                "\uffff",
                // Half a character.
                "\ud800");
    }
}
