// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.ClosedFormAnalyser;
import tipwright.design.Design;
import tipwright.design.around.KeepOut;
import tipwright.design.around.Mounts;
import tipwright.design.around.Zone;
import tipwright.design.drive.Drive;
import tipwright.geometry.Vec2;
import tipwright.linkage.Strut;

/**
 * The largest utilisation over the zone of one pin, the other pins where they are drawn.
 *
 * @param place name of the pin that is moved, as in the design file
 * @param pin the end of the actuator that it is; null: another pin of the mechanism
 * @param drawn where it is drawn, m
 * @param other the other pin of the actuator, m; of another pin the actuator's pin on the frame
 * @param pivot m
 * @param zone its outline, m
 * @param keepOuts where no pin may be
 * @param low lowest corner of the first cell, m
 * @param cell side of a cell, m; each number is taken in the middle of its cell, and where gaps were asked for is the largest there and
 *     in its corners
 * @param utilisation [row up][column across]; NaN outside the zone
 * @param governing [row up][column across]; null outside the zone
 * @param barred [row up][column across]: where every limit is kept, but another check fails there, gaps among them, that does not
 *     fail as drawn, in a corner of the cell; false everywhere where that was not asked for
 * @param allowed largest utilisation that is wanted
 */
@SuppressWarnings("ArrayRecordComponent")
public record PlacementMap(
        String place,
        @Nullable Pin pin,
        Vec2 drawn,
        Vec2 other,
        Vec2 pivot,
        List<Vec2> zone,
        List<KeepOut> keepOuts,
        Vec2 low,
        double cell,
        double[][] utilisation,
        @Nullable Limit[][] governing,
        boolean[][] barred,
        double allowed) {
    private static final double AROUND = 0.25;

    /**
     * The map of a design.
     *
     * @param across about how many cells there are along the longer side
     * @throws CannotComputeException when it cannot be computed, or is the tank pin's and the drive is not a straight one
     */
    public static PlacementMap of(Design design, Pin pin, int across) throws CannotComputeException {
        return of(design, pin, across, () -> true);
    }

    /**
     * The map of a design, as long as it is wanted.
     *
     * @param across about how many cells there are along the longer side
     * @param wanted asked before each row of cells
     * @throws CannotComputeException when it cannot be computed, or is the tank pin's and the drive is not a straight one
     * @throws CancellationException when it is not wanted any more
     */
    public static PlacementMap of(Design design, Pin pin, int across, BooleanSupplier wanted)
            throws CannotComputeException {
        if (pin != Pin.FRAME && !ClosedFormAnalyser.suits(design)) {
            throw new CannotComputeException(
                    design.name() + ": of a mechanism only the frame pin's zone can be drawn as a map");
        }
        return of(design, name(design, pin), across, wanted, false);
    }

    /**
     * The map of any pin of the mechanism by its name, gaps and all other checks included, which takes longer.
     *
     * @param across about how many cells there are along the longer side
     * @throws CannotComputeException when it cannot be computed, or there is no such pin
     */
    public static PlacementMap whole(Design design, String place, int across) throws CannotComputeException {
        return whole(design, place, across, () -> true);
    }

    /**
     * The same, as long as it is wanted.
     *
     * @param wanted asked before each row of cells
     * @throws CannotComputeException when it cannot be computed, or there is no such pin
     * @throws CancellationException when it is not wanted any more
     */
    public static PlacementMap whole(Design design, String place, int across, BooleanSupplier wanted)
            throws CannotComputeException {
        return of(design, place, across, wanted, true);
    }

    /** Name of an end of the actuator, as in the design file. */
    public static String name(Design design, Pin pin) {
        return pin == Pin.FRAME ? Drive.FRAME_PIN : design.drive().rodPinName();
    }

    private static PlacementMap of(Design design, String place, int across, BooleanSupplier wanted, boolean gaps)
            throws CannotComputeException {
        Strut actuator = design.drive().skeleton(design.pivot().at()).actuator();
        Pin pin = place.equals(Drive.FRAME_PIN)
                ? Pin.FRAME
                : place.equals(design.drive().rodPinName()) ? Pin.TANK : null;
        Vec2 drawn = design.drive().places(design.pivot().at()).get(place);
        if (drawn == null) {
            throw new CannotComputeException(design.name() + ": there is no pin '" + place + "'");
        }
        Vec2 other = pin == Pin.FRAME ? actuator.onB() : actuator.onA();
        Mounts mounts = design.mounts();
        Zone given = mounts == null ? null : mounts.zone(place);
        List<Vec2> outline = given == null ? box(drawn) : given.outline();
        List<KeepOut> keepOuts = mounts == null ? List.of() : mounts.keepOuts();
        double clearance = mounts == null ? 0 : mounts.wants().clearance();
        double allowed = mounts == null ? 1 : mounts.wants().utilisation();
        PinRegion ground = new PinRegion(new Zone(outline, null), drawn, keepOuts, clearance);
        Vec2 size = ground.high().minus(ground.low());
        double cell = Math.max(size.x(), size.y()) / across;
        int columns = Math.max(1, (int) Math.ceil(size.x() / cell - 1e-9));
        int rows = Math.max(1, (int) Math.ceil(size.y() / cell - 1e-9));
        double[][] utilisation = new double[rows][columns];
        @Nullable Limit[][] governing = new @Nullable Limit[rows][columns];
        CandidateEvaluator evaluator = evaluator(design, place, ground);
        Map<AllowedCells.Corner, Judgement> corners = new HashMap<>();
        for (int r = 0; r < rows; r++) {
            if (!wanted.getAsBoolean()) {
                throw new CancellationException("the map is not wanted any more");
            }
            for (int c = 0; c < columns; c++) {
                Vec2 p = ground.low().plus(new Vec2((c + 0.5) * cell, (r + 0.5) * cell));
                Judgement judged = ground.outside(p) == 0 ? evaluator.judged(List.of(p), 0) : null;
                for (int k = 0; gaps && judged != null && k < 4; k++) {
                    AllowedCells.Corner corner = new AllowedCells.Corner(r + k / 2, c + k % 2);
                    Vec2 q = at(ground, cell, corner);
                    if (ground.outside(q) == 0) {
                        Judgement there = corners.computeIfAbsent(corner, x -> evaluator.judged(List.of(q), 0));
                        judged = there.utilisation() > judged.utilisation() ? there : judged;
                    }
                }
                utilisation[r][c] = judged == null ? Double.NaN : judged.utilisation();
                governing[r][c] = judged == null ? null : judged.governing();
            }
        }
        boolean[][] barred = new boolean[rows][columns];
        if (gaps) {
            boolean[][] fits = new boolean[rows][columns];
            for (int r = 0; r < rows; r++) {
                for (int c = 0; c < columns; c++) {
                    fits[r][c] = utilisation[r][c] <= allowed;
                }
            }
            AllowedCells cells = new AllowedCells(fits);
            cells.quick(x -> ground.outside(at(ground, cell, x)) > 0
                    || evaluator.violation(List.of(at(ground, cell, x)), 0) == 0);
            Rechecker rechecker = new Rechecker(design);
            cells.edge(x -> ground.outside(at(ground, cell, x)) > 0
                    || rechecker.passes(evaluator.moved(List.of(at(ground, cell, x)), 0)));
            barred = cells.barred();
        }
        return new PlacementMap(
                place,
                pin,
                drawn,
                other,
                design.pivot().at(),
                outline,
                keepOuts,
                ground.low(),
                cell,
                utilisation,
                governing,
                barred,
                allowed);
    }

    private static Vec2 at(PinRegion ground, double cell, AllowedCells.Corner corner) {
        return ground.low().plus(new Vec2(corner.column() * cell, corner.row() * cell));
    }

    /**
     * Whether nothing fails with a pin elsewhere but what fails wherever it is: the whole check.
     *
     * @param at m
     */
    public static boolean works(Design design, String place, Vec2 at) throws CannotComputeException {
        Vec2 drawn = design.drive().places(design.pivot().at()).getOrDefault(place, at);
        PinRegion ground = new PinRegion(null, drawn, List.of(), 0);
        return new Rechecker(design).passes(evaluator(design, place, ground).moved(List.of(at), 0));
    }

    /** Tells what one pin of the actuator, elsewhere, comes to; the list has that one place. */
    static CandidateEvaluator evaluator(Design design, Pin pin, PinRegion ground) throws CannotComputeException {
        return evaluator(design, name(design, pin), ground);
    }

    private static CandidateEvaluator evaluator(Design design, String place, PinRegion ground)
            throws CannotComputeException {
        return CandidateEvaluator.of(Task.alone(design, place, ground), CandidateEngine.of(design));
    }

    private static List<Vec2> box(Vec2 p) {
        return List.of(
                p.plus(new Vec2(-AROUND, -AROUND)),
                p.plus(new Vec2(AROUND, -AROUND)),
                p.plus(new Vec2(AROUND, AROUND)),
                p.plus(new Vec2(-AROUND, AROUND)));
    }

    /** Whether a cell lies in the zone, every limit is kept there and nothing else is known to fail. */
    public boolean fits(int row, int column) {
        return utilisation[row][column] <= allowed && !barred[row][column];
    }
}
