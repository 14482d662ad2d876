// SPDX-License-Identifier: Apache-2.0
package tipwright.fuzz;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Spoils shipped designs and runs the whole program on them, in one process. Arguments: seed, number of the first, number after the
 * last, folder for what breaks it. Prints a line for each fault, and its counts at the end or when it is ended; stops at the
 * first command that does not end.
 */
final class ProgramFuzz {
    /** Exit code when a command did not end. */
    static final int ENDLESS = 7;

    /** A search takes as long as all other commands together. */
    private static final int SELDOM = 5;

    private static final long PATIENCE = Long.getLong("test.patience", 300);

    private final Mutation mutation =
            Mutation.of(Path.of("geometry"), Path.of("src/test/resources/tipwright/check/regression"));
    private final Path kept;
    private final WholeProgram program;
    private int accepted;
    private int refused;
    private int uncomputed;
    private int commands;
    private int faults;
    private String slowest = "";
    private long longest;
    private String largest = "";
    private long most;

    private ProgramFuzz(Path kept) throws IOException {
        this.kept = Files.createDirectories(kept);
        this.program = new WholeProgram(Files.createTempDirectory("fuzz"));
    }

    /** Runs. */
    public static void main(String[] args) throws Exception {
        ProgramFuzz fuzz = new ProgramFuzz(Path.of(args[3]));
        // Also when it is ended before its time.
        Runtime.getRuntime().addShutdownHook(new Thread(fuzz::tell));
        long seed = Long.parseLong(args[0]);
        int last = Integer.parseInt(args[2]);
        for (int i = Integer.parseInt(args[1]); i < last; i++) {
            if (!fuzz.one(seed, i)) {
                fuzz.tell();
                Runtime.getRuntime().halt(ENDLESS);
            }
        }
        System.exit(fuzz.faults > 0 ? 1 : 0);
    }

    /** A design spoilt: checked, and one more command by the draw. False: it does not end. */
    private boolean one(long seed, int number) throws IOException, InterruptedException {
        Random random = new Random(seed * 1_000_003 + number);
        String design = mutation.spoilt(random);
        program.put(design);
        List<String> all = new ArrayList<>(WholeProgram.commands());
        String check = all.remove(0);
        int code = run(number, design, check);
        if (code < 0) {
            return false;
        }
        accepted += code < 2 ? 1 : 0;
        refused += code == 2 ? 1 : 0;
        uncomputed += code == 3 ? 1 : 0;
        if (random.nextInt(SELDOM) > 0) {
            all.removeIf(c -> c.startsWith("place"));
        }
        return run(number, design, all.remove(random.nextInt(all.size()))) >= 0;
    }

    /** The exit code; negative: it did not end. */
    private int run(int number, String design, String command) throws IOException, InterruptedException {
        long start = System.nanoTime();
        CompletableFuture<WholeProgram.Answer> running = new CompletableFuture<>();
        Thread thread = new Thread(() -> {
            try {
                running.complete(program.run(command));
            } catch (IOException | RuntimeException | Error e) {
                running.completeExceptionally(e);
            }
        });
        thread.setDaemon(true);
        thread.start();
        WholeProgram.Answer answer;
        try {
            answer = running.get(PATIENCE, TimeUnit.SECONDS);
        } catch (TimeoutException e) {
            fault(number, design, command, "does not end");
            return -1;
        } catch (ExecutionException e) {
            fault(number, design, command, "throws " + e.getCause());
            return 3;
        }
        long took = (System.nanoTime() - start) / 1_000_000;
        commands++;
        if (took > longest) {
            longest = took;
            slowest = number + " " + command;
        }
        if (answer.size() > most) {
            most = answer.size();
            largest = number + " " + command;
        }
        if (!answer.fault().isEmpty()) {
            fault(number, design, command, answer.fault());
        }
        return answer.code();
    }

    private void fault(int number, String design, String command, String what) throws IOException {
        faults++;
        Files.writeString(kept.resolve(number + ".yaml"), design.replace("\ud800", "?"));
        System.out.println("fault: " + number + ": " + command + ": " + what.replace('\n', ' '));
    }

    private void tell() {
        long peak = 0;
        for (MemoryPoolMXBean pool : ManagementFactory.getMemoryPoolMXBeans()) {
            peak += pool.getType() == java.lang.management.MemoryType.HEAP
                    ? pool.getPeakUsage().getUsed()
                    : 0;
        }
        System.out.println("counts: mutations " + (accepted + refused + uncomputed) + ", accepted " + accepted
                + ", refused " + refused + ", not computed "
                + uncomputed + ", commands " + commands + ", faults " + faults + ", slowest " + longest
                + " ms (" + slowest
                + "), largest " + most + " (" + largest + "), heap at most " + peak / 1_000_000 + " MB");
    }
}
