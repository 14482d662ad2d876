// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.FromParts;
import tipwright.design.key.Sold;

/**
 * A '?' in a design file: which size or part do I need?
 *
 * @param path of the key
 * @param series of sizes that it is sold in, or the section of the parts files
 * @param place where it stands
 */
public record SizeQuestion(String path, String series, Place place) {
    static final String UNANSWERED =
            "'?' asks for a size; 'tipwright check' finds it: run that, and write its answer here";

    /** Stands for a question mark while the text is parsed: alone, a '?' begins a key in YAML. */
    private static final char HIDDEN = '\uE03F';

    private static final Pattern ALONE = Pattern.compile("(?<=:[ \\t]{1,40})\\?(?=[ \\t]*([,}\\]#\\r\\n]|$))");

    /** The text with every question mark that stands alone for a value hidden; as long as before. */
    static String hidden(String text) {
        return text.indexOf('?') < 0 ? text : ALONE.matcher(text).replaceAll(String.valueOf(HIDDEN));
    }

    /** A part of such a text as it was. */
    static String shown(String text) {
        return text.replace(HIDDEN, '?');
    }

    static boolean isMark(Node node) {
        return node instanceof Node.Scalar scalar && scalar.text().strip().equals("?");
    }

    /** The question of a key; null when it cannot be asked for. */
    static @Nullable SizeQuestion of(Shape.Key key, Place place, String path) {
        Sold sold = key.mark(Sold.class);
        FromParts parts = key.mark(FromParts.class);
        String series = sold != null ? sold.value() : parts == null ? "" : parts.value();
        return series.isEmpty() ? null : new SizeQuestion(path, series, place);
    }

    static String notHere(String key) {
        return key.equals("cable")
                ? "'?' needs the length of the cable: write 'cable: {length: 4 m, section: ?}', or 'awg: ?' for a wire gauge"
                : "'?' cannot be asked here; it may stand for actuator, bearing, the bore of a cylinder or bush, the diameter of a"
                        + " pin or shaft, the leg of a weld, the section or awg of a cable, and the fuse; write a value here";
    }
}
