// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import tipwright.check.Checks;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.viewer.editor.PartOfMachine;

/** Which part of the machine each finding belongs to, by the room of the check that made it, and how each part stands. */
final class PartStates {
    private PartStates() {}

    /** How each part stands: the worst of its findings; what cannot be told counts where all else passes. */
    static Map<PartOfMachine, Verdict> of(List<Finding> findings) {
        Map<PartOfMachine, Verdict> all = new EnumMap<>(PartOfMachine.class);
        for (Finding f : findings) {
            all.merge(part(f), f.verdict(), PartStates::worse);
        }
        for (PartOfMachine part : PartOfMachine.values()) {
            all.putIfAbsent(part, Verdict.NOT_CHECKED);
        }
        return all;
    }

    private static Verdict worse(Verdict a, Verdict b) {
        List<Verdict> order = List.of(Verdict.PASS, Verdict.NOT_CHECKED, Verdict.CLOSE, Verdict.FAIL);
        return order.indexOf(a) > order.indexOf(b) ? a : b;
    }

    /** The part that a finding is told under. */
    static PartOfMachine part(Finding finding) {
        String room = Checks.of(finding).map(c -> c.getClass().getPackageName()).orElse("");
        return switch (room.substring(room.lastIndexOf('.') + 1)) {
            case "bearing" -> PartOfMachine.PIVOT;
            case "joint" -> PartOfMachine.JOINTS;
            case "supply" -> PartOfMachine.SUPPLY;
            case "slurry" -> PartOfMachine.LOAD;
            case "clearance" -> PartOfMachine.TANK;
            case "standing" -> PartOfMachine.FRAME;
            default -> PartOfMachine.ACTUATOR;
        };
    }
}
