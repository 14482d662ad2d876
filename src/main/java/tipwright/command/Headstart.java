// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.util.Objects;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.jspecify.annotations.Nullable;
import tipwright.check.Checks;
import tipwright.check.SideThreads;
import tipwright.design.file.DesignFile;

/**
 * The design that a command line most likely asks for, read on a second processor while the command line is understood. Nothing
 * depends on it: it is only sooner.
 *
 * @param name as it stands in the arguments; null: the demo
 * @param begun null: nothing is being read
 */
record Headstart(@Nullable String name, @Nullable FutureTask<DesignSource> begun) {
    /** Nothing is read before it is asked for. */
    static final Headstart NONE = new Headstart(null, null);

    /** Begins, for a check on a machine that has a second processor; ends by itself. */
    static Headstart begin(String[] args) {
        boolean checks = args.length == 0 || args[0].equals("check");
        if (!checks || Runtime.getRuntime().availableProcessors() < 2) {
            return NONE;
        }
        String name = args.length < 2 || args[1].startsWith("-") ? null : args[1];
        FutureTask<DesignSource> task = new FutureTask<>(() -> DesignSource.find(name));
        SideThreads.start("headstart", task);
        return new Headstart(name, task);
    }

    /** The design of this name: the one that has been read, or read now. */
    DesignSource design(@Nullable String asked) {
        if (begun == null || !Objects.equals(asked, name)) {
            return DesignSource.find(asked);
        }
        DesignFile.prepare(begun::isDone);
        if (!begun.isDone()) {
            Checks.all();
        }
        try {
            return begun.get();
        } catch (ExecutionException e) {
            return DesignSource.find(asked); // what went wrong there is told here
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return DesignSource.find(asked);
        }
    }
}
