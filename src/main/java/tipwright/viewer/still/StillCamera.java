// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.still;

import java.awt.image.BufferedImage;
import java.util.Locale;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import tipwright.analysis.Analysis;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.Timeline;
import tipwright.viewer.scene.Camera;
import tipwright.viewer.scene.Picture;
import tipwright.viewer.scene.Theme;

/** Takes stills of a dump; on the thread of the drawing library, with no window. */
public final class StillCamera {
    private static final int FEWEST_COLOURS = 24;

    private final DumpStates dump;
    private final UnitSystem units;
    private final String loadCase;
    private final Timeline timeline;
    private final Picture picture;
    private final Scene scene;

    /**
     * Sets up the picture.
     *
     * @param from where to look from
     */
    public StillCamera(
            Analysis analysis,
            String loadCase,
            Theme theme,
            UnitSystem units,
            Camera.Place from,
            int width,
            int height) {
        this.dump = new DumpStates(analysis);
        this.loadCase = loadCase;
        this.units = units;
        this.timeline = Timeline.of(dump, loadCase);
        picture = new Picture(theme);
        scene = new Scene(picture, width, height, true);
        picture.resize(width, height);
        picture.setUnits(units);
        picture.setDump(dump, loadCase);
        picture.lookFrom(from);
    }

    /** The dump. */
    public DumpStates dump() {
        return dump;
    }

    /** The picture that it takes. */
    public Picture picture() {
        return picture;
    }

    /** The dump in time. */
    public Timeline timeline() {
        return timeline;
    }

    /**
     * A still at a tilt on the way up, rad; as the load case has it when the dump in time does not get there.
     *
     * @throws BlankPictureException when the drawing library has drawn next to nothing
     */
    public BufferedImage shoot(double tilt) throws BlankPictureException {
        Timeline.Spot spot = timeline.rising(tilt);
        return shoot(spot == null ? new Timeline.Spot(Double.NaN, tilt, Double.NaN, 0, 0) : spot);
    }

    /**
     * A still of a moment.
     *
     * @throws BlankPictureException when the drawing library has drawn next to nothing
     */
    public BufferedImage shoot(Timeline.Spot spot) throws BlankPictureException {
        boolean timed = !Double.isNaN(spot.time());
        picture.lettering()
                .setNote(
                        timed
                                ? String.format(
                                        Locale.ROOT,
                                        "%.1f s, %s",
                                        spot.time(),
                                        timeline.told().show(units))
                                : "");
        picture.show(dump.at(loadCase, spot));
        WritableImage drawn = scene.snapshot(null);
        int w = (int) drawn.getWidth();
        int h = (int) drawn.getHeight();
        int[] pixels = new int[w * h];
        drawn.getPixelReader().getPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), pixels, 0, w);
        if (java.util.Arrays.stream(pixels).distinct().limit(FEWEST_COLOURS).count() < FEWEST_COLOURS) {
            throw new BlankPictureException();
        }
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, w, h, pixels, 0, w);
        return image;
    }
}
