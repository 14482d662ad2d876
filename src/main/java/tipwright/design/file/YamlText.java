// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Builds nodes from a YAML text, strictly: one document, no anchors, aliases or tags, no key twice, bounded depth and size. The
 * nodes keep their places.
 */
final class YamlText {
    private static final int DEEPEST = 24;
    private static final int MOST_VALUES = 100_000;

    private final String file;
    private final String text;
    private final Problems problems;
    private final Iterator<Event> events;
    private final boolean wide;
    private int values;

    private YamlText(String file, String text, Problems problems) {
        this.file = file;
        this.text = text;
        this.problems = problems;
        wide = text.codePointCount(0, text.length()) != text.length();
        // in one buffer, since the parser fails on a wide character across the edge of two
        LoadSettings settings = LoadSettings.builder()
                .setBufferSize(text.length() + 2)
                .setLabel(file)
                .setCodePointLimit(Integer.MAX_VALUE)
                .build();
        events = new Parse(settings).parseString(SizeQuestion.hidden(text)).iterator();
    }

    /** The text's one document; null with problems noted when it is not understood at all. */
    static @Nullable Node read(String file, String text, Problems problems) {
        if (text.isBlank()) {
            problems.add(Place.whole(file), "", "the file is empty; start it with 'tipwright: 1'");
            return null;
        }
        int half = halfCharacter(text);
        if (half >= 0) {
            problems.add(Place.of(file, text, half), "", "half a character (a lone surrogate); write it again");
            return null;
        }
        try {
            return new YamlText(file, text, problems).document();
        } catch (Refused refused) {
            problems.add(refused.place, refused.path, refused.message);
        } catch (YamlEngineException fault) {
            YamlFault.note(fault, file, text, problems);
        }
        return null;
    }

    /** Offset of a surrogate without its other half, which the parser does not bear; -1 when there is none. */
    private static int halfCharacter(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (Character.isSurrogate(text.charAt(i))) {
                if (Character.charCount(text.codePointAt(i)) == 1) {
                    return i;
                }
                i++;
            }
        }
        return -1;
    }

    private @Nullable Node document() {
        Node root = null;
        while (events.hasNext()) {
            Event event = events.next();
            if (event instanceof DocumentStartEvent start && root != null) {
                throw new Refused(place(start), "", "a second document starts here ('---'); keep one design in a file");
            }
            if (event instanceof NodeEvent) {
                root = node(event, 0, "");
            }
        }
        if (root == null) {
            problems.add(Place.whole(file), "", "the file holds nothing but comments; start it with 'tipwright: 1'");
        }
        return root;
    }

    private Node node(Event event, int depth, String path) {
        if (depth > DEEPEST) {
            throw new Refused(place(event), path, "nested more than " + DEEPEST + " deep; no design needs that");
        }
        if (++values > MOST_VALUES) {
            throw new Refused(place(event), path, "more than " + MOST_VALUES + " values; no design needs that many");
        }
        if (event instanceof AliasEvent) {
            throw new Refused(place(event), path, "an alias ('*...') is not allowed; write the value out");
        }
        if (event instanceof NodeEvent anchored && anchored.getAnchor().isPresent()) {
            throw new Refused(
                    place(event), path, "an anchor ('&...') is not allowed; write the value out where it is needed");
        }
        if (event instanceof ScalarEvent scalar) {
            refuseTag(scalar.getTag(), event, path);
            return new Node.Scalar(place(event), SizeQuestion.shown(scalar.getValue()), scalar.isPlain());
        }
        if (event instanceof SequenceStartEvent start) {
            refuseTag(start.getTag(), event, path);
            return items(start, depth, path);
        }
        if (event instanceof MappingStartEvent start) {
            refuseTag(start.getTag(), event, path);
            return fields(start, depth, path);
        }
        throw new Refused(place(event), path, "not understood");
    }

    private void refuseTag(Optional<String> tag, Event event, String path) {
        if (tag.isPresent()) {
            throw new Refused(place(event), path, "a tag ('!...') is not allowed; write the plain value");
        }
    }

    private Node items(SequenceStartEvent start, int depth, String path) {
        List<Node> items = new ArrayList<>();
        Event event = events.next();
        while (event.getEventId() != Event.ID.SequenceEnd) {
            items.add(node(event, depth + 1, Paths.item(path, items.size() + 1)));
            event = events.next();
        }
        return new Node.Items(place(start, event), items);
    }

    private Node fields(MappingStartEvent start, int depth, String path) {
        Map<String, Node.Field> fields = new LinkedHashMap<>();
        Event event = events.next();
        while (event.getEventId() != Event.ID.MappingEnd) {
            Node key = node(event, depth + 1, path);
            if (key instanceof Node.Scalar name) {
                String below = Paths.key(path, name.text());
                put(fields, name, node(events.next(), depth + 1, below), below);
            } else {
                node(events.next(), depth + 1, path);
                problems.add(key.place(), path, "a key must be a plain word, found " + key.words());
            }
            event = events.next();
        }
        return new Node.Fields(place(start, event), fields);
    }

    private void put(Map<String, Node.Field> fields, Node.Scalar name, Node value, String path) {
        Node.Field first = fields.get(name.text());
        if (first != null) {
            problems.add(
                    name.place(),
                    path,
                    "key " + ErrorText.quoted(name.text()) + " is written twice, first in line "
                            + first.key().line() + "; keep one");
            return;
        }
        fields.put(name.text(), new Node.Field(name.place(), value));
    }

    private Place place(Event event) {
        return place(event, event);
    }

    private Place place(Event from, Event to) {
        Mark start = from.getStartMark().orElseThrow();
        int end = to.getEndMark().orElseThrow().getIndex();
        return new Place(file, start.getLine() + 1, start.getColumn() + 1, offset(start.getIndex()), offset(end));
    }

    /** The parser counts code points, the text is indexed by chars. */
    private int offset(int codePoints) {
        return wide ? text.offsetByCodePoints(0, codePoints) : codePoints;
    }

    /** Ends the reading of this text. */
    private static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient Place place;
        private final String path;
        private final String message;

        Refused(Place place, String path, String message) {
            super(message, null, false, false);
            this.place = place;
            this.path = path;
            this.message = message;
        }
    }
}
