// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.joint.Fastening;
import tipwright.geometry.Vec3;
import tipwright.load.Gravity;

/** Bearings that sit on a base which slides, not on the frame: what their bolts and the tank's wall over them take. */
class BearingsOnABaseTest {
    private static Analysis analysis;

    @BeforeAll
    static void analyse() throws Exception {
        Reading reading = DesignFile.shipped("slide-back.yaml");
        analysis = Analyser.analyse(((Reading.Good) reading).design());
    }

    /** Force of a joint's fastening at a row, at rest, turned from its body's axes into space, N. */
    private static Vec3 inSpace(String joint, boolean onTank, Row row) {
        Fastening fastening = analysis.design().fastenings().stream()
                .filter(f -> f.joint().equals(joint) && "tank".equals(f.on()) == onTank)
                .findFirst()
                .orElseThrow();
        JointLoad load = Objects.requireNonNull(JointLoad.of(analysis, fastening, 0));
        assertThat(load.onTank()).isEqualTo(onTank);
        Vec3 own = load.at(row.pose(), row.rest()).force();
        return onTank ? own.tilted(row.tilt()) : own;
    }

    /** What presses the bolts' base down holds the tank up. */
    @Test
    void theBoltsTakeTheOppositeOfTheWall() {
        for (CaseResult load : analysis.cases()) {
            for (Row row : load.rows()) {
                for (String joint : Fastening.BEARINGS) {
                    Vec3 base = inSpace(joint, false, row);
                    assertThat(base.plus(inSpace(joint, true, row)).norm()).isLessThan(1e-9 * base.norm());
                }
                double down = inSpace("bearing-1", false, row).y()
                        + inSpace("bearing-2", false, row).y();
                assertThat(down).as("%s at %s rad", load.name(), row.tilt()).isLessThan(0);
            }
        }
    }

    /** Newton's first law for the tank: its weight, both bearings and the tie come to nothing. */
    @Test
    void theTankIsInBalance() {
        Vec3 up = analysis.design().site().up();
        for (CaseResult load : analysis.cases()) {
            for (Row row : load.rows()) {
                Vec3 held = inSpace("bearing-1", true, row)
                        .plus(inSpace("bearing-2", true, row))
                        .plus(inSpace("tie-tank-pin", true, row));
                double weight = row.load().mass() * Gravity.G;
                assertThat(held.x()).isCloseTo(weight * up.x(), within(1e-6 * weight));
                assertThat(held.y()).isCloseTo(weight * up.y(), within(1e-6 * weight));
            }
        }
    }
}
