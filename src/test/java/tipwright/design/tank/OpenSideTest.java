// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tipwright.Swap;
import tipwright.analysis.Examples;
import tipwright.design.Design;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Contents;
import tipwright.load.EmptyTank;

/** An open side has no wall, and its rim is the lip. */
class OpenSideTest {
    private static final double DENSITY = 7850;
    private static final double WALL = 0.005;

    private static final String OPENING =
            "    - {name: open top, rim: rectangle, width: 1100 mm, height: 1800 mm, centre: [100 mm, 1150 mm, 0 mm], normal: y}\n";

    @Test
    void anOpenTopIsTheOpeningThatOneWouldDescribe() throws IOException {
        String text = Files.readString(Path.of("geometry/grit-hopper.yaml"));
        Design described = Examples.read(text);
        Design open = Examples.read(Swap.swap(text, OPENING, "", "tank:\n", "tank:\n  open: top\n"));
        Opening side = open.tank().openings().get(1);
        Opening told = described.tank().openings().get(0);
        for (int i = 0; i < 4; i++) {
            assertThat(side.rimPoints().get(i).minus(told.rimPoints().get(i)).norm())
                    .isLessThan(1e-12);
        }
        assertThat(side.outflow()).isEqualTo(told.outflow());
        assertThat(open.tank().open()).isNull();
        assertThat(empty(open).mass()).isCloseTo(empty(described).mass(), within(1e-9));
    }

    /** A box of 1.5 m by 0.7 m by 1 m: five walls, or six less the open one. */
    @ParameterizedTest
    @EnumSource(Tank.Open.class)
    void theWallOfAnOpenSideIsNotWeighed(Tank.Open side) throws IOException {
        Vec3 size = new Vec3(1.5, 0.7, 1.0);
        double all = 2 * (1.5 * 0.7 + 0.7 * 1.0 + 1.5 * 1.0);
        double away = side == Tank.Open.TOP ? 1.5 * 1.0 : 0.7 * 1.0;
        Tank tank = tank(new BoxInterior(size, Vec3.ZERO), side, Tank.Sizes.INSIDE);
        assertThat(empty(with(tank)).mass()).isCloseTo((all - away) * WALL * DENSITY, within(1e-9));
    }

    /** Outside sizes: both side walls come off, but of top and floor only the floor. */
    @Test
    void outsideSizesHaveNoWallAtTheOpenSide() throws IOException {
        Tank tank = tank(new BoxInterior(new Vec3(1.5, 0.7, 1.0), Vec3.ZERO), Tank.Open.TOP, Tank.Sizes.OUTSIDE);
        BoxInterior inside = (BoxInterior) tank.interior();
        assertThat(inside.size().minus(new Vec3(1.49, 0.695, 0.99)).norm()).isLessThan(1e-12);
        assertThat(inside.centre().y() + inside.size().y() / 2).isCloseTo(0.35, within(1e-12));
        assertThat(tank.openings().get(0).lip(new Vec3(0, 1, 0))).isCloseTo(0.35, within(1e-12));
        assertThat(tank)
                .isEqualTo(new Tank(
                        tank.interior(),
                        tank.wall(),
                        null,
                        List.of(),
                        tank.openings(),
                        null,
                        List.of(),
                        tank.sizes(),
                        List.of(),
                        null,
                        tank.open()));
    }

    /**
     * A rim that the tape shows 10 mm out of level is open all the same: the slanting side has no wall, and its corners are the rim.
     * Outside, the sides stand straight, so the rim's corners lie 5 mm farther in. Own sum.
     */
    @Test
    void aRimThatIsALittleOutOfLevelIsOpen() {
        List<Vec2> outside = List.of(new Vec2(0, 0), new Vec2(1, 0), new Vec2(1, 0.6), new Vec2(0, 0.61));
        Tank tank = tank(new PrismInterior(outside, 0.8, 0), Tank.Open.TOP, Tank.Sizes.OUTSIDE);
        PrismInterior inside = (PrismInterior) tank.interior();
        assertThat(inside.width()).isCloseTo(0.79, within(1e-12));
        List<Vec3> rim = tank.openings().get(0).rimPoints();
        double[] xs = {0.995, 0.005, 0.005, 0.995};
        for (int i = 0; i < 4; i++) {
            assertThat(rim.get(i).x()).isCloseTo(xs[i], within(1e-12));
            assertThat(rim.get(i).y()).isCloseTo(0.61 - 0.01 * xs[i], within(1e-12));
            assertThat(Math.abs(rim.get(i).z())).isCloseTo(0.395, within(1e-12));
        }
        assertThat(inside.outline().get(0).minus(new Vec2(0.005, 0.005)).norm()).isLessThan(1e-12);
    }

    /** Nothing at the top of a ridge faces up; what is open there cannot be told. */
    @Test
    void aRidgeHasNoOpenTop() {
        List<Vec2> ridge = List.of(new Vec2(0, 0), new Vec2(1, 0), new Vec2(0.5, 0.6));
        assertThat(new PrismInterior(ridge, 0.8, 0).open(Tank.Open.TOP)).isNull();
    }

    private static Tank tank(Interior interior, Tank.Open side, Tank.Sizes sizes) {
        return new Tank(
                interior,
                new Wall(WALL, DENSITY, 235e6, null, null),
                null,
                List.of(),
                List.of(),
                null,
                List.of(),
                sizes,
                List.of(),
                null,
                side);
    }

    private static Design with(Tank tank) throws IOException {
        Design any = Examples.read(Files.readString(Path.of("geometry/grit-hopper.yaml")));
        return tipwright.design.key.Copy.with(any, "tank", tank);
    }

    private static EmptyTank empty(Design design) {
        return EmptyTank.of(design, new Contents(design).solid());
    }
}
