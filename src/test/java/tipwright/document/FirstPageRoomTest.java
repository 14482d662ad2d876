// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The first page of a report is one page, however much fails, and tells where the rest is. */
class FirstPageRoomTest {
    private static final Pattern MORE = Pattern.compile("and (\\d+) more: '" + FirstPage.BEHIND + "', page (\\d+)\\.");

    private static String page(PDDocument pdf, int number) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(number);
        stripper.setEndPage(number);
        return stripper.getText(pdf).replaceAll("\\s+", " ");
    }

    /** Checks that fail are added until there are so many; the first page keeps its caution, and the contents come on the second. */
    @ParameterizedTest
    @CsvSource({"too-small, 60, LETTER", "silt-trailer, 160, A4"})
    void whateverFailsTheFirstPageIsOnePage(String design, int findings, PageSetting.Size size) throws IOException {
        Dossier dossier = Dossiers.withFindings(Dossiers.of(design), findings);
        PageSetting paper = size == PageSetting.Size.A4 ? Dossiers.A4 : Dossiers.LETTER;
        try (PDDocument pdf = Dossiers.pdf(dossier, paper)) {
            String first = page(pdf, 1);
            assertThat(first)
                    .contains("Normal dump:", "If something goes wrong:", "Push", "What to change", "Never go under");
            assertThat(page(pdf, 2)).contains("Contents", FirstPage.BEHIND + " ....");
            Matcher more = MORE.matcher(first);
            assertThat(more.find()).isTrue();
            int told = first.split("% used: ", -1).length - 1;
            assertThat(told).as("the worst in sentences").isPositive();
            int all = new Summary(dossier, paper.units()).changes(true).size();
            assertThat(Integer.parseInt(more.group(1))).isLessThan(all);
            assertThat(page(pdf, Integer.parseInt(more.group(2)))).contains(FirstPage.BEHIND, "What to change");
        }
    }

    @Test
    void whatHasRoomIsNotToldTwice() throws IOException {
        try (PDDocument pdf = Dossiers.pdf("silt-trailer", Dossiers.A4)) {
            assertThat(MORE.matcher(page(pdf, 1)).find()).isFalse();
            assertThat(new PDFTextStripper().getText(pdf)).doesNotContain(FirstPage.BEHIND);
        }
    }

    /** Names beside a plot stand in the order in which the lines end, none on another, and within the plot where there is room. */
    @Test
    void namesOfLinesNeverLieOnEachOther() {
        double[] at = PlotNames.apart(new double[] {20, 200, 201, 202, 259, 260}, 8, 262);
        for (int i = 1; i < at.length; i++) {
            assertThat(at[i] - at[i - 1]).isGreaterThanOrEqualTo(17 - 1e-9);
        }
        assertThat(at[0]).isEqualTo(20);
        assertThat(at[at.length - 1]).isLessThanOrEqualTo(262);
    }
}
