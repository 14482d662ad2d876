// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Geometry;
import tipwright.geometry.Forms;
import tipwright.geometry.Hull;
import tipwright.geometry.MadeOnce;
import tipwright.geometry.Mesh;
import tipwright.geometry.Polyhedron;
import tipwright.geometry.Range;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** The shape of a part in its own axes, m. */
public interface Form {
    /** Least width of a part across, m. */
    double THINNEST = 0.005;

    /** Of a round bar. */
    int SIDES = 24;

    /** Where it begins and ends along the pivot axis. */
    ZRange z();

    /** The side view's area of what lies within a range along the pivot axis; empty when nothing does. */
    Geometry within(ZRange range);

    /**
     * Its lines in a view.
     *
     * @param place where a point of its own axes is, in the machine's
     * @param across stands for 'all the way across'
     */
    List<Contour> seen(View view, UnaryOperator<Vec3> place, ZRange across);

    /** Convex corners around its side view, in its own axes, m: what tells how much room it takes. */
    List<Vec2> reach();

    /**
     * It as closed bodies, for pictures in three dimensions; empty for what is only a line.
     *
     * @param across stands for 'all the way across'
     */
    List<Mesh> bodies(ZRange across);

    /** The lines around an area of the side view that is drawn out along the pivot axis. */
    record Drawn(List<List<Vec2>> rings, Geometry area, ZRange z) implements Form {
        /** Of the corners around it, m. */
        public static Drawn of(List<Vec2> corners, ZRange z) {
            return new Drawn(List.of(List.copyOf(corners)), OutlineGeometry.polygon(corners), z);
        }

        static Drawn of(Geometry area, ZRange z) {
            return new Drawn(OutlineGeometry.rings(area), area, z);
        }

        @Override
        public Geometry within(ZRange range) {
            return area;
        }

        @Override
        public List<Vec2> reach() {
            List<Vec2> all = new ArrayList<>();
            rings.forEach(all::addAll);
            return Hull.around(all);
        }

        @Override
        public List<Mesh> bodies(ZRange across) {
            ZRange real = z.orAcross(across);
            double width = Math.max(THINNEST, real.to() - real.from());
            double middle = (real.from() + real.to()) / 2;
            return OutlineGeometry.rings(area).stream()
                    .map(ring -> Polyhedron.prism(ring, width, middle).mesh(THINNEST))
                    .toList();
        }

        @Override
        public List<Contour> seen(View view, UnaryOperator<Vec3> place, ZRange across) {
            List<List<Vec2>> placed = rings.stream()
                    .map(ring -> ring.stream()
                            .map(p -> place.apply(new Vec3(p.x(), p.y(), 0)).xy())
                            .toList())
                    .toList();
            if (view == View.SIDE) {
                return outlines(placed);
            }
            ZRange real = z.orAcross(across);
            List<Vec2> box = new ArrayList<>();
            for (List<Vec2> ring : placed) {
                for (Vec2 p : ring) {
                    box.add(view.flat(new Vec3(p.x(), p.y(), real.from())));
                    box.add(view.flat(new Vec3(p.x(), p.y(), real.to())));
                }
            }
            return outlines(List.of(Hull.around(box)));
        }
    }

    /** A closed body of any shape, with a wall around it. */
    final class Body implements Form {
        private final Mesh mesh;
        private final boolean convex;
        private final double wall;
        private final ZRange z;
        private final Map<ZRange, Geometry> made = new ConcurrentHashMap<>();
        private final MadeOnce<WholeOutline> whole;

        /**
         * A body.
         *
         * @param convex whether it is
         * @param wall thickness around it, m
         */
        Body(Mesh mesh, boolean convex, double wall) {
            this.mesh = mesh;
            this.convex = convex;
            this.wall = wall;
            whole = new MadeOnce<>(() -> WholeOutline.of(mesh));
            Range across = mesh.extent(new Vec3(0, 0, 1));
            z = new ZRange(across.low() - wall, across.high() + wall);
        }

        @Override
        public ZRange z() {
            return z;
        }

        @Override
        public Geometry within(ZRange range) {
            boolean all = convex && whole.get().isIn(range.grown(wall));
            return made.computeIfAbsent(all ? ZRange.ALL : range, r -> OutlineGeometry.thick(slice(r), wall));
        }

        private Geometry slice(ZRange range) {
            return convex && range.equals(ZRange.ALL)
                    ? whole.get().area()
                    : OutlineGeometry.silhouette(mesh, range.grown(wall), convex);
        }

        @Override
        public List<Vec2> reach() {
            List<Vec2> points = new ArrayList<>();
            for (int i = 0; i < mesh.xyz().length / 3; i++) {
                points.add(mesh.vertex(i).xy());
            }
            List<Vec2> hull = Hull.around(points);
            return wall > 0
                    ? OutlineGeometry.rings(OutlineGeometry.thick(OutlineGeometry.polygon(hull), wall))
                            .get(0)
                    : hull;
        }

        @Override
        public List<Mesh> bodies(ZRange across) {
            return List.of(mesh);
        }

        @Override
        public List<Contour> seen(View view, UnaryOperator<Vec3> place, ZRange across) {
            if (view == View.SIDE) {
                return Drawn.of(within(ZRange.ALL), z).seen(view, place, across);
            }
            Geometry area = OutlineGeometry.seen(mesh, p -> view.flat(place.apply(p)), convex);
            return outlines(OutlineGeometry.rings(OutlineGeometry.thick(area, wall)));
        }
    }

    /** Convex pieces that are joined. */
    final class Pieces implements Form {
        private final List<Mesh> pieces;
        private final Map<View, Geometry> made = new ConcurrentHashMap<>();

        /** Copies the list. */
        public Pieces(List<Mesh> pieces) {
            this.pieces = List.copyOf(pieces);
        }

        @Override
        public ZRange z() {
            Range first = pieces.get(0).extent(new Vec3(0, 0, 1));
            ZRange all = new ZRange(first.low(), first.high());
            for (Mesh piece : pieces) {
                Range range = piece.extent(new Vec3(0, 0, 1));
                all = all.with(new ZRange(range.low(), range.high()));
            }
            return all;
        }

        @Override
        public Geometry within(ZRange range) {
            return made.computeIfAbsent(View.SIDE, side -> area(Vec3::xy));
        }

        private Geometry area(Function<Vec3, Vec2> place) {
            return OutlineGeometry.joined(pieces.stream()
                    .map(piece -> OutlineGeometry.seen(piece, place, true))
                    .toList());
        }

        @Override
        public List<Vec2> reach() {
            List<Vec2> points = new ArrayList<>();
            for (Mesh piece : pieces) {
                for (int i = 0; i < piece.xyz().length / 3; i++) {
                    points.add(piece.vertex(i).xy());
                }
            }
            return Hull.around(points);
        }

        @Override
        public List<Mesh> bodies(ZRange across) {
            return pieces;
        }

        @Override
        public List<Contour> seen(View view, UnaryOperator<Vec3> place, ZRange across) {
            return outlines(OutlineGeometry.rings(area(p -> view.flat(place.apply(p)))));
        }
    }

    /** A round bar along the pivot axis. */
    record Round(Vec2 centre, double radius, ZRange z) implements Form {
        @Override
        public Geometry within(ZRange range) {
            return OutlineGeometry.disc(centre, radius);
        }

        @Override
        public List<Vec2> reach() {
            return new Contour.Circle(centre, radius).corners();
        }

        @Override
        public List<Mesh> bodies(ZRange across) {
            ZRange real = z.orAcross(across);
            return List.of(Forms.rod(
                    new Vec3(centre.x(), centre.y(), real.from()),
                    new Vec3(centre.x(), centre.y(), real.to()),
                    radius,
                    SIDES));
        }

        @Override
        public List<Contour> seen(View view, UnaryOperator<Vec3> place, ZRange across) {
            Vec3 p = place.apply(new Vec3(centre.x(), centre.y(), 0));
            if (view == View.SIDE) {
                return List.of(new Contour.Circle(p.xy(), radius));
            }
            ZRange real = z.orAcross(across);
            Vec3 side = view == View.PLAN ? new Vec3(radius, 0, 0) : new Vec3(0, radius, 0);
            Vec3 from = new Vec3(p.x(), p.y(), real.from());
            Vec3 to = new Vec3(p.x(), p.y(), real.to());
            return outlines(List.of(List.of(
                    view.flat(from.minus(side)),
                    view.flat(to.minus(side)),
                    view.flat(to.plus(side)),
                    view.flat(from.plus(side)))));
        }
    }

    /** A line in space. */
    record Wire(List<Vec3> points, boolean closed) implements Form {
        /** Copies the list. */
        public Wire {
            points = List.copyOf(points);
        }

        @Override
        public ZRange z() {
            double low = points.stream().mapToDouble(Vec3::z).min().orElse(0);
            return new ZRange(low, points.stream().mapToDouble(Vec3::z).max().orElse(0));
        }

        @Override
        public Geometry within(ZRange range) {
            return OutlineGeometry.nothing();
        }

        @Override
        public List<Vec2> reach() {
            return points.stream().map(Vec3::xy).toList();
        }

        @Override
        public List<Mesh> bodies(ZRange across) {
            return List.of();
        }

        @Override
        public List<Contour> seen(View view, UnaryOperator<Vec3> place, ZRange across) {
            List<Vec2> line =
                    points.stream().map(p -> view.flat(place.apply(p))).toList();
            return List.of(new Contour.Polyline(line, closed));
        }
    }

    private static List<Contour> outlines(List<List<Vec2>> rings) {
        List<Contour> all = new ArrayList<>();
        rings.forEach(ring -> all.add(new Contour.Polyline(ring, true)));
        return all;
    }
}
