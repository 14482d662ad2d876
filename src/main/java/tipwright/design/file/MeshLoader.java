// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Mesh;
import tipwright.geometry.MeshInside;
import tipwright.geometry.Range;
import tipwright.geometry.ShapeException;
import tipwright.geometry.Stl;
import tipwright.geometry.StlException;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitLabel;

/** Fills a mesh interior from the STL file that it names. */
final class MeshLoader {
    /** Bytes; a million triangles in binary STL. */
    private static final int LARGEST = 50_000_000;

    private static final String TOO_LARGE = FolderFiles.tooLarge(LARGEST);

    private static final String SMALLER =
            ", the most for a mesh: a million triangles in binary STL; export it again with fewer triangles (a larger "
                    + "deviation from the true shape), or as binary STL if it is text";

    private static final double LONGEST = 100;
    private static final double SHORTEST = 0.01;

    private MeshLoader() {}

    /**
     * The inside; null with a problem noted, or with none when the keys themselves were not understood.
     *
     * @param read the keys of the mesh interior that were understood
     */
    static @Nullable MeshInside load(Reader reader, Map<String, Object> read, String path, SourceMap sources) {
        UnitLabel unit = unit(reader, read.get("unit"), path + ".unit", sources);
        if (!(read.get("file") instanceof String file)) {
            return null;
        }
        String at = path + ".file";
        Problems problems = reader.problems();
        String wrong = FileName.wrong(file);
        if (wrong != null) {
            problems.add(sources.nearest(at), at, wrong);
            return null;
        }
        try {
            Mesh mesh = Stl.read(reader.bytes(file, LARGEST));
            Vec3 place = read.get("at") instanceof Vec3 given ? given : Vec3.ZERO;
            MeshInside inside = MeshInside.of(mesh, unit == null ? 1 : unit.factor(), place);
            String fault = unit == null ? null : size(mesh, unit);
            if (fault == null) {
                inside.told().forEach(told -> reader.assume(new Assumption(at, file, told, true)));
                return unit != null && read.get("at") instanceof Vec3 ? inside : null;
            }
            problems.add(sources.nearest(at), at, ErrorText.quoted(file) + ": " + fault);
        } catch (IOException | StlException | ShapeException unread) {
            String said = String.valueOf(unread.getMessage());
            String advice = said.equals(TOO_LARGE) ? SMALLER : "";
            problems.add(sources.nearest(at), at, ErrorText.quoted(file) + ": " + said + advice);
        }
        return null;
    }

    private static @Nullable UnitLabel unit(Reader reader, @Nullable Object written, String path, SourceMap sources) {
        if (!(written instanceof String label)) {
            return null;
        }
        List<String> names = new ArrayList<>();
        for (UnitLabel unit : Quantities.units(Kind.LENGTH)) {
            if (unit.name().equals(label) || unit.aliases().contains(label)) {
                return unit;
            }
            names.add(unit.name());
        }
        reader.problems()
                .add(
                        sources.nearest(path),
                        path,
                        ErrorText.quoted(label) + " is no unit of length; " + ErrorText.meant(label, names));
        return null;
    }

    private static @Nullable String size(Mesh mesh, UnitLabel unit) {
        double size = 0;
        for (Vec3 axis : List.of(new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0, 1))) {
            Range range = mesh.extent(axis);
            size = Math.max(size, range.span() * unit.factor());
        }
        return size > LONGEST || size < SHORTEST
                ? "the mesh is " + Facts.say(size, Kind.LENGTH) + " long in '" + unit.name() + "'; is the unit right?"
                : null;
    }
}
