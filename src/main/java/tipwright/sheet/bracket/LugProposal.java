// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.bracket;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Checks;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.design.joint.PinJoint;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachinePart;
import tipwright.quantity.UnitSystem;
import tipwright.remedy.SoldSize;

/** Finds lugs, with their welds and pins, for pins whose lugs the design does not describe, until the checks themselves pass them. */
final class LugProposal {
    /** What a proposal has to pass. */
    private static final String STEEL = "steel-behind";

    private static final List<String> LOOKED_AT = List.of("lug", "lug-side", "weld", "pin", "swing", STEEL);

    /** What depends on where it stands and on which way it faces, not on how strong it is; what cannot be told of it does no harm. */
    private static final Set<String> BY_PLACE = Set.of("swing", STEEL);

    private static final int TRIES = 60;
    private static final int WHOLE = 6;
    /** Room kept for what a less full tank may ask. */
    private static final double SPARE = 0.85;

    private static final double LEAST = 0.05;
    private static final double NEARER = 0.97;

    private final UnitSystem units;
    private final List<Site> sites = new ArrayList<>();
    private final Design design;

    private LugProposal(Analysis analysis, UnitSystem units) {
        this.units = units;
        design = analysis.design();
        List<MachinePart> parts = new MachineOutline(analysis).parts();
        for (LugSite site : LugSite.of(analysis)) {
            boolean described = design.fastenings().stream()
                    .anyMatch(f -> site.has(f, analysis.mechanism()) && (f.lug() != null || f.bolts() != null));
            if (!described) {
                Fastening given = design.fastenings().stream()
                        .filter(f -> site.has(f, analysis.mechanism()) && f.weld() != null)
                        .findFirst()
                        .orElse(null);
                FilletWeld weld = given == null ? null : given.weld();
                List<FootPlace> feet = weld == null
                        ? FootPlace.of(analysis, parts, site, Sketch.least(design, site), Sketch.step(units))
                        : List.of(FootPlace.of(weld, site.at()));
                sites.add(new Site(site, feet, given));
            }
        }
    }

    /** A place with what is tried there. */
    private static final class Site {
        private final LugSite place;
        private final List<FootPlace> feet;
        private final @Nullable Fastening given;
        private int foot;
        private Sketch sketch;
        private boolean lost;
        private Map<String, Finding> found = Map.of();

        Site(LugSite place, List<FootPlace> feet, @Nullable Fastening given) {
            this.place = place;
            this.feet = feet;
            this.given = given;
            this.sketch = Sketch.NONE;
        }

        Fastening fastening() {
            return sketch.fastening(place, feet.get(foot), given);
        }
    }

    /**
     * A lug that passed.
     *
     * @param fastening as it would stand in the design
     * @param pin that was proposed with it; null: the design gives it
     * @param most what is used of each check that was made, by the check's id
     */
    record Found(LugSite site, Fastening fastening, FootPlace foot, @Nullable PinJoint pin, Map<String, Double> most) {}

    /**
     * What was found.
     *
     * @param lugs that passed
     * @param none places where nothing that is sold passed
     * @param design with those that passed in it
     */
    record Outcome(List<Found> lugs, List<LugSite> none, Design design) {}

    static Outcome of(Analysis analysis, UnitSystem units) throws CannotComputeException {
        LugProposal all = new LugProposal(analysis, units);
        return all.search();
    }

    private Outcome search() throws CannotComputeException {
        sites.forEach(s -> s.sketch = Sketch.first(design, s.place, units));
        Set<String> failed = open() ? failing(Checker.asFilled(design).findings()) : Set.of();
        double share = SPARE;
        double over = 1;
        for (int tries = 0, whole = 0; tries < TRIES && whole < WHOLE && open(); tries++) {
            if (judge(findings(false), share)) {
                continue;
            }
            whole++;
            List<Finding> all = findings(true);
            if (judge(all, 1)) {
                over = 2;
                continue;
            }
            over = over(all, failed);
            if (over <= 1) {
                break;
            }
            share = Math.max(LEAST, NEARER * most() / over);
        }
        if (over > 1) {
            sites.forEach(s -> s.lost = true);
        }
        List<Found> lugs = new ArrayList<>();
        List<LugSite> none = new ArrayList<>();
        for (Site s : sites) {
            boolean passed = !s.lost && LOOKED_AT.stream().allMatch(id -> passes(s.found.get(id), id, 1));
            if (passed) {
                Map<String, Double> most = new LinkedHashMap<>();
                LOOKED_AT.stream().filter(id -> !id.equals(STEEL)).forEach(id -> used(s.found.get(id))
                        .ifPresent(u -> most.put(id, u)));
                FootPlace foot = s.feet.get(s.foot);
                boolean pin = s.place.known(design) == null;
                lugs.add(new Found(s.place, s.fastening(), foot, pin ? s.sketch.pin() : null, most));
            } else {
                s.lost = true;
                none.add(s.place);
            }
        }
        return new Outcome(lugs, none, tried());
    }

    private static Set<String> failing(List<Finding> all) {
        return all.stream()
                .filter(f -> f.verdict() == Verdict.FAIL)
                .map(Finding::id)
                .collect(Collectors.toSet());
    }

    /** The most that is used of a check that fails and did not before, such as when the tank is held fast; at most 1: none. */
    private static double over(List<Finding> all, Set<String> failed) {
        return all.stream()
                .filter(f -> f.verdict() == Verdict.FAIL && !failed.contains(f.id()))
                .mapToDouble(f -> Math.max(1.01, f.utilisation()))
                .max()
                .orElse(1);
    }

    /** The most that is used of anything that may be made larger. */
    private double most() {
        double most = 0;
        for (Site s : sites) {
            for (Map.Entry<String, Finding> e : s.found.entrySet()) {
                boolean given = e.getKey().equals("pin") && s.place.known(design) != null;
                if (!s.lost && !given && !BY_PLACE.contains(e.getKey())) {
                    most = Math.max(most, used(e.getValue()).orElse(0));
                }
            }
        }
        return most;
    }

    private boolean open() {
        return sites.stream().anyMatch(s -> !s.lost);
    }

    private static OptionalDouble used(@Nullable Finding f) {
        return f == null || Double.isNaN(f.utilisation()) ? OptionalDouble.empty() : OptionalDouble.of(f.utilisation());
    }

    /** Of a check that could not be made nothing is known but for what depends on the place, and the pin, which need more than the lug. */
    private static boolean passes(@Nullable Finding f, String id, double share) {
        if (f == null || f.verdict() == Verdict.NOT_CHECKED) {
            return BY_PLACE.contains(id);
        }
        return f.verdict() != Verdict.FAIL && (f.utilisation() <= share || BY_PLACE.contains(id));
    }

    /** The design with every lug that is being tried. */
    private Design tried() {
        Design put = design;
        List<Fastening> fastenings = new ArrayList<>(design.fastenings());
        for (Site s : sites) {
            if (!s.lost) {
                fastenings.remove(s.given);
                fastenings.add(s.fastening());
                put = put.withDrive(put.drive().withPin(s.place.pin(), s.sketch.pin()));
            }
        }
        return put.withFastenings(fastenings);
    }

    private List<Finding> findings(boolean whole) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(tried());
        if (whole) {
            return Checker.asFilled(analysis).findings();
        }
        return Checks.run(
                Checks.all().stream().filter(c -> LOOKED_AT.contains(c.id())).toList(), analysis);
    }

    /** Looks at what was found, and makes what does not do larger; whether anything was. */
    private boolean judge(List<Finding> findings, double share) {
        boolean grown = false;
        for (Site s : sites) {
            if (s.lost) {
                continue;
            }
            Map<String, Finding> worst = new LinkedHashMap<>();
            for (Finding f : findings) {
                if (LOOKED_AT.contains(f.checkId()) && mine(s.place, f.partId())) {
                    worst.merge(f.checkId(), f, (a, b) -> b.utilisation() > a.utilisation() ? b : a);
                }
            }
            s.found = worst;
            for (String id : LOOKED_AT) {
                boolean given = id.equals("pin") && s.place.known(design) != null;
                if (!passes(worst.get(id), id, given ? 1 : share)) {
                    grow(s, id, worst.get(id));
                    grown = true;
                    break;
                }
            }
        }
        return grown;
    }

    private static boolean mine(LugSite site, String part) {
        String own = site.joint();
        return part.equals(own)
                || part.startsWith(own + "-bearing")
                || part.startsWith(own + "-tear-out")
                || part.startsWith(own + "-net-section");
    }

    private void grow(Site s, String id, @Nullable Finding failed) {
        if (failed == null || failed.verdict() == Verdict.NOT_CHECKED) {
            s.lost = true;
            return;
        }
        if (id.equals("weld") && s.given != null) {
            s.lost = true;
            return;
        }
        if (BY_PLACE.contains(id)) {
            if (s.foot + 1 < s.feet.size()) {
                s.foot++;
            } else {
                s.lost = true;
            }
            return;
        }
        boolean pinKnown = s.place.known(design) != null;
        Sketch larger = s.sketch.larger(id, pinKnown, SoldSizes.of(units));
        s.lost = larger == null;
        s.sketch = larger == null ? s.sketch : larger;
    }

    /** What the shops sell. */
    record SoldSizes(List<SoldSize> plates, List<SoldSize> legs, List<SoldSize> pins) {
        static SoldSizes of(UnitSystem units) {
            return new SoldSizes(
                    SoldSize.of(SoldSize.Series.PLATE, units),
                    SoldSize.of(SoldSize.Series.LEG, units),
                    SoldSize.of(SoldSize.Series.PIN, units));
        }
    }
}
