// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The report as a page, in a real browser (Chromium), held by axe-core against WCAG 2.1 A and AA. */
class ReportHtmlTest {
    private static final Pattern RESULT = Pattern.compile("<pre id=\"result\">(.*?)</pre>", Pattern.DOTALL);

    @TempDir
    private Path folder;

    private static String page(String design) {
        return new String(Dossiers.written(Dossiers.of(design), Dossiers.SCREEN), StandardCharsets.UTF_8);
    }

    @Test
    void standsAlone() {
        String page = page("silt-trailer");
        assertThat(page)
                .startsWith("<!DOCTYPE html>")
                .contains("<svg ")
                .doesNotContain("<script", "<link", "src=\"http", "@import")
                .doesNotContain("url(http");
    }

    @ParameterizedTest
    @ValueSource(strings = {"silt-trailer", "too-small"})
    void opensInABrowserAndIsAccessible(String design) throws IOException, InterruptedException {
        String probe = "<script>" + axe().replace("</script", "<\\/script") + "</script><script>"
                + "axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'best-practice']}).then(r => {"
                + " const p = document.createElement('pre'); p.id = 'result';"
                + " p.textContent = 'rules ' + r.passes.length + '; faults ' + r.violations.map(v => v.id + ' '"
                + " + v.nodes[0].html.slice(0, 150)).join(' | ') + '; figures ' + [...document.querySelectorAll('svg')]"
                + ".filter(s => s.getBoundingClientRect().height > 50).length + '; wide ' +"
                + " (document.documentElement.scrollWidth - document.documentElement.clientWidth);"
                + " document.body.appendChild(p); });</script>";
        Path file = folder.resolve("report.html");
        Files.writeString(file, swap(page(design), "</body>", probe + "</body>"));
        String dom = browser(file);
        Matcher result = RESULT.matcher(dom);
        assertThat(result.find()).as("the browser has run the checker").isTrue();
        String said = result.group(1);
        assertThat(said).contains("; faults ; ").endsWith("; wide 0");
        assertThat(number(said, "rules")).isGreaterThan(15);
        assertThat(number(said, "figures")).isGreaterThanOrEqualTo(8);
    }

    private static int number(String said, String name) {
        Matcher number = Pattern.compile(name + " (\\d+)").matcher(said);
        return number.find() ? Integer.parseInt(number.group(1)) : -1;
    }

    private static String axe() throws IOException {
        try (InputStream in = ReportHtmlTest.class.getResourceAsStream("/axe.min.js")) {
            assertThat(in).isNotNull();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private String browser(Path file) throws IOException, InterruptedException {
        Path dom = folder.resolve("dom.html");
        List<String> command = List.of(
                "chromium",
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--window-size=1000,800",
                "--user-data-dir=" + folder.resolve("profile"),
                "--virtual-time-budget=60000",
                "--dump-dom",
                file.toUri().toString());
        Process process = new ProcessBuilder(command)
                .redirectOutput(dom.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            assertThat(process.waitFor(180, TimeUnit.SECONDS)).isTrue();
        } finally {
            process.destroyForcibly();
        }
        return Files.readString(dom);
    }
}
