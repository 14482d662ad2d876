// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.tank.Interior;
import tipwright.geometry.MadeOnce;
import tipwright.geometry.Polyhedron;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec3;

/**
 * The inside of a tank as its contents are worked out in it: whatever does not depend on what is in it is made once, for all analyses of
 * a machine. Two are equal when their insides are. It may be used by several threads.
 */
public final class Vessel {
    /** Largest distance of the mesh from the true surface over the height of the tank. */
    private static final double ROUGH = 1.0 / 200;

    private static final double FINE = 1.0 / 800;

    private final Interior interior;
    private final Solid solid;
    private final MadeOnce<Polyhedron> rough = new MadeOnce<>(() -> faceted(ROUGH));
    private final MadeOnce<Polyhedron> fine = new MadeOnce<>(() -> faceted(FINE));

    private final Map<Class<?>, Map<Object, Object>> others = new ConcurrentHashMap<>();

    private Vessel(Interior interior) {
        this.interior = interior;
        this.solid = interior.solid();
    }

    /** That of a design. */
    public static Vessel of(Design design) {
        return new Vessel(design.tank().interior());
    }

    /** This one where it is the vessel of a design, else a new one. */
    public Vessel in(Design design) {
        Interior own = design.tank().interior();
        return own == interior || own.equals(interior) ? this : of(design);
    }

    /** The closed solid. */
    public Solid solid() {
        return solid;
    }

    /** The tank alone, as a design makes it. */
    EmptyTank empty(Design design) {
        return EmptyTank.of(design, solid);
    }

    /** Makes what the loads of a design will ask for; another thread may be at that already. */
    public void prepare(Design design) {
        if (design.slurry().cakeShare() > 0) {
            fine();
            rough();
        }
    }

    /** With flat faces; what is cut from it is brought in step with the exact solid. */
    Polyhedron rough() {
        return rough.get();
    }

    /** With flat faces that are near enough for a heap that is cut twice. */
    Polyhedron fine() {
        return fine.get();
    }

    /**
     * What else follows from the inside alone, such as how it is seen from the side: made once for each key, and kept as long as the
     * vessel.
     *
     * @param kind what it is
     * @param key which of its kind; equal keys are for the same
     */
    public <T> T kept(Class<T> kind, Object key, Supplier<T> maker) {
        Map<Object, Object> alike = others.computeIfAbsent(kind, unknown -> new ConcurrentHashMap<>());
        return kind.cast(alike.computeIfAbsent(key, unknown -> maker.get()));
    }

    private Polyhedron faceted(double share) {
        return solid.faceted(share * solid.extent(new Vec3(0, 1, 0)).span());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Vessel vessel && vessel.interior.equals(interior);
    }

    @Override
    public int hashCode() {
        return interior.hashCode();
    }
}
