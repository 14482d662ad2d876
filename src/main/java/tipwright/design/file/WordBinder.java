// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Counted;

/** Reads words, texts, whole numbers and yes or no. */
final class WordBinder {
    private static final int LONGEST_TEXT = 2000;

    private final Problems problems;

    WordBinder(Problems problems) {
        this.problems = problems;
    }

    /** A value of the type of an enum, String, int, boolean or plain Double; null with a problem noted. */
    @Nullable
    Object read(Class<?> type, @Nullable Counted counted, Node node, String path) {
        if (!(node instanceof Node.Scalar scalar) || scalar.isNothing()) {
            problems.add(node.place(), path, needed(type) + " is needed here; found " + node.words());
            return null;
        }
        String text = scalar.text().strip();
        if (type.isEnum()) {
            return constant(type, text, node.place(), path);
        }
        if (type == String.class) {
            return text(text, node.place(), path);
        }
        if (type == boolean.class) {
            return yesOrNo(text, node.place(), path);
        }
        if (type == int.class) {
            return whole(counted, text, node.place(), path);
        }
        return plain(text, node.place(), path);
    }

    private static String needed(Class<?> type) {
        if (type.isEnum()) {
            return "a word (" + ErrorText.oneOf(words(type)) + ")";
        }
        return type == String.class ? "a text" : type == boolean.class ? "yes or no" : "a plain number";
    }

    static List<String> words(Class<?> enumType) {
        List<String> words = new ArrayList<>();
        for (Object constant : enumType.getEnumConstants()) {
            words.add(Shape.fileWord((Enum<?>) constant));
        }
        return words;
    }

    private @Nullable Object constant(Class<?> type, String text, Place place, String path) {
        List<String> words = words(type);
        int at = words.indexOf(text);
        if (at >= 0) {
            return type.getEnumConstants()[at];
        }
        problems.add(place, path, ErrorText.quoted(text) + " is not known here; " + ErrorText.meant(text, words));
        return null;
    }

    private @Nullable String text(String text, Place place, String path) {
        if (text.isEmpty()) {
            problems.add(place, path, "the name is empty; write a name");
            return null;
        }
        if (text.length() > LONGEST_TEXT) {
            problems.add(
                    place,
                    path,
                    "a text of " + text.length() + " characters; at most " + LONGEST_TEXT + " are allowed");
            return null;
        }
        String flat = text.replaceAll("\\s+", " ");
        if (flat.chars().anyMatch(Character::isISOControl)) {
            problems.add(
                    place,
                    path,
                    "a control character in " + ErrorText.quoted(flat) + "; use letters, digits and signs");
            return null;
        }
        return flat;
    }

    private @Nullable Boolean yesOrNo(String text, Place place, String path) {
        switch (text) {
            case "true", "yes" -> {
                return true;
            }
            case "false", "no" -> {
                return false;
            }
            default -> {
                problems.add(place, path, ErrorText.quoted(text) + " is not known here; allowed: yes or no");
                return null;
            }
        }
    }

    private @Nullable Integer whole(@Nullable Counted counted, String text, Place place, String path) {
        int least = counted == null ? 0 : counted.atLeast();
        int most = counted == null ? Integer.MAX_VALUE : counted.atMost();
        if (text.matches("[+-]?\\d{1,9}")) {
            int number = Integer.parseInt(text);
            if (number >= least && number <= most) {
                return number;
            }
        }
        String allowed =
                least == most ? "only " + least + " is allowed" : "write a whole number from " + least + " to " + most;
        problems.add(place, path, ErrorText.quoted(text) + ": " + allowed);
        return null;
    }

    private @Nullable Double plain(String text, Place place, String path) {
        if (text.matches("\\d{1,12}(\\.\\d{1,12})?")) {
            return Double.valueOf(text);
        }
        problems.add(place, path, ErrorText.quoted(text) + ": write a plain number such as 240, with no currency");
        return null;
    }
}
