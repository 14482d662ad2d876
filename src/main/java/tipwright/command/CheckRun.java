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
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Early;
import tipwright.check.Result;
import tipwright.design.file.Problem;
import tipwright.design.file.Reading;
import tipwright.doubt.Doubter;
import tipwright.doubt.Sureness;
import tipwright.remedy.FixSearch;
import tipwright.remedy.TriedFixes;
import tipwright.report.Checked;
import tipwright.report.CsvReport;
import tipwright.report.EarlyText;
import tipwright.report.JsonReport;
import tipwright.report.ShortReport;
import tipwright.report.Style;
import tipwright.report.SurenessText;
import tipwright.report.TextReport;
import tipwright.report.VerdictText;

/** Reads a design, checks it and writes the answer. */
final class CheckRun {
    private final PrintWriter out;
    private final PrintWriter err;
    private final Terminal terminal;
    private final Function<Consumer<Early>, Early.Listener> listener;

    /**
     * Where to; what is known at once goes there after two seconds.
     *
     * @param out for the answer
     * @param err for everything else
     */
    CheckRun(PrintWriter out, PrintWriter err, Terminal terminal) {
        this(out, err, terminal, Early.Listener::of);
    }

    /**
     * Where to.
     *
     * @param out for the answer
     * @param err for everything else
     * @param listener how long is waited before what is known at once is told
     */
    CheckRun(PrintWriter out, PrintWriter err, Terminal terminal, Function<Consumer<Early>, Early.Listener> listener) {
        this.listener = listener;
        this.out = out;
        this.err = err;
        this.terminal = terminal;
    }

    /** How the answer is written. */
    enum Form {
        TEXT,
        FULL,
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
            err.println("tipwright: no file '" + source.name() + "' in this folder; this is the example of that name");
        }
        if (source.reading() instanceof Reading.Bad bad) {
            return problems(bad.problems());
        }
        Reading.Good good = (Reading.Good) source.reading();
        List<String> remarks = good.warnings().stream().map(Problem::text).toList();
        boolean colour = file == null && terminal.colour();
        Style style = new Style(colour, shown.units(good));
        boolean watched = file == null && (form == Form.TEXT || form == Form.FULL) && terminal.interactive();
        Outputs outputs = Outputs.sparing(source);
        if (file != null) {
            outputs.spare(file);
        }
        Result result;
        try {
            boolean whole = form == Form.FULL || form == Form.JSON;
            result = Checker.check(
                    good.design(),
                    listener.apply(early -> {
                        if (watched) {
                            out.print(EarlyText.of(early, style));
                            out.flush();
                        }
                    }),
                    whole);
        } catch (CannotComputeException e) {
            err.println(source.name() + ": " + e.getMessage());
            return Exit.CANNOT_COMPUTE;
        }
        // a hundred other machines take a while: a person sees the answer before
        boolean late = watched && !good.uncertain().isEmpty();
        Checked checked = new Checked(
                result,
                good.assumptions(),
                remarks,
                form == Form.CSV
                        ? TriedFixes.NONE
                        : FixSearch.of(
                                result,
                                () -> Boxes.of(source, good.design(), List.of()).shop(style.units()),
                                form == Form.FULL),
                form == Form.CSV || late ? null : Doubter.ask(good, result.findings()),
                source.sizes());
        if (file == null) {
            print(checked, form, style);
            if (late) {
                late(good, result, style);
            }
        } else {
            outputs.write(file, stream -> write(checked, form, style, stream));
            out.println(VerdictText.word(checked.result()) + ": written to " + file);
        }
        return Exit.of(result);
    }

    private void late(Reading.Good good, Result result, Style style) {
        out.flush();
        Sureness sure = Doubter.ask(good, result.findings());
        if (sure != null) {
            out.print(SurenessText.after(sure, style));
        }
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

    private void print(Checked checked, Form form, Style style) throws FailedException {
        try {
            write(checked, form, style, out);
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
            case TEXT -> writer.write(ShortReport.of(checked, style));
            case FULL -> writer.write(TextReport.of(checked, style));
            case JSON -> JsonReport.write(checked, writer);
            case CSV -> writer.write(CsvReport.of(checked.result().analysis()));
        }
    }
}
