// SPDX-License-Identifier: Apache-2.0
package tipwright.design.actuator;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A single-acting telescopic cylinder. The widest stage goes out first, as it needs the least pressure, and comes in last.
 * Source: common practice, no source.
 *
 * @param stages from the widest to the narrowest
 * @param closed pin to pin when all stages are in, m
 * @param reliefPressure Pa
 * @param flow of the pump, m3/s
 * @param yield of the stages' steel, Pa
 * @param modulus Young's modulus, Pa
 */
@Choice("telescopic")
public record TelescopicCylinder(
        @Note("The stages, widest first") @Counted(atLeast = 2, atMost = 8) List<Stage> stages,
        @Note("Pin to pin when closed") @Measured(value = Kind.LENGTH, above = "0 mm") double closed,
        @Note("What the relief valve is set to") @Measured(value = Kind.PRESSURE, above = "0 bar")
                double reliefPressure,
        @Note("Of the pump") @Measured(value = Kind.FLOW, above = "0 L/min") @Nullable Double flow,
        @Note("Rated force at rest") @Measured(value = Kind.FORCE, above = "0 N") @Nullable Double hold,
        @Note(
                        "The narrowest stage as a rod over the whole length: buckling on the safe side, without the stages' bores")
                @Nullable
                Rod rod,
        @Note("Yield strength of the stages' steel")
                @Measured(value = Kind.PRESSURE, preset = "355 MPa", above = "0 Pa")
                double yield,
        @Note("Young's modulus; 205 GPa for steel") @Measured(value = Kind.PRESSURE, preset = "205 GPa", above = "0 Pa")
                double modulus,
        @Note("The body, to check buckling") @Nullable Tube tube,
        @Note("Share of the time that it may run")
                @Measured(value = Kind.RATIO, above = "0 %", atMost = "100 %")
                @Nullable
                Double duty,
        @Note("Efficiency: how much of the rated force reaches the rod")
                @Measured(value = Kind.RATIO, preset = "95 %", above = "0 %", atMost = "100 %")
                double efficiency,
        @Note("Price, in any currency, number only") @Nullable Double price)
        implements Actuator, Cylinder {
    /**
     * A stage.
     *
     * @param diameter that the oil pushes on, m
     * @param stroke m
     * @param bore inside diameter of its tube, m; 0: solid; null: not known
     */
    public record Stage(
            @Note("Diameter that the oil pushes on") @Measured(value = Kind.LENGTH, above = "0 mm") double diameter,
            @Note("How far it goes out of the one before") @Measured(value = Kind.LENGTH, above = "0 mm") double stroke,
            @Note("Inside diameter of its tube, 0 mm when solid: to check buckling stage by stage")
                    @Measured(value = Kind.LENGTH, atLeast = "0 mm")
                    @Nullable
                    Double bore) {
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

    /**
     * A part of the cylinder as a column.
     *
     * @param length m
     * @param outside diameter, m
     * @param inside diameter, m
     */
    public record Part(double length, double outside, double inside) {
        /** Cross-section, m2. */
        public double area() {
            return Math.PI * (outside * outside - inside * inside) / 4;
        }

        /** Second moment of area, m4. */
        public double inertia() {
            return Math.PI * (Math.pow(outside, 4) - Math.pow(inside, 4)) / 64;
        }
    }

    /**
     * What stands in line between the pins at a length in m: the body, then each stage as far as it is out, then the eye with the
     * section of the narrowest stage. Without a body the first stage is taken in its place. Empty when the bore of a stage is not
     * known.
     */
    public List<Part> column(double length) {
        List<Part> parts = new ArrayList<>();
        double out = length - closed;
        for (int i = 0; i < stages.size(); i++) {
            Stage s = stages.get(i);
            if (s.bore() == null) {
                return List.of();
            }
            if (parts.isEmpty()) {
                parts.add(tube == null ? new Part(closed, s.diameter(), s.bore()) : body(tube));
            }
            boolean last = i == stages.size() - 1;
            double eye = last && tube != null ? closed - tube.length() : 0;
            double part = eye + (last ? Math.max(0, out) : Math.min(Math.max(0, out), s.stroke()));
            if (part > 0) {
                parts.add(new Part(part, s.diameter(), s.bore()));
            }
            out -= s.stroke();
        }
        return parts;
    }

    private static Part body(Tube tube) {
        return new Part(tube.length(), tube.outside(), tube.inside());
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
    public String noun() {
        return "telescopic cylinder";
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
