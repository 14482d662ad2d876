// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tipwright.geometry.Vec3;
import tipwright.outline.Form;
import tipwright.outline.MachinePart;
import tipwright.outline.PartKind;

/** Which parts a finding's words name. */
class ConcernedTest {
    private static final MachinePart FRAME_PIN = part(PartKind.PIN, "frame pin");
    private static final MachinePart TIE_PIN = part(PartKind.PIN, "tie frame pin");
    private static final MachinePart LUG = part(PartKind.LUG, "lug of the frame pin");
    private static final MachinePart TANK = part(PartKind.TANK, "tank");
    private static final MachinePart ZONE = part(PartKind.ZONE, "zone");
    private static final MachinePart KEEP_OUT = part(PartKind.KEEP_OUT, "keep-out");
    private static final List<MachinePart> ALL = List.of(FRAME_PIN, TIE_PIN, LUG, TANK, ZONE, KEEP_OUT);

    private static MachinePart part(PartKind kind, String name) {
        return new MachinePart(
                kind, name, 0, MachinePart.Basis.GIVEN, new Form.Wire(List.of(Vec3.ZERO, new Vec3(1, 0, 0)), false));
    }

    private static List<MachinePart> among(String words, boolean named, PartKind... kinds) {
        return new Concerned(Set.of(kinds), words, named).among(ALL);
    }

    @Test
    void theLongerNameIsTakenFirst() {
        assertThat(among("tie-frame-pin-tear-out", true, PartKind.PIN)).containsExactly(TIE_PIN);
        assertThat(among("Frame Pin: tear-out", true, PartKind.PIN)).containsExactly(FRAME_PIN);
        assertThat(among("frame-pin and tie-frame-pin", true, PartKind.PIN)).containsExactly(TIE_PIN, FRAME_PIN);
        assertThat(among("frame-pin", true, PartKind.PIN, PartKind.LUG)).containsExactly(FRAME_PIN, LUG);
        assertThat(among("tanker", true, PartKind.TANK)).isEmpty();
    }

    @Test
    void whereNoneIsNamedAllOfTheKindsCountOrNone() {
        assertThat(among("", false, PartKind.PIN)).containsExactly(FRAME_PIN, TIE_PIN);
        assertThat(among("", true, PartKind.PIN)).isEmpty();
        assertThat(among("tank", false, PartKind.PIN)).containsExactly(FRAME_PIN, TIE_PIN);
        assertThat(Concerned.NOTHING.among(ALL)).isEmpty();
    }

    /** The moving pin is also called tank pin, unless another pin has that name. */
    @Test
    void aPartsOwnNameComesBeforeWhatOthersAreCalledToo() {
        MachinePart moving = part(PartKind.PIN, "moving pin");
        MachinePart tankPin = part(PartKind.PIN, "tank pin");
        MachinePart lug = part(PartKind.LUG, "lug of the tank pin");
        Concerned concerned = new Concerned(Set.of(PartKind.PIN, PartKind.LUG), "tank-pin-tear-out", true);
        assertThat(concerned.among(List.of(FRAME_PIN, moving, lug, LUG))).containsExactly(moving, lug);
        assertThat(concerned.among(List.of(FRAME_PIN, moving, tankPin, lug, LUG)))
                .containsExactly(tankPin, lug);
    }

    /** Where pins may and may not be is nothing that is marked. */
    @Test
    void limitsOfTheDesignAreNoParts() {
        assertThat(among("zone", false, PartKind.TANK, PartKind.ZONE, PartKind.KEEP_OUT))
                .containsExactly(TANK);
        assertThat(among("keep-out", true, PartKind.ZONE, PartKind.KEEP_OUT)).isEmpty();
    }
}
