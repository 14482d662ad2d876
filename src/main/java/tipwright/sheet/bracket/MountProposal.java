// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.bracket;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Mechanism;
import tipwright.check.Checker;
import tipwright.check.Checks;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.design.joint.Flange;
import tipwright.design.joint.Support;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.UnitSystem;
import tipwright.remedy.SoldSize;
import tipwright.strength.BoltHole;

/** Finds plates under the pivot bearings, with bolts and weld, where the design does not describe them, until the checks pass them. */
final class MountProposal {
    private static final List<String> LOOKED_AT = List.of("bolt", "prying", "weld");
    private static final int TRIES = 60;
    private static final int WHOLE = 5;
    private static final double YIELD = 235e6;
    /** Class 8.8, Pa. */
    private static final double ULTIMATE = 800e6;
    /** Half of the way between the bolts of a usual pillow block is so much and so much of its bore, m. From memory. */
    private static final double FOOT = 0.0275;

    private static final double FOOT_BORE = 1.025;
    /** Shaft above the foot, over the bore. From memory. */
    private static final double RISE = 1.25;

    private static final double HALF_DEEP = 0.45;
    private static final double BESIDE = 1.25;
    private static final double FIRST_BOLT = 0.2;

    private final Design design;
    private final List<SoldSize> bolts;
    private final List<SoldSize> plates;
    private final List<SoldSize> legs;
    private final double step;
    private final List<Integer> missing = new ArrayList<>();
    private int bolt;
    private int plate;
    private int leg;

    private MountProposal(Design design, Mechanism mechanism, UnitSystem units) {
        this.design = design;
        bolts = SoldSize.of(SoldSize.Series.BOLT, units);
        plates = SoldSize.of(SoldSize.Series.PLATE, units);
        legs = SoldSize.of(SoldSize.Series.LEG, units);
        step = Sketch.step(units);
        boolean onFrame = mechanism.housing() == 0;
        for (int i = 0; i < design.pivot().bearings().size(); i++) {
            String joint = joint(i);
            boolean known = design.fastenings().stream()
                    .anyMatch(f -> f.joint().equals(joint) && (f.on() == null || f.on().equals("frame")));
            if (!known && onFrame) {
                missing.add(i);
            }
        }
    }

    /** Name of a bearing as a fastening has it. */
    static String joint(int bearing) {
        return Fastening.BEARINGS.get(bearing);
    }

    /**
     * A mount that passed.
     *
     * @param fastening as it would stand in the design
     * @param most what is used of each check at most, by its id; the mounts are all alike
     */
    record Found(Fastening fastening, Map<String, Double> most) {}

    /**
     * What was found.
     *
     * @param mounts that passed; none where nothing that is sold did
     * @param design with them in it
     */
    record Outcome(List<Found> mounts, Design design) {}

    static Outcome of(Design design, Mechanism mechanism, UnitSystem units) throws CannotComputeException {
        MountProposal all = new MountProposal(design, mechanism, units);
        return all.missing.isEmpty() ? new Outcome(List.of(), design) : all.search();
    }

    private Outcome search() throws CannotComputeException {
        double bore = design.pivot().bearings().get(missing.get(0)).bearing().bore();
        while (bolt + 1 < bolts.size() && bolts.get(bolt).size() < FIRST_BOLT * bore) {
            bolt++;
        }
        plate = first(plates, 2 * bolts.get(0).size() / 3);
        leg = first(legs, Sketch.least(legs, plates.get(plate).size()) - 1e-6);
        Set<String> failed = null;
        int whole = 0;
        for (int tries = 0; tries < TRIES && whole < WHOLE; tries++) {
            Analysis analysis = Analyser.analyse(put());
            List<Finding> findings = Checks.run(
                    Checks.all().stream()
                            .filter(c -> LOOKED_AT.contains(c.id()))
                            .toList(),
                    analysis);
            Finding bad = bad(findings);
            if (bad == null) {
                whole++;
                failed = failed == null ? failing(Checker.asFilled(design).findings()) : failed;
                List<Finding> all = Checker.asFilled(analysis).findings();
                Set<String> before = failed;
                bad = bad(all);
                if (bad == null) {
                    bad = all.stream()
                            .filter(f -> f.verdict() == Verdict.FAIL && !before.contains(f.id()))
                            .findFirst()
                            .orElse(null);
                }
                if (bad == null) {
                    Map<String, Double> most = most(all);
                    return new Outcome(
                            missing.stream()
                                    .map(i -> new Found(fastening(i), most))
                                    .toList(),
                            put());
                }
            }
            if (!grown(bad)) {
                break;
            }
        }
        return new Outcome(List.of(), design);
    }

    private static int first(List<SoldSize> sizes, double least) {
        int i = 0;
        while (i + 1 < sizes.size() && sizes.get(i).size() < least) {
            i++;
        }
        return i;
    }

    private static Set<String> failing(List<Finding> all) {
        return all.stream()
                .filter(f -> f.verdict() == Verdict.FAIL)
                .map(Finding::id)
                .collect(Collectors.toSet());
    }

    private boolean mine(Finding f) {
        return missing.stream().anyMatch(i -> LOOKED_AT.contains(f.checkId()) && f.id().endsWith("/" + joint(i)));
    }

    /** What of the mounts does not pass, or cannot be told; null: nothing. */
    private @Nullable Finding bad(List<Finding> findings) {
        return findings.stream()
                .filter(this::mine)
                .filter(f -> f.verdict() == Verdict.FAIL || f.verdict() == Verdict.NOT_CHECKED)
                .findFirst()
                .orElse(null);
    }

    /** Takes the next size of what failed; whether there is one. */
    private boolean grown(Finding failed) {
        if (failed.verdict() == Verdict.NOT_CHECKED) {
            return false;
        }
        switch (failed.checkId()) {
            case "prying" -> {
                plate++;
                leg = plate < plates.size()
                        ? Math.max(
                                leg,
                                first(legs, Sketch.least(legs, plates.get(plate).size()) - 1e-6))
                        : leg;
            }
            case "bolt" -> bolt++;
            case "weld" -> leg++;
            default -> {
                plate++;
                bolt++;
                leg++;
            }
        }
        return plate < plates.size() && bolt < bolts.size() && leg < legs.size();
    }

    private Map<String, Double> most(List<Finding> all) {
        Map<String, Double> most = new LinkedHashMap<>();
        all.stream().filter(this::mine).forEach(f -> most.merge(f.checkId(), f.utilisation(), Math::max));
        return most;
    }

    private Design put() {
        List<Fastening> fastenings = new ArrayList<>(design.fastenings());
        missing.forEach(i -> fastenings.add(fastening(i)));
        return design.withFastenings(fastenings);
    }

    private Fastening fastening(int bearing) {
        Support support = design.pivot().bearings().get(bearing);
        double bore = support.bearing().bore();
        Vec2 down = support.base().unit();
        double thread = bolts.get(bolt).size();
        double hole = BoltHole.diameter(thread);
        double edge = Sketch.up(BoltHole.EDGE * hole, step);
        double half = Sketch.up(FOOT + FOOT_BORE * bore, step);
        double deep = Sketch.up(Math.max(HALF_DEEP * bore, BESIDE * hole), step);
        Vec2 foot = design.pivot().at().plus(down.times(Sketch.up(RISE * bore, step)));
        Vec3 at = new Vec3(foot.x(), foot.y(), support.z());
        Vec3 up = new Vec3(-down.x(), -down.y(), 0);
        List<Vec2> places =
                List.of(new Vec2(-half, -deep), new Vec2(half, -deep), new Vec2(-half, deep), new Vec2(half, deep));
        Bolts held = new Bolts(at, up, places, thread, null, ULTIMATE);
        FilletWeld.Rectangle round = new FilletWeld.Rectangle(2 * (half + edge), 2 * (deep + edge));
        FilletWeld weld =
                new FilletWeld(at, up, legs.get(leg).size(), LugShape.ELECTRODE, round, null, null, List.of());
        Flange flange = new Flange(plates.get(plate).size(), deep, edge, YIELD);
        return new Fastening(joint(bearing), null, weld, held, null, null, flange, null);
    }
}
