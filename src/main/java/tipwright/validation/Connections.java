// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import java.util.List;
import tipwright.strength.BoltedTee;
import tipwright.strength.FatigueCurve;
import tipwright.strength.InsertGrip;
import tipwright.strength.PowerScrew;
import tipwright.strength.TorsionSection;
import tipwright.strength.TubeFace;

/** Welds over a life of dumps, bolts that are pried, faces of tubes, screws, sections that are twisted. */
final class Connections {
    private static final double INCH = 0.0254;
    private static final double KSI = 6.894757293168361e6;
    private static final double KIP = 4448.2216152605;

    private Connections() {}

    static void addTo(Figures figures) {
        fatigue(figures);
        tees(figures);
        faces(figures);
        screws(figures);
        torsion(figures);
    }

    private static void fatigue(Figures figures) {
        FatigueCurve strong = new FatigueCurve(160e6, false, 1);
        FatigueCurve shear = new FatigueCurve(100e6, true, 1);
        FatigueCurve bracket = new FatigueCurve(71e6, false, 1);
        figures.add("fatigue-knee", () -> strong.knee() / 1e6);
        figures.add("fatigue-cut-off", () -> strong.cutOff() / 1e6);
        figures.add("fatigue-201", () -> strong.cycles(201.587e6));
        figures.add("fatigue-89", () -> strong.cycles(89.343e6));
        figures.add("fatigue-shear-cut-off", () -> shear.cutOff() / 1e6);
        figures.add("fatigue-shear", () -> shear.cycles(114.870e6));
        figures.add("fatigue-71", () -> bracket.cycles(100e6));
        figures.add("fatigue-71-factor", () -> new FatigueCurve(71e6, false, 1.35).cycles(100e6));
        figures.add("fatigue-root", () -> new FatigueCurve(36e6, false, 1).cycles(25e6));
        figures.add(
                "miner",
                () -> bracket.damage(
                        List.of(new FatigueCurve.Range(100e6, 20_000), new FatigueCurve.Range(45e6, 500_000))));
    }

    private static void tees(Figures figures) {
        BoltedTee narrow = tee(0.0942);
        BoltedTee wide = tee(0.1175);
        BoltedTee own = new BoltedTee(0.012, 275e6, 0.150, 0.035, 0.040, 180_860);
        figures.add("tee-flange", () -> narrow.resistance(BoltedTee.Mode.FLANGE) / 1000);
        figures.add("tee-both", () -> narrow.resistance() / 1000);
        figures.add("tee-both-wide", () -> wide.resistance(BoltedTee.Mode.BOTH) / 1000);
        figures.add("tee-bolts", () -> wide.resistance() / 1000);
        figures.add("tee-own", () -> own.resistance() / 1000);
        figures.add("tee-free", () -> own.withoutPrying() / 1000);
    }

    private static BoltedTee tee(double length) {
        return new BoltedTee(0.020, 355e6, length, 0.0237, 1, 282_240);
    }

    private static void faces(Figures figures) {
        TubeFace us = new TubeFace(10 * INCH, 0.625 * INCH, 50 * KSI);
        figures.add("face-us", () -> us.yielding(3.06 * INCH, 3.33 * INCH, 0.946) / KIP);
        figures.add("face-us-stressed", () -> us.yielding(3.06 * INCH, 3.33 * INCH, 0.879) / KIP);
        TubeFace own = new TubeFace(0.1, 0.005, 275e6);
        figures.add("face-own", () -> own.yielding(0.06, 0.06, 1) / 1000);
        figures.add("face-plate", () -> own.underPlate(0.01, 0.1, 1) / 1000);
    }

    private static void screws(Figures figures) {
        PowerScrew jack = new PowerScrew(0.030, 0.008, 0.08, 0, 0.08 * 0.040);
        figures.add("screw-raise", () -> jack.raising(6400));
        figures.add("screw-lower", () -> jack.lowering(6400));
        figures.add("screw-efficiency", jack::efficiency);
        figures.add("grip-soft", () -> new InsertGrip(14_000, 7_800).onSoftShaft() / 1000);
        figures.add("grip-shoulder", () -> new InsertGrip(14_000, 7_800).againstShoulder() / 1000);
    }

    private static void torsion(Figures figures) {
        for (int ratio : new int[] {1, 2, 3, 10}) {
            figures.add(
                    "torsion-" + ratio, () -> TorsionSection.rectangle(ratio, 1).constant() / ratio);
        }
        // Thinnest wall 3 mm; the area within the middle of the walls is 35 by 57 mm; net torque 35 N m.
        figures.add(
                "torsion-tube",
                () -> TorsionSection.closed(0.035 * 0.057, 2 * 0.092, 0.003).stress(35) / 1e6);
        figures.add("torsion-stress-1", () -> TorsionSection.rectangle(1, 1).modulus());
        figures.add("torsion-stress-2", () -> TorsionSection.rectangle(2, 1).modulus() / 2);
    }
}
