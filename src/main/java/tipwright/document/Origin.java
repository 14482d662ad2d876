// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import tipwright.design.file.SourceFile;

/**
 * Where a design came from, so that a print can be matched to its files.
 *
 * @param file name of the design as given
 * @param inputs the design and every file that it reads
 * @param hash SHA-256 in hex: of the design where it reads no other file, else over the hashes of all, a line each, in the order of
 *     the inputs
 * @param version of the program
 * @param date of the print, as written
 */
public record Origin(String file, List<Input> inputs, String hash, String version, String date) {
    private static final int SHORT = 12;

    /** Copies the list. */
    public Origin {
        inputs = List.copyOf(inputs);
    }

    /**
     * A file.
     *
     * @param name as the design names it
     * @param hash SHA-256 of its bytes in hex
     */
    public record Input(String name, String hash) {}

    /**
     * Of a design that was read.
     *
     * @param file name of the design as given
     * @param files the design, then whatever else was read; empty when nothing could be
     */
    public static Origin of(String file, List<SourceFile> files, String version, String date) {
        List<Input> inputs = new ArrayList<>();
        StringBuilder lines = new StringBuilder();
        for (SourceFile f : files) {
            String name = inputs.isEmpty() ? file : f.name() + (f.shipped() ? " (came with the program)" : "");
            inputs.add(new Input(name, f.sha256()));
            lines.append(f.sha256()).append('\n');
        }
        String hash = inputs.size() == 1
                ? inputs.get(0).hash()
                : SourceFile.sha256(lines.toString().getBytes(StandardCharsets.UTF_8));
        return new Origin(file, inputs, hash, version, date);
    }

    /** Version of the packaged program, as prints name it. */
    public static String program() {
        String version = Origin.class.getPackage().getImplementationVersion();
        return "Tipwright " + (version == null ? "(not packaged)" : version);
    }

    String shortHash() {
        return hash.substring(0, Math.min(SHORT, hash.length()));
    }

    /** The design, and how many files it was read together with. */
    String files() {
        int more = inputs.size() - 1;
        return more < 1 ? file : file + " and " + more + (more == 1 ? " more file" : " more files");
    }

    /** Each file with its hash; where there are several, what the hash of all is taken over. */
    List<String> lines() {
        if (inputs.size() < 2) {
            return List.of(file + ": SHA-256 " + hash);
        }
        List<String> lines = new ArrayList<>();
        inputs.forEach(i -> lines.add(i.name() + ": SHA-256 " + i.hash()));
        lines.add("all of them: SHA-256 " + hash + ", taken over the hashes above, a line each, in this order");
        return lines;
    }
}
