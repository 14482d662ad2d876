// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.design.Design;
import tipwright.design.drive.Anchor;
import tipwright.design.drive.Assist;
import tipwright.design.drive.Counterweight;
import tipwright.design.drive.LineSpring;
import tipwright.design.drive.TiltRange;
import tipwright.design.drive.TorsionSpring;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.tank.Cases;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Gravity;

/** The actuator's work is the rise of all potential energy: tank, links, springs. Source: conservation of energy. */
class AssistEnergyTest {
    /** Springs of every kind and a weight, as a builder would write them. */
    private static final String ASSISTS =
            """
            assists:
              - {kind: gas-spring, name: gas, from: {body: frame, at: [-200 mm, -400 mm]}, to: {body: tank, at: [-100 mm, 250 mm]},
                 extended: 1400 mm, stroke: 900 mm, force: 1500 N, compressed-force: 2300 N, friction: 90 N, z: 100 mm}
              - {kind: extension-spring, name: pull, from: {body: tank, at: [600 mm, 300 mm]}, to: {body: BODY, at: [-300 mm, -100 mm]},
                 free: 400 mm, rate: 2 N/mm, tension: 150 N, longest: 3 m, z: -200 mm}
              - {kind: torsion-spring, name: turn, pin: PIN, moment: 300 N m, rate: 250 N m/rad, both-legs-fixed: true}
              - {kind: counterweight, name: weight, body: tank, mass: 20 kg, centre: [-200 mm, 300 mm, 0 mm]}
            """;

    private static Design read(String name) {
        if (DesignFile.read(Path.of("geometry", name + ".yaml")) instanceof Reading.Good good) {
            return good.design();
        }
        throw new AssertionError(name);
    }

    private static Design with(String name, String assists) throws IOException {
        String text = Files.readString(Path.of("geometry", name + ".yaml")).replaceAll("(?m)^assists:(\\n  .*)*", "");
        return Examples.read(text + "\n" + assists);
    }

    @ParameterizedTest
    @CsvSource({
        "silt-trailer, frame, pivot",
        "crank-cart, crank, link-pin",
        "knee-stand, upper, knee",
        "rail-pusher, carriage, slider-pin",
        "slide-back, base, tie-tank-pin",
        "kerb-swing, second, main-tank-pin",
        "six-link, crank, crank-link"
    })
    void workIsTheRiseOfEnergyInTankLinksAndSprings(String name, String body, String pin)
            throws CannotComputeException, IOException {
        String weight =
                "  - {kind: counterweight, name: more, body: BODY, mass: 60 kg, centre: [-400 mm, -200 mm, 100 mm]}\n";
        String text = swap((ASSISTS + (body.equals("frame") ? "" : weight)), "BODY", body, "PIN", pin);
        Design design = with(name, text)
                .withCases(new Cases(
                        List.of("held", "draining", "heaped", "caked", "heel", "settled", "slid"), List.of()));
        List<Assist> assists = design.assists();
        TiltRange t = design.tilt();
        Analysis analysis = Analyser.analyse(design.withTilt(new TiltRange(t.from(), t.to(), t.step() / 4)));
        assertThat(analysis.cases()).hasSize(1);
        // Simpson's rule wants even steps: the tilts beside a change are left out
        List<Row> rows = analysis.cases().get(0).rows().stream()
                .filter(r -> {
                    double steps = (r.tilt() - t.from()) / (t.step() / 4);
                    return Math.abs(steps - Math.rint(steps)) < 1e-9 || r.tilt() == t.to();
                })
                .toList();
        double work = 0;
        double gross = 0;
        for (int k = 2; k < rows.size(); k += 2) {
            double h = (rows.get(k).tilt() - rows.get(k - 2).tilt()) / 6;
            double part = h * (power(rows.get(k - 2)) + 4 * power(rows.get(k - 1)) + power(rows.get(k)));
            work += part;
            gross += Math.abs(part);
        }
        Row last = rows.get((rows.size() - 1) / 2 * 2);
        double rise = energy(analysis, assists, last) - energy(analysis, assists, rows.get(0));
        assertThat(work).isCloseTo(rise, within(1e-6 * gross));
        assertThat(gross).isGreaterThan(100);
    }

    @ParameterizedTest
    @CsvSource({"crank-cart", "knee-stand", "rail-pusher", "slide-back", "kerb-swing", "six-link", "twin-rams"})
    void frictionBrakesBothWays(String name) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(read(name));
        for (CaseResult result : analysis.cases()) {
            for (Row row : result.rows()) {
                double arm = row.pose().arm();
                assertThat(row.raise().force() * arm)
                        .isGreaterThanOrEqualTo(row.rest().force() * arm);
                assertThat(row.lower().force() * arm)
                        .isLessThanOrEqualTo(row.rest().force() * arm);
            }
        }
    }

    private static double power(Row row) {
        return row.rest().force() * row.pose().arm();
    }

    private static double energy(Analysis analysis, List<Assist> assists, Row row) {
        Vec3 up = analysis.design().site().up();
        double sum = row.load().mass() * Gravity.G * up.dot(row.centroid());
        for (Assist assist : assists) {
            if (assist instanceof LineSpring line) {
                Vec2 span = place(analysis, row, line.to()).minus(place(analysis, row, line.from()));
                sum += line.energy(span.norm());
            } else if (assist instanceof TorsionSpring torsion) {
                for (JointPlan j : analysis.mechanism().joints()) {
                    if (j.name().equals(torsion.pin())) {
                        sum += torsion.energy(row.pose().bodies().get(j.b()).turn()
                                - row.pose().bodies().get(j.a()).turn());
                    }
                }
            } else if (assist instanceof Counterweight weight) {
                Vec2 at = place(
                        analysis, row, new Anchor(weight.body(), weight.centre().xy()));
                sum += weight.mass()
                        * Gravity.G
                        * up.dot(new Vec3(at.x(), at.y(), weight.centre().z()));
            }
        }
        return sum;
    }

    private static Vec2 place(Analysis analysis, Row row, Anchor anchor) {
        int body = analysis.mechanism().bodies().indexOf(anchor.body());
        return row.pose().bodies().get(body).place(anchor.at());
    }
}
