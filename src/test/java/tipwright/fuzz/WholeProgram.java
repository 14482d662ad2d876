// SPDX-License-Identifier: Apache-2.0
package tipwright.fuzz;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tipwright.command.Cli;

/** Runs the commands on a design and looks at what they say. */
final class WholeProgram {
    /** What no answer may hold; what a person typed may stand in quotes. */
    private static final Pattern NEVER = Pattern.compile(
            "\\bNaN\\b|\\bInfinity\\b|Exception|\\tat |a fault of the program|ran out of memory|@[0-9a-f]{6,8}\\b");

    private static final List<String> COMMANDS = List.of(
            "check --csv DESIGN --units us",
            "check --json DESIGN",
            "check DESIGN",
            "time DESIGN",
            "time --json DESIGN",
            "actuators DESIGN",
            "place DESIGN --candidates 40 --threads 1",
            "tolerance DESIGN --runs 2",
            "tolerance DESIGN --runs 2 --units us --plot OUT.svg",
            "sheet DESIGN --out OUT.pdf",
            "sheet DESIGN --out OUT.svg --units us",
            "sheet DESIGN --out OUT.dxf",
            "report DESIGN --no-stills --out OUT.html",
            "report DESIGN --no-stills --out OUT.pdf --units us",
            "compare DESIGN silt-trailer",
            "parts DESIGN");

    private final Path folder;

    /**
     * In a folder.
     *
     * @param folder for the design, what it names, and what is written
     */
    WholeProgram(Path folder) throws IOException {
        this.folder = folder;
        Files.copy(Path.of("geometry/wash-tub.stl"), folder.resolve("wash-tub.stl"));
    }

    /** All command lines. */
    static List<String> commands() {
        return COMMANDS;
    }

    /**
     * What came of a command.
     *
     * @param fault what is wrong with it; empty: nothing
     * @param size characters printed, or bytes of the file
     */
    record Answer(int code, long size, String fault) {}

    /** Puts a design there. */
    void put(String design) throws IOException {
        Files.writeString(folder.resolve("design.yaml"), design.replace("\ud800", "?"));
    }

    Answer run(String command) throws IOException {
        String[] args = command.replace("DESIGN", folder.resolve("design.yaml").toString())
                .replace("OUT", folder.resolve("out").toString())
                .split(" ");
        Cli.Outcome outcome = Cli.run(args);
        long size = outcome.out().length() + (long) outcome.err().length();
        int at = Math.max(List.of(args).indexOf("--out"), List.of(args).indexOf("--plot"));
        Path file = at < 0 ? null : Path.of(args[at + 1]);
        String written = "";
        if (file != null && Files.exists(file)) {
            size += Files.size(file);
            written = file.toString().endsWith(".pdf") ? "" : Files.readString(file);
            Files.delete(file);
        }
        return new Answer(outcome.code(), size, fault(command, outcome, written));
    }

    private static String fault(String command, Cli.Outcome outcome, String written) {
        if (outcome.code() < 0 || outcome.code() > 3) {
            return "exit code " + outcome.code();
        }
        for (String text : List.of(outcome.out(), outcome.err(), written)) {
            String own = text.replaceAll("'[^'\\n]*'", "''");
            Matcher never = NEVER.matcher(own);
            if (never.find()) {
                int from = Math.max(0, never.start() - 150);
                return "says " + own.substring(from, Math.min(never.end() + 150, own.length()));
            }
        }
        if (outcome.code() > 1 && outcome.err().isBlank() && !command.startsWith("time")) {
            return "exit code " + outcome.code() + " without a word";
        }
        if (command.contains("--json") && !outcome.out().isEmpty()) {
            try (JsonParser parser = new JsonFactory().createParser(outcome.out())) {
                while (parser.nextToken() != null) {
                    // Only whether it can be read.
                }
            } catch (IOException e) {
                return "no JSON: " + e.getMessage();
            }
        }
        return "";
    }
}
