// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tipwright.design.joint.Bearing;
import tipwright.design.joint.PlainBush;

/** Mistakes in a design's own parts files are told with the parts file's name and line. */
class PartsErrorTest {
    private static final String GOOD =
            """
            tipwright-parts: 1
            bearings:
              shop-40: {kind: bush, bore: 40 mm, length: 50 mm, note: from the drawer}
            """;

    private static Reading read(Map<String, String> beside, String more) throws IOException {
        NamedFiles files = (name, most) -> {
            String text = beside.get(name);
            if (text == null) {
                throw new IOException("no such file beside the design");
            }
            return text.getBytes(StandardCharsets.UTF_8);
        };
        return DesignFile.read("silt.yaml", ErrorTextTest.resource("silt.yaml") + more, files);
    }

    private static List<String> told(String parts) throws IOException {
        Reading reading = read(Map.of("shop.yaml", parts), "parts: shop.yaml\n");
        return reading instanceof Reading.Bad bad
                ? bad.problems().stream().map(Problem::text).toList()
                : List.of();
    }

    @Test
    void aSoundOneIsNoProblem() throws IOException {
        assertThat(told(GOOD)).isEmpty();
    }

    @Test
    void mistakesAreToldEvenWhereThePartIsNotUsed() throws IOException {
        assertThat(told(swap(GOOD, "50 mm", "50", "bore", "bohre")))
                .containsExactly(
                        "shop.yaml:3:25: bearings.shop-40.bohre: key 'bohre' is not known here; did you mean 'bore'?",
                        "shop.yaml:3:47: bearings.shop-40.length: no unit in '50'; a length is needed; did you mean '50 mm'?");
    }

    @Test
    void rulesHoldForPartsToo() throws IOException {
        assertThat(
                        told(
                                """
                        tipwright-parts: 1
                        actuators:
                          shop-9:
                            kind: electric
                            closed: 400 mm
                            stroke: 300 mm
                            push: 9 kN
                            pull: 9 kN
                            speed: {no-load: 5 mm/s, rated: 9 mm/s}
                        """))
                .containsExactly("shop.yaml:9:37: actuators.shop-9.speed.rated: more than the no-load speed (5 mm/s)");
    }

    @Test
    void anUnknownSection() throws IOException {
        assertThat(told(swap(GOOD, "bearings", "berings")))
                .containsExactly("shop.yaml:2:1: berings: key 'berings' is not known here; did you mean 'bearings'?");
    }

    @Test
    void aSectionWithoutNames() throws IOException {
        assertThat(told("tipwright-parts: 1\nbearings: [shop-40]\n"))
                .containsExactly(
                        "shop.yaml:2:11: bearings: names with their parts are needed here; found a list of one");
    }

    @Test
    void aNameThatIsNone() throws IOException {
        assertThat(told(swap(GOOD, "shop-40", "Shop 40")))
                .containsExactly(
                        "shop.yaml:3:3: bearings: 'Shop 40' is no name for a part; use small letters, digits and '-', such as 'yard-40'");
    }

    @Test
    void anUnknownKind() throws IOException {
        assertThat(told(swap(GOOD, "kind: bush", "kind: brush")))
                .containsExactly(
                        "shop.yaml:3:19: bearings.shop-40.kind: 'brush' is not known here; did you mean 'bush'?");
    }

    @Test
    void aDesignInPlaceOfParts() throws IOException {
        assertThat(told("tipwright: 1\n"))
                .containsExactly(
                        "shop.yaml:1:1: the file must start with the line 'tipwright-parts: 1'; found 'tipwright'");
    }

    @Test
    void aListInPlaceOfParts() throws IOException {
        assertThat(told("- 1\n"))
                .containsExactly("shop.yaml:1:1: a parts file starts with 'tipwright-parts: 1'; found a list of one");
    }

    @Test
    void partsInPlaceOfADesign() {
        Reading reading = DesignFile.read("shop.yaml", GOOD, NamedFiles.shipped());
        assertThat(((Reading.Bad) reading).problems())
                .extracting(Problem::text)
                .containsExactly(
                        "shop.yaml:1:1: the file must start with the line 'tipwright: 1'; found 'tipwright-parts'");
    }

    @Test
    void twoPartsOfOneName() throws IOException {
        Reading reading = read(Map.of("a.yaml", GOOD, "b.yaml", GOOD), "parts: [a.yaml, b.yaml]\n");
        assertThat(((Reading.Bad) reading).problems())
                .extracting(Problem::text)
                .containsExactly(
                        "b.yaml:3:3: bearings.shop-40: another part is called 'shop-40', at a.yaml:3:3; rename one");
    }

    @Test
    void notYaml() throws IOException {
        assertThat(told(GOOD + "  oops: [\n"))
                .containsExactly(
                        "shop.yaml:5:1: the file ends too early: a list or group that was opened with '[' or '{' is not closed");
    }

    /** Where the design's own part has the name of one that came with the program, its own is taken. */
    @Test
    void theDesignsOwnPartComesFirst() throws IOException {
        Reading reading = read(Map.of("shop.yaml", swap(GOOD, "shop-40", "yard-40")), "parts: shop.yaml\n");
        Bearing bearing =
                ((Reading.Good) reading).design().pivot().bearings().get(0).bearing();
        assertThat(bearing).isInstanceOf(PlainBush.class);
    }
}
