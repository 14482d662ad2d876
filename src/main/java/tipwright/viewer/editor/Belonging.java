// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.design.around.Channel;
import tipwright.design.around.Mounts;
import tipwright.design.around.Receiver;
import tipwright.design.drive.LinkSection;
import tipwright.design.drive.TiltRange;
import tipwright.design.file.FileField;
import tipwright.design.file.FileFields;
import tipwright.design.joint.Guide;
import tipwright.design.joint.NamedPin;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.Pivot;
import tipwright.design.tank.Cases;
import tipwright.design.tank.Dump;
import tipwright.design.tank.Slurry;

/**
 * Which part of the machine a field belongs to: told by what its record is, so that a new key needs no line here. Some records are of
 * another part than those around them.
 */
public final class Belonging {
    private static final Map<String, PartOfMachine> ROOMS = Map.of(
            "tank", PartOfMachine.TANK,
            "drive", PartOfMachine.ACTUATOR,
            "actuator", PartOfMachine.ACTUATOR,
            "supply", PartOfMachine.SUPPLY,
            "joint", PartOfMachine.JOINTS);

    private static final Map<Class<?>, PartOfMachine> OTHERWISE = Map.ofEntries(
            Map.entry(Slurry.class, PartOfMachine.LOAD),
            Map.entry(Cases.class, PartOfMachine.LOAD),
            Map.entry(Dump.class, PartOfMachine.LOAD),
            Map.entry(Channel.class, PartOfMachine.LOAD),
            Map.entry(Receiver.class, PartOfMachine.LOAD),
            Map.entry(Pivot.class, PartOfMachine.PIVOT),
            Map.entry(TiltRange.class, PartOfMachine.PIVOT),
            Map.entry(Mounts.class, PartOfMachine.ACTUATOR),
            Map.entry(PinJoint.class, PartOfMachine.JOINTS),
            Map.entry(NamedPin.class, PartOfMachine.JOINTS),
            Map.entry(Guide.class, PartOfMachine.JOINTS),
            Map.entry(LinkSection.class, PartOfMachine.JOINTS));

    private Belonging() {}

    /** The part of a field with no other around it. */
    private static PartOfMachine ofTop(FileField field) {
        Class<?> type = field.meaning().type();
        String room = type.getPackageName().substring(type.getPackageName().lastIndexOf('.') + 1);
        PartOfMachine other = OTHERWISE.get(type);
        return other != null ? other : ROOMS.getOrDefault(room, PartOfMachine.FRAME);
    }

    /** The part of a field within one of another part; null: the same part. */
    private static @Nullable PartOfMachine within(FileField field) {
        return OTHERWISE.get(field.meaning().type());
    }

    /** The outermost fields of a part, in the order of the format. */
    public static List<FileField> of(FileFields fields, PartOfMachine part) {
        List<FileField> all = new ArrayList<>();
        fields.root().inner().forEach(f -> collect(f, ofTop(f), part, all));
        return all;
    }

    private static void collect(FileField field, PartOfMachine at, PartOfMachine part, List<FileField> all) {
        if (at == part) {
            all.add(field);
            return;
        }
        for (FileField inner : field.inner()) {
            PartOfMachine other = within(inner);
            collect(inner, other == null ? at : other, part, all);
        }
    }

    /** The fields in a field of a part that are of the same part. */
    public static List<FileField> inside(FileField field, PartOfMachine part) {
        return field.inner().stream()
                .filter(f -> {
                    PartOfMachine other = within(f);
                    return other == null || other == part;
                })
                .toList();
    }

    /** The part that a problem, or a value, at a path of the file belongs to. */
    public static PartOfMachine ofPath(FileFields fields, String path) {
        PartOfMachine found = PartOfMachine.FRAME;
        int longest = -1;
        for (PartOfMachine part : PartOfMachine.values()) {
            for (FileField field : of(fields, part)) {
                boolean below = path.equals(field.path())
                        || path.startsWith(field.path() + ".")
                        || path.startsWith(field.path() + "[");
                if (below && field.path().length() > longest) {
                    longest = field.path().length();
                    found = part;
                }
            }
        }
        return found;
    }
}
