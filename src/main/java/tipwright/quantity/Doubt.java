// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A quantity's text taken apart: '24 in +- 1/8', 'about 130 lb'.
 *
 * @param about whether it is only about right
 * @param base the value itself
 * @param doubt what is written behind '+-'; null when nothing is
 */
record Doubt(boolean about, String base, @Nullable String doubt) {
    private static final Pattern ABOUT = Pattern.compile("^\\s*(?:about\\s+|ca\\.?\\s+|[~\u2248]\\s*)(.*)$");
    private static final Pattern BOTH_WAYS = Pattern.compile("\\s*(?:\\+/?[-\u2212\u2013]|\u00b1)\\s*");

    /** 'about' means so much either way, as a share of the value. Common practice, no source. */
    private static final double ABOUT_SHARE = 0.1;

    private static final double COVERED = 2;

    /** Takes a text apart; a text without doubt is its own base. */
    static Doubt in(String written) {
        Matcher about = ABOUT.matcher(written);
        String text = about.matches() ? about.group(1) : written;
        Matcher sign = BOTH_WAYS.matcher(text);
        return sign.find()
                ? new Doubt(about.matches(), text.substring(0, sign.start()), text.substring(sign.end()))
                : new Doubt(about.matches(), text, null);
    }

    /** Standard doubt, SI, of a value that was read from the base. */
    double standard(QuantityReader.Parsed value, Kind kind, String written) throws QuantityException {
        if (doubt == null) {
            return about ? ABOUT_SHARE * Math.abs(value.si()) / COVERED : 0;
        }
        String text = doubt.strip();
        NumberText number = NumberText.at(text, 0);
        if (number == null) {
            throw new QuantityException("no number behind '+-' in '" + written.strip()
                    + "'; write how far it may be off, such as '" + kind.example() + " +- 5 %'");
        }
        String label = text.substring(number.end()).strip();
        UnitLabel unit = value.unit();
        double off;
        if (label.equals("%") && kind != Kind.RATIO) {
            off = number.value() / 100 * Math.abs(value.si());
        } else if (label.isEmpty()) {
            off = number.value() * (unit == null ? 1 : unit.factor());
        } else {
            QuantityReader.Parsed parsed = QuantityReader.read(text, kind);
            UnitLabel own = parsed.unit();
            off = own == null ? parsed.si() : parsed.number() * own.factor();
        }
        if (!(off >= 0) || Double.isInfinite(off)) {
            throw new QuantityException("the doubt in '" + written.strip() + "' is no size; write it such as '"
                    + kind.example() + " +- 5 %'");
        }
        return off / COVERED;
    }

    /** The text with another base. */
    String around(String other) {
        return (about ? "about " : "") + other + (doubt == null ? "" : " +- " + doubt.strip());
    }
}
