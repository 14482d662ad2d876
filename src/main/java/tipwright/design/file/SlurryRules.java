// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import tipwright.design.tank.Bucket;
import tipwright.design.tank.Jar;
import tipwright.design.tank.Slurry;
import tipwright.quantity.Kind;

/** What goes into the tank must fit and must be able to settle. */
final class SlurryRules {
    private static final double SLACK = 1e-9;

    /** So much may a bucket's volume and weight be off together. */
    private static final double BUCKET = 0.02;

    private SlurryRules() {}

    static void check(Facts facts) {
        volume(facts);
        samples(facts);
        Double solids = facts.number("slurry.solids-density");
        Double liquid = facts.number("slurry.liquid-density");
        if (solids == null || liquid == null) {
            return;
        }
        if (!(solids > liquid * (1 + SLACK))) {
            boolean ownSolids = facts.sources().find("slurry.solids-density") != null;
            facts.wrong(
                    ownSolids ? "slurry.solids-density" : "slurry.liquid-density",
                    "the solids (" + say(solids) + ") must be denser than the liquid (" + say(liquid) + ")");
            return;
        }
        density(facts, solids, liquid);
        cake(facts);
    }

    private static void samples(Facts facts) {
        Bucket bucket = facts.bound().get("slurry.bucket", Bucket.class);
        Double liquid = facts.number("slurry.liquid-density");
        if (bucket != null && !(bucket.full() > bucket.empty())) {
            facts.wrong("slurry.bucket.full", "not more than the empty bucket; weigh it again");
        } else if (bucket != null && liquid != null && bucket.density() < liquid * (1 - BUCKET)) {
            facts.wrong(
                    "slurry.bucket",
                    "the slurry would weigh " + say(bucket.density()) + ", less than its liquid (" + say(liquid)
                            + "); is the volume right?");
        }
        Jar jar = facts.bound().get("slurry.jar", Jar.class);
        if (jar != null && jar.grit() > jar.all()) {
            facts.wrong("slurry.jar.grit", "more than the height of all of it; measure both from the bottom");
        }
    }

    private static void density(Facts facts, double solids, double liquid) {
        Double density = facts.number("slurry.density");
        if (Facts.is(density, d -> d < liquid * (1 - SLACK))) {
            facts.wrong(
                    "slurry.density",
                    "the slurry is lighter than its liquid (" + say(liquid) + "). Correct it, or set liquid-density");
        } else if (Facts.is(density, d -> d > solids * (1 + SLACK))) {
            facts.wrong(
                    "slurry.density",
                    "the slurry is heavier than its solids (" + say(solids) + "). Correct it, or set solids-density");
        }
    }

    private static void cake(Facts facts) {
        Slurry slurry = facts.bound().get("slurry", Slurry.class);
        if (slurry == null || slurry.jar() != null) {
            return;
        }
        double share = slurry.solidsByVolume() != null || slurry.solidsByWeight() != null
                ? slurry.solidsVolumeShare()
                : (slurry.mixtureDensity() - slurry.liquidDensity())
                        / (slurry.solidsDensity() - slurry.liquidDensity());
        if (share <= 1 && share > slurry.packing() * (1 + SLACK)) {
            String key = slurry.solidsByVolume() != null
                    ? "solids-by-volume"
                    : slurry.solidsByWeight() != null
                            ? "solids-by-weight"
                            : slurry.bucket() != null ? "bucket" : "density";
            facts.wrong(
                    "slurry." + key,
                    "the solids would be " + Facts.percent(share) + " of the volume; settled grit packs to "
                            + Facts.percent(slurry.packing()) + ". Lower it, or raise packing");
        }
    }

    private static void volume(Facts facts) {
        Double volume = facts.number("slurry.volume");
        if (volume == null || facts.solid() == null) {
            return;
        }
        double room = facts.solid().whole().volume();
        if (volume > room * (1 + SLACK)) {
            facts.wrong("slurry.volume", "more than the tank holds (" + Facts.say(room, Kind.VOLUME) + ")");
        }
    }

    private static String say(double density) {
        return Facts.say(density, Kind.DENSITY);
    }
}
