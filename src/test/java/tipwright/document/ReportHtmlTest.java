// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page about a design that fails, in a real browser (Chromium), held by axe-core against WCAG 2.1 A and AA. */
class ReportHtmlTest {
    @TempDir
    private Path folder;

    @Test
    void tellsWhatFailsAndIsAccessible() throws Exception {
        String page = Dossiers.page("too-small");
        assertThat(page).contains("X FAILS").contains("What to change");
        Path file = Files.writeString(folder.resolve("report.html"), page);
        try (Browser browser = new Browser(folder)) {
            browser.open(file, 360, 800, false);
            browser.run("document.querySelectorAll('details').forEach(d => { d.open = true; }); 1");
            assertThat(browser.faults()).matches("\\d\\d+ rules; ");
            assertThat(browser.run("document.documentElement.scrollWidth").asInt())
                    .isEqualTo(360);
            int figures = browser.run(
                            "[...document.querySelectorAll('svg')].filter(s => s.getBoundingClientRect().height > 50).length")
                    .asInt();
            assertThat(figures).isGreaterThanOrEqualTo(8);
        }
    }
}
