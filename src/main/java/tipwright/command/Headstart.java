// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;

/**
 * What reading a design needs and takes long to load, loaded on a second processor while the command line is understood. Nothing
 * depends on it: it is only sooner.
 */
final class Headstart {
    private Headstart() {}

    /** Begins, for a command that reads a design, on a machine that has a second processor; ends by itself. */
    static void begin(String[] args) {
        boolean reads = args.length == 0 || args[0].equals("check") || args[0].equals("time");
        if (reads && Runtime.getRuntime().availableProcessors() > 1) {
            Thread thread = new Thread(Headstart::load, "headstart");
            thread.setDaemon(true);
            thread.start();
        }
    }

    private static void load() {
        Quantities.units(Kind.LENGTH);
        DesignFile.read("headstart", "tipwright: 1\n", NamedFiles.shipped());
    }
}
