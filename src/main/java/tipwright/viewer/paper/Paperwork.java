// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.paper;

import java.util.Locale;

/** What can be handed over. */
public enum Paperwork {
    REPORT("Report to print", ".pdf"),
    PHONE("Page for the phone", ".html"),
    SHEET("Sheet to weld from", ".pdf"),
    SIDE("Side view at true size, for CAD", ".dxf"),
    PLATES("All plates, for the cutter", ".dxf"),
    PICTURE("Picture at the middle of the tilt", ".png"),
    MOVING("Moving picture of the dump", ".gif");

    private final String words;
    private final String ending;

    Paperwork(String words, String ending) {
        this.words = words;
        this.ending = ending;
    }

    /** As shown. */
    public String words() {
        return words;
    }

    /** How the name of its file ends: '-sheet.pdf'. */
    public String end() {
        return (this == REPORT || this == PHONE ? "" : "-" + name().toLowerCase(Locale.ROOT)) + ending;
    }
}
