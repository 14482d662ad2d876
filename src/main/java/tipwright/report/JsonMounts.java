// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.around.CrossMember;
import tipwright.design.drive.Drive;
import tipwright.design.joint.Fastening;
import tipwright.doubt.SampledShare;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Skeleton;
import tipwright.placement.Answer;
import tipwright.placement.OtherChecks;
import tipwright.placement.PartsBox;
import tipwright.placement.Placement;
import tipwright.placement.Tolerance;

/**
 * What 'actuators', 'place' and 'tolerance' found, as JSON under names that stay; the schemas lie beside the shipped designs. Source
 * of the form: RFC 8259.
 */
public final class JsonMounts {
    /** Of the form; it goes up when a name changes or goes. */
    private static final int FORMAT = 1;

    private static final double MM = 1000;

    private JsonMounts() {}

    private interface Body {
        void write(JsonFields json) throws IOException;
    }

    /**
     * Actuators that were tried.
     *
     * @param leftOut parts that were not, and why not
     */
    public static String actuators(Design design, List<PartsBox.Tried> tried, Map<String, String> leftOut) {
        return text("actuators", design, json -> {
            json.number("weld_tolerance_mm", PartsBox.weld(design) * MM);
            json.each("actuators", tried, t -> {
                Finding most = t.governing();
                json.text("name", t.actuator().name());
                json.flag("own", t.own());
                json.text("verdict", t.verdict().word());
                actuator(json, t.actuator().actuator());
                Double price = t.actuator().actuator().price();
                json.number("price", price == null ? Double.NaN : price);
                json.number("dump_s", t.dump());
                json.number("used", most == null ? Double.NaN : most.utilisation());
                json.text("governing", most == null ? null : most.id());
                json.number("used_with_welds_off", t.weldsOff());
                json.list("fails", t.failing().stream().map(Finding::id).toList());
                json.missing("not known, or it fails");
            });
            json.each("not_tried", List.copyOf(leftOut.entrySet()), e -> {
                json.text("name", e.getKey());
                json.text("why", e.getValue());
            });
        });
    }

    /** Places that were found. */
    public static String place(Design design, Placement found) {
        return text("place", design, json -> {
            json.number("candidates", (double) found.candidates());
            json.number("fitting", (double) found.fitting());
            json.flag("stopped", found.stopped());
            json.list("notes", found.notes());
            json.list("misses", found.misses());
            json.each("answers", found.answers(), a -> answer(json, a));
        });
    }

    private static void answer(JsonFields json, Answer a) throws IOException {
        Design put = a.design();
        json.list(
                "best_for",
                a.aims().stream()
                        .map(aim -> aim.name().toLowerCase(Locale.ROOT))
                        .toList());
        json.text("actuator", a.candidate().actuator().name());
        json.number("used", a.candidate().utilisation());
        json.text("governing", a.governing() == null ? null : a.governing().id());
        Skeleton skeleton = put.drive().skeleton(put.pivot().at());
        json.number(
                "pin_to_pin_stowed_mm",
                skeleton.actuator().onB().minus(skeleton.actuator().onA()).norm() * MM);
        json.list("fails", a.failed().stream().map(Finding::id).toList());
        Map<String, Vec2> places = put.drive().places(put.pivot().at());
        json.each("places", List.copyOf(places.entrySet()), e -> {
            json.text("name", e.getKey());
            json.number("x_mm", e.getValue().x() * MM);
            json.number("y_mm", e.getValue().y() * MM);
            json.number("from_pivot_mm", e.getValue().minus(put.pivot().at()).norm() * MM);
        });
        json.each("brackets", brackets(put), bracket -> {
            json.text("joint", bracket.joint);
            json.text("part", bracket.part);
            json.number("x_mm", bracket.at.x() * MM);
            json.number("y_mm", bracket.at.y() * MM);
            json.number("z_mm", bracket.at.z() * MM);
        });
    }

    /** Where one piece of what holds a joint is, m: weld, bolts, seat or cross member, as in the design file. */
    private record Bracket(String joint, String part, Vec3 at) {}

    private static List<Bracket> brackets(Design put) {
        List<Bracket> all = new ArrayList<>();
        for (Fastening f : put.fastenings()) {
            f.places().forEach((piece, at) -> all.add(new Bracket(f.joint(), piece, at)));
        }
        CrossMember member = put.frame() == null ? null : put.frame().crossMember();
        if (member != null) {
            Vec2 at = member.at();
            all.add(new Bracket(Drive.FRAME_PIN, "cross-member", new Vec3(at.x(), at.y(), 0)));
        }
        return all;
    }

    /** What welds that are off do. */
    public static String tolerance(Design design, Tolerance t, OtherChecks others) {
        return text("tolerance", design, json -> {
            json.number("tolerance_mm", t.tolerance() * MM);
            json.number("used", t.utilisation());
            json.text("governing", t.governing().words());
            json.number("used_in_worst_corner", t.worstCorner());
            json.text("governing_in_worst_corner", t.cornerLimit().words());
            json.number("runs", t.runs());
            json.number("chance_of_failing", t.chance());
            SampledShare sure = SampledShare.of(t.chance(), t.runs());
            json.number("chance_at_least", sure.low());
            json.number("chance_at_most", sure.high());
            json.number("largest_tolerance_mm", t.largest() * MM);
            json.each("swings", t.swings(), s -> {
                json.text("name", s.name());
                json.flag("place", s.place());
                json.number("by", s.place() ? s.size() * MM : s.size());
                json.number("used_lower", s.low());
                json.number("used_higher", s.high());
                json.missing("it cannot be computed there");
            });
            json.number("worst_ways", others.tried());
            json.each("in_worst_ways", others.all(), o -> {
                json.text("id", o.drawn().id());
                json.number("used", o.used());
                json.number("used_as_in_file", o.drawn().utilisation());
                json.number("fails", o.fails());
                json.missing("the check cannot tell, or no share tells its verdict");
            });
        });
    }

    private static void actuator(JsonFields json, Actuator a) throws IOException {
        Double volt = a instanceof ElectricActuator e ? e.voltage() : null;
        json.number("voltage_v", volt == null ? Double.NaN : volt);
        json.number("closed_mm", a.closed() * MM);
        json.number("stroke_mm", a.stroke() * MM);
        json.number("push_n", a.ratedPush());
        json.number("pull_n", a.ratedPull());
    }

    private static String text(String kind, Design design, Body body) {
        StringWriter out = new StringWriter();
        JsonFactory factory =
                JsonFactory.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();
        try (JsonGenerator generator = factory.createGenerator(out)) {
            JsonFields json = new JsonFields(generator);
            json.start();
            json.number("format", FORMAT);
            json.text("kind", kind);
            json.text("design", design.name());
            body.write(json);
            json.missing("it cannot be computed");
            json.end();
            generator.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }
}
