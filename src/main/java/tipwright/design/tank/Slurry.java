// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Copy;
import tipwright.design.key.ExactlyOne;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * What is in the tank: fill or volume; density, or solids by weight, or solids by volume. Where only the density is given, the
 * solids share follows from it and the densities of solids and liquid.
 *
 * @param fill share of the interior's volume
 * @param volume m3
 * @param density of the mixture, kg/m3
 * @param repose angle of repose of the settled solids, rad
 * @param release tilt at which a stuck cake lets go, rad; infinite: never
 * @param wallFriction angle of friction of a sliding cake on the wall, rad
 * @param bucket that gives the density
 * @param jar that gives the solids by volume
 * @param usual kind that gives the density
 */
@ExactlyOne({"fill", "volume"})
@ExactlyOne({"density", "solids-by-weight", "solids-by-volume", "bucket", "jar", "usual"})
public record Slurry(
        @Note("How full it is; or give volume")
                @Measured(value = Kind.RATIO, atLeast = "0 %", atMost = "100 %")
                @Nullable
                Double fill,
        @Note("How much is in it; or give fill") @Measured(value = Kind.VOLUME, atLeast = "0 L") @Nullable
                Double volume,
        @Note("Of the mixture, as weighed; or give solids-by-weight or solids-by-volume")
                @Measured(value = Kind.DENSITY, above = "0 kg/m3", atMost = "10000 kg/m3")
                @Nullable
                Double density,
        @Note("Share of solids in the weight of the mixture")
                @Measured(value = Kind.RATIO, atLeast = "0 %", atMost = "95 %")
                @Nullable
                Double solidsByWeight,
        @Note("Share of solids in the volume of the mixture")
                @Measured(value = Kind.RATIO, atLeast = "0 %", atMost = "74 %")
                @Nullable
                Double solidsByVolume,
        @Note("Of the solids themselves; 2650 kg/m3 for sand and stone")
                @Measured(value = Kind.DENSITY, preset = "2650 kg/m3", above = "0 kg/m3", atMost = "20000 kg/m3")
                double solidsDensity,
        @Note("Of the liquid alone; 1000 kg/m3 for water")
                @Measured(value = Kind.DENSITY, preset = "1000 kg/m3", above = "0 kg/m3", atMost = "5000 kg/m3")
                double liquidDensity,
        @Note("Share of solids in a settled cake by volume; about 60 % for sand")
                @Measured(value = Kind.RATIO, preset = "60 %", atLeast = "10 %", atMost = "100 %")
                double packing,
        @Note("Slope at which the settled solids stay put")
                @Measured(value = Kind.ANGLE, preset = "32 deg", atLeast = "0 deg", atMost = "80 deg")
                double repose,
        @Note("Tilt at which a stuck cake lets go, or never")
                @Measured(value = Kind.ANGLE, preset = "never", atLeast = "0 deg", orWord = "never")
                double release,
        @Note(
                        "Friction of a cake that slides on the wall; 11 to 22 deg for grit on steel: the less, the farther it flies")
                @Measured(value = Kind.ANGLE, preset = "11 deg", atLeast = "0 deg", atMost = "45 deg")
                double wallFriction,
        @Note("A bucket of it on a scale, in place of the density") @Nullable Bucket bucket,
        @Note("A jar of it that has settled, in place of the density") @Nullable Jar jar,
        @Note("A usual kind, in place of the density, until a bucket is weighed") @Nullable UsualSlurry usual) {
    /** Angle of friction of sandy silt on steel, the least of its table. Source: NAVFAC DM-7.2 (from memory). */
    private static final double SLIPPERY = Math.toRadians(11);

    /** Takes the density from the bucket or the usual kind, and the solids from the jar. */
    public Slurry {
        boolean open = density == null && solidsByWeight == null && solidsByVolume == null;
        if (open && bucket != null) {
            density = bucket.density();
        } else if (open && usual != null) {
            density = usual.density();
        } else if (open && jar != null) {
            solidsByVolume = jar.solids(packing);
        }
    }

    /** As told by density or shares. */
    public Slurry(
            @Nullable Double fill,
            @Nullable Double volume,
            @Nullable Double density,
            @Nullable Double solidsByWeight,
            @Nullable Double solidsByVolume,
            double solidsDensity,
            double liquidDensity,
            double packing,
            double repose,
            double release) {
        this(
                fill,
                volume,
                density,
                solidsByWeight,
                solidsByVolume,
                solidsDensity,
                liquidDensity,
                packing,
                repose,
                release,
                SLIPPERY,
                null,
                null,
                null);
    }

    /** Density of the mixture, kg/m3. Source: mass and volume balance, 1/rho = cw/rho_s + (1-cw)/rho_l. */
    public double mixtureDensity() {
        if (density != null) {
            return density;
        }
        if (solidsByVolume != null) {
            return solidsByVolume * solidsDensity + (1 - solidsByVolume) * liquidDensity;
        }
        double cw = solidsByWeight == null ? 0 : solidsByWeight;
        return 1 / (cw / solidsDensity + (1 - cw) / liquidDensity);
    }

    /** Share of the mixture's volume that is solids, 0 to 1; from the density where only that is given. */
    public double solidsVolumeShare() {
        if (solidsByVolume != null) {
            return solidsByVolume;
        }
        if (solidsByWeight != null) {
            return solidsByWeight * mixtureDensity() / solidsDensity;
        }
        double share = (mixtureDensity() - liquidDensity) / (solidsDensity - liquidDensity);
        return Math.max(0, Math.min(packing, share));
    }

    /** Density of the settled, saturated cake, kg/m3. */
    public double cakeDensity() {
        return packing * solidsDensity + (1 - packing) * liquidDensity;
    }

    /** Share of the slurry's volume that the settled cake takes up, 0 to 1. */
    public double cakeShare() {
        return Math.min(1, solidsVolumeShare() / packing);
    }

    /** The slurry's volume, m3, in an interior of this volume. */
    public double volumeIn(double interiorVolume) {
        return volume != null ? volume : fill == null ? 0 : fill * interiorVolume;
    }

    /** The same stuff filled to another share. */
    public Slurry withFill(double share) {
        return Copy.with(Copy.with(this, "fill", share), "volume", null);
    }

    /** The same fill with another density of the mixture, kg/m3; the solids share follows from it. */
    public Slurry withDensity(double mixture) {
        Slurry plain = Copy.with(Copy.with(this, "solidsByWeight", null), "solidsByVolume", null);
        return Copy.with(plain, "density", mixture);
    }
}
