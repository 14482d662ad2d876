// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.junit.jupiter.api.Test;
import tipwright.geometry.Vec2;

/** Labels keep clear of what is drawn, and their leaders reach them. */
class ClearPlaceTest {
    private static final double HEIGHT = 3.5;

    /** The width by another measure: the advance widths in the font's file as the PDF library reads them. */
    private static double width(String text) throws IOException {
        try (PDDocument document = new PDDocument()) {
            return PDType0Font.load(document, Lettering.open(), false).getStringWidth(text) / 1000 * HEIGHT;
        }
    }

    private static ClearPlace clear(List<Mark> drawn, String text) {
        return new ClearPlace(drawn, HEIGHT, text, null);
    }

    @Test
    void aLeaderReachesItsLabelWhateverItsLettersAre() throws IOException {
        for (String text : List.of("1 pivot  23 5/8 / 14 15/16", "WWWWWWWW", "illi")) {
            Vec2 corner = new Vec2(0, 0);
            Vec2 end = clear(List.of(), text).leader(new Vec2(200, HEIGHT / 2), corner);
            assertThat(end.x()).isCloseTo(width(text), within(0.1));
        }
    }

    @Test
    void aThickLineIsKeptClearOfBeforeAThinOne() {
        Vec2 point = new Vec2(0, 0);
        String text = "datum";
        Vec2 free = clear(List.of(), text).beside(point);
        Mark thick = cross(free, Pen.line("tank", 0, 0.5));
        Vec2 other = clear(List.of(thick), text).beside(point);
        assertThat(other).isNotEqualTo(free);
        Mark thin = cross(other, Pen.line("frame", 0, 0.15));
        assertThat(clear(List.of(thick, thin), text).beside(point)).isNotEqualTo(free);
    }

    /** A line through a label at a corner. */
    private static Mark cross(Vec2 corner, Pen pen) {
        return new Mark.Path(
                List.of(corner.plus(new Vec2(-1, HEIGHT / 2)), corner.plus(new Vec2(20, HEIGHT / 2))), false, pen);
    }

    @Test
    void textThatIsThereIsKeptClearOf() {
        Vec2 point = new Vec2(0, 0);
        Vec2 free = clear(List.of(), "datum").beside(point);
        Mark text = new Mark.Label(free, HEIGHT, -1, 0, "frame pin", Pen.line("text", 0, 0.2));
        assertThat(clear(List.of(text), "datum").beside(point)).isNotEqualTo(free);
    }
}
