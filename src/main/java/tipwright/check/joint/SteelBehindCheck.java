// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Titles;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Limits;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.design.joint.Seat;
import tipwright.design.key.NameId;
import tipwright.design.tank.CylinderInterior;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.strength.OutOfRangeException;

/** Whether there is steel behind all of a bracket's weld, and a round wall under all of its seat. */
public final class SteelBehindCheck implements Check {
    private static final String ID = "steel-behind";
    private static final String SEAT = " seat";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Brackets: steel behind them";
    }

    @Override
    public String title(String part) {
        return part.isEmpty()
                ? title()
                : part.endsWith(SEAT)
                        ? "Bracket at " + Titles.the(part.replace(SEAT, "")) + ": tank wall under its seat"
                        : "Bracket at " + Titles.the(part) + ": steel behind its weld";
    }

    @Override
    public String rule() {
        return "All of the weld of a bracket lies on steel that is drawn: on a face, in the weld's plane, of a frame member, the cross"
                + " member, the tank, what is attached to it, or a link. A bracket that goes along with its pin may slide off the"
                + " end of what it stands on. Up to 3 mm between weld and steel or past its edge is allowed. On a round tank the"
                + " seat and its pad stay on the straight wall. Where nothing drawn lies in the weld's plane, it cannot tell;"
                + " a weld between a lug and its seat is then part of the bracket.";
    }

    @Override
    public String formula() {
        return "farthest that the weld, or the seat along the tank, reaches past the steel <= 3 mm";
    }

    @Override
    public String source() {
        return "plane geometry; 3 mm: widest gap at a fillet weld of quality level C, EN ISO 5817 no. 617 (from memory)";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.BOUNDS_MOUNTS);
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.LUG, PartKind.BEARING);
    }

    /** The brackets of the bearings stay where they are while pins are moved. */
    @Override
    public String bound(String id) {
        return Fastening.BEARINGS.stream().anyMatch(Finding.partOf(id)::startsWith) ? "" : "steel behind the bracket";
    }

    @Override
    public Text says(Finding finding) {
        return finding.verdict() == Verdict.FAIL || finding.verdict() == Verdict.CLOSE
                ? Text.words(Titles.part(finding.title()) + ": its ")
                        .plus(finding.allowed(
                                finding.partId().endsWith(NameId.of(SEAT))
                                        ? "seat reaches past the tank's straight wall by"
                                        : "weld reaches past the steel by"))
                : Check.super.says(finding);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words(
                finding.partId().endsWith(NameId.of(SEAT))
                        ? "move the bracket along the tank, or take a shorter seat or pad"
                        : "move the bracket onto the steel, or put a longer or wider plate under it; what is there but not drawn"
                                + " goes under frame: members");
    }

    /** Whether this check or the one of the bolts' edges could not tell what is behind the bracket of a joint. */
    public static boolean untold(List<Finding> findings, String joint) {
        return findings.stream()
                .filter(f -> f.verdict() == Verdict.NOT_CHECKED)
                .filter(f -> f.isOf(ID) || f.isOf(BoltEdgeCheck.ID))
                .anyMatch(f -> f.partId().equals(joint) || f.partId().equals(joint + NameId.of(SEAT)));
    }

    /** The same of an analysis that the checks were not made of. */
    public static boolean untold(Analysis analysis, String joint) {
        List<Finding> findings = new ArrayList<>(new SteelBehindCheck().run(analysis));
        findings.addAll(new BoltEdgeCheck().run(analysis));
        return untold(findings, joint);
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        List<Finding> all = new ArrayList<>();
        for (Fastening f : analysis.design().fastenings()) {
            FilletWeld weld = f.weld();
            Seat seat = f.seat();
            Finding behind = weld == null ? null : weld(make, analysis, f, weld);
            // where it sits on a round tank tells; what is between seat and lug is part of the bracket, if nothing else
            // is drawn
            if (behind != null && (seat == null || behind.verdict() != Verdict.NOT_CHECKED)) {
                all.add(behind);
            }
            if (seat != null) {
                all.add(seat(make, analysis, f, seat));
            }
        }
        return all;
    }

    private static Finding weld(Findings make, Analysis analysis, Fastening fastening, FilletWeld weld) {
        String name = fastening.joint();
        List<FilletWeld.Seam> seams = weld.seams();
        Foot foot = Foot.of(weld, seams, Foot.pin(analysis.design(), fastening));
        if (foot == null) {
            return make.cannot(name, "fastenings: weld.normal: seen from the side its plane is not edge-on");
        }
        DrawnSteel.Behind behind = DrawnSteel.behind(analysis, fastening, "weld", foot);
        if (!behind.why().isEmpty()) {
            return make.untold(name, Text.words(behind.why()), behind.missing());
        }
        double past = 0;
        for (FilletWeld.Seam seam : seams) {
            past = Math.max(past, behind.faces().past(seam.from(), seam.to()));
        }
        return found(
                make,
                name,
                past,
                Text.words("in line with it: " + behind.faces().names()));
    }

    private static Finding found(Findings make, String part, double past, Text note) {
        return make.compare(part, past, SteelFaces.GAP, 1, Kind.LENGTH, Extreme.NOWHERE, note);
    }

    private static Finding seat(Findings make, Analysis analysis, Fastening fastening, Seat seat) {
        String name = fastening.joint() + SEAT;
        if (!(analysis.design().tank().interior() instanceof CylinderInterior tank)) {
            return make.cannot(name, "a seat is looked at on a round tank");
        }
        double along;
        try {
            along = SeatWall.Place.of(tank, tank.diameter() / 2, seat).along();
        } catch (OutOfRangeException e) {
            return make.cannot(name, e.reason());
        }
        Seat.Pad pad = seat.pad();
        double half = (pad == null ? seat.along() : Math.max(seat.along(), pad.along())) / 2;
        double past = SteelFaces.rounded(Math.max(0, Math.abs(along) + half - tank.length() / 2));
        return found(
                make,
                name,
                past,
                Text.of("with the straight wall {} long", Text.amount(tank.length(), Kind.LENGTH, "mm", 0)));
    }
}
