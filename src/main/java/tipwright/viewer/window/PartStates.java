// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import tipwright.analysis.Analysis;
import tipwright.check.Checks;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachinePart;
import tipwright.viewer.editor.PartOfMachine;
import tipwright.viewer.scene.Marked;

/**
 * Which part of the machine each finding belongs to, and how each part stands: by the room of the check that made it; of gaps and
 * of what may go wrong by what the finding is about.
 */
final class PartStates {
    private PartStates() {}

    /** How each part stands: the worst of its findings; what cannot be told counts where all else passes. */
    static Map<PartOfMachine, Verdict> of(Analysis analysis, List<Finding> findings) {
        List<MachinePart> parts = new ArrayList<>();
        Map<PartOfMachine, Verdict> all = new EnumMap<>(PartOfMachine.class);
        for (Finding f : findings) {
            boolean bad = f.verdict() == Verdict.FAIL || f.verdict() == Verdict.CLOSE;
            String room = room(f);
            boolean anywhere = bad && (room.equals("fault") || room.equals("clearance"));
            if (anywhere && parts.isEmpty()) {
                parts.addAll(new MachineOutline(analysis).parts());
            }
            PartOfMachine part = anywhere ? Marked.part(analysis, parts, f).orElse(part(room)) : part(room);
            all.merge(part, f.verdict(), PartStates::worse);
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

    private static String room(Finding finding) {
        String room = Checks.of(finding).map(c -> c.getClass().getPackageName()).orElse("");
        return room.substring(room.lastIndexOf('.') + 1);
    }

    private static PartOfMachine part(String room) {
        return switch (room) {
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
