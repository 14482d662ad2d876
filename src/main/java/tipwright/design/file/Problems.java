// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects what is wrong while one design is read. */
final class Problems {
    private static final int MOST = 100;

    private static final String MORE = MOST + " problems are told, there may be more; mend these first";

    private final Set<Problem> all = new LinkedHashSet<>();

    void add(Place place, String path, String message) {
        if (!full()) {
            all.add(new Problem(place, path, message));
        }
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
        List<String> files = all.stream().map(p -> p.place().file()).distinct().toList();
        List<Problem> sorted = new ArrayList<>(all);
        sorted.sort(
                Comparator.comparingInt((Problem p) -> files.indexOf(p.place().file()))
                        .thenComparingInt(p -> p.place().line())
                        .thenComparingInt(p -> p.place().column()));
        if (full()) {
            sorted.add(new Problem(Place.whole(files.get(0)), "", MORE));
        }
        return List.copyOf(sorted);
    }
}
