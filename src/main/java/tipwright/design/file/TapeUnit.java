// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tipwright.quantity.UnitSystem;

/** Which tape a design was measured with. */
final class TapeUnit {
    private static final Pattern LENGTH = Pattern.compile(
            "['\"]?[-+]?[0-9.][^:]*?(?<![A-Za-z])(?:(mm|cm|m)|(in|inch|inches|\"|ft|foot|feet|'|yd|yards?))['\"]?");

    private TapeUnit() {}

    /** The system in which more of the lengths in this text are written; metric when there are as many of both. */
    static UnitSystem system(String text, SourceMap places) {
        int us = 0;
        int metric = 0;
        for (Place place : places.all().values()) {
            String value = text.substring(place.start(), place.end()).strip();
            Matcher length = LENGTH.matcher(value);
            if (value.length() < 40 && length.matches()) {
                us += length.group(2) == null ? 0 : 1;
                metric += length.group(1) == null ? 0 : 1;
            }
        }
        return us > metric ? UnitSystem.US : UnitSystem.METRIC;
    }
}
