// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.key.Annotated;
import tipwright.design.tank.Slurry;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;

/**
 * What the job is: the tank, what is in it, how far it tips and by what.
 *
 * @param units that numbers are shown in
 */
public record Job(Design design, UnitSystem units) {
    /** One sentence. */
    public String sentence() {
        Slurry slurry = design.slurry();
        double inside = design.tank().interior().solid().whole().volume();
        double volume = slurry.volumeIn(inside);
        double density = slurry.mixtureDensity();
        return "A tank of " + show(inside, Kind.VOLUME) + " ("
                + shape() + ") with "
                + show(volume, Kind.VOLUME) + " of slurry in it (" + show(volume * density, Kind.MASS) + " at "
                + show(density, Kind.DENSITY) + ") tilts from "
                + Scale.angle().show(design.tilt().from()) + " to "
                + Scale.angle().show(design.tilt().to()) + ", moved by " + actuators() + way() + ".";
    }

    /** As a shop would call it. */
    private String shape() {
        String word = Annotated.of(design.tank().interior().getClass()).word();
        return switch (word) {
            case "prism" -> "straight walls";
            case "mesh" -> "shape from a mesh file";
            default -> word;
        };
    }

    private String actuators() {
        Map<String, Integer> count = new LinkedHashMap<>();
        for (PlacedActuator placed : design.drive().actuators()) {
            count.merge(placed.actuator().noun(), 1, Integer::sum);
        }
        List<String> words = new ArrayList<>();
        count.forEach((noun, n) -> words.add(n == 1 ? "one " + noun : (n == 2 ? "two " : n + " ") + noun + "s"));
        return Prose.and(words);
    }

    /** How what drives it reaches the tank. */
    private String way() {
        String word = Annotated.of(design.drive().getClass()).word();
        return switch (word) {
            case "straight" -> ", straight from frame to tank";
            case "free" -> " through a linkage of your own";
            default -> " through a " + word + " linkage";
        };
    }

    private String show(double si, Kind kind) {
        return Quantities.show(si, kind, units);
    }
}
