// SPDX-License-Identifier: Apache-2.0
package tipwright.design.key;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.annotation.Annotation;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.quantity.Kind;

/**
 * What annotations say, written down by the build: a line for each class, with tabs between name, word, sets of keys and components.
 * Of a component stands whether it may be null, then each annotation by a letter and its values, then a full stop.
 */
public final class AnnotationList {
    /** Beside this class in a program that was packaged. */
    public static final String FILE = "annotations.txt";

    /** Set by the scripts that start a packaged program: only there the list is sure to be of the same build as the classes. */
    private static final String SWITCH = "tipwright.annotations";

    private static final String YES = "+";
    private static final String NO = "-";
    private static final String END = ".";
    private static final char BETWEEN = '\t';

    private static final class Shipped {
        static final AnnotationList LIST = new AnnotationList(Boolean.getBoolean(SWITCH) ? resource() : "");
    }

    private final Map<String, String> lines = new HashMap<>();

    /** From its text. */
    AnnotationList(String text) {
        int at = 0;
        while (at < text.length()) {
            int end = text.indexOf('\n', at);
            int name = text.indexOf(BETWEEN, at);
            lines.put(text.substring(at, name), text.substring(name + 1, end));
            at = end + 1;
        }
    }

    /** That of the packaged program; empty where the classes were not packaged. */
    static AnnotationList shipped() {
        return Shipped.LIST;
    }

    private static String resource() {
        try (@Nullable InputStream in = AnnotationList.class.getResourceAsStream(FILE)) {
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Null: the list has nothing of this class. */
    @Nullable
    Annotated of(Class<?> type) {
        String line = lines.get(type.getName());
        return line == null ? null : new Line(line).marks();
    }

    /** The text of a list of some records and sealed interfaces, from their annotations. */
    public static String text(Collection<Class<?>> types) {
        StringBuilder all = new StringBuilder();
        for (Class<?> type : types) {
            Annotated marks = Annotated.read(type);
            put(all, type.getName());
            put(all, marks.word());
            put(all, marks.exactlyOne().size());
            for (List<String> set : marks.exactlyOne()) {
                put(all, String.join(" ", set));
            }
            for (Annotated.OfComponent component : marks.components()) {
                put(all, component.nullable() ? YES : NO);
                component.all().forEach(mark -> put(all, mark));
                put(all, END);
            }
            all.append('\n');
        }
        return all.toString();
    }

    private static void put(StringBuilder all, Object value) {
        String text = value.toString();
        if (text.indexOf(BETWEEN) >= 0 || text.indexOf('\n') >= 0) {
            throw new IllegalArgumentException("tab or line break in '" + text + "'");
        }
        all.append(text).append(BETWEEN);
    }

    private static void put(StringBuilder all, Annotation mark) {
        if (mark instanceof Measured m) {
            put(all, "M");
            put(all, m.value().name());
            for (String limit : List.of(m.preset(), m.atLeast(), m.above(), m.atMost(), m.orWord())) {
                put(all, limit);
            }
            for (boolean is : new boolean[] {m.sheet(), m.wire(), m.within(), m.given()}) {
                put(all, is ? YES : NO);
            }
        } else if (mark instanceof Counted c) {
            put(all, "C");
            put(all, c.atLeast());
            put(all, c.atMost());
        } else if (mark instanceof Preset p) {
            put(all, "P");
            put(all, p.value());
        } else if (mark instanceof Note n) {
            put(all, "N");
            put(all, n.value());
        } else if (mark instanceof FromParts f) {
            put(all, "F");
            put(all, f.value());
        } else if (mark instanceof Sold s) {
            put(all, "S");
            put(all, s.value());
            put(all, s.usual());
        } else if (mark instanceof Loaded) {
            put(all, "L");
        } else {
            throw new IllegalArgumentException("no letter for " + mark);
        }
    }

    /** Reads a line from its first tab on. */
    private static final class Line {
        private final String text;
        private int at;

        Line(String text) {
            this.text = text;
        }

        private String next() {
            int end = text.indexOf(BETWEEN, at);
            String value = text.substring(at, end);
            at = end + 1;
            return value;
        }

        private int number() {
            return Integer.parseInt(next());
        }

        private boolean yes() {
            return next().equals(YES);
        }

        Annotated marks() {
            String word = next();
            List<List<String>> sets = new ArrayList<>();
            for (int left = number(); left > 0; left--) {
                sets.add(List.of(next().split(" ", -1)));
            }
            List<Annotated.OfComponent> components = new ArrayList<>();
            while (at < text.length()) {
                components.add(component());
            }
            return new Annotated(word, sets, components);
        }

        private Annotated.OfComponent component() {
            boolean nullable = yes();
            List<Annotation> all = new ArrayList<>();
            for (String letter = next(); !letter.equals(END); letter = next()) {
                all.add(mark(letter));
            }
            return new Annotated.OfComponent(all, nullable);
        }

        private Annotation mark(String letter) {
            return switch (letter.charAt(0)) {
                case 'M' -> new IsMeasured(
                        Kind.valueOf(next()), next(), next(), next(), next(), next(), yes(), yes(), yes(), yes());
                case 'C' -> new IsCounted(number(), number());
                case 'P' -> new HasPreset(next());
                case 'N' -> new HasNote(next());
                case 'F' -> new IsFromParts(next());
                case 'S' -> new IsSold(next(), next());
                case 'L' -> new IsLoaded();
                default -> throw new IllegalStateException("no annotation for " + letter);
            };
        }
    }

    /** An annotation as it is listed: the first interface of its record. */
    private interface Listed extends Annotation {
        @Override
        default Class<? extends Annotation> annotationType() {
            return getClass().getInterfaces()[0].asSubclass(Annotation.class);
        }
    }

    private record IsMeasured(
            Kind value,
            String preset,
            String atLeast,
            String above,
            String atMost,
            String orWord,
            boolean sheet,
            boolean wire,
            boolean within,
            boolean given)
            implements Measured, Listed {}

    private record IsCounted(int atLeast, int atMost) implements Counted, Listed {}

    private record HasPreset(String value) implements Preset, Listed {}

    private record HasNote(String value) implements Note, Listed {}

    private record IsFromParts(String value) implements FromParts, Listed {}

    private record IsSold(String value, String usual) implements Sold, Listed {}

    private record IsLoaded() implements Loaded, Listed {}
}
