// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.NumberedPlace;
import tipwright.design.tank.Slurry;
import tipwright.geometry.NotConvergedException;
import tipwright.geometry.Vec2;
import tipwright.load.LoadTable;

/**
 * Tries a design with its mounts a little off, or with another load, by the checks themselves. Every pin, carriage and end of the
 * actuator can be off; links and cranks are then made to fit between their pins as they came out.
 */
final class Trial {
    private final Design design;
    private final CandidateEngine engine;
    private final List<Finding> checked;
    private final LoadTable loads;
    private final boolean quick;
    private final List<NumberedPlace> points;
    private final List<String> places = new ArrayList<>();
    private final double[] fills;
    private final @Nullable OneWay oneWay;

    /**
     * The trial of a design.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn
     */
    Trial(Design design) throws CannotComputeException {
        this(design, CandidateEngine.of(design), Checker.findings(design));
    }

    Trial(Design design, CandidateEngine engine) throws CannotComputeException {
        this(design, engine, Checker.findings(design));
    }

    /** With what the whole check finds in it as drawn. */
    Trial(Design design, CandidateEngine engine, List<Finding> checked) throws CannotComputeException {
        this.design = design;
        this.engine = engine;
        this.checked = List.copyOf(checked);
        loads = Analyser.loads(design);
        points = NumberedPlace.of(design);
        points.forEach(p -> places.addAll(List.of(p.name() + " x", p.name() + " y")));
        fills = partFills(checked);
        Analysis drawn = engine.analyse(design, loads);
        oneWay = OneWay.of(drawn);
        quick = oneWay == null && engine == CandidateEngine.CLOSED_FORM && !Analyser.changes(drawn);
    }

    /**
     * What part fills add to the stated fill, as drawn [limit]. A try looks at the stated fill alone and adds this, so that it tells as
     * drawn what the whole check tells.
     */
    private double[] partFills(List<Finding> checked) {
        double[] more = BoundingChecks.utilisations(checked);
        double[] stated = engine.judged(design, loads).utilisations();
        for (int i = 0; i < more.length; i++) {
            more[i] = more[i] > stated[i] ? more[i] - stated[i] : 0;
        }
        more[Limit.TIME.index()] = 0;
        return more;
    }

    private Judgement withPartFills(Judgement stated) {
        double[] all = stated.utilisations().clone();
        for (int i = 0; i < all.length; i++) {
            all[i] += fills[i];
        }
        return new Judgement(all, stated.force(), stated.time());
    }

    /** Whether a try takes well under a millisecond. */
    boolean quick() {
        return quick;
    }

    /** The coordinates that can be off, in words. */
    List<String> places() {
        return places;
    }

    /**
     * What the checks say of it then.
     *
     * @param off by how much each coordinate is off, m, as in {@link #places()}
     */
    Judgement at(double... off) {
        Judgement all = withPartFills(asStated(off));
        OneWay way = oneWay;
        return way != null && way.turns(engine, d -> moved(d, off)) ? all.passing(way.limit()) : all;
    }

    /** The same with the stated fill alone. */
    Judgement asStated(double... off) {
        return engine.judged(moved(off), loads);
    }

    /** What checks say then that are too slow for every try, at the stated fill; nothing where it cannot be computed. */
    List<Finding> others(double... off) {
        try {
            return BoundingChecks.late(engine.analyse(moved(off), loads));
        } catch (CannotComputeException | NotConvergedException impossible) {
            return List.of();
        }
    }

    /** What the full check says of it as drawn. */
    List<Finding> checked() {
        return checked;
    }

    /** The design then. */
    Design moved(double... off) {
        return moved(design, off);
    }

    private Design moved(Design as, double... off) {
        return as.withPivot(as.pivot().movedTo(place(as.pivot().at(), off)))
                .withDrive(as.drive().moved(p -> place(p, off)));
    }

    private Vec2 place(Vec2 drawn, double... off) {
        int i = NumberedPlace.at(points, drawn);
        return i < 0 ? drawn : drawn.plus(new Vec2(off[2 * i], off[2 * i + 1]));
    }

    /** With another slurry. */
    Judgement with(Slurry slurry) {
        Design other = design.withSlurry(slurry);
        try {
            return withPartFills(engine.judged(other, Analyser.loads(other)));
        } catch (CannotComputeException impossible) {
            return Judgement.impossible();
        }
    }

    /**
     * With more of the empty tank.
     *
     * @param share of its weight that is added
     */
    Judgement heavier(double share) {
        return withPartFills(
                engine.judged(design, loads.withHeavierTank(design, share), tilts -> LoadTable.of(design, tilts)
                        .withHeavierTank(design, share)));
    }
}
