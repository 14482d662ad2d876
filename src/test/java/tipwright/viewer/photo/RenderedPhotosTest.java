// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.File;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javafx.scene.DepthTest;
import javafx.scene.Group;
import javafx.scene.SubScene;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.Sphere;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;
import tipwright.design.NumberedPlace;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.OneScreen;
import tipwright.viewer.Trial;
import tipwright.viewer.scene.Camera;
import tipwright.viewer.scene.Picture;
import tipwright.viewer.scene.Theme;
import tipwright.viewer.still.StillCamera;

/**
 * Photos that the viewer's own scene renders from many sides: coloured marks on the sheet's corners and on the pins are found in the
 * pixels, after a lens has bent, turned and shifted the picture. Source of the lens: D. C. Brown's first radial term (from memory).
 */
@ExtendWith({OneScreen.class, ApplicationExtension.class})
@EnabledIfEnvironmentVariable(
        named = "DISPLAY",
        matches = ".+",
        disabledReason = "a picture needs a display; .ci/test has one")
class RenderedPhotosTest {
    private static final int PHOTOS = 24;

    // as wide for its height as makes the scene's lens a phone's
    private static final int WIDTH = 960;
    private static final int HEIGHT = 320;
    private static final double FOCAL = HEIGHT / 2.0 / Math.tan(Camera.FIELD / 2);

    /** Of the demo's frame, m. */
    private static final double FRAME = 1.96;

    private static final double SURE = 0.005;
    /** The sheet stands in the plane of the near bearing, m along the pivot. */
    private static final double SHEET = 0.45;

    private static final double MARK = 0.018;
    private static final KnownSheet PLYWOOD = new KnownSheet(new Vec2(-1.25, -0.65), 2.44, 1.22);

    /** How well the middle of a mark is read from its pixels, pixels. */
    private static final double READS = 0.2;

    private static final Color MAGENTA = Color.MAGENTA;

    /** What a lens does to a straight picture: bent by k, turned, its middle shifted, pixels. */
    private record Glass(double bend, double roll, Vec2 shift) {
        static Glass random(Random random) {
            return new Glass(
                    0.02 * random.nextGaussian(),
                    Math.toRadians(1.5 * random.nextGaussian()),
                    new Vec2(0.008 * WIDTH * random.nextGaussian(), 0.008 * WIDTH * random.nextGaussian()));
        }

        /** Where a pixel of the bent picture is in the straight one. */
        Vec2 straight(double u, double v) {
            double x = (u - WIDTH / 2.0 - shift.x()) / FOCAL;
            double y = (v - HEIGHT / 2.0 - shift.y()) / FOCAL;
            double scale = 1;
            for (int i = 0; i < 6; i++) {
                scale = 1 / (1 + bend * scale * scale * (x * x + y * y));
            }
            double c = Math.cos(roll) * scale * FOCAL;
            double s = Math.sin(roll) * scale * FOCAL;
            return new Vec2(WIDTH / 2.0 + c * x + s * y, HEIGHT / 2.0 - s * x + c * y);
        }

        /** Where a pixel of the straight picture is in the bent one. */
        Vec2 bent(Vec2 p) {
            double x = (p.x() - WIDTH / 2.0) / FOCAL;
            double y = (p.y() - HEIGHT / 2.0) / FOCAL;
            double far = 1 + bend * (x * x + y * y);
            double c = Math.cos(roll) * far * FOCAL;
            double s = Math.sin(roll) * far * FOCAL;
            return new Vec2(WIDTH / 2.0 + shift.x() + c * x - s * y, HEIGHT / 2.0 + shift.y() + s * x + c * y);
        }

        /** The picture through it, each pixel mixed of the four nearest. */
        BufferedImage through(BufferedImage straight) {
            BufferedImage out = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
            int[] from = straight.getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH);
            int[] to = new int[from.length];
            for (int v = 0; v < HEIGHT; v++) {
                for (int u = 0; u < WIDTH; u++) {
                    Vec2 p = straight(u + 0.5, v + 0.5);
                    to[v * WIDTH + u] = mixed(from, p.x() - 0.5, p.y() - 0.5);
                }
            }
            out.setRGB(0, 0, WIDTH, HEIGHT, to, 0, WIDTH);
            return out;
        }

        private static int mixed(int[] from, double x, double y) {
            int left = (int) Math.floor(x);
            int top = (int) Math.floor(y);
            if (left < 0 || top < 0 || left >= WIDTH - 1 || top >= HEIGHT - 1) {
                return 0;
            }
            double a = x - left;
            double b = y - top;
            int at = top * WIDTH + left;
            int rgb = 0;
            for (int shift = 0; shift <= 16; shift += 8) {
                double upper = (1 - a) * (from[at] >> shift & 0xff) + a * (from[at + 1] >> shift & 0xff);
                double lower =
                        (1 - a) * (from[at + WIDTH] >> shift & 0xff) + a * (from[at + WIDTH + 1] >> shift & 0xff);
                rgb |= (int) Math.round((1 - b) * upper + b * lower) << shift;
            }
            return rgb;
        }
    }

    /** How magenta a pixel is, 0 to 1; what is not clearly so counts as 0. */
    private static double magenta(int rgb) {
        int other = Math.min(rgb >> 16 & 0xff, rgb & 0xff) - (rgb >> 8 & 0xff);
        return other > 80 ? other / 255.0 : 0;
    }

    /** The middle of the mark that lies nearest to where one would look for it; nothing is taken but pixels. */
    private static Vec2 found(BufferedImage photo, Vec2 near) {
        double sum = 0;
        Vec2 middle = Vec2.ZERO;
        int reach = 12;
        int atX = (int) near.x();
        int atY = (int) near.y();
        for (int v = Math.max(0, atY - reach); v <= Math.min(HEIGHT - 1, atY + reach); v++) {
            for (int u = Math.max(0, atX - reach); u <= Math.min(WIDTH - 1, atX + reach); u++) {
                double share = magenta(photo.getRGB(u, v));
                sum += share;
                middle = middle.plus(new Vec2(u + 0.5, v + 0.5).times(share));
            }
        }
        assertThat(sum).as("a mark at " + near).isGreaterThan(8);
        return middle.times(1 / sum);
    }

    /** The straight picture from a camera, with marks. */
    private static BufferedImage shot(StillCamera still, Group marks, Camera camera, List<Vec3> places)
            throws Exception {
        marks.getChildren().clear();
        PhongMaterial paint = new PhongMaterial(Color.BLACK);
        WritableImage glow = new WritableImage(1, 1);
        glow.getPixelWriter().setColor(0, 0, MAGENTA);
        paint.setSelfIlluminationMap(glow);
        for (Vec3 p : places) {
            Sphere mark = new Sphere(MARK, 12);
            mark.setMaterial(paint);
            // also where steel hides it from here: whoever takes a photo goes round
            mark.setDepthTest(DepthTest.DISABLE);
            mark.setTranslateX(p.x());
            mark.setTranslateY(p.y());
            mark.setTranslateZ(p.z());
            marks.getChildren().add(mark);
        }
        still.picture().setCamera(camera);
        return still.shoot(0);
    }

    private static Group marksIn(Picture picture) {
        SubScene space = picture.getChildrenUnmodifiable().stream()
                .filter(SubScene.class::isInstance)
                .map(SubScene.class::cast)
                .findFirst()
                .orElseThrow();
        Group world = (Group) ((Group) space.getRoot()).getChildren().get(0);
        Group marks = new Group();
        ((Group) world.getChildren().get(0)).getChildren().add(marks);
        return marks;
    }

    private static Camera camera(Random random) {
        Vec3 aim = new Vec3(-0.1 + 0.15 * random.nextDouble(), -0.1 + 0.1 * random.nextDouble(), SHEET);
        return new Camera(
                aim,
                Math.toRadians(50 * (random.nextDouble() - 0.5)),
                Math.toRadians(4 + 16 * random.nextDouble()),
                4.4 + 0.8 * random.nextDouble());
    }

    private record Pin(String name, Vec2 at, double before) {}

    private static List<Pin> pins(StillCamera still) {
        List<Pin> pins = new ArrayList<>();
        for (NumberedPlace place : NumberedPlace.of(still.dump().design())) {
            // the end of the pivot shaft stands out on the near side
            pins.add(new Pin(place.name(), place.at(), (place.pivot() ? 0.52 : 0) - SHEET));
        }
        return pins;
    }

    /**
     * What came of the pins, as whoever marks them hits them.
     *
     * @param doubts as told to the program
     * @param misses how far a tap is off what the pixels say, pixels
     */
    private static final class Tally {
        private final Doubts doubts;
        private final double misses;
        private final PinTally found = new PinTally(FRAME);

        Tally(double reads, double misses) {
            doubts = Doubts.USUAL.tapping(Math.hypot(reads, misses));
            this.misses = misses;
        }

        void take(List<Vec2> marks, List<Pin> all, Random random) {
            List<Vec2> taps = marks.stream()
                    .map(m -> PhotoPlaneTest.missed(m, random, misses))
                    .toList();
            PhotoPlane plane = PhotoPlane.of(WIDTH, HEIGHT, PLYWOOD, taps.subList(0, 4), doubts);
            assertThat(plane).isNotNull();
            for (int i = 0; i < all.size(); i++) {
                found.take(plane.at(taps.get(4 + i), all.get(i).before, SURE), all.get(i).at);
            }
        }

        void covers() {
            assertThat(found.covered()).isGreaterThanOrEqualTo((int) Math.ceil(0.95 * found.pins()));
            assertThat(found.doubt()).as("not so large that it covers anything").isLessThan(4 * found.error());
        }
    }

    @Test
    void pinsAreFoundInPicturesFromManySidesAndTheDoubtCoversTheError() throws Exception {
        Random random = new Random(31);
        StillCamera still = WaitForAsyncUtils.asyncFx(() -> new StillCamera(
                        Trial.shipped("silt-trailer"),
                        "empty",
                        Theme.LIGHT,
                        UnitSystem.METRIC,
                        Camera.Place.SIDE,
                        WIDTH,
                        HEIGHT))
                .get();
        Group marks = WaitForAsyncUtils.asyncFx(() -> {
                    still.picture().lettering().setVisible(false);
                    return marksIn(still.picture());
                })
                .get();
        List<Pin> pins = pins(still);
        assertThat(pins).hasSize(3);
        Tally pixels = new Tally(READS, 0);
        // a finger on a photo of 4000 pixels
        Tally finger = new Tally(READS, Doubts.USUAL.tap() * WIDTH / 4000);
        double moved = 0;
        for (int photo = 0; photo < PHOTOS; photo++) {
            Camera camera = camera(random);
            Glass glass = Glass.random(random);
            List<Vec3> places = new ArrayList<>();
            for (Vec3 corner : PhotoPlaneTest.corners(PLYWOOD, random, Doubts.USUAL.place(), Doubts.USUAL.level())) {
                places.add(new Vec3(corner.x(), corner.y(), SHEET));
            }
            for (Pin pin : pins) {
                places.add(new Vec3(pin.at.x(), pin.at.y(), SHEET + pin.before + SURE * random.nextGaussian()));
            }
            BufferedImage straight = WaitForAsyncUtils.asyncFx(() -> shot(still, marks, camera, places))
                    .get();
            BufferedImage bent = glass.through(straight);
            keep(bent, photo);
            List<Vec2> found = new ArrayList<>();
            for (Vec3 place : places) {
                Vec2 drawn = camera.project(place, WIDTH, HEIGHT);
                Vec2 there = found(bent, glass.bent(drawn));
                moved = Math.max(moved, there.minus(drawn).norm());
                found.add(there);
            }
            pixels.take(found, pins, random);
            finger.take(found, pins, random);
        }
        assertThat(moved).as("the lens shifts the marks by pixels").isGreaterThan(10);
        assertThat(pixels.found.near()).isEqualTo(pixels.found.pins());
        assertThat(finger.found.near()).isGreaterThan((int) (0.9 * finger.found.pins()));
        pixels.covers();
        finger.covers();
    }

    private static void keep(BufferedImage photo, int number) throws Exception {
        String folder = System.getProperty("test.pictures");
        if (folder != null) {
            ImageIO.write(photo, "png", new File(folder, "photo-" + number + ".png"));
        }
    }
}
