// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.Pose;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.standing.Footprint.Mass;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.around.Frame;
import tipwright.design.around.Site;
import tipwright.geometry.Moments;
import tipwright.geometry.Vec3;
import tipwright.load.Contents;
import tipwright.load.EmptyTank;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** How the stowed unit hangs from its lifting eye. */
public final class HangCheck implements Check {
    private static final int REPEATS = 200;
    private static final double CLOSE = 1e-9;

    @Override
    public String id() {
        return "hang";
    }

    @Override
    public String title() {
        return "Lifting eye: hanging out of level";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : title() + ", " + part;
    }

    @Override
    public String shortly(Finding finding) {
        return "hanging from the lifting eye";
    }

    @Override
    public String rule() {
        return "The unit, tank stowed, hangs with its centre of mass under the lifting eye, empty and with the slurry shut in;"
                + " the slurry's surface stays level and so makes it hang further over.";
    }

    @Override
    public String formula() {
        return "tan(angle) = sqrt(dx^2 + dz^2) / (yEye - yG), repeated with the slurry level at that angle";
    }

    @Override
    public String source() {
        return "statics of a hanging body; the limit: common practice, no source";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.ABOUT_STANDING);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("the lifting eye above the centre of mass, or a second leg on the sling");
    }

    @Override
    public Text says(Finding finding) {
        return finding.allowed("lifted by its eye, " + finding.partId() + ", it hangs out of level by");
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Design design = analysis.design();
        Findings make = new Findings(this, design);
        Frame frame = design.frame();
        Vec3 eye = frame == null ? null : frame.liftingEye();
        if (eye == null) {
            return List.of(make.missing("", "frame.lifting-eye missing"));
        }
        if (WholeUnit.frame(design) == null) {
            return List.of(make.missing("", "frame.mass or frame.centre missing"));
        }
        Pose stowed = analysis.poses().get(0);
        return List.of(
                one(make, design, "empty", hang(analysis, stowed, eye, false)),
                one(make, design, "full", hang(analysis, stowed, eye, true)));
    }

    private static Finding one(Findings make, Design design, String part, @Nullable Vec3 up) {
        if (up == null) {
            return make.cannot(
                    part,
                    "the slurry and the lean of the tank did not come to rest in " + REPEATS
                            + " repetitions; look at how it hangs by hand");
        }
        double angle = Math.acos(Math.max(-1, Math.min(1, up.y())));
        Text note = angle < Math.toRadians(90)
                ? leans(up)
                : Text.words("the centre of mass is not below the eye: it turns over");
        Extreme at = Extreme.at(angle, design.tilt().from());
        return make.compare(part, angle, design.limits().hang(), 1, Kind.ANGLE, at, note);
    }

    /** Which sides hang low; what rounds to nothing is not said. */
    private static Text leans(Vec3 up) {
        List<Text> sides = new ArrayList<>();
        side(sides, up.x() < 0 ? "the dump end" : "the end away from the dump", Math.atan2(Math.abs(up.x()), up.y()));
        side(sides, up.z() < 0 ? "its left side" : "its right side", Math.atan2(Math.abs(up.z()), up.y()));
        return sides.isEmpty() ? Text.words("it hangs level") : Text.join(", ", sides);
    }

    private static void side(List<Text> sides, String name, double angle) {
        if (Math.toDegrees(angle) >= 0.05) {
            sides.add(Text.of("{} hangs {} low", Text.words(name), Text.degrees(angle, 1)));
        }
    }

    /** Unit vector from the centre of mass to the eye, which is up when it hangs at rest; null when it finds no rest. */
    private static @Nullable Vec3 hang(Analysis analysis, Pose stowed, Vec3 eye, boolean full) {
        Design design = analysis.design();
        WholeUnit unit = new WholeUnit(analysis);
        Contents flat = new Contents(design);
        EmptyTank empty = EmptyTank.of(design, flat.solid());
        Vec3 up = new Vec3(0, 1, 0);
        for (int i = 0; i < REPEATS; i++) {
            Mass tank = full ? filled(design, empty, up, stowed) : new Mass(empty.mass(), empty.centroid());
            Vec3 next = eye.minus(centre(unit.at(stowed, tank.kg(), tank.at(), null)))
                    .unit();
            boolean settled = next.minus(up).norm() < CLOSE;
            up = next;
            if (settled || !full || up.y() < 0.1) {
                return up;
            }
        }
        return null;
    }

    private static Mass filled(Design design, EmptyTank empty, Vec3 up, Pose stowed) {
        Site leaning = design.site().leaning(Math.atan2(-up.x(), up.y()), Math.atan2(-up.z(), up.y()));
        Contents contents = new Contents(design.withSite(leaning));
        Moments slurry = contents.liquid(stowed.tilt(), contents.slurryVolume(), Double.NaN)
                .moments();
        double density = design.slurry().mixtureDensity();
        double kg = empty.mass() + density * slurry.volume();
        Vec3 first = empty.centroid().times(empty.mass()).plus(slurry.first().times(density));
        return new Mass(kg, first.times(1 / kg));
    }

    private static Vec3 centre(List<Mass> masses) {
        double kg = 0;
        Vec3 first = Vec3.ZERO;
        for (Mass m : masses) {
            kg += m.kg();
            first = first.plus(m.at().times(m.kg()));
        }
        return first.times(1 / kg);
    }
}
