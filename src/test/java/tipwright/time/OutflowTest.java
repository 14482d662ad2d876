// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import org.hipparchus.ode.events.Action;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Examples;
import tipwright.design.Design;
import tipwright.geometry.Vec3;
import tipwright.load.Contents;

/** A box of 1 m2 that drains while it stands still, against the textbook integrals. */
class OutflowTest {
    private static final double ROOT = Math.sqrt(2 * 9.80665);

    private static Design box(String opening, String tank) {
        String yaml = swap(
                Examples.BOX.replaceAll("\\{name: top.*", opening),
                "  openings:",
                tank + "  openings:",
                "pull: 12 kN",
                "pull: 12 kN, speed: {no-load: 9 mm/s, rated: 6 mm/s}");
        return Examples.read(yaml);
    }

    /** Time from full to a volume left, m3, at tilt 0. */
    private static double drain(Design design, double left) throws Exception {
        LinkageCurve curve = LinkageCurve.of(Simple.analysis(design));
        Outlet outlet = new Outlet(design.tank(), design.slurry().mixtureDensity());
        Liquid liquid = new Liquid(design, new Contents(design), curve, outlet);
        Effort effort = new Effort(Effort.MOST);
        Leg leg = new Leg(Machines.of(design), curve, effort, liquid, Moment.Phase.HOLD);
        double[] y = new double[Leg.SIZE];
        y[Leg.VOLUME] = liquid.start();
        Watch end = new Watch(v -> v[Leg.VOLUME] - left, false, 10, (t, v) -> Action.STOP, effort);
        return leg.run(new Leg.State(0, y), 1e-9, 1e4, List.of(end)).time();
    }

    /**
     * t = 2 A (sqrt h1 - sqrt h2) / (Cd a sqrt(2 g)): 50 mm hole in 1 m2, Cd 0.62, from 1 m to 0.25 m in 185.483 s. Source: falling
     * head through an orifice, any text on hydraulics (from memory), recomputed. The hole is a square of the same area.
     */
    @Test
    void fallingHeadThroughAnOrifice() throws Exception {
        Design design = box(
                "{name: hole, rim: rectangle, width: 44.31134627 mm, height: 44.31134627 mm, centre: [0 m, 0.5 m, 0 m], normal: [0, -1, 0]}",
                "");
        assertThat(drain(design, 0.25)).isCloseTo(185.483, within(185.483 * 1e-5));
        assertThat(drain(design, 1e-6)).isCloseTo(370.965 * (1 - 1e-3), within(370.965 * 2e-5));
    }

    /** t = 2 A (1/sqrt h2 - 1/sqrt h1) / k, Q = k h^1.5, k = 2/3 Cd sqrt(2g) b. Source: drawdown over a weir (from memory). */
    @Test
    void fallingHeadOverAWeir() throws Exception {
        Design design = box(
                "{name: notch, rim: rectangle, width: 200 mm, height: 400 mm, centre: [0.5 m, 1.3 m, 0 m], normal: x}",
                "");
        double k = 2.0 / 3 * 0.62 * ROOT * 0.2;
        double expected = 2 / k * (1 / Math.sqrt(0.05) - 1 / Math.sqrt(0.4));
        assertThat(drain(design, 0.65)).isCloseTo(expected, within(1e-5 * expected));
    }

    /** Thick slurry at half the flow takes twice the time; a rounded edge runs faster as the coefficient. */
    @Test
    void factorsScaleTheTime() throws Exception {
        String notch =
                "{name: notch, rim: rectangle, width: 200 mm, height: 400 mm, centre: [0.5 m, 1.3 m, 0 m], normal: x";
        double plain = drain(box(notch + "}", ""), 0.65);
        double thick = drain(box(notch + ", outflow: {slurry-factor: 50 %}}", ""), 0.65);
        double round = drain(box(notch + ", outflow: {coefficient: 0.93}}", ""), 0.65);
        assertThat(thick).isCloseTo(2 * plain, within(1e-5 * plain));
        assertThat(round).isCloseTo(plain * 0.62 / 0.93, within(1e-5 * plain));
    }

    /**
     * Drowned hole and vent in series: Q2 = 2 g h / (1/(Cd a)2 + rho_air/rho_slurry/(Cv av)2), so the time grows by the root of
     * that. Source: two orifices in series, worked out here.
     */
    @ParameterizedTest
    @ValueSource(strings = {"2 mm", "5 mm", "20 mm"})
    void ventSlowsADrownedOutlet(String vent) throws Exception {
        String hole =
                "{name: hole, rim: rectangle, width: 50 mm, height: 50 mm, centre: [0 m, 0.5 m, 0 m], normal: [0, -1, 0]}";
        double free = drain(box(hole, ""), 0.25);
        double vented = drain(box(hole, "  vent: {diameter: " + vent + "}\n"), 0.25);
        double d = Double.parseDouble(swap(vent, " mm", "")) / 1000;
        double way = 0.62 * 0.05 * 0.05;
        double air = 0.62 * Math.PI * d * d / 4;
        double slower = Math.sqrt(1 + way * way * 1.20 / 1400 / (air * air));
        assertThat(vented).isCloseTo(free * slower, within(1e-5 * free * slower));
    }

    @Test
    void closedTankWithoutVentDoesNotRun() {
        Design design = box(
                "{name: hole, rim: rectangle, width: 50 mm, height: 50 mm, centre: [0 m, 0.5 m, 0 m], normal: [0, -1, 0]}",
                "  vent: {diameter: 0 mm}\n");
        Outlet outlet = new Outlet(design.tank(), 1400);
        Outlet.Flow flow = outlet.at(0, new Vec3(0, 1, 0), 1.5);
        assertThat(flow.rate()).isZero();
        // the vacuum that holds the column: rho g h
        assertThat(flow.vacuum()).isCloseTo(1400 * 9.80665 * 1.0, within(1e-6));
    }

    /** A sliver of the door above the slurry lets in next to no air: hardly any flow, and never more vacuum than the column makes. */
    @Test
    void vacuumIsNeverMoreThanTheColumn() {
        Design design = box(
                "{name: door, rim: rectangle, width: 400 mm, height: 400 mm, centre: [0.5 m, 1.2 m, 0 m], normal: x}",
                "  vent: {diameter: 0 mm}\n");
        Outlet outlet = new Outlet(design.tank(), 1400);
        Vec3 up = new Vec3(0, 1, 0);
        for (double sliver : new double[] {1e-12, 1e-9, 1e-6, 1e-3, 0.1}) {
            Outlet.Flow flow = outlet.at(0, up, 1.4 - sliver);
            assertThat(flow.vacuum()).isBetween(0.0, 1400 * 9.80665 * 0.4);
            // air in = slurry out
            double air = 0.62 * 0.4 * sliver * Math.sqrt(2 * flow.vacuum() / 1.20);
            assertThat(flow.rate()).isCloseTo(air, within(1e-3 * air + 1e-9));
        }
    }
}
