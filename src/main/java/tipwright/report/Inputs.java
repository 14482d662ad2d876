// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tipwright.design.file.Reading;
import tipwright.design.file.SourceFile;

/**
 * The files that the work at hand was read from: nothing that is written may take the place of one of them.
 *
 * @param files on the disk; what came with the program is none of them
 */
public record Inputs(List<Path> files) {
    /** Copies the list. */
    public Inputs {
        files = List.copyOf(files);
    }

    /** What is written would take the place of an input; nothing was touched. */
    public static final class TakenException extends IOException {
        private static final long serialVersionUID = 1L;

        private TakenException(String message) {
            super(message);
        }
    }

    /** The design, its parts files and its mesh; none of a text that could not be read. */
    public static Inputs of(Reading reading) {
        if (!(reading instanceof Reading.Good good) || good.files().get(0).shipped()) {
            return new Inputs(List.of());
        }
        Path design = Path.of(good.files().get(0).name()).toAbsolutePath();
        List<Path> all = new ArrayList<>(List.of(design));
        for (SourceFile file : good.files().subList(1, good.files().size())) {
            if (!file.shipped()) {
                all.add(design.resolveSibling(file.name()));
            }
        }
        return new Inputs(all);
    }

    /**
     * Refuses a target that is an input, by whatever spelling, symbolic or hard link it is named.
     *
     * @throws TakenException when it is one; the message names both
     */
    public void spare(Path target) throws TakenException {
        for (Path file : files) {
            if (isSame(file, target)) {
                throw new TakenException(target + ": not written: it is " + file.getFileName()
                        + ", which was read for this and would be lost; choose another name");
            }
        }
    }

    /** A device or a pipe may be both read and written. */
    private static boolean isSame(Path input, Path target) {
        try {
            if (Files.exists(input) && Files.exists(target)) {
                return Files.isRegularFile(target) && Files.isSameFile(input, target);
            }
        } catch (IOException unseen) {
            // By their names, then.
        }
        return input.toAbsolutePath().normalize().equals(target.toAbsolutePath().normalize());
    }
}
