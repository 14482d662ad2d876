// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tipwright.report.Vocabulary;

/** Where to put the mounts, on the command line. */
class MountCommandsTest {
    @Test
    void whatPlaceSaysToPutIntoTheFilePassesTheCheck(@TempDir Path folder) throws IOException {
        Cli.Outcome found = Cli.run("place", "silt-trailer", "--candidates", "15000");
        assertThat(found.code()).as(found.err()).isZero();
        String yaml = Files.readString(Path.of("geometry/silt-trailer.yaml"));
        Vocabulary.assertKnown("place", found.out() + found.err(), yaml);
        for (String key : new String[] {"frame-pin", "tank-pin"}) {
            Matcher told = Pattern.compile("\n    " + key + ": (\\[.*])\n").matcher(found.out());
            assertThat(told.find()).isTrue();
            yaml = yaml.replaceFirst("\n    " + key + ": \\[[^\\]]*]", "\n    " + key + ": " + told.group(1));
        }
        Matcher actuator =
                Pattern.compile("\n      - \\{z: 0 mm, actuator: (.*)}\n").matcher(found.out());
        assertThat(actuator.find()).isTrue();
        yaml = yaml.replaceFirst("(?m)^( +- \\{z: 0 mm, actuator: ).*}$", "$1" + actuator.group(1) + "}");
        assertThat(found.out()).contains("\nfastenings:", "{joint: tank-pin, weld: {at: ");
        Path file = folder.resolve("placed.yaml");
        Files.writeString(file, Pasted.brackets(yaml, found.out()));
        Cli.Outcome checked = Cli.run("check", file.toString());
        assertThat(checked.code()).as(checked.out() + checked.err()).isZero();
    }

    /** Pins, the links that are drawn and the weights on them, as told for the crank cart with two of its zones. */
    @Test
    void whatPlaceSaysToPutIntoAMechanismsFilePassesTheCheck(@TempDir Path folder) throws IOException {
        String yaml = swap(
                Files.readString(Path.of("geometry/crank-cart.yaml")).replaceFirst("\n  places:(\n    - .*)+", ""),
                "[mid-12-long, heavy-18, heavy-25]",
                "[heavy-18]");
        Path file = folder.resolve("cart.yaml");
        Files.writeString(file, yaml);
        Path map = folder.resolve("map.svg");
        Cli.Outcome found = Cli.run("place", file.toString(), "--candidates", "300", "--map", map.toString());
        assertThat(found.code()).as(found.out() + found.err()).isZero();
        Vocabulary.assertKnown("place of a mechanism", found.out() + found.err(), yaml);
        assertThat(map)
                .content()
                .contains("<svg", "Used most with the frame pin here", "as drawn, [", "edge of where it works");
        assertThat(folder.resolve("map-tank.svg")).doesNotExist();
        for (String key : new String[] {"frame-pin", "tank-pin"}) {
            Matcher told = Pattern.compile("\n    " + key + ": (\\[.*])\n").matcher(found.out());
            assertThat(told.find()).isTrue();
            yaml = yaml.replaceFirst("\n    " + key + ": \\[[^\\]]*]", "\n    " + key + ": " + told.group(1));
        }
        yaml = yaml.replaceFirst("(?s)actuator: \\{kind.*?}}}", "actuator: heavy-18}");
        Matcher links = Pattern.compile("\nlinks:\n(  - .*\n)+").matcher(found.out());
        assertThat(links.find()).isTrue();
        yaml = yaml.replaceFirst("\nlinks:\n(  - .*\n)+", links.group());
        Matcher weight =
                Pattern.compile("\n  - \\{name: (link weight), centre: (.*)}\n").matcher(found.out());
        assertThat(weight.find()).isTrue();
        yaml = yaml.replaceFirst("(name: link weight.*centre: )\\[.*]", "$1" + weight.group(2));
        Files.writeString(file, Pasted.brackets(yaml, found.out()));
        Cli.Outcome checked = Cli.run("check", file.toString());
        assertThat(checked.code()).as(checked.out() + checked.err()).isZero();
    }

    @Test
    void saysWhatWouldOpenItWhenNothingFits() {
        Cli.Outcome outcome = Cli.run("place", "too-small", "--candidates", "20000");
        assertThat(outcome.code()).isEqualTo(1);
        Vocabulary.assertKnown("place where nothing fits", outcome.out() + outcome.err(), "");
        assertThat(outcome.out())
                .contains("No position works. Any one of these changes would make one possible:", "light-6");
    }

    @Test
    void aDesignWithoutZonesIsToldWhatToAdd() {
        Cli.Outcome outcome = Cli.run("place", "grit-hopper");
        assertThat(outcome.code()).isEqualTo(3);
        assertThat(outcome.err()).contains("add a section 'mounts:'");
    }

    @Test
    void namesOfOtherKindsAreRefusedBeforeAnythingIsComputed() {
        assertThat(Cli.run("place", "--map", "map.gif").code()).isEqualTo(2);
        assertThat(Cli.run("sheet", "--out", "sheet.doc").err()).contains("none of .pdf, .svg and .dxf");
        assertThat(Cli.run("tolerance", "--by", "3").code()).isEqualTo(2);
        assertThat(Cli.run("place", "--threads", "0").code()).isEqualTo(2);
    }

    @Test
    void toleranceTellsTheChanceAndDraws(@TempDir Path folder) {
        Path plot = folder.resolve("t.svg");
        Cli.Outcome outcome =
                Cli.run("tolerance", "silt-trailer", "--runs", "200", "--by", "1/8 in", "--plot", plot.toString());
        Vocabulary.assertKnown("tolerance", outcome.out(), "");
        assertThat(outcome.out()).contains("chance that a check fails", "in 200 runs", "frame pin y");
        assertThat(plot).content().contains("<svg", "Which dimension matters most");
    }

    @Test
    void sheetIsWritten(@TempDir Path folder) {
        Path dxf = folder.resolve("s.dxf");
        assertThat(Cli.run("sheet", "saw-skid", "--units", "us", "--out", dxf.toString())
                        .code())
                .isZero();
        assertThat(dxf).content().startsWith("999\nunits: millimetres\n").endsWith("0\nEOF\n");
    }
}
