// SPDX-License-Identifier: Apache-2.0
package tipwright.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.List;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Problem;
import tipwright.design.file.Reading;

/** Any bytes as a design file: a design, or problems in plain words. */
public final class DesignFuzz {
    private DesignFuzz() {}

    /** Loads the classes before the clock of the first input runs. */
    public static void fuzzerInitialize() {
        DesignFile.shipped("silt-trailer.yaml");
    }

    /** Throws when the answer is not as it should be. */
    public static void fuzzerTestOneInput(byte[] data) {
        String text = new String(data, StandardCharsets.UTF_8);
        Reading reading = DesignFile.read("fuzz.yaml", text, Nearby.MESH);
        if (reading instanceof Reading.Bad bad) {
            if (bad.problems().isEmpty()) {
                throw new AssertionError("refused without a word");
            }
            bad.problems().forEach(p -> look(p, text));
        }
    }

    /** What stands in quotes came from the input, where the fuzzer soon writes the words that are looked for. */
    static void look(Problem problem, String input) {
        String said = problem.text();
        String own = problem.message().replaceAll("'[^']*'", "");
        for (String word : List.of("Exception", "null", "tipwright.design")) {
            if (own.contains(word) && !input.contains(word)) {
                throw new AssertionError("no plain words: " + said);
            }
        }
        if (problem.message().isBlank()) {
            throw new AssertionError("no words: " + said);
        }
        if (said.length() > 4000) {
            throw new AssertionError("too long: " + said.length());
        }
    }
}
