// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.bracket;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Mechanism;
import tipwright.design.Design;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.design.joint.Flange;
import tipwright.design.joint.Lug;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.Seat;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec2;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.strength.BoltHole;

/**
 * All brackets, lugs and mounts of a machine.
 *
 * @param all as the design describes them, then the proposals
 * @param design with the proposals in it
 * @param open what has no plate, a sentence each
 */
public record Brackets(List<Bracket> all, Design design, List<Text> open) {
    private static final double SAME = 1e-6;

    /** Copies the lists. */
    public Brackets {
        all = List.copyOf(all);
        open = List.copyOf(open);
    }

    /**
     * Those of a design.
     *
     * @param units of the shop that proposals are bought in
     * @throws CannotComputeException when a proposal cannot be computed
     */
    public static Brackets of(Analysis analysis, UnitSystem units) throws CannotComputeException {
        Maker maker = new Maker(analysis);
        for (Fastening f : analysis.design().fastenings()) {
            maker.lug(f);
            maker.flange(f, null);
            maker.pad(f);
        }
        LugProposal.Outcome proposed = LugProposal.of(analysis, units);
        proposed.lugs().forEach(maker::proposed);
        List<Text> open = new ArrayList<>();
        for (LugSite site : proposed.none()) {
            open.add(
                    Text.words(
                            "The lug of the " + site.words()
                                    + " is not in the design, and none of the plates that are sold passed the checks: have it designed."));
        }
        MountProposal.Outcome mounts = MountProposal.of(proposed.design(), analysis.mechanism(), units);
        mounts.mounts().forEach(found -> maker.flange(found.fastening(), found));
        maker.bearings(mounts.design(), open);
        return new Brackets(maker.joined(), mounts.design(), open);
    }

    /** Makes them one by one. */
    private static final class Maker {
        private final Analysis analysis;
        private final Design design;
        private final Mechanism mechanism;
        private final List<LugSite> sites;
        private final List<Bracket> made = new ArrayList<>();

        Maker(Analysis analysis) {
            this.analysis = analysis;
            design = analysis.design();
            mechanism = analysis.mechanism();
            sites = LugSite.of(analysis);
        }

        void lug(Fastening f) {
            Lug lug = f.lug();
            LugSite site =
                    sites.stream().filter(s -> s.has(f, mechanism)).findFirst().orElse(null);
            if (lug == null || site == null) {
                return;
            }
            FilletWeld weld = f.weld();
            Double height = f.height();
            LugShape shape = weld != null
                    ? LugShape.of(lug, site.at(), weld)
                    : LugShape.of(
                            lug,
                            site.at(),
                            FootPlace.middle(analysis, site),
                            height == null ? lug.width() : height,
                            lug.width());
            List<Text> words = new ArrayList<>();
            words.add(BracketWords.hole(lug, shape));
            if (weld == null) {
                words.add(
                        Text.words(
                                "Its weld is not in the design, nor what it stands on: the foot is drawn as wide as the lug; trim it to what is there."));
            }
            held(f, words);
            made.add(bracket(f, site, lug, shape, words, false));
        }

        private Bracket bracket(
                Fastening f, LugSite site, Lug lug, LugShape shape, List<Text> words, boolean proposed) {
            PinJoint joint = site.known(design);
            if (lug.plates() > 1 && joint != null) {
                words.add(BracketWords.apart(lug, joint));
            }
            CutPlate plate = new CutPlate(
                    shape.outline(), List.of(new CutPlate.PlateHole(Vec2.ZERO, lug.hole(), true)), lug.thickness());
            long same = design.fastenings().stream()
                    .filter(o -> site.has(o, mechanism) && o.lug() != null)
                    .count();
            int count = lug.plates() * (same > 1 ? 1 : site.across().size());
            words.add(BracketWords.stands(f, mechanism, site.body()));
            if (same <= 1 && site.across().size() > 1) {
                words.add(BracketWords.again(site.across()));
            }
            return new Bracket(
                    "Lug of the " + site.words(),
                    plate,
                    count,
                    proposed,
                    words,
                    List.of(shape.placed(site.at())),
                    site.body());
        }

        void proposed(LugProposal.Found found) {
            Fastening f = found.fastening();
            Lug lug = f.lug();
            FilletWeld weld = f.weld();
            if (lug == null || weld == null) {
                return;
            }
            LugShape shape = LugShape.of(lug, found.site().at(), weld);
            List<Text> words = new ArrayList<>();
            words.add(BracketWords.proposal(found));
            words.add(BracketWords.hole(lug, shape));
            held(f, words);
            PinJoint pin = found.pin();
            if (pin != null) {
                words.add(BracketWords.pin(pin));
                if (lug.plates() > 1) {
                    words.add(BracketWords.apart(lug, pin));
                }
            }
            made.add(bracket(f, found.site(), lug, shape, words, true));
        }

        private static void held(Fastening f, List<Text> words) {
            FilletWeld weld = f.weld();
            Bolts bolts = f.bolts();
            if (weld != null) {
                words.add(BracketWords.weld(weld));
            }
            if (bolts != null) {
                words.add(BracketWords.bolts(bolts));
            }
        }

        /** The plate under the heads of bolts: as far around them as the design says, or as is usual. */
        void flange(Fastening f, MountProposal.@Nullable Found found) {
            Bolts bolts = f.bolts();
            if (bolts == null) {
                return;
            }
            Flange flange = f.flange();
            double hole = BoltHole.diameter(bolts.diameter());
            double edge = flange == null ? BoltHole.EDGE * hole : flange.edge();
            Vec2 low = bolts.positions().get(0);
            Vec2 high = low;
            for (Vec2 p : bolts.positions()) {
                low = new Vec2(Math.min(low.x(), p.x()), Math.min(low.y(), p.y()));
                high = new Vec2(Math.max(high.x(), p.x()), Math.max(high.y(), p.y()));
            }
            Vec2 out = new Vec2(edge, edge);
            low = low.minus(out);
            high = high.plus(out);
            List<Vec2> corners = List.of(low, new Vec2(high.x(), low.y()), high, new Vec2(low.x(), high.y()));
            List<CutPlate.PlateHole> holes = bolts.positions().stream()
                    .map(p -> new CutPlate.PlateHole(p, hole, false))
                    .toList();
            List<Text> words = new ArrayList<>();
            if (found != null) {
                words.add(BracketWords.proposal(found));
            }
            held(f, words);
            words.add(BracketWords.flange(flange, edge));
            words.add(BracketWords.stands(f, mechanism, 0));
            made.add(new Bracket(
                    "Mount of " + place(f),
                    new CutPlate(corners, holes, flange == null ? Double.NaN : flange.thickness()),
                    1,
                    found != null,
                    words,
                    List.of(),
                    0));
        }

        void pad(Fastening f) {
            Seat seat = f.seat();
            Seat.Pad pad = seat == null ? null : seat.pad();
            if (seat == null || pad == null) {
                return;
            }
            List<Text> words = List.of(BracketWords.pad(seat, pad));
            made.add(new Bracket(
                    "Pad of " + place(f),
                    new CutPlate(CutPlate.rectangle(pad.along(), pad.around()), List.of(), pad.thickness()),
                    1,
                    false,
                    words,
                    List.of(),
                    mechanism.tank()));
        }

        private static String place(Fastening f) {
            String words = NameId.words(f.joint());
            String on = f.on();
            return (words.startsWith("bearing") ? words : "the " + words) + (on == null ? "" : " on the " + on);
        }

        /** Bearings whose mounts are not described. */
        void bearings(Design with, List<Text> open) {
            for (int i = 1; i <= 2; i++) {
                String joint = MountProposal.joint(i - 1);
                if (with.fastenings().stream().noneMatch(f -> f.joint().equals(joint))) {
                    open.add(
                            Text.words(
                                    "The mount of bearing " + i
                                            + " is not in the design, and no plate with bolts that are sold passed the checks: have it designed."));
                }
            }
        }

        /** Plates that are the same become one with their number. */
        List<Bracket> joined() {
            List<Bracket> all = new ArrayList<>();
            for (Bracket b : made) {
                int same = -1;
                for (int i = 0; i < all.size() && same < 0; i++) {
                    same = alike(all.get(i), b) ? i : -1;
                }
                if (same < 0) {
                    all.add(b);
                } else {
                    Bracket first = all.get(same);
                    List<List<Vec2>> outlines = new ArrayList<>(first.outlines());
                    outlines.addAll(b.outlines());
                    List<Text> words = new ArrayList<>(first.words());
                    b.words().stream().filter(w -> !words.contains(w)).forEach(words::add);
                    all.set(
                            same,
                            new Bracket(
                                    first.name() + ", " + uncapped(b.name()),
                                    first.plate(),
                                    first.count() + b.count(),
                                    first.proposed(),
                                    words,
                                    outlines,
                                    first.body()));
                }
            }
            return all;
        }

        private static String uncapped(String name) {
            return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
        }

        private static boolean alike(Bracket a, Bracket b) {
            List<Vec2> p = a.plate().outline();
            List<Vec2> q = b.plate().outline();
            boolean same = p.size() == q.size()
                    && (a.name().equals(b.name()) || a.plate().holes().stream().noneMatch(CutPlate.PlateHole::pin))
                    && a.plate().holes().size() == b.plate().holes().size()
                    && Double.compare(a.plate().thickness(), b.plate().thickness()) == 0;
            for (int i = 0; same && i < p.size(); i++) {
                same = p.get(i).minus(q.get(i)).norm() < SAME;
            }
            for (int i = 0; same && i < a.plate().holes().size(); i++) {
                CutPlate.PlateHole g = a.plate().holes().get(i);
                CutPlate.PlateHole h = b.plate().holes().get(i);
                same = g.at().minus(h.at()).norm() < SAME && Math.abs(g.diameter() - h.diameter()) < SAME;
            }
            return same;
        }
    }
}
