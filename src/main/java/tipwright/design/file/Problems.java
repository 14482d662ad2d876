// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects what is wrong while one design is read. */
final class Problems {
    private static final int MOST = 100;

    private static final String MORE = MOST + " mistakes are listed, there may be more; fix these first";

    /** So many mistakes of one kind are told one by one. */
    private static final int FEW = 3;

    private static final int MOST_LINES = 8;

    /** By all that is told of each, so that none is told twice. */
    private final Map<String, Problem> all = new LinkedHashMap<>();

    private final Map<String, List<Problem>> alike = new HashMap<>();

    void add(Place place, String path, String message) {
        if (!full()) {
            noted(new Problem(place, path, message));
        }
    }

    /**
     * Notes a mistake that is told once where it is made many times.
     *
     * @param sort the same for mistakes of the same kind; empty: told by itself
     */
    void addAlike(Place place, String path, String message, String sort) {
        Problem problem = new Problem(place, path, message);
        if (!full() && noted(problem) && !sort.isEmpty()) {
            alike.computeIfAbsent(sort, s -> new ArrayList<>()).add(problem);
        }
    }

    private boolean noted(Problem problem) {
        return all.putIfAbsent(problem.text(), problem) == null;
    }

    /** Whether so many have been found that reading on helps nobody. */
    boolean full() {
        return all.size() >= MOST;
    }

    boolean isEmpty() {
        return all.isEmpty();
    }

    /** In order of line and column, the files in the order in which they were met. */
    List<Problem> inOrder() {
        if (all.isEmpty()) {
            return List.of();
        }
        List<String> files =
                all.values().stream().map(p -> p.place().file()).distinct().toList();
        List<Problem> sorted = new ArrayList<>(all.values());
        sorted.sort(
                Comparator.comparingInt((Problem p) -> files.indexOf(p.place().file()))
                        .thenComparingInt(p -> p.place().line())
                        .thenComparingInt(p -> p.place().column()));
        alike.values().forEach(some -> merge(some, sorted));
        if (full()) {
            sorted.add(new Problem(Place.whole(files.get(0)), "", MORE));
        }
        return List.copyOf(sorted);
    }

    /** Leaves the first of many alike, with the lines of the others. */
    private static void merge(List<Problem> some, List<Problem> sorted) {
        if (some.size() <= FEW) {
            return;
        }
        List<Problem> inOrder = new ArrayList<>(sorted);
        inOrder.retainAll(some);
        Problem first = inOrder.get(0);
        List<Problem> others = inOrder.subList(1, inOrder.size());
        List<String> lines = others.stream()
                .map(p -> Integer.toString(p.place().line()))
                .distinct()
                .toList();
        String list = String.join(", ", lines.subList(0, Math.min(MOST_LINES, lines.size())))
                + (lines.size() > MOST_LINES ? ", ..." : "");
        String more = "; the same " + others.size() + " times more, in line" + (lines.size() == 1 ? " " : "s ") + list;
        sorted.set(sorted.indexOf(first), new Problem(first.place(), first.path(), first.message() + more));
        sorted.removeAll(others);
    }
}
