// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.PointSpec.How;
import tipwright.design.file.PointSpec.Mark;
import tipwright.design.file.PointSpec.Side;
import tipwright.design.tape.Start;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.UnitSystem;

/** Finds where a point is by points that are placed already, and which of two places is meant. */
final class PointStart {
    private static final double SHORTEST = 1e-6;

    /** Two readings that miss each other by more than this many doubts cannot both be right. */
    private static final double BEYOND = 3;

    private final PointNet net;
    private final PointSpec spec;
    private final double z;
    private final Problems problems;
    private final UnitSystem units;

    PointStart(PointNet net, PointSpec spec, double z, Problems problems, UnitSystem units) {
        this.net = net;
        this.spec = spec;
        this.z = z;
        this.problems = problems;
        this.units = units;
    }

    /** Where it is; null with a problem noted. */
    @Nullable
    Vec2 find() {
        Mark first = spec.marks().get(0);
        if (first.how() == How.SAME) {
            return at(first, 0).xy();
        }
        if (first.how() == How.MIDDLE) {
            return at(first, 0).xy().plus(at(first, 1).xy()).times(0.5);
        }
        if (first.how() == How.ALONG) {
            Vec2 along = at(first, 1).xy().minus(at(first, 0).xy());
            return along.norm() < SHORTEST
                    ? wrong(
                            first,
                            "a line needs two places; '" + first.to().get(0) + "' and '"
                                    + first.to().get(1) + "' are the same")
                    : at(first, 0).xy().plus(along.unit().times(first.length()));
        }
        return crossing();
    }

    private Vec3 at(Mark mark, int which) {
        return net.place(net.number(mark.to().get(which)));
    }

    private @Nullable Vec2 crossing() {
        Start start = new Start();
        boolean[] lines = new boolean[2];
        for (Mark mark : spec.marks()) {
            Vec3 from = at(mark, 0);
            Side side = mark.side();
            if (side != null) {
                double base = side.axis() == 0 ? from.x() : from.y();
                start.line(side.axis() == 0, base + side.sign() * mark.length(), mark.doubt());
                lines[side.axis()] = true;
            } else {
                double across = z - from.z();
                if (mark.length() < Math.abs(across)) {
                    return wrong(
                            mark, "shorter than the points are apart along the pivot (" + say(Math.abs(across)) + ")");
                }
                start.distance(from.xy(), Math.sqrt(mark.length() * mark.length() - across * across), mark.doubt());
            }
        }
        if (!spec.has(How.DISTANCE)) {
            Vec3 from = at(spec.marks().get(0), 0);
            for (int axis = 0; axis < 2; axis++) {
                if (!lines[axis]) {
                    start.line(axis == 0, axis == 0 ? from.x() : from.y(), SHORTEST);
                }
            }
        }
        Start.Found found = start.find();
        Start.Guess best = found.best();
        if (best == null) {
            return wrong(
                    spec.marks().get(0), "both readings start from the same place; measure from another point too");
        }
        if (spec.marks().size() == 2 && spec.has(How.DISTANCE) && best.misfit() > BEYOND * BEYOND) {
            return cannotMeet();
        }
        Start.Guess rival = found.rival();
        return rival == null ? best.at() : chosen(best.at(), rival.at());
    }

    private @Nullable Vec2 cannotMeet() {
        Mark a = spec.marks().get(0);
        Mark b = spec.marks().get(1);
        String pair = "these cannot meet: '" + a.said() + "' (" + a.to().get(0) + ") and '" + b.said() + "' ("
                + b.to().get(0) + "); ";
        if (a.side() != null || b.side() != null) {
            return wrong(b, pair + "the one does not reach the other; measure both again");
        }
        double apart = at(a, 0).xy().minus(at(b, 0).xy()).norm();
        boolean shortfall = a.length() + b.length() < apart;
        return wrong(
                b,
                pair + a.to().get(0) + " and " + b.to().get(0) + " are " + say(apart) + " apart, "
                        + (shortfall
                                ? "more than both together"
                                : "less than their difference of " + say(Math.abs(a.length() - b.length())))
                        + "; measure all three again");
    }

    private @Nullable Vec2 chosen(Vec2 one, Vec2 other) {
        Side side = spec.side();
        if (side == null) {
            Vec2 d = one.minus(other);
            List<Side> two = Math.abs(d.y()) > Math.abs(d.x())
                    ? List.of(Side.ABOVE, Side.BELOW)
                    : List.of(Side.TOWARDS_DUMP, Side.AWAY_FROM_DUMP);
            problems.add(
                    spec.place(),
                    spec.path(),
                    "two places fit, " + both(one, other) + "; add 'side: "
                            + two.get(0).word() + "' or 'side: " + two.get(1).word() + "'");
            return null;
        }
        double d = (side.axis() == 0 ? one.x() - other.x() : one.y() - other.y()) * side.sign();
        double doubt = spec.marks().stream().mapToDouble(Mark::doubt).max().orElse(0);
        if (Math.abs(d) < BEYOND * doubt) {
            problems.add(
                    spec.place(),
                    spec.path(),
                    "the two places that fit are not told apart by 'side: " + side.word() + "', " + both(one, other)
                            + "; write 'side: "
                            + (side.axis() == 0
                                    ? "above' or 'side: below'"
                                    : "towards-dump' or 'side: away-from-dump'"));
            return null;
        }
        return d > 0 ? one : other;
    }

    private String both(Vec2 one, Vec2 other) {
        return say(one) + " and " + say(other);
    }

    private String say(Vec2 p) {
        return "[" + say(p.x()) + ", " + say(p.y()) + "]";
    }

    private String say(double length) {
        return PointReader.say(length, units);
    }

    private @Nullable Vec2 wrong(Mark mark, String message) {
        problems.add(mark.place(), mark.path(), message);
        return null;
    }

    /** What is said of a point that its readings leave open. */
    static String inLine(PointSpec spec, boolean upAndDown) {
        List<String> names =
                spec.marks().stream().flatMap(m -> m.to().stream()).distinct().toList();
        return "it lies in line with " + ErrorText.and(names) + ", so that it may be anywhere a little "
                + (upAndDown ? "up or down" : "towards the dump side or away from it")
                + "; measure it from a point off that line too";
    }
}
