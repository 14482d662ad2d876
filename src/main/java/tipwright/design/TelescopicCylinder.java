// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.quantity.Kind;

/**
 * A single-acting telescopic cylinder. The widest stage goes out first, as it needs the least pressure, and comes in last.
 * Source: common practice, no source.
 *
 * @param stages from the widest to the narrowest
 * @param closed pin to pin when all stages are in, m
 * @param reliefPressure Pa
 * @param flow of the pump, m3/s
 */
@Choice("telescopic")
public record TelescopicCylinder(
        @Note("The stages, widest first") @Counted(atLeast = 2, atMost = 8) List<Stage> stages,
        @Note("Pin to pin when drawn in") @Measured(value = Kind.LENGTH, above = "0 mm") double closed,
        @Note("What the relief valve is set to") @Measured(value = Kind.PRESSURE, above = "0 bar")
                double reliefPressure,
        @Note("Of the pump") @Measured(value = Kind.FLOW, above = "0 L/min") @Nullable Double flow,
        @Note("Rated force at rest") @Measured(value = Kind.FORCE, above = "0 N") @Nullable Double hold,
        @Note("The narrowest stage as a rod, to check buckling on the safe side") @Nullable Rod rod,
        @Note("The body, to check buckling") @Nullable Tube tube,
        @Note("Share of the time that it may run")
                @Measured(value = Kind.RATIO, above = "0 %", atMost = "100 %")
                @Nullable
                Double duty,
        @Note("Share of the rating that reaches the rod")
                @Measured(value = Kind.RATIO, preset = "95 %", above = "0 %", atMost = "100 %")
                double efficiency,
        @Note("In your own money, a plain number") @Nullable Double price)
        implements Actuator, Cylinder {
    /**
     * A stage.
     *
     * @param diameter that the oil pushes on, m
     * @param stroke m
     */
    public record Stage(
            @Note("Diameter that the oil pushes on") @Measured(value = Kind.LENGTH, above = "0 mm") double diameter,
            @Note("How far it goes out of the one before") @Measured(value = Kind.LENGTH, above = "0 mm")
                    double stroke) {
        /** m2. */
        public double area() {
            return Math.PI * diameter * diameter / 4;
        }
    }

    /** The stage that moves at a length in m. */
    public Stage moving(double length) {
        double end = closed;
        for (Stage s : stages) {
            end += s.stroke();
            if (length < end) {
                return s;
            }
        }
        return stages.get(stages.size() - 1);
    }

    @Override
    public double oilArea(double length, boolean out) {
        return out ? moving(length).area() : 0;
    }

    @Override
    public double stroke() {
        double sum = 0;
        for (Stage s : stages) {
            sum += s.stroke();
        }
        return sum;
    }

    @Override
    public double ratedPush() {
        return reliefPressure * stages.get(stages.size() - 1).area() * efficiency;
    }

    @Override
    public double ratedPush(double length) {
        return reliefPressure * moving(length).area() * efficiency;
    }

    @Override
    public double ratedPull() {
        return 0;
    }

    @Override
    public @Nullable Double ratedHold() {
        return hold;
    }
}
