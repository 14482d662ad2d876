// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.Locale;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Says in a builder's words why a text is no YAML. */
final class YamlFault {
    private YamlFault() {}

    static void note(YamlEngineException fault, String file, String text, Problems problems) {
        if (fault instanceof ReaderException odd) {
            problems.add(
                    Place.of(file, text, odd.getPosition()),
                    "",
                    "a character (code " + odd.getCodePoint() + ") that cannot be printed; is this a text file?");
        } else if (fault instanceof MarkedYamlEngineException marked
                && marked.getProblemMark().isPresent()) {
            Mark mark = marked.getProblemMark().get();
            String problem = marked.getProblem().toLowerCase(Locale.ROOT);
            String words = words(problem, line(text, mark.getLine()), mark.getColumn());
            Mark at = words.contains("opened here") ? marked.getContextMark().orElse(mark) : mark;
            problems.add(new Place(file, at.getLine() + 1, at.getColumn() + 1, 0, 0), "", words);
        } else {
            problems.add(Place.whole(file), "", "not readable as YAML 1.2; leave lines out that start with '%'");
        }
    }

    private static String words(String problem, String line, int column) {
        if (line.stripTrailing().indexOf('\t') >= 0) {
            return "a tab in this line; indent with blanks only";
        }
        if (problem.contains("mapping values are not allowed")) {
            return "unexpected ':'. Check this line and the one above: a space after each ':', and the same indent"
                    + " as the lines around it, and a text with ': ' in it needs quotes";
        }
        if (problem.contains("expected ',' or ']'")) {
            return "the list opened here with '[' is not closed; a ',' or ']' is missing";
        }
        if (problem.contains("expected ',' or '}'")) {
            return "the group opened here with '{' is not closed; a ',' or '}' is missing";
        }
        if (problem.contains("could not find expected ':'")) {
            return "a ':' with a blank after it is missing in the line above";
        }
        String before = line.substring(0, Math.min(column, line.length())).stripTrailing();
        if (problem.contains("expected <block end>") && (before.endsWith("]") || before.endsWith("}"))) {
            return "text after '" + before.charAt(before.length() - 1)
                    + "'. Put the unit on each number: [520 mm, 190 mm]";
        }
        if (problem.contains("expected <block end>")) {
            return "the indent of this line does not fit the lines above it";
        }
        if (problem.contains("found unexpected end of stream")) {
            return "the quote opened here is not closed";
        }
        if (problem.contains("cannot start any token")) {
            return "a text that starts with '" + line.charAt(column) + "' needs quotes";
        }
        if (problem.contains("unknown escape character")) {
            return "a backslash in double quotes; put the text in single quotes";
        }
        if (problem.contains("expected the node content") && problem.contains("stream end")) {
            return "the file ends too early: a list or group that was opened with '[' or '{' is not closed";
        }
        if (problem.contains("expected the node content")) {
            return "a value is missing here" + problem.substring(problem.indexOf(", but"));
        }
        return "not readable as YAML: " + problem;
    }

    private static String line(String text, int number) {
        return text.lines().skip(number).findFirst().orElse("");
    }
}
