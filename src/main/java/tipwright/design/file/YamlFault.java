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
                    placeOf(file, text, odd.getPosition()),
                    "",
                    "a character (code " + odd.getCodePoint() + ") that cannot be printed; is this a text file?");
        } else if (fault instanceof MarkedYamlEngineException marked
                && marked.getProblemMark().isPresent()) {
            Mark mark = marked.getProblemMark().get();
            Place place = new Place(file, mark.getLine() + 1, mark.getColumn() + 1, 0, 0);
            problems.add(place, "", words(marked, line(text, mark.getLine())));
        } else {
            problems.add(
                    Place.whole(file), "", "not readable as YAML: " + Say.quoted(String.valueOf(fault.getMessage())));
        }
    }

    private static String words(MarkedYamlEngineException fault, String line) {
        String problem = fault.getProblem().toLowerCase(Locale.ROOT);
        if (line.stripTrailing().indexOf('\t') >= 0) {
            return "a tab in this line; indent with blanks only";
        }
        if (problem.contains("mapping values are not allowed")) {
            return "a ':' where none may stand; is the line indented like its neighbours, and are texts with ': ' in quotes?";
        }
        if (problem.contains("expected ',' or '")) {
            char end = problem.charAt(problem.indexOf("or '") + 4);
            return "the list or group opened with '" + (end == ']' ? '[' : '{') + "' is not closed; a ',' or '" + end
                    + "' is missing before this";
        }
        if (problem.contains("could not find expected ':'")) {
            return "a ':' with a blank after it is missing in the line before";
        }
        if (problem.contains("expected <block end>")) {
            return "the indent of this line does not fit the lines above it";
        }
        if (problem.contains("unexpected end of stream") || problem.contains("found unexpected end")) {
            return "a quote that was opened is not closed";
        }
        return "not readable as YAML: " + fault.getProblem();
    }

    private static String line(String text, int number) {
        return text.lines().skip(number).findFirst().orElse("");
    }

    private static Place placeOf(String file, String text, int offset) {
        int line = 1;
        int column = 1;
        for (int i = 0; i < Math.min(offset, text.length()); i++) {
            column++;
            if (text.charAt(i) == '\n') {
                line++;
                column = 1;
            }
        }
        return new Place(file, line, column, offset, offset);
    }
}
