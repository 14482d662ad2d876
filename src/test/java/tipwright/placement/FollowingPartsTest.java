// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tipwright.design.Design;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.drive.Assist;
import tipwright.design.drive.BellCrank;
import tipwright.design.drive.Counterweight;
import tipwright.design.drive.LinkPart;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;

/** What is drawn of links goes along with their pins; the crank cart has a crank of three pins and a link of two. */
class FollowingPartsTest {
    private static final double ROUNDED = 2e-4;

    private static Design cart() {
        return ((Reading.Good) DesignFile.shipped("crank-cart.yaml")).design();
    }

    /** Drawn on no mark of any tape: what follows is rounded to a tenth of a millimetre only. */
    private static Design offTheMarks() {
        return nudged(cart(), p -> new Vec2(p.x() + 0.00037, p.y() + 0.00041));
    }

    private static Design nudged(Design design, UnaryOperator<Vec2> by) {
        List<LinkPart> links = design.links().stream()
                .map(l -> new LinkPart(l.body(), l.outline().stream().map(by).toList(), l.z()))
                .toList();
        List<Assist> assists = design.assists().stream()
                .map(a -> a instanceof Counterweight w
                        ? (Assist) at(w, by.apply(w.centre().xy()))
                        : a)
                .toList();
        return design.withLinks(assists, links);
    }

    private static Counterweight at(Counterweight w, Vec2 at) {
        return new Counterweight(
                w.name(),
                w.body(),
                w.mass(),
                new Vec3(at.x(), at.y(), w.centre().z()));
    }

    /** What is drawn in whole millimetres, or in sixteenths of an inch, stays on such marks. */
    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void whatIsDrawnOnMarksOfTheTapeStaysOnThem(UnitSystem tape) {
        double step = Marks.step(tape);
        Design drawn = nudged(cart(), p -> new Vec2(Marks.rounded(p.x(), tape), Marks.rounded(p.y(), tape)));
        Design moved = moved(drawn, "link-pin", new Vec2(-0.0613, 0.0507));
        assertThat(moved.links()).isNotEqualTo(drawn.links());
        for (LinkPart link : moved.links()) {
            assertThat(link.outline()).allSatisfy(p -> {
                assertThat(p.x() / step).isCloseTo(Math.rint(p.x() / step), within(1e-6));
                assertThat(p.y() / step).isCloseTo(Math.rint(p.y() / step), within(1e-6));
            });
        }
    }

    @Test
    void nearMissesSpeakInTheMarksOfTheTape() {
        ListedActuator listed =
                new ListedActuator("it", cart().drive().actuators().get(0).actuator());
        double closed = listed.actuator().closed();
        double most = closed + listed.actuator().stroke() + 0.0301;
        assertThat(NearMiss.stroke(listed, closed + 0.1, most, 0, Marks.step(UnitSystem.METRIC))
                        .words())
                .isEqualTo("31 mm more stroke than it has");
        // 30.1 mm are 18.96 sixteenths
        assertThat(NearMiss.stroke(listed, closed + 0.1, most, 0, Marks.step(UnitSystem.US))
                        .words())
                .isEqualTo("1 3/16 in more stroke than it has");
    }

    private static Design moved(Design design, String pin, Vec2 by) {
        Vec2 drawn = design.drive().places(design.pivot().at()).get(pin);
        PlacedPoint seat = new PlacedPoint(pin, drawn, drawn.plus(by));
        return PlacedPoint.moved(
                design, List.of(seat), design.drive().actuators().get(0).actuator());
    }

    @Test
    void whatDoesNotHoldAMovedPinStaysAsItIs() {
        Design design = cart();
        Design moved = moved(design, "frame-pin", new Vec2(0.03, 0.02));
        assertThat(moved.links()).isEqualTo(design.links());
        assertThat(moved.assists()).isEqualTo(design.assists());
    }

    /** Distance to the line of the pins, and how far beyond a pin: as before, however long the link is now. */
    @Test
    void aLinkKeepsItsWidthAndItsEnds() {
        Design design = offTheMarks();
        Design moved = moved(design, "tank-pin", new Vec2(0.11, 0.09));
        BellCrank before = (BellCrank) design.drive();
        BellCrank after = (BellCrank) moved.drive();
        assertThat(moved.links().get(0)).isEqualTo(design.links().get(0));
        for (int part : new int[] {1, 2}) {
            LinkPart old = design.links().get(part);
            LinkPart fresh = moved.links().get(part);
            assertThat(fresh.z()).isEqualTo(old.z());
            for (int i = 0; i < old.outline().size(); i++) {
                double[] was = local(old.outline().get(i), before.linkPin(), before.tankPin());
                double[] is = local(fresh.outline().get(i), after.linkPin(), after.tankPin());
                assertThat(is[1]).isCloseTo(was[1], within(ROUNDED));
                double change = was[0] < was[2] / 2 ? 0 : is[2] - was[2];
                assertThat(is[0] - was[0]).isCloseTo(change, within(1e-3));
            }
        }
    }

    /** Along the line from the first pin, across it, and the distance of the pins, m. */
    private static double[] local(Vec2 p, Vec2 a, Vec2 b) {
        Vec2 along = b.minus(a).unit();
        return new double[] {
            p.minus(a).dot(along), along.cross(p.minus(a)), b.minus(a).norm()
        };
    }

    /** The shares of the three pins in a point stay the same. */
    @Test
    void aCrankGoesWithTheTriangleOfItsPins() {
        Design design = offTheMarks();
        Design moved = moved(design, "link-pin", new Vec2(-0.06, 0.05));
        Counterweight old = (Counterweight) design.assists().get(0);
        Counterweight fresh = (Counterweight) moved.assists().get(0);
        double[] was = shares(old.centre().xy(), (BellCrank) design.drive());
        double[] is = shares(fresh.centre().xy(), (BellCrank) moved.drive());
        assertThat(is).containsExactly(was, within(1e-3));
        assertThat(fresh.mass()).isEqualTo(old.mass());
    }

    private static double[] shares(Vec2 p, BellCrank crank) {
        Vec2 a = crank.crankPivot();
        Vec2 one = crank.linkPin().minus(a);
        Vec2 two = crank.rodPin().minus(a);
        double area = one.cross(two);
        return new double[] {p.minus(a).cross(two) / area, one.cross(p.minus(a)) / area};
    }

    /** The trailer's frame pin stands on a tube, its tank pin on a lug that is welded flat to the cradle's side. */
    @Test
    void whatHoldsAPinGoesAlong() {
        Design drawn = trailer();
        Design frame = moved(drawn, "frame-pin", new Vec2(0.07, -0.03));
        Fastening foot = fastening(frame, "frame-pin");
        assertThat(at(weld(foot))).isEqualTo("[290.0, -475.0, 0.0]");
        assertThat(foot.height()).isEqualTo(0.05);
        Vec2 member = frame.frame().crossMember().at();
        assertThat(at(new Vec3(member.x(), member.y(), 0))).isEqualTo("[290.0, -525.0, 0.0]");
        assertThat(fastening(frame, "tank-pin")).isEqualTo(fastening(drawn, "tank-pin"));

        Design tank = moved(drawn, "tank-pin", new Vec2(0.05, 0.02));
        Fastening lug = fastening(tank, "tank-pin");
        assertThat(at(weld(lug))).isEqualTo("[-20.0, 320.0, 0.0]");
        assertThat(at(lug.seat().at())).isEqualTo("[-20.0, 255.0, 0.0]");
        assertThat(tank.frame()).isEqualTo(drawn.frame());
    }

    /** On a plate that stays, the foot slides and the pin goes nearer or farther: also on a sloping one. */
    @Test
    void aPlateThatStaysKeepsTheFoot() {
        Fastening level = new Fastening(
                "tank-pin",
                null,
                new FilletWeld(new Vec3(1, 2, 0), new Vec3(0, 1, 0), 0.006, 5e8, null, null, null, List.of()),
                null,
                null,
                null,
                null,
                0.08);
        Fastening down = level.following(new Vec2(1, 1.92), new Vec2(0.1, -0.03), false, Vec3.ZERO);
        assertThat(at(weld(down))).isEqualTo("[1100.0, 2000.0, 0.0]");
        assertThat(down.height()).isCloseTo(0.11, within(1e-12));
        assertThat(level.following(new Vec2(1, 2.08), new Vec2(0.1, -0.03), false, Vec3.ZERO)
                        .height())
                .isCloseTo(0.05, within(1e-12));

        Fastening slope = new Fastening(
                "tank-pin",
                null,
                new FilletWeld(Vec3.ZERO, new Vec3(1, 1, 0), 0.006, 5e8, null, null, null, List.of()),
                null,
                null,
                null,
                null,
                0.08);
        Fastening slid = slope.following(new Vec2(0.05, 0.05), new Vec2(0.04, 0), false, Vec3.ZERO);
        assertThat(at(weld(slid))).isEqualTo("[20.0, -20.0, 0.0]");
        assertThat(slid.height()).isCloseTo(0.08 + 0.04 / Math.sqrt(2), within(1e-12));
    }

    @Test
    void boltsOfTheBearingsSlideWithThePivot() {
        Design drawn = trailer();
        Design moved = moved(drawn, "pivot", new Vec2(-0.04, 0.05));
        for (String bearing : List.of("bearing-1", "bearing-2")) {
            Vec3 before = fastening(drawn, bearing).bolts().at();
            assertThat(fastening(moved, bearing)
                            .bolts()
                            .at()
                            .minus(before)
                            .minus(new Vec3(-0.04, 0, 0))
                            .norm())
                    .isLessThan(1e-12);
        }
    }

    private static Design trailer() {
        return ((Reading.Good) DesignFile.shipped("silt-trailer.yaml")).design();
    }

    private static Fastening fastening(Design design, String joint) {
        return design.fastenings().stream()
                .filter(f -> f.joint().equals(joint))
                .findFirst()
                .orElseThrow();
    }

    private static Vec3 weld(Fastening f) {
        return Objects.requireNonNull(f.weld()).at();
    }

    /** In tenths of a millimetre. */
    private static String at(Vec3 p) {
        return "[" + mm(p.x()) + ", " + mm(p.y()) + ", " + mm(p.z()) + "]";
    }

    private static double mm(double m) {
        return Math.rint(m * 1e4) / 10 + 0.0;
    }
}
