// SPDX-License-Identifier: Apache-2.0
package tipwright.design.key;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.design.drive.Anchor;
import tipwright.design.drive.Free;
import tipwright.design.drive.FreePin;
import tipwright.design.drive.FreeSlide;
import tipwright.design.joint.Guide;
import tipwright.geometry.Vec2;

class CopyTest {
    private static final Free FREE = new Free(
            List.of("crank"),
            List.of(
                    new FreePin("pivot", List.of("frame", "tank"), null, false, null),
                    new FreePin("knee", List.of("tank", "crank"), new Vec2(1, 2), true, null)),
            List.of(new FreeSlide(
                    "rail", List.of("frame", "crank"), new Vec2(3, 4), new Vec2(1, 0), new Guide(0.1, 0.15))),
            new Anchor("frame", new Vec2(5, 6)),
            new Anchor("crank", new Vec2(7, 8)),
            List.of(),
            null,
            null);

    @Test
    void changesTheComponentThatIsNamedAndNoOther() {
        Anchor changed = Copy.with(new Anchor("frame", new Vec2(1, 2)), "body", "tank");
        assertThat(changed).isEqualTo(new Anchor("tank", new Vec2(1, 2)));
    }

    @Test
    void tellsWhetherTwoAreAlikeButForWhatIsNamed() {
        Anchor one = new Anchor("frame", new Vec2(1, 2));
        assertThat(Copy.alikeBut(one, new Anchor("frame", new Vec2(1, 2)), List.of()))
                .isTrue();
        assertThat(Copy.alikeBut(one, new Anchor("tank", new Vec2(1, 2)), List.of()))
                .isFalse();
        assertThat(Copy.alikeBut(one, new Anchor("tank", new Vec2(1, 2)), List.of("body")))
                .isTrue();
        assertThat(Copy.alikeBut(one, new Anchor("tank", new Vec2(1, 3)), List.of("body")))
                .isFalse();
        assertThatThrownBy(() -> Copy.alikeBut(one, one, List.of("bodies")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("bodies");
    }

    @Test
    void takesNull() {
        assertThat(Copy.with(FREE.pins().get(1), "at", null).at()).isNull();
    }

    @Test
    void refusesANameThatIsNotThere() {
        assertThatThrownBy(() -> Copy.with(new Anchor("frame", Vec2.ZERO), "bodies", "tank"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("bodies");
    }

    @Test
    void movesPlacesInNestedRecordsAndListsButNoDirections() {
        Free moved = Copy.moved(FREE, p -> p.plus(new Vec2(10, 20)));
        assertThat(moved.pins().get(0).at()).isNull();
        assertThat(moved.pins().get(1).at()).isEqualTo(new Vec2(11, 22));
        assertThat(moved.slides().get(0).at()).isEqualTo(new Vec2(13, 24));
        assertThat(moved.slides().get(0).along()).isEqualTo(new Vec2(1, 0));
        assertThat(moved.from().at()).isEqualTo(new Vec2(15, 26));
        assertThat(moved.to().at()).isEqualTo(new Vec2(17, 28));
        assertThat(Copy.moved(moved, p -> p.minus(new Vec2(10, 20)))).isEqualTo(FREE);
    }
}
