// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.tank.UsualSlurry;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;

/** Reads the name of a usual kind of slurry, which comes with its doubt. */
final class UsualBinder {
    /** The range is taken as twice the standard doubt either way. */
    private static final double COVERED = 4;

    private UsualBinder() {}

    /** The kind; null with a problem noted. */
    static @Nullable UsualSlurry read(Reader reader, Node node, String path) {
        List<String> names = UsualSlurry.all().stream().map(UsualSlurry::name).toList();
        String word = node instanceof Node.Scalar text ? text.text() : "";
        for (UsualSlurry kind : UsualSlurry.all()) {
            if (kind.name().equals(word)) {
                String range = Quantities.show(kind.low(), Kind.DENSITY, reader.units()) + " to "
                        + Quantities.show(kind.high(), Kind.DENSITY, reader.units());
                reader.assume(new Assumption(path, range, kind.source() + "; weigh a bucket"));
                double doubt = (kind.high() - kind.low()) / COVERED;
                return kind.as(reader.doubtful(new Uncertain(path, word, Kind.DENSITY, kind.density(), doubt)));
            }
        }
        reader.problems()
                .add(node.place(), path, node.words() + " is no usual kind of slurry; " + ErrorText.meant(word, names));
        return null;
    }
}
