// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import java.io.IOException;
import java.io.Writer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Stop;
import tipwright.check.HowFull;
import tipwright.check.Part;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Sense;
import tipwright.check.rule.Verdict;
import tipwright.design.joint.Pivot;
import tipwright.design.joint.Support;
import tipwright.doubt.SampledShare;
import tipwright.doubt.Sureness;
import tipwright.load.Emptying;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.remedy.TriedFixes;

/** A result as JSON under names that stay. Source of the form: RFC 8259. */
public final class JsonReport {
    /** Version of the form. 2: demand is what the job asks and capacity what is there in every check; the verdict is in two parts. */
    private static final int FORMAT = 2;

    private static final double MM = 1000;
    private static final double LITRES = 1000;

    private final Checked checked;
    private final Result result;
    private final JsonFields json;

    private JsonReport(Checked checked, JsonFields json) {
        this.checked = checked;
        this.result = checked.result();
        this.json = json;
    }

    /** Writes a result, in ASCII, a row of figures on each line; does not close the writer. */
    public static void write(Checked checked, Writer out) throws IOException {
        JsonFactory factory = JsonFactory.builder()
                .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
                .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
                .build();
        try (JsonGenerator generator = factory.createGenerator(out)) {
            new JsonReport(checked, new JsonFields(generator)).all();
            generator.writeRaw('\n');
        }
    }

    private void sureness(@Nullable Sureness sure) throws IOException {
        if (sure == null) {
            return;
        }
        json.start("how_sure");
        json.number("passes", sure.passes());
        json.number("samples", sure.samples());
        SampledShare share = SampledShare.of(sure.passes(), sure.samples());
        json.number("share_at_least", share.low());
        json.number("share_at_most", share.high());
        json.text("governing", sure.governing());
        json.number("used", sure.used());
        json.number("standard_deviation", sure.spread());
        json.each("influences", sure.influences(), influence -> {
            json.text("value", influence.value().path());
            json.text("written", influence.value().said());
            json.number("standard_doubt_si", influence.value().doubt());
            json.number("change_by_one_standard_doubt", influence.change());
        });
        json.end();
    }

    private void all() throws IOException {
        Analysis analysis = result.analysis();
        json.start();
        json.number("format", FORMAT);
        json.text("design", analysis.design().name());
        json.text("verdict", result.verdict().word());
        json.each("parts", result.parts().both(), this::part);
        json.list("cases_skipped", result.parts().skipped());
        json.list(
                "warnings",
                Stream.concat(checked.mistakes().stream().map(Text::metric), checked.warnings().stream())
                        .toList());
        sureness(checked.sure());
        new JsonRows(json).write(analysis);
        new JsonPeaks(json).write(result);
        json.each("checks", result.findings(), this::check);
        fixes();
        toBuy();
        new JsonCycle(json).write(result.timing());
        json.list(
                "not_checked",
                result.findings().stream()
                        .filter(f -> f.verdict() == Verdict.NOT_CHECKED)
                        .map(Finding::id)
                        .toList());
        howFull(result.howFull());
        emptying(analysis.emptying());
        stop(analysis.stop());
        json.each(
                "bearings",
                analysis.design().pivot().bearings(),
                b -> bearing(b, analysis.design().pivot()));
        json.each("assumptions", checked.taken(), a -> {
            json.text("key", a.path());
            json.text("value", a.value());
        });
        json.list("cautions", Cautions.all());
        json.end();
    }

    private void part(Part part) throws IOException {
        Finding worst = part.governing();
        json.text("part", part.occasion().word());
        json.text("verdict", part.verdict().word());
        json.number("made", part.made());
        json.number("fail", part.count(Verdict.FAIL));
        json.number("close", part.count(Verdict.CLOSE));
        json.number("not_checked", part.count(Verdict.NOT_CHECKED));
        json.text("governing", worst == null ? null : worst.id());
        json.text("says", new VerdictText(result, UnitSystem.METRIC).governing(part));
        json.each("checks", part.findings(), f -> {
            json.text("id", f.id());
            json.text("verdict", f.verdict().word());
            json.number("utilisation", f.utilisation());
            json.number("tilt_deg", Math.toDegrees(f.tilt()));
            json.text("case", f.loadCase());
            json.missing("no number governs");
        });
    }

    private void check(Finding f) throws IOException {
        JsonUnit unit = JsonUnit.of(f.kind());
        MotionDirection direction = f.worst().direction();
        json.text("id", f.id());
        json.text("title", f.title());
        int bearing = Findings.bearing(f);
        if (bearing >= 0) {
            json.text("side", result.analysis().design().pivot().side(bearing));
        }
        boolean least = f.sense() == Sense.AT_LEAST;
        json.number("demand", unit.of(least ? f.capacity() : f.demand()));
        json.number("capacity", unit.of(least ? f.demand() : f.capacity()));
        json.text("unit", unit.name());
        json.text("sense", f.sense().word());
        json.number("factor", f.factor());
        json.number("utilisation", f.utilisation());
        json.number("tilt_deg", Math.toDegrees(f.tilt()));
        json.text("case", f.loadCase());
        json.text("direction", direction == null ? null : direction.word());
        json.text("verdict", f.verdict().word());
        json.text("source", f.source());
        String note = f.verdict() == Verdict.NOT_CHECKED
                ? "not checked: " + f.note().metric()
                : f.note().metric();
        json.text("note", note);
        json.missing(f.verdict() == Verdict.NOT_CHECKED ? note : "not defined for this check");
    }

    /** What was tried and fixes something; null when nothing was looked for. */
    private void fixes() throws IOException {
        TriedFixes fixes = checked.fixes();
        if (!fixes.looked()) {
            json.nothing("fixes");
            return;
        }
        json.start("fixes");
        json.flag("complete", fixes.complete());
        json.each("tried", fixes.all(), fix -> {
            json.text("change", fix.said().metric());
            json.list("fixes", fix.fixes().stream().sorted().toList());
            json.list("then_close", fix.close().stream().sorted().toList());
            json.flag("then_every_check_passes", fix.everything());
        });
        json.end();
    }

    private void toBuy() throws IOException {
        ShoppingList list = new ShoppingList(result);
        json.each("to_buy", checked.sizes(), a -> {
            json.text("what", list.what(a));
            json.list("keys", a.written().keySet().stream().sorted().toList());
            json.text("size", a.taken());
            json.text("passes_in_normal_dump", a.normal());
            json.text("passes_if_something_goes_wrong_too", a.always());
            json.text("because", a.because().isEmpty() ? null : a.because().metric());
            json.list("cannot_tell", a.unknown());
            json.each("seller_must_state", list.figures(a), figure -> {
                JsonUnit unit = JsonUnit.of(figure.kind());
                json.text("figure", figure.name());
                if (!figure.side().isEmpty()) {
                    json.text("side", figure.side());
                }
                json.text("bound", figure.bound().word());
                json.number("value", unit.of(figure.si()));
                json.text("unit", unit.name());
            });
        });
    }

    private void bearing(Support support, Pivot pivot) throws IOException {
        json.number("z_mm", support.z() * MM);
        json.text("side", pivot.side(pivot.bearings().indexOf(support)));
        json.numbers("base", support.base().x(), support.base().y());
    }

    private void howFull(@Nullable HowFull most) throws IOException {
        if (most == null) {
            json.nothing("how_full");
            return;
        }
        json.start("how_full");
        json.number("fill_percent", most.fill() * 100);
        json.number("volume_l", most.volume() * LITRES);
        json.number("mass_kg", most.mass());
        json.number("level_mm", most.level() * MM);
        json.number("density_when_full_kg_m3", most.densityWhenFull());
        json.text("limit", most.limit());
        json.each("bands", most.bands(), band -> {
            json.number("from_percent", band.from() * 100);
            json.number("to_percent", band.to() * 100);
            json.text("limit", band.limit());
        });
        json.missing("filled to the rim it fails even with plain water");
        json.end();
    }

    private void emptying(Emptying emptying) throws IOException {
        json.start("emptying");
        json.number("allowed_percent", result.analysis().design().limits().residue() * 100);
        residue("liquid", emptying.liquid());
        residue("cake", emptying.cake());
        json.end();
    }

    private void residue(String name, Emptying.@Nullable Residue left) throws IOException {
        if (left == null) {
            json.nothing(name);
            return;
        }
        json.start(name);
        json.number("residual_l", left.volume() * LITRES);
        json.number("residual_percent", left.share() * 100);
        Double tilt = left.tiltNeeded();
        json.number("tilt_needed_deg", tilt == null ? Double.NaN : Math.toDegrees(tilt));
        json.missing("no tilt up to 180 deg empties it");
        json.end();
    }

    private void stop(@Nullable Stop stop) throws IOException {
        if (stop == null) {
            json.nothing("stop");
            return;
        }
        json.start("stop");
        json.number("tilt_deg", Math.toDegrees(stop.tilt()));
        json.text("why", stop.why());
        json.end();
    }
}
