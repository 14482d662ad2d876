// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import java.util.Optional;
import java.util.stream.Collectors;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.Row;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.Rod;
import tipwright.design.actuator.TelescopicCylinder;
import tipwright.design.actuator.Tube;
import tipwright.design.drive.LinkSection;
import tipwright.design.joint.PinJoint;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Gravity;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.strength.Column;
import tipwright.strength.EquivalentLoad;
import tipwright.strength.PinStress;

/** Puts the numbers of a finding into its check's formula, in words for a reader who checks by hand. */
public final class WorkedFormula {
    private final Analysis analysis;
    private final Finding finding;
    private final UnitSystem units;

    public WorkedFormula(Analysis analysis, Finding finding, UnitSystem units) {
        this.analysis = analysis;
        this.finding = finding;
        this.units = units;
    }

    /** A value in the reader's units, with its decimals, since people reckon with it. */
    public String show(double si, Kind kind) {
        return kind == Kind.LENGTH
                ? Quantities.show(si, Quantities.unit(kind, units))
                : Quantities.show(si, kind, units);
    }

    private Optional<Row> row() {
        return Optional.ofNullable(finding.worst().row(analysis.cases()));
    }

    /** The balance where the finding is worst. */
    public Optional<Balance> balance() {
        return Optional.ofNullable(finding.worst().balance(analysis.cases()));
    }

    /** The force of a straight drive from weight, lever and arm. */
    public String force() {
        return row().map(this::force).orElse("");
    }

    private String force(Row row) {
        double weight = row.load().mass() * Gravity.G;
        double arm = row.pose().arm();
        String rest = show(Math.abs(row.rest().force()), Kind.FORCE) + " at rest, "
                + show(Math.abs(row.raise().force()), Kind.FORCE) + " raising, "
                + show(Math.abs(row.lower().force()), Kind.FORCE) + " lowering";
        String head = "weight " + show(row.load().mass(), Kind.MASS) + " x 9.80665 m/s2 = " + show(weight, Kind.FORCE)
                + "; arm dL/dtilt = " + show(arm, Kind.LENGTH);
        if (!analysis.design().drive().direct()) {
            return head + "; " + rest;
        }
        Vec3 up = analysis.design().site().up();
        Vec2 pivot = analysis.design().pivot().at();
        double lever = up.y() * (pivot.x() - row.centroid().x())
                + up.x() * (row.centroid().y() - pivot.y());
        return head + "; its lever about the pivot " + show(lever, Kind.LENGTH) + ": "
                + show(weight, Kind.FORCE) + " x " + show(lever, Kind.LENGTH) + " / " + show(arm, Kind.LENGTH) + " = "
                + show(weight * lever / arm, Kind.FORCE) + "; " + rest;
    }

    /** Radial and axial load of a bearing and what follows. */
    public String bearing(int index) {
        return balance()
                .map(b -> {
                    Vec3 load = b.bearings().get(index);
                    return "Fr = " + show(load.xy().norm(), Kind.FORCE) + ", Fa = "
                            + show(Math.abs(load.z()), Kind.FORCE) + "; P0 = max(0.6 Fr + 0.5 Fa, Fr) = "
                            + show(EquivalentLoad.ofRest(load.xy().norm(), Math.abs(load.z())), Kind.FORCE)
                            + "; s0 = C0 / P0 = " + Quantities.number(finding.capacity() / finding.demand());
                })
                .orElse("");
    }

    /** Load on the projected area of a bush. */
    public String bush(int index, double bore, double length) {
        return balance()
                .map(b -> {
                    double load = b.bearings().get(index).xy().norm();
                    return "p = " + show(load, Kind.FORCE) + " / (" + show(bore, Kind.LENGTH) + " x "
                            + show(length, Kind.LENGTH) + ") = " + show(load / (bore * length), Kind.PRESSURE);
                })
                .orElse("");
    }

    /** Bending and shear of a bar. */
    public String bar(double diameter, double moment, double shear) {
        return "M = " + show(moment, Kind.MOMENT) + ", V = " + show(shear, Kind.FORCE) + ", d = "
                + show(diameter, Kind.LENGTH) + ": sigma = " + show(PinStress.bending(diameter, moment), Kind.PRESSURE)
                + ", tau = " + show(PinStress.shear(diameter, shear), Kind.PRESSURE) + ", combined "
                + show(PinStress.combined(diameter, moment, shear), Kind.PRESSURE);
    }

    /** A joint's pin under a force. */
    public String pin(PinJoint joint, double force) {
        return "F = " + show(force, Kind.FORCE) + "; "
                + bar(joint.diameter(), PinStress.moment(joint, force), PinStress.shearForce(joint, force));
    }

    /** Column of an actuator at the length there. */
    public String column(Actuator actuator, double length) {
        if (actuator instanceof TelescopicCylinder t && Column.byStages(t)) {
            String parts = t.column(length).stream()
                    .map(p -> stiffness(t.modulus() * p.inertia()) + " over " + show(p.length(), Kind.LENGTH))
                    .collect(Collectors.joining(", "));
            return "E I from the body to the narrowest stage " + parts + ": P = "
                    + show(finding.capacity(), Kind.FORCE);
        }
        Rod rod = actuator.rod();
        if (rod == null) {
            return "";
        }
        Tube tube = actuator.tube();
        String made = "rod E I = " + stiffness(rod.modulus() * rod.inertia());
        if (tube == null || tube.length() >= length) {
            return made + ", L = " + show(length, Kind.LENGTH) + ": P = " + show(finding.capacity(), Kind.FORCE);
        }
        return made + " over " + show(length - tube.length(), Kind.LENGTH) + ", body E I = "
                + stiffness(rod.modulus() * tube.inertia()) + " over " + show(tube.length(), Kind.LENGTH) + ": P = "
                + show(finding.capacity(), Kind.FORCE);
    }

    /** The bars of a link as a column over its length. */
    public String bars(LinkSection made, double length) {
        double area = made.section().area();
        double inertia = made.weakInertia();
        double slenderness = length / Math.sqrt(inertia / area);
        double change = Math.sqrt(2 * Math.PI * Math.PI * made.modulus() / made.yield());
        return (made.bars() > 1 ? made.bars() + " bars, each " : "") + "E I = " + stiffness(made.modulus() * inertia)
                + " about the weaker axis, A Sy = " + show(area * made.yield(), Kind.FORCE) + ", L = "
                + show(length, Kind.LENGTH) + ", L/k = " + Quantities.number(slenderness)
                + (slenderness < change ? ", Johnson" : ", Euler") + ": P = " + show(finding.capacity(), Kind.FORCE);
    }

    private static String stiffness(double value) {
        return Quantities.number(value) + " N m2";
    }
}
