// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tipwright.interview.Interview;
import tipwright.interview.Question;
import tipwright.quantity.QuantityException;
import tipwright.report.Inputs;
import tipwright.report.Prose;

/** Asks for a machine on the terminal. All answers are on the disk after each of them, in a file beside the design. */
final class Interviewer {
    private static final int LARGEST = 100_000;

    private final PrintWriter out;
    private final PrintWriter err;
    private final Terminal terminal;
    private final Path file;
    private final Path kept;

    /**
     * Nothing is read or written yet.
     *
     * @param file that the design goes to
     */
    Interviewer(PrintWriter out, PrintWriter err, Terminal terminal, Path file) {
        this.out = out;
        this.err = err;
        this.terminal = terminal;
        this.file = file;
        kept = file.resolveSibling(file.getFileName() + ".answers");
    }

    /** Asks until there is nothing more to ask, writes the design and checks it; the exit code. */
    int run() throws FailedException {
        Interview interview = begun();
        BufferedReader typed = new BufferedReader(terminal.input());
        out.println("Enter takes the usual answer, 'back' goes back, 'quit' keeps all answers for another day.");
        for (Question question = interview.next(); question != null; question = interview.next()) {
            ask(question, interview);
            String line = line(typed);
            String word = line == null ? "quit" : line.strip().toLowerCase(Locale.ROOT);
            if (word.equals("quit")) {
                return quit(interview);
            }
            interview = word.equals("back") ? interview.back() : answered(interview, line == null ? "" : line);
            keep(interview);
        }
        String design = interview.design();
        Outputs outputs = new Outputs(new Inputs(List.of()));
        outputs.write(file, to -> to.write(design.getBytes(StandardCharsets.UTF_8)));
        forget();
        out.println();
        out.println("Written: " + file + ", from " + interview.given() + " answers. This is what it says:");
        out.println();
        return new CheckRun(out, err, terminal)
                .run(DesignSource.find(file.toString()), CheckRun.Form.TEXT, new Shown(), null);
    }

    private Interview begun() throws FailedException {
        if (!Files.isRegularFile(kept)) {
            return Interview.start();
        }
        try (InputStream in = Files.newInputStream(kept)) {
            String saved = new String(in.readNBytes(LARGEST), StandardCharsets.UTF_8);
            Interview interview = Interview.resumed(saved);
            out.println("Going on with " + interview.given() + " answers from " + kept + ".");
            return interview;
        } catch (IOException e) {
            throw new FailedException(kept + ": " + e.getMessage(), e);
        }
    }

    private void ask(Question question, Interview interview) {
        out.println();
        String number = (interview.given() + 1) + " of " + interview.questions() + "  ";
        Prose.wrap(number, question.text()).forEach(out::println);
        Prose.wrap("    ", interview.tape()).forEach(out::println);
        out.print("    usual: " + interview.usual() + " > ");
        out.flush();
    }

    private static @Nullable String line(BufferedReader typed) throws FailedException {
        try {
            return typed.readLine();
        } catch (IOException e) {
            throw new FailedException("nothing could be read: " + e.getMessage(), e);
        }
    }

    private Interview answered(Interview interview, String line) {
        try {
            Interview next = interview.answer(line);
            String picture = next.picture();
            if (!picture.equals(interview.picture())) {
                out.println();
                out.print(picture);
            }
            return next;
        } catch (QuantityException wrong) {
            Prose.wrap("  ! ", String.valueOf(wrong.getMessage())).forEach(out::println);
            return interview;
        }
    }

    private void keep(Interview interview) throws FailedException {
        String saved = interview.saved();
        new Outputs(new Inputs(List.of(file))).write(kept, to -> to.write(saved.getBytes(StandardCharsets.UTF_8)));
    }

    private int quit(Interview interview) {
        out.println();
        if (interview.given() == 0) {
            out.println("Nothing was answered, nothing is kept.");
            return Exit.FINE;
        }
        out.println(interview.given() + " answers are kept in " + kept + "; the same command goes on from there.");
        return Exit.FINE;
    }

    private void forget() throws FailedException {
        try {
            Files.deleteIfExists(kept);
        } catch (IOException e) {
            throw new FailedException(kept + ": not removed: " + e.getMessage(), e);
        }
    }
}
