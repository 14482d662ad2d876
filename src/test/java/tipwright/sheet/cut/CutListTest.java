// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.quantity.UnitSystem;
import tipwright.sheet.bracket.Brackets;

/** The cut list against the design files, by hand. */
class CutListTest {
    private static Design read(String name) {
        return ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
    }

    private static CutList list(String name, UnitSystem units) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(read(name));
        return CutList.of(analysis, Brackets.of(analysis, units), units);
    }

    private static CutPiece piece(CutList list, String name) {
        return list.pieces().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void siltTrailer() throws CannotComputeException {
        CutList list = list("silt-trailer", UnitSystem.METRIC);
        CutPiece rail = piece(list, "left rail");
        assertThat(rail.length()).isCloseTo(1.96, within(1e-9));
        assertThat(rail.section().metric()).isEqualTo("section 120 mm x 50 mm");
        assertThat(rail.mass()).isNaN();
        assertThat(piece(list, "rear beam").length()).isCloseTo(0.96, within(1e-9));
        assertThat(piece(list, "saddle").length()).isCloseTo(0.4, within(1e-9));
        assertThat(list.open().stream().map(t -> t.metric()))
                .anyMatch(t -> t.startsWith("The left post is no straight"));
        CutPiece member = piece(list, "cross member");
        assertThat(member.length()).isCloseTo(0.91, within(1e-9));
        // EN 10219-2 for a tube of 100 x 60 x 5 (from memory): A = 2 t (B + H - 2 t) - 3 (4 - pi) t^2 = 14.36 cm2, 11.3
        // kg/m
        assertThat(member.perMetre()).isCloseTo(11.3, within(0.05));
        CutPiece pin = piece(list, "frame pin");
        assertThat(pin.length()).isCloseTo(0.025 + 2 * 0.011 + 1.5 * 0.025, within(1e-9));
        // a round bar of 25 mm weighs 3.85 kg/m (steel tables, from memory)
        assertThat(pin.perMetre()).isCloseTo(3.85, within(0.01));
        assertThat(list.plates()).extracting(PlateCut::count).containsExactly(2, 2, 1, 2, 2);
        assertThat(BoughtList.of(read("silt-trailer")).stream().map(p -> p.count() + " " + p.name()))
                .contains(
                        "1 electric actuator 'mid-12-long'",
                        "2 pillow-block bearing",
                        "8 bolt with nut and washers",
                        "2 latch: rear door");
        List<String> feed = FeedList.of(read("silt-trailer")).stream()
                .map(p -> p.name() + ": " + p.figures().metric())
                .toList();
        assertThat(feed.get(1)).isEqualTo("cable, two cores: 16.0 mm2 each, 4000 mm one way; may carry 80 A");
        assertThat(feed.get(2)).startsWith("fuse: 40 A");
        assertThat(feed.get(3)).contains("at least 40 A at 12 V");
    }

    /** Pieces of steel as the yard tub's file has them; its mass for the cradle's tubes is that of the file. */
    @Test
    void yardTub() throws CannotComputeException {
        Design tub = read("yard-tub");
        CutList list = list("yard-tub", UnitSystem.US);
        double cradle = tub.tank().attached().stream()
                .filter(a -> a.name().equals("cradle"))
                .mapToDouble(a -> a.mass())
                .sum();
        double cut = list.pieces().stream()
                .filter(p -> p.name().equals("cradle"))
                .mapToDouble(p -> p.mass() * p.count())
                .sum();
        assertThat(cut).isCloseTo(cradle, within(1e-6));
        PlateCut door = list.plates().stream()
                .filter(p -> p.name().equals("door"))
                .findFirst()
                .orElseThrow();
        assertThat(door.plate().area()).isCloseTo(Math.PI / 4 * 0.762 * 0.762, within(2e-5));
    }

    /** The crank cart's two link plates: 12 mm, holes for the two pins of 30 mm, and what is not described is told. */
    @Test
    void crankCart() throws CannotComputeException {
        CutList list = list("crank-cart", UnitSystem.METRIC);
        List<PlateCut> links = list.plates().stream()
                .filter(p -> p.name().equals("link 'link'"))
                .toList();
        assertThat(links).hasSize(2);
        assertThat(links.get(0).plate().thickness()).isCloseTo(0.012, within(1e-9));
        assertThat(links.get(0).plate().holes()).hasSize(2).allMatch(h -> Math.abs(h.diameter() - 0.03) < 1e-9);
        assertThat(list.open().stream().map(t -> t.metric()))
                .anyMatch(t -> t.startsWith("The link 'crank' is not described"));
    }
}
