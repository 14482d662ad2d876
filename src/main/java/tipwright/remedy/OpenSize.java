// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.file.Reading;
import tipwright.design.file.SizeQuestion;
import tipwright.quantity.UnitSystem;

/**
 * A size that a design file asks for; parts that must be alike are one.
 *
 * @param series of sizes, as in {@link SizeQuestion}
 * @param paths where it stands in the file
 * @param candidates what may stand there, the smallest first
 */
record OpenSize(String series, List<String> paths, List<Candidate> candidates) {
    /** In this order they are found: what loads others first. */
    private static final List<String> ORDER =
            List.of("actuators", "cylinder", "bearings", "bore", "pin", "leg", "fuse", "cable", "gauge");

    private static final String SHAFT = "pivot.shaft.diameter";

    /**
     * A size or part.
     *
     * @param label as the shop says it
     * @param answers as written in the file, by path
     */
    record Candidate(String label, Map<String, String> answers) {}

    /** All that a file asks for. */
    static List<OpenSize> all(Reading.Open open, Shop shop) {
        Map<String, List<SizeQuestion>> groups = new LinkedHashMap<>();
        boolean bearings = open.questions().stream().anyMatch(q -> q.series().equals("bearings"));
        for (SizeQuestion q : open.questions()) {
            String group = q.path().replaceAll("(bearings|actuators)\\[\\d+\\]", "$1");
            boolean pivot = q.series().equals("bearings") || q.series().equals("bore");
            groups.computeIfAbsent(pivot ? "pivot" : group, g -> new ArrayList<>())
                    .add(q);
        }
        List<OpenSize> all = new ArrayList<>();
        for (List<SizeQuestion> group : groups.values()) {
            String series = bearings && group.get(0).path().startsWith("pivot")
                    ? "bearings"
                    : group.get(0).series();
            List<String> paths = group.stream().map(SizeQuestion::path).toList();
            all.add(new OpenSize(series, paths, candidates(series, paths, shop)));
        }
        all.sort(Comparator.comparingInt(o -> ORDER.indexOf(o.series)));
        return all;
    }

    private static List<Candidate> candidates(String series, List<String> paths, Shop shop) {
        return switch (series) {
            case "actuators" -> shop.actuators().stream()
                    .sorted(Comparator.comparingDouble(
                                    (ListedActuator a) -> a.actuator().ratedPush())
                            .thenComparingDouble(a -> a.actuator().stroke())
                            .thenComparingDouble(a -> a.actuator().closed()))
                    .map(a -> new Candidate("'" + a.name() + "'", each(paths, a.name())))
                    .toList();
            case "bearings" -> shop.bearings().stream()
                    .sorted(Comparator.comparingDouble(b -> b.bearing().bore()))
                    .map(b -> carried(b, paths))
                    .toList();
            case "gauge" -> sizes(SoldSize.Series.CABLE, UnitSystem.US, paths);
            case "cable" -> sizes(SoldSize.Series.CABLE, UnitSystem.METRIC, paths);
            default -> sizes(SoldSize.Series.valueOf(series.toUpperCase(java.util.Locale.ROOT)), shop.units(), paths);
        };
    }

    /** A bearing; the shaft has its bore. */
    private static Candidate carried(Shop.ListedBearing b, List<String> paths) {
        Map<String, String> answers = each(paths, b.name());
        answers.computeIfPresent(SHAFT, (path, name) -> Math.round(b.bearing().bore() * 1e6) / 1e3 + " mm");
        return new Candidate("'" + b.name() + "'", answers);
    }

    private static List<Candidate> sizes(SoldSize.Series series, UnitSystem units, List<String> paths) {
        return SoldSize.of(series, units).stream()
                .map(s -> new Candidate(s.label(), each(paths, s.text(series))))
                .toList();
    }

    private static Map<String, String> each(List<String> paths, String answer) {
        Map<String, String> all = new LinkedHashMap<>();
        paths.forEach(path -> all.put(path, answer));
        return all;
    }
}
