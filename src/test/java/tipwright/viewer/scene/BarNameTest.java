// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import tipwright.geometry.Vec2;

class BarNameTest {
    private static final Vec2 PICTURE = new Vec2(360, 240);
    private static final Vec2 WORDS = new Vec2(22, 14);
    private static final BarName.Box LEGEND = new BarName.Box(20, 150, 130, 80);

    private static boolean within(Vec2 at, Vec2 p) {
        return p.x() > at.x() && p.x() < at.x() + WORDS.x() && p.y() > at.y() && p.y() < at.y() + WORDS.y();
    }

    private static void clear(Vec2 from, Vec2 to) {
        Vec2 at = BarName.place(from, to, WORDS, LEGEND, 10, PICTURE);
        for (double s = 0; s <= 1; s += 0.01) {
            assertThat(within(at, from.plus(to.minus(from).times(s))))
                    .as("words of the bar from %s to %s at %s lie on it", from, to, at)
                    .isFalse();
        }
        boolean onLegend = at.x() < 150 && at.x() + WORDS.x() > 20 && at.y() < 230 && at.y() + WORDS.y() > 150;
        assertThat(onLegend)
                .as("words of the bar from %s to %s at %s lie on the legend", from, to, at)
                .isFalse();
        assertThat(at.x()).isBetween(0.0, 360 - WORDS.x());
        assertThat(at.y()).isBetween(0.0, 240 - WORDS.y());
    }

    /** In a small picture the bar lies low, right beside the legend. */
    @Test
    void theWordsLieBesideTheBar() {
        clear(new Vec2(160, 226), new Vec2(240, 215));
        clear(new Vec2(240, 215), new Vec2(160, 226));
        clear(new Vec2(152, 236), new Vec2(232, 236));
    }

    @Test
    void otherWordsStandAboveTheBar() {
        Vec2 from = new Vec2(260, 230);
        Vec2 to = new Vec2(340, 226);
        assertThat(BarName.off(new Vec2(300, 222), WORDS, from, to, 10)).isEqualTo(226 - 10 - WORDS.y());
        assertThat(BarName.off(new Vec2(300, 180), WORDS, from, to, 10)).isEqualTo(180);
    }

    @Test
    void whereverTheBarLies() {
        Random random = new Random(5);
        for (int i = 0; i < 500; i++) {
            Vec2 from = new Vec2(155 + 60 * random.nextDouble(), 100 + 135 * random.nextDouble());
            double turn = 2 * Math.PI * random.nextDouble();
            Vec2 to = from.plus(new Vec2(60 * Math.cos(turn), 30 * Math.sin(turn)));
            if (to.x() > 155 && to.y() < 235) {
                clear(from, to);
            }
        }
    }
}
