// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * What goes through the wall of a shell at one place under each kind of load on a footprint.
 *
 * @param force of 1 N outwards
 * @param around of a moment of 1 N m around the shell
 * @param along of a moment of 1 N m along the shell
 */
record UnitForces(ShellForces force, ShellForces around, ShellForces along) {
    /** The forces of a load out of those of its parts. */
    ShellForces under(PatchLoad load) {
        ShellForces f = force;
        ShellForces r = around;
        ShellForces t = along;
        double a = load.force();
        double b = load.around();
        double c = load.along();
        return new ShellForces(
                a * f.nx() + b * r.nx() + c * t.nx(),
                a * f.nphi() + b * r.nphi() + c * t.nphi(),
                a * f.nxphi() + b * r.nxphi() + c * t.nxphi(),
                a * f.mx() + b * r.mx() + c * t.mx(),
                a * f.mphi() + b * r.mphi() + c * t.mphi(),
                a * f.mxphi() + b * r.mxphi() + c * t.mxphi(),
                a * f.moved() + b * r.moved() + c * t.moved());
    }
}
