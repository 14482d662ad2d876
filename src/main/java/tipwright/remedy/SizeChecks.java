// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tipwright.check.Checks;
import tipwright.check.Parts;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.key.NameId;

/**
 * The checks that a size has to pass: those of the part itself.
 *
 * @param series of the size
 * @param parts ids of the checks of one pin or weld; empty for series that the ids of checks tell
 */
record SizeChecks(String series, Set<String> parts) {
    private static final List<String> UNEVEN = List.of("-when-one-carries-all", "-when-one-runs-ahead");
    private static final List<String> OF_ACTUATOR = List.of(
            "stroke",
            "push",
            "pull",
            "hold",
            "buckling",
            "stall",
            "duty",
            "cycle-time",
            "electrical/current",
            "back-drive");
    private static final List<String> OF_PIVOT = List.of("bearing-static", "bearing-housing", "bush", "shaft", "slide");
    private static final String PLAY = "play";
    private static final Set<String> FAULTS_OF_ACTUATOR = Set.of("what-if/one-carries-all", "what-if/lost-power");

    /** Share of the largest change, by ratio, from which a check counts as one of the part. */
    private static final double MINE = 0.5;

    private static final double LEAST = 1e-9;

    /**
     * Those of a series; of a pin or a weld those that its size changes most.
     *
     * @param small findings with a small size
     * @param large findings with a large size
     */
    static SizeChecks of(String series, List<Finding> small, List<Finding> large) {
        if (!series.equals("pin") && !series.equals("leg")) {
            return new SizeChecks(series, Set.of());
        }
        String family = series.equals("pin") ? "pin" : "weld";
        Map<String, Double> was = new HashMap<>();
        small.stream().filter(f -> f.isOf(family)).forEach(f -> was.put(f.id(), f.utilisation()));
        Map<String, Double> change = new HashMap<>();
        for (Finding f : large) {
            Double before = was.get(f.id());
            if (before != null && before > LEAST && f.utilisation() > LEAST) {
                change.put(f.id(), Math.abs(Math.log(before / f.utilisation())));
            }
        }
        double most = change.values().stream().mapToDouble(d -> d).max().orElse(0);
        Set<String> mine = new HashSet<>();
        change.forEach((id, by) -> {
            if (by > 0 && by >= MINE * most) {
                mine.add(id);
            }
        });
        return new SizeChecks(series, mine);
    }

    static boolean ofActuator(String series) {
        return series.equals("actuators") || series.equals("cylinder");
    }

    static boolean ofSupply(String series) {
        return series.equals("cable") || series.equals("gauge") || series.equals("fuse");
    }

    /** The checks that tell at once whether a size of a series does. */
    static List<Check> quick(String series) {
        List<String> ids =
                switch (series) {
                    case "actuators", "cylinder" -> OF_ACTUATOR;
                    case "bearings", "bore" -> OF_PIVOT;
                    case "pin" -> List.of("pin", PLAY);
                    case "leg" -> List.of("weld");
                    default -> List.of("electrical");
                };
        return Checks.all().stream().filter(c -> ids.contains(c.id())).toList();
    }

    /** Whether a finding tells of the part. */
    boolean mine(Finding f) {
        String id = f.id();
        return switch (series) {
            case "actuators", "cylinder" -> FAULTS_OF_ACTUATOR.contains(id)
                    || OF_ACTUATOR.stream().anyMatch(id::startsWith);
            case "bearings", "bore" -> !new BearingSizes().asked(f).isEmpty();
            case "cable", "gauge" -> id.equals("electrical/voltage-drop") || id.equals("electrical/cable");
            case "fuse" -> id.equals("electrical/fuse") || id.equals("electrical/cable");
            default -> parts.contains(id)
                    || (series.equals("pin") && id.equals(PLAY))
                    || UNEVEN.stream().anyMatch(end -> parts.stream().anyMatch(p -> id.equals(uneven(p) + end)));
        };
    }

    private static String uneven(String id) {
        String part = id.startsWith("pin/") ? id.substring("pin/".length()) : id.replace('/', '-');
        boolean moving = part.equals("tank-pin") || part.equals("rod-pin");
        return "what-if/" + (moving ? "moving-pin" : part);
    }

    /**
     * Those that have to pass in the normal dump. What was found only where something goes wrong, by a check that is not about that, is
     * not known to pass in the normal dump, and counts there too.
     */
    List<Finding> normal(Parts parts) {
        List<Finding> all = new ArrayList<>(
                parts.normal().findings().stream().filter(this::mine).toList());
        Set<String> known = new HashSet<>();
        all.forEach(f -> known.add(f.id()));
        fault(parts).stream()
                .filter(f -> !known.contains(f.id()))
                .filter(f -> Checks.of(f)
                        .filter(c -> !c.traits().contains(Trait.ABOUT_FAULT))
                        .isPresent())
                .forEach(all::add);
        return all;
    }

    /** Those that have to pass if something goes wrong. */
    List<Finding> fault(Parts parts) {
        return parts.fault().findings().stream().filter(this::mine).toList();
    }

    /** Whether none of them fails. */
    static boolean pass(List<Finding> mine) {
        return mine.stream().noneMatch(f -> f.verdict() == Verdict.FAIL);
    }

    /** Whether any could be made. */
    static boolean made(List<Finding> mine) {
        return mine.stream().anyMatch(f -> f.verdict() != Verdict.NOT_CHECKED);
    }

    /** How many cannot tell. */
    static long unknown(List<Finding> mine) {
        return mine.stream().filter(f -> f.verdict() == Verdict.NOT_CHECKED).count();
    }

    /** The name of the part, by its checks: 'frame pin'. */
    String part() {
        List<String> names = new ArrayList<>();
        parts.stream().sorted().forEach(id -> names.add(NameId.words(Finding.partOf(id))));
        return names.isEmpty() ? "" : names.get(0);
    }
}
