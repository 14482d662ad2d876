// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import tipwright.document.PageSetting;
import tipwright.quantity.UnitSystem;

/** What a document is written on, by the name of its file. */
final class Papers {
    private Papers() {}

    static PageSetting of(Path file, PageSetting.@Nullable Size size, UnitSystem units, CommandLine line) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        boolean pdf = name.endsWith(".pdf");
        if (!pdf && !name.endsWith(".html") && !name.endsWith(".htm")) {
            throw new ParameterException(line, "--out: '" + file + "' the name must end in .pdf or .html");
        }
        PageSetting.Size usual = units == UnitSystem.US ? PageSetting.Size.LETTER : PageSetting.Size.A4;
        return new PageSetting(
                pdf ? PageSetting.Medium.PDF : PageSetting.Medium.HTML, size == null ? usual : size, units);
    }
}
