// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.design.file.Problem;
import tipwright.design.file.Reading;
import tipwright.doubt.Doubter;
import tipwright.report.Checked;
import tipwright.report.CsvReport;
import tipwright.report.JsonReport;
import tipwright.report.Style;
import tipwright.report.TextReport;
import tipwright.report.WholeFile;

/** Reads a design, checks it and writes the answer. */
final class CheckRun {
    private final PrintWriter out;
    private final PrintWriter err;
    private final Terminal terminal;

    /**
     * Where to.
     *
     * @param out for the answer
     * @param err for everything else
     */
    CheckRun(PrintWriter out, PrintWriter err, Terminal terminal) {
        this.out = out;
        this.err = err;
        this.terminal = terminal;
    }

    /** How the answer is written. */
    enum Form {
        TEXT,
        JSON,
        CSV
    }

    /**
     * Checks; the exit code tells the verdict.
     *
     * @param file that the answer goes to; null: it is printed
     */
    int run(DesignSource source, Form form, Shown shown, @Nullable Path file) throws FailedException {
        if (source.inPlaceOfFile()) {
            err.println("tipwright: no file is called '" + source.name() + "' here; this is the shipped design");
        }
        if (source.reading() instanceof Reading.Bad bad) {
            return problems(bad.problems());
        }
        Reading.Good good = (Reading.Good) source.reading();
        Result result;
        try {
            result = Checker.check(good.design());
        } catch (CannotComputeException e) {
            err.println(source.name() + ": " + e.getMessage());
            return Exit.CANNOT_COMPUTE;
        }
        List<String> remarks = good.warnings().stream().map(Problem::text).toList();
        Checked checked = new Checked(
                result, good.assumptions(), remarks, form == Form.CSV ? null : Doubter.ask(good, result.findings()));
        boolean colour = file == null && terminal.colour();
        write(checked, form, new Style(colour, shown.units(good)), file);
        return Exit.of(result.verdict());
    }

    private int problems(List<Problem> problems) {
        for (Problem problem : problems) {
            err.println(problem.text());
        }
        err.println(
                problems.size() == 1
                        ? "1 error; nothing was computed"
                        : problems.size() + " errors; nothing was computed");
        return Exit.NOT_UNDERSTOOD;
    }

    private void write(Checked checked, Form form, Style style, @Nullable Path file) throws FailedException {
        try {
            if (file == null) {
                write(checked, form, style, out);
                if (out.checkError()) {
                    throw new IOException("the output could not be written, the disk may be full");
                }
            } else {
                WholeFile.write(file, stream -> write(checked, form, style, stream));
                out.println(checked.result().verdict().word() + ": written to " + file);
            }
        } catch (IOException e) {
            throw new FailedException(String.valueOf(e.getMessage()), e);
        }
    }

    private static void write(Checked checked, Form form, Style style, OutputStream stream) throws IOException {
        Writer writer = new OutputStreamWriter(stream, StandardCharsets.UTF_8);
        write(checked, form, style, writer);
        writer.flush();
    }

    private static void write(Checked checked, Form form, Style style, Writer writer) throws IOException {
        switch (form) {
            case TEXT -> writer.write(TextReport.of(checked, style));
            case JSON -> JsonReport.write(checked, writer);
            case CSV -> writer.write(CsvReport.of(checked.result().analysis()));
        }
    }
}
