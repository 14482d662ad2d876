// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.HydraulicActuator;
import tipwright.design.actuator.Rod;
import tipwright.design.actuator.TelescopicCylinder;
import tipwright.design.actuator.Tube;
import tipwright.quantity.Kind;

/** An actuator's parts must fit into each other; in the design or in a parts file. */
final class ActuatorRules {
    private final Bound.Found<? extends Actuator> found;
    private final Problems problems;

    private ActuatorRules(Bound.Found<? extends Actuator> found, Problems problems) {
        this.found = found;
        this.problems = problems;
    }

    static void check(Facts facts) {
        for (Bound.Found<ElectricActuator> electric : facts.bound().all(ElectricActuator.class)) {
            ActuatorRules rules = new ActuatorRules(electric, facts.problems());
            rules.rodAndTube();
            rules.electric(electric.value());
        }
        for (Bound.Found<HydraulicActuator> hydraulic : facts.bound().all(HydraulicActuator.class)) {
            ActuatorRules rules = new ActuatorRules(hydraulic, facts.problems());
            rules.rodAndTube();
            rules.hydraulic(hydraulic.value());
        }
        for (Bound.Found<TelescopicCylinder> telescopic : facts.bound().all(TelescopicCylinder.class)) {
            ActuatorRules rules = new ActuatorRules(telescopic, facts.problems());
            rules.rodAndTube();
            rules.telescopic(telescopic.value());
        }
    }

    private void telescopic(TelescopicCylinder it) {
        bores(it);
        for (int i = 1; i < it.stages().size(); i++) {
            if (it.stages().get(i).diameter() >= it.stages().get(i - 1).diameter()) {
                wrong(
                        Paths.item("stages", i + 1) + ".diameter",
                        "must be less than that of the stage before ("
                                + length(it.stages().get(i - 1).diameter()) + "); list the widest stage first");
            }
        }
    }

    /** Each stage has a wall and goes into the one before, the widest into the body. */
    private void bores(TelescopicCylinder it) {
        Double around = it.tube() == null || !(it.tube().inside() > 0)
                ? null
                : it.tube().inside();
        for (int i = 0; i < it.stages().size(); i++) {
            TelescopicCylinder.Stage stage = it.stages().get(i);
            String path = Paths.item("stages", i + 1);
            if (around != null && stage.diameter() > around) {
                wrong(path + ".diameter", "does not go into what is around it (" + length(around) + " inside)");
            }
            around = stage.bore();
            if (around != null && around >= stage.diameter()) {
                wrong(path + ".bore", "must be less than the stage's diameter (" + length(stage.diameter()) + ")");
            }
        }
    }

    private void electric(ElectricActuator it) {
        if (it.speed() != null && it.speed().rated() > it.speed().noLoad()) {
            wrong(
                    "speed.rated",
                    "more than the no-load speed (" + Facts.say(it.speed().noLoad(), Kind.SPEED) + ")");
        }
        if (it.current() != null && it.current().rated() < it.current().noLoad()) {
            wrong(
                    "current.rated",
                    "less than the no-load current (" + Facts.say(it.current().noLoad(), Kind.CURRENT) + ")");
        }
    }

    private void hydraulic(HydraulicActuator it) {
        if (it.rod().diameter() >= it.bore()) {
            wrong("rod.diameter", "must be less than the bore (" + length(it.bore()) + ")");
        }
    }

    private void rodAndTube() {
        Actuator it = found.value();
        Rod rod = it.rod();
        Tube tube = it.tube();
        if (rod != null && rod.bore() >= rod.diameter()) {
            wrong("rod.bore", "must be less than the rod's diameter (" + length(rod.diameter()) + ")");
        }
        if (rod != null && rod.length() != null && rod.length() < strokeOfRod(it) * 0.999) {
            wrong("rod.length", "the rod is shorter than the stroke (" + length(strokeOfRod(it)) + ")");
        }
        if (tube != null && tube.inside() >= tube.outside()) {
            wrong("tube.inside", "must be less than the tube's outside (" + length(tube.outside()) + ")");
        } else if (tube != null && rod != null && tube.inside() > 0 && rod.diameter() > tube.inside()) {
            wrong("rod.diameter", "the rod does not go into the tube (" + length(tube.inside()) + " inside)");
        }
        if (tube != null && tube.length() >= it.closed()) {
            wrong("tube.length", "must be less than the closed length (" + length(it.closed()) + ")");
        }
    }

    private static double strokeOfRod(Actuator it) {
        return it instanceof TelescopicCylinder t
                ? t.stages().get(t.stages().size() - 1).stroke()
                : it.stroke();
    }

    private void wrong(String key, String message) {
        found.wrong(problems, key, message);
    }

    private static String length(double metres) {
        return Facts.say(metres, Kind.LENGTH);
    }
}
