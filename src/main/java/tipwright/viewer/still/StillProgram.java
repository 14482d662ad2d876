// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.still;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.SideThreads;
import tipwright.design.file.Problem;
import tipwright.design.file.Reading;
import tipwright.drawing.Png;
import tipwright.report.Inputs;
import tipwright.report.Prose;
import tipwright.report.WholeFile;
import tipwright.viewer.dump.Timeline;
import tipwright.viewer.scene.Camera;
import tipwright.viewer.scene.Theme;
import tipwright.viewer.start.FrameOrder;

/** Draws the stills that were ordered. Ends with 0: drawn; 2: the design is not understood; 3: cannot be drawn. */
public final class StillProgram {
    private static final int STILLS = 5;
    private static final int MOVES = 30;
    private static final int MOVING_WIDTH = 560;

    private final FrameOrder order;

    private StillProgram(FrameOrder order) {
        this.order = order;
    }

    /** Runs an order as written by {@link FrameOrder}. */
    public static void main(String[] args) {
        endWithTheStarter();
        int code;
        try {
            code = new StillProgram(FrameOrder.of(args)).run();
        } catch (Inputs.TakenException e) {
            System.err.println("tipwright: " + Prose.visible(String.valueOf(e.getMessage())));
            code = 2;
        } catch (IOException | CannotComputeException | BlankPictureException e) {
            System.err.println("tipwright: " + Prose.visible(String.valueOf(e.getMessage())));
            code = 3;
        }
        if (System.out.checkError() && code == 0) {
            System.err.println("tipwright: the output could not be written; the disk may be full");
            code = 3;
        }
        Runtime.getRuntime().halt(code);
    }

    /** Nobody wants the pictures any more once the program that started this one is gone, and its end of the input with it. */
    private static void endWithTheStarter() {
        SideThreads.start("watch", () -> {
            try {
                while (System.in.read() >= 0) {
                    // Nothing is said here.
                }
            } catch (IOException gone) {
                // As at its end.
            }
            Runtime.getRuntime().halt(3);
        });
    }

    private int run() throws IOException, CannotComputeException, BlankPictureException {
        Reading reading = order.design().read();
        if (reading instanceof Reading.Bad bad) {
            for (Problem problem : bad.problems()) {
                System.err.println(Prose.visible(problem.text()));
            }
            return 2;
        }
        Analysis analysis = Analyser.analyse(((Reading.Good) reading).design());
        String fault = start();
        if (fault != null) {
            System.err.println("tipwright: " + fault);
            return 3;
        }
        StillCamera shooter = shooter(analysis, order.width(), order.height());
        Map<Path, Double> stills = stills(shooter);
        Inputs inputs = Inputs.of(reading);
        for (Path file : stills.keySet()) {
            inputs.spare(file);
        }
        Path gif = order.out().resolve("dump.gif");
        if (order.moving()) {
            inputs.spare(gif);
        }
        WholeFile.folder(order.out());
        for (Map.Entry<Path, Double> still : stills.entrySet()) {
            write(shoot(() -> shooter.shoot(still.getValue())), still.getKey());
        }
        if (order.moving()) {
            moving(analysis, gif);
        }
        return 0;
    }

    /** Starts the drawing library; null: ready, else why not. */
    static @org.jspecify.annotations.Nullable String start() {
        CompletableFuture<Boolean> ready = new CompletableFuture<>();
        try {
            Platform.startup(() -> ready.complete(Platform.isSupported(ConditionalFeature.SCENE3D)));
        } catch (RuntimeException | LinkageError e) {
            return "the drawing library does not start: " + e.getMessage();
        }
        return ready.join()
                ? null
                : "this machine cannot draw in 3D: OpenGL is missing; on Debian or Ubuntu install libgl1 libgl1-mesa-dri"
                        + " libglx-mesa0";
    }

    private StillCamera shooter(Analysis analysis, int width, int height) {
        Camera.Place from = Camera.Place.CORNER;
        for (Camera.Place place : Camera.Place.values()) {
            if (place.name().equalsIgnoreCase(order.view())) {
                from = place;
            }
        }
        Camera.Place place = from;
        Theme theme = order.light() ? Theme.LIGHT : Theme.DARK;
        return onDrawingThread(
                () -> new StillCamera(analysis, order.loadCase(), theme, order.units(), place, width, height));
    }

    /** File and tilt (rad) of each still. */
    private Map<Path, Double> stills(StillCamera shooter) throws IOException {
        List<Double> tilts = new ArrayList<>(order.tilts());
        double first = shooter.dump().first();
        double last = shooter.dump().last();
        for (int i = 0; order.tilts().isEmpty() && i < STILLS; i++) {
            tilts.add(first + (last - first) * i / (STILLS - 1));
        }
        Map<Path, Double> all = new LinkedHashMap<>();
        for (double tilt : tilts) {
            if (tilt > last + 1e-9 || tilt < first - 1e-9) {
                throw new IOException(String.format(
                        Locale.ROOT,
                        "%.1f deg is not in this dump: it goes from %.1f deg to %.1f deg",
                        Math.toDegrees(tilt),
                        Math.toDegrees(first),
                        Math.toDegrees(last)));
            }
            String name = String.format(Locale.ROOT, "tilt-%04.1f.png", Math.toDegrees(tilt));
            all.put(order.out().resolve(name), tilt);
        }
        return all;
    }

    private void moving(Analysis analysis, Path file) throws IOException, BlankPictureException {
        int height = Math.max(2, (int) Math.round((double) MOVING_WIDTH * order.height() / order.width()));
        StillCamera shooter = shooter(analysis, MOVING_WIDTH, height);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MovingPicture gif = new MovingPicture(bytes)) {
            List<Timeline.Spot> spots = shooter.timeline().evenly(MOVES + 1);
            for (int i = 0; i <= MOVES; i++) {
                Timeline.Spot spot = spots.get(i);
                boolean end = i == 0 || i == MOVES;
                gif.add(shoot(() -> shooter.shoot(spot)), end ? 110 : 9);
            }
        }
        WholeFile.write(file, bytes::writeTo);
        System.out.println(Prose.visible(file.toString()));
    }

    private static void write(BufferedImage image, Path file) throws IOException {
        byte[] bytes = Png.bytes(image);
        WholeFile.write(file, out -> out.write(bytes));
        System.out.println(Prose.visible(file.toString()));
    }

    private interface Shot {
        BufferedImage take() throws BlankPictureException;
    }

    private static BufferedImage shoot(Shot order) throws BlankPictureException {
        Object shot = onDrawingThread(() -> {
            try {
                return order.take();
            } catch (BlankPictureException e) {
                return e;
            }
        });
        if (shot instanceof BlankPictureException blank) {
            throw blank;
        }
        return (BufferedImage) shot;
    }

    private static <T> T onDrawingThread(java.util.function.Supplier<T> work) {
        CompletableFuture<T> done = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                done.complete(work.get());
            } catch (RuntimeException | Error e) {
                done.completeExceptionally(e);
            }
        });
        return done.join();
    }
}
