// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.Trial;

class DrawingProgramsTest {
    @TempDir
    private Path folder;

    private FrameOrder order(List<Double> tilts, boolean moving) throws IOException {
        Path design = folder.resolve("trial.yaml");
        Files.writeString(design, Trial.text());
        return new FrameOrder(
                new DesignName(design.toString(), false),
                folder.resolve("out"),
                tilts,
                "draining",
                400,
                240,
                moving,
                false,
                UnitSystem.METRIC,
                null);
    }

    private static boolean virtualDisplayIsThere() {
        return Arrays.stream(System.getenv("PATH").split(":")).anyMatch(p -> Files.isExecutable(Path.of(p, "Xvfb")));
    }

    @Test
    void orderComesBackFromItsArguments() throws IOException {
        FrameOrder order = order(List.of(0.1, 0.25), true);
        assertThat(FrameOrder.of(order.arguments().toArray(new String[0]))).isEqualTo(order);
    }

    @Test
    void drawsStillsAndAMovingPictureWithoutADisplay() throws IOException {
        assumeTrue(virtualDisplayIsThere(), "needs Xvfb; .ci/test installs it");
        FrameOrder order = order(List.of(0.0, Math.toRadians(30)), true);
        assertThat(DrawingPrograms.stills(order, Map.of())).isZero();
        BufferedImage stowed = ImageIO.read(order.out().resolve("tilt-00.0.png").toFile());
        BufferedImage tipped = ImageIO.read(order.out().resolve("tilt-30.0.png").toFile());
        assertThat(stowed.getWidth()).isEqualTo(400);
        assertThat(stowed.getHeight()).isEqualTo(240);
        assertThat(colours(stowed)).isGreaterThan(200);
        assertThat(colours(tipped)).isGreaterThan(200);
        assertThat(pixels(stowed)).isNotEqualTo(pixels(tipped));
        ImageReader gif = ImageIO.getImageReadersByFormatName("gif").next();
        try (ImageInputStream in =
                ImageIO.createImageInputStream(order.out().resolve("dump.gif").toFile())) {
            gif.setInput(in);
            assertThat(gif.getNumImages(true)).isGreaterThan(20);
        }
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    private static long colours(BufferedImage image) {
        return Arrays.stream(pixels(image)).distinct().count();
    }

    @Test
    void aTiltOutsideTheDumpIsToldAndNothingIsDrawn() throws IOException {
        assumeTrue(virtualDisplayIsThere(), "needs Xvfb; .ci/test installs it");
        FrameOrder order = order(List.of(Math.toRadians(80)), false);
        assertThat(DrawingPrograms.stills(order, Map.of())).isEqualTo(3);
        assertThat(order.out()).doesNotExist();
    }

    @Test
    void aWindowWithoutADisplayIsRefusedInWords() {
        assertThatThrownBy(() -> DrawingPrograms.window(new DesignName("silt-trailer", true), Map.of()))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("no display")
                .hasMessageContaining("frames");
    }
}
