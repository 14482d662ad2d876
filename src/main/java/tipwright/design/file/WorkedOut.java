// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import tipwright.design.Design;
import tipwright.design.tank.Attached;
import tipwright.design.tank.Bucket;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;

/** What the program worked out from what was measured, to be held against a scale. */
final class WorkedOut {
    private WorkedOut() {}

    static void tell(Design design, Reader reader) {
        List<Attached> parts = design.tank().attached();
        for (int i = 0; i < parts.size(); i++) {
            Attached part = parts.get(i);
            if (!part.steel().isEmpty()) {
                reader.assume(new Assumption(
                        Paths.item("tank.attached", i + 1) + ".mass",
                        say(part.mass(), Kind.MASS, reader),
                        part.name() + ", from its steel, centre at ["
                                + length(part.centre().x(), reader) + ", "
                                + length(part.centre().y(), reader) + ", "
                                + length(part.centre().z(), reader)
                                + "]; weigh it if you can",
                        true));
            }
        }
        Bucket bucket = design.slurry().bucket();
        if (bucket != null) {
            reader.assume(new Assumption(
                    "slurry.density",
                    say(bucket.density(), Kind.DENSITY, reader),
                    "slurry, from the bucket that was weighed",
                    true));
        }
    }

    private static String length(double length, Reader reader) {
        return PointReader.say(length, reader.units());
    }

    private static String say(double si, Kind kind, Reader reader) {
        return Quantities.show(si, kind, reader.units());
    }
}
