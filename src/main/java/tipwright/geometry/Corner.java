// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * What a mesh holds below two planes at once. Summed from an apex on the line where the planes meet, neither cap adds anything, so
 * neither need be built; planes that do not meet within the mesh leave what one of them leaves.
 *
 * <p>Source: divergence theorem, as for {@link TriangleSums}.
 */
final class Corner {
    private static final double PARALLEL = 1e-12;

    private Corner() {}

    /** Volume properties below both; the section is that of the first plane. */
    static Moments below(SumTree tree, Plane a, Plane b) {
        double c = a.normal().dot(b.normal());
        double square = 1 - c * c;
        Vec3 middle = tree.middle();
        double ha = a.height(middle);
        double hb = b.height(middle);
        // to the point where both heights are zero that is nearest to the middle
        Vec3 step = a.normal().times((c * hb - ha) / square).plus(b.normal().times((c * ha - hb) / square));
        if (square < PARALLEL || !(step.norm() < 2 * tree.reach())) {
            return apart(tree, a, b);
        }
        Moments both = tree.below(a, b);
        return both.volume() <= 0 ? Moments.NOTHING : both;
    }

    /** The planes do not meet near the mesh: each is wholly above or wholly below the other there. */
    private static Moments apart(SumTree tree, Plane a, Plane b) {
        Vec3 middle = tree.middle();
        double ha = a.height(middle);
        double hb = b.height(middle);
        if (ha > tree.reach() || hb > tree.reach()) {
            return Moments.NOTHING;
        }
        if (hb < -tree.reach()) {
            return positive(tree.below(a));
        }
        boolean inB = b.height(middle.minus(a.normal().times(ha))) <= 0;
        boolean alike = a.normal().dot(b.normal()) > 0;
        if (alike && inB && ha >= -tree.reach()) {
            return positive(tree.below(a));
        }
        Moments belowB = positive(tree.below(b));
        if (alike || ha < -tree.reach()) {
            return new Moments(belowB.volume(), belowB.first(), 0);
        }
        if (!inB) {
            return Moments.NOTHING;
        }
        Moments belowA = tree.below(a);
        Moments whole = tree.whole();
        return positive(new Moments(
                belowA.volume() + belowB.volume() - whole.volume(),
                belowA.first().plus(belowB.first()).minus(whole.first()),
                belowA.section()));
    }

    private static Moments positive(Moments part) {
        return part.volume() <= 0 ? Moments.NOTHING : part;
    }
}
