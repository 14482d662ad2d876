// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
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
}
