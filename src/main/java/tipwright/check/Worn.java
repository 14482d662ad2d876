// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.design.Design;
import tipwright.design.around.CrossMember;
import tipwright.design.around.Frame;
import tipwright.design.around.TorqueTube;
import tipwright.design.around.Twist;
import tipwright.design.around.Wear;
import tipwright.design.drive.Drive;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.Shaft;
import tipwright.design.key.Copy;
import tipwright.design.tank.Wall;

/** A design of which rust and wear have taken what they may: every strength is worked out for that one. */
final class Worn {
    private Worn() {}

    /** The same loads on parts that are worn. */
    static Analysis of(Analysis analysis) {
        Design design = analysis.design();
        Wear wear = design.wear();
        if (wear.wall() <= 0 && wear.pin() <= 0) {
            return analysis;
        }
        return analysis.of(worn(design, wear));
    }

    private static Design worn(Design design, Wear wear) {
        Design less = design;
        Wall wall = design.tank().wall();
        if (wall != null) {
            Wall thin = Copy.with(wall, "thickness", left(wall.thickness(), wear.wall()));
            less = Copy.with(less, "tank", Copy.with(design.tank(), "wall", thin));
        }
        Frame frame = design.frame();
        CrossMember tube = frame == null ? null : frame.crossMember();
        if (frame != null && tube != null) {
            CrossMember thin = Copy.with(tube, "wall", left(tube.wall(), wear.wall()));
            less = less.withFrame(frame.withCrossMember(thin));
        }
        Twist twist = design.twist();
        less = Copy.with(less, "twist", new Twist(thin(twist.tank(), wear), thin(twist.frame(), wear)));
        Shaft shaft = design.pivot().shaft();
        if (shaft != null) {
            Shaft thin = Copy.with(shaft, "diameter", left(shaft.diameter(), wear.pin()));
            less = Copy.with(less, "pivot", Copy.with(design.pivot(), "shaft", thin));
        }
        Drive drive = design.drive();
        for (String name : drive.pinNames(design.pivot().at())) {
            PinJoint pin = design.drive().pinJoint(name);
            if (pin != null) {
                drive = drive.withPin(name, Copy.with(pin, "diameter", left(pin.diameter(), wear.pin())));
            }
        }
        return less.withDrive(drive);
    }

    private static @Nullable TorqueTube thin(@Nullable TorqueTube tube, Wear wear) {
        return tube == null ? null : Copy.with(tube, "wall", left(tube.wall(), wear.wall()));
    }

    /** What is left of a thickness, m; a hair of it where more than all is taken, so that its rule fails. */
    private static double left(double whole, double taken) {
        return Math.max(1e-3 * whole, whole - taken);
    }
}
