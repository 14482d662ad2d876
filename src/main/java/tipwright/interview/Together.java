// SPDX-License-Identifier: Apache-2.0
package tipwright.interview;

import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.quantity.QuantityException;

/** What two answers cannot both be. */
final class Together {
    /** A tape round a shell and one held up to it agree better than this. Common practice, no source. */
    private static final double AGREE = 0.05;

    private Together() {}

    /** Holds an answer against those before it. */
    static void check(String id, Answers all) throws QuantityException {
        @Nullable Vec2 low = all.at("tank-low");
        @Nullable Vec2 high = all.at("tank-high");
        if (id.equals("tank-high") && low != null && high != null) {
            Vec2 size = high.minus(low);
            if (size.x() <= 0 || size.y() <= 0) {
                throw new QuantityException("this is not above and towards the dump end of the low one ("
                        + all.text("tank-low") + "); measure it again, or type 'back'");
            }
            double across = all.metres(all.text("around")) / Math.PI;
            boolean drum = all.is("shape", "drum");
            double length = all.metres(all.text(drum ? "height" : "length"));
            agree(all, "across", drum ? size.x() : size.y(), across, "the tape around it says ");
            agree(all, drum ? "high" : "long", drum ? size.y() : size.x(), length, "you measured ");
        }
        if (id.equals("tank-pin")) {
            @Nullable Vec2 frame = all.at("frame-pin");
            @Nullable Vec2 tank = all.at("tank-pin");
            if (frame != null && tank != null && frame.minus(tank).norm() < 0.01) {
                throw new QuantityException("the two pins are at the same place; measure again, or type 'back'");
            }
        }
    }

    private static void agree(Answers all, String what, double places, double taped, String said)
            throws QuantityException {
        if (Math.abs(places - taped) > AGREE * taped) {
            throw new QuantityException("from the low place to this one it is " + all.length(places) + " " + what
                    + ", but " + said + all.length(taped) + "; measure it again, or type 'back'");
        }
    }
}
