// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports and comparisons on the command line. */
class DocumentCommandsTest {
    @TempDir
    private Path folder;

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void reportWritesAPdfAndSaysItsVerdict() throws IOException {
        Path pdf = folder.resolve("trailer.pdf");
        Cli.Outcome outcome = Cli.run("report", "silt-trailer", "--no-stills", "--out", pdf.toString());
        assertThat(outcome.code()).isZero();
        assertThat(outcome.out()).isEqualTo("CLOSE: written to " + pdf + "\n");
        assertThat(outcome.err()).isEmpty();
        assertThat(text(pdf)).contains("Silt trailer", "Weld tolerance", "Where the pins go", "Cautions");
    }

    @Test
    void reportOnADesignThatFailsIsWrittenAndSaysSo() throws IOException {
        Path page = folder.resolve("small.html");
        Cli.Outcome outcome = Cli.run("report", "too-small", "--no-stills", "--out", page.toString());
        assertThat(outcome.code()).isZero();
        assertThat(outcome.out()).startsWith("FAILS").contains(": written to ");
        assertThat(Files.readString(page)).contains("<svg", "FAIL");
    }

    @Test
    void reportOfABrokenDesignWritesNothing() throws IOException {
        Path broken = folder.resolve("broken.yaml");
        Files.writeString(broken, "tipwright: 1\nname: Half\n", StandardCharsets.UTF_8);
        Path pdf = folder.resolve("broken.pdf");
        Cli.Outcome outcome = Cli.run("report", broken.toString(), "--no-stills", "--out", pdf.toString());
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).contains("broken.yaml:", "missing");
        assertThat(pdf).doesNotExist();
    }

    @Test
    void reportWantsAnEndingThatItKnows() {
        Cli.Outcome outcome = Cli.run(
                "report", "silt-trailer", "--out", folder.resolve("a.doc").toString());
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).contains(".pdf", ".html");
        assertThat(folder).isEmptyDirectory();
        assertThat(Cli.run("report", "silt-trailer").code()).isEqualTo(2);
    }

    @Test
    void compareSetsDesignsSideBySide() {
        Cli.Outcome outcome = Cli.run("compare", "silt-trailer", "too-small");
        assertThat(outcome.code()).isZero();
        assertThat(outcome.out()).contains("Silt trailer", "close", "fail");
        assertThat(outcome.out().lines().mapToInt(String::length).max().orElse(0))
                .isLessThanOrEqualTo(110);
    }

    @Test
    void compareWritesADocumentWithTheHashOfEach() throws IOException {
        Path pdf = folder.resolve("both.pdf");
        Cli.Outcome outcome = Cli.run("compare", "silt-trailer", "saw-skid", "--out", pdf.toString());
        assertThat(outcome.code()).isZero();
        String text = text(pdf);
        assertThat(text).contains("Silt trailer", "Saw skid");
        assertThat(text.lines().filter(l -> l.matches(".*[0-9a-f]{16}.*")).count())
                .isGreaterThanOrEqualTo(2);
    }

    @Test
    void compareWantsAtLeastTwoThatCanBeRead() {
        assertThat(Cli.run("compare", "silt-trailer").code()).isEqualTo(2);
        Cli.Outcome outcome = Cli.run("compare", "silt-trailer", "no-such.yaml");
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).contains("there is no such file");
    }
}
