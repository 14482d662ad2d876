// SPDX-License-Identifier: Apache-2.0
package tipwright.interview;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.NameId;
import tipwright.design.tape.Start;
import tipwright.geometry.Vec2;
import tipwright.quantity.QuantityException;

/**
 * A place by the tape: along and up from the mark ('54 in, 10 in'), or so far from two known places and the side that it lies on
 * ('55 in from mark, 12 in from pivot, above').
 *
 * @param at m, from the mark
 * @param lines how the design file says it
 * @param kept the answer with its units written out
 */
record TapePlace(Vec2 at, String lines, String kept) {
    private static final Pattern FROM = Pattern.compile("\\s*(.+?)\\s+from\\s+(?:the\\s+)?([a-z][a-z -]*?)\\s*");
    private static final double READING = 1e-3;

    static TapePlace kept(String text, Answers before) {
        try {
            return read(text, before);
        } catch (QuantityException e) {
            throw new IllegalStateException("kept without being understood: " + text, e);
        }
    }

    /**
     * Reads a place.
     *
     * @throws QuantityException when it is none
     */
    static TapePlace read(String typed, Answers before) throws QuantityException {
        String[] parts = typed.strip().split("\\s*,\\s*");
        if (parts.length == 2 && !typed.contains(" from ")) {
            return steps(Measure.length(parts[0], before), Measure.length(parts[1], before), before);
        }
        if (parts.length == 3 && typed.contains(" from ")) {
            return distances(parts, before);
        }
        throw new QuantityException("a place is two readings, found "
                + (typed.isBlank() ? "none" : "'" + typed.strip() + "'") + forms(before));
    }

    private static String forms(Answers before) {
        boolean us = before.unit().equals("in");
        return "; write along and up, such as '" + (us ? "54 in, 10 in" : "1370 mm, 250 mm")
                + "', or two distances and the side, such as '"
                + (us ? "55 in from mark, 12 in" : "1400 mm from mark, 300 mm") + " from pivot, above'";
    }

    private static TapePlace steps(String along, String up, Answers before) {
        double x = before.metres(along);
        double y = before.metres(up);
        String lines = (x < 0 ? "{away-from-dump: " : "{towards-dump: ") + mark(plain(along))
                + (y < 0 ? ", below: " : ", above: ") + mark(plain(up)) + "}";
        return new TapePlace(new Vec2(x, y), lines, along + ", " + up);
    }

    private static String plain(String reading) {
        return reading.startsWith("-") ? reading.substring(1).strip() : reading;
    }

    private static String mark(String reading) {
        return "{" + Answers.MARK + ": " + DesignText.quoted(reading) + "}";
    }

    private static TapePlace distances(String[] parts, Answers before) throws QuantityException {
        Start start = new Start();
        List<String> from = new ArrayList<>();
        List<String> keep = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            Matcher written = FROM.matcher(parts[i]);
            if (!written.matches()) {
                throw new QuantityException("'" + parts[i] + "' is no distance from a place" + forms(before));
            }
            String name = NameId.of(written.group(2));
            Vec2 known = name.equals(Answers.MARK) ? Vec2.ZERO : Answers.PLACES.contains(name) ? before.at(name) : null;
            if (known == null) {
                throw new QuantityException("no place '" + name + "' is known yet; known: " + known(before));
            }
            String reading = Measure.length(written.group(1), before);
            start.distance(known, before.metres(reading), READING);
            from.add(name + ": " + DesignText.quoted(reading));
            keep.add(reading + " from " + name);
        }
        String side = NameId.of(parts[2]);
        Vec2 at = chosen(start.find(), side, parts);
        String lines = "{from: {" + String.join(", ", from) + "}, side: " + side + "}";
        return new TapePlace(at, lines, String.join(", ", keep) + ", " + side);
    }

    private static String known(Answers before) {
        List<String> names = new ArrayList<>(List.of(Answers.MARK));
        Answers.PLACES.stream().filter(before::has).forEach(names::add);
        return String.join(", ", names);
    }

    private static Vec2 chosen(Start.Found found, String side, String[] parts) throws QuantityException {
        Start.@Nullable Guess one = found.best();
        if (one == null || one.misfit() > 9) {
            throw new QuantityException("'" + parts[0] + "' and '" + parts[1] + "' cannot meet; measure them again");
        }
        Vec2 a = one.at();
        Start.@Nullable Guess rival = found.rival();
        Vec2 b = rival == null ? a : rival.at();
        return switch (side) {
            case "above" -> a.y() >= b.y() ? a : b;
            case "below" -> a.y() <= b.y() ? a : b;
            case "towards-dump" -> a.x() >= b.x() ? a : b;
            case "away-from-dump" -> a.x() <= b.x() ? a : b;
            default -> throw new QuantityException(
                    "'" + side + "' is no side; write above, below, towards-dump or away-from-dump");
        };
    }
}
