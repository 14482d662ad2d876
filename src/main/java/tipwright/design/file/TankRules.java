// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.Tube;
import tipwright.design.drive.RoundSection;
import tipwright.design.steel.Pipe;
import tipwright.design.steel.TubePiece;
import tipwright.design.tank.Attached;
import tipwright.design.tank.CylinderInterior;
import tipwright.design.tank.HookReading;
import tipwright.design.tank.Interior;
import tipwright.design.tank.MeshInterior;
import tipwright.design.tank.PrismInterior;
import tipwright.design.tank.Tank;
import tipwright.geometry.ShapeException;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec2;
import tipwright.geometry.stock.PipeSize;
import tipwright.linkage.Skeleton;
import tipwright.quantity.Kind;

/** The tank must have an inside, and should have a way out. */
final class TankRules {
    private static final double LEAST_KNUCKLE = 0.006;
    private static final double MOST_KNUCKLE = 0.494;

    /** Nearer to the pivot a pull is measured more by luck than by the scale, m. Common practice, no source. */
    private static final double LEAST_ARM = 0.02;

    private TankRules() {}

    static void check(Facts facts) {
        Tank tank = facts.bound().get("tank", Tank.class);
        if (tank != null && tank.openings().isEmpty()) {
            facts.warnings()
                    .add(
                            facts.sources().key("tank"),
                            "tank",
                            "no openings: nothing can leave the tank, however far it tips");
        }
        if (tank != null && tank.open() != null) {
            facts.wrong(
                    "tank.open",
                    "this tank has no such flat side: 'top' and 'front' are for a box, for a prism with a level top or an upright"
                            + " front, and for a cylinder that stands or lies along x and has a flat head there; describe the"
                            + " rim under 'openings'");
        }
        dish(facts);
        pipes(facts);
        tubes(facts);
        weighed(facts);
        List<Attached> attached = facts.bound().list("tank.attached", Attached.class);
        Names.unique(
                facts, "tank.attached", attached.stream().map(Attached::name).toList());
    }

    private static void dish(Facts facts) {
        CylinderInterior shell = facts.bound().get("tank.interior", CylinderInterior.class);
        Tank tank = facts.bound().get("tank", Tank.class);
        if (shell == null || shell.dishDepth() == null || tank == null) {
            return;
        }
        if (!shell.heads().contains(CylinderInterior.HeadShape.TORISPHERICAL)) {
            facts.wrong(
                    "tank.interior.dish-depth", "goes with 'heads: torispherical'; leave it out, or change the heads");
        } else if (tank.interior() instanceof CylinderInterior inside
                && (inside.knuckle() < LEAST_KNUCKLE || inside.knuckle() > MOST_KNUCKLE)) {
            facts.wrong(
                    "tank.interior.dish-depth",
                    "no torispherical head of this diameter and crown is so "
                            + (inside.knuckle() < LEAST_KNUCKLE ? "flat" : "deep")
                            + "; measure it again, or give 'crown'");
        }
    }

    private static void pipes(Facts facts) {
        facts.bound()
                .all(Pipe.class)
                .forEach(found -> known(facts, found, "pipe.size", found.value().size()));
        facts.bound()
                .all(RoundSection.class)
                .forEach(found -> known(facts, found, "pipe", found.value().pipe()));
        facts.bound()
                .all(Tube.class)
                .forEach(found -> known(facts, found, "pipe", found.value().pipe()));
    }

    private static void tubes(Facts facts) {
        facts.bound().all(TubePiece.class).forEach(found -> {
            if (!found.value().isSound()) {
                found.wrong(
                        facts.problems(),
                        "tube.wall",
                        "thicker than a quarter of the tube's side; give the wall alone, or a 'bar' or 'flat' if it is solid");
            }
        });
    }

    /** A hook that pulls through the pivot tells nothing of where the centre is, nor does one on a tank that turns about another place. */
    private static void weighed(Facts facts) {
        Vec2 pivot = facts.bound().get("pivot.at", Vec2.class);
        Skeleton skeleton = MechanismRules.skeleton(facts);
        boolean turns = skeleton == null || skeleton.turnsOnPivot();
        for (Bound.Found<HookReading> found : facts.bound().all(HookReading.class)) {
            HookReading reading = found.value();
            if (!turns) {
                found.wrong(
                        facts.problems(),
                        "at",
                        "links or a slide carry this tank, so it does not turn about the pivot and the pull does not tell where its"
                                + " centre is; leave 'weighed' out and describe wall and parts, or give 'mass' with its centre");
            } else if (pivot != null && Math.abs(reading.moment(pivot)) < LEAST_ARM * reading.pull()) {
                found.wrong(
                        facts.problems(),
                        "at",
                        "the pull goes past the pivot by less than " + Facts.say(LEAST_ARM, Kind.LENGTH)
                                + " and tells nothing; hook in further away from it");
            }
        }
    }

    private static void known(Facts facts, Bound.Found<?> found, String key, @Nullable String size) {
        if (size != null && PipeSize.named(size).isEmpty()) {
            found.wrong(
                    facts.problems(),
                    key,
                    "no size of pipe " + ErrorText.quoted(size) + " is known here; write it such as"
                            + " '2 in schedule 40'; sizes: " + String.join(", ", PipeSize.sizes())
                            + " in; schedules: 10, 40, 80 and 160, STD and XS");
        }
    }

    private static boolean outside(Bound bound) {
        return bound.get("tank.sizes", Tank.Sizes.class) == Tank.Sizes.OUTSIDE;
    }

    /** The inside of the tank; null when it was not understood, or with a problem noted when it is not sound. */
    static @Nullable Solid solid(Bound bound, SourceMap sources, Problems problems) {
        Tank tank = bound.get("tank", Tank.class);
        if (tank != null && tank.lacksThickness()) {
            problems.add(
                    sources.key("tank.mass"),
                    "tank.mass",
                    "sizes of the outside are given, so the thickness of the wall is needed; add 'thickness: 5 mm'");
            return null;
        }
        if (tank != null && tank.interior() instanceof MeshInterior && outside(bound)) {
            problems.add(
                    sources.nearest("tank.sizes"),
                    "tank.sizes",
                    "a mesh is taken as it is; leave 'sizes' out, or draw the inside");
            return null;
        }
        Interior interior = tank == null ? bound.get("tank.interior", Interior.class) : tank.interior();
        if (interior != null && tank == null && interior.needsWall()) {
            return null;
        }
        PrismInterior drawn = bound.get("tank.interior", PrismInterior.class);
        if (drawn != null && interior instanceof PrismInterior inside && inside.turnedBy(drawn)) {
            problems.add(
                    sources.nearest("tank.interior.outline"),
                    "tank.interior.outline",
                    "with the wall taken off, a side or the width is gone; the wall is too thick for it, or 'sizes: outside' is"
                            + " wrong here");
            return null;
        }
        try {
            return interior == null ? null : interior.solid();
        } catch (ShapeException wrong) {
            String key = interior instanceof CylinderInterior
                    ? ".length"
                    : interior instanceof PrismInterior ? ".outline" : "";
            String path = "tank.interior" + key;
            problems.add(sources.nearest(path), path, String.valueOf(wrong.getMessage()));
            return null;
        }
    }
}
