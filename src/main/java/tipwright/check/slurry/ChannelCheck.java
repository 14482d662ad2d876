// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.TimedCheck;
import tipwright.check.rule.Trait;
import tipwright.design.Limits;
import tipwright.design.around.Channel;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.time.Cycle;
import tipwright.time.Moment;
import tipwright.time.Timing;

/** Whether what runs out finds room. */
public final class ChannelCheck implements TimedCheck {
    @Override
    public String id() {
        return "channel";
    }

    @Override
    public String title() {
        return "Channel or pit: overflow";
    }

    @Override
    public String rule() {
        return "Whatever the channel cannot carry off straight away must fit in the pit; with no room stated, the largest"
                + " outflow is within what it carries. Without a channel stated there is nothing to check.";
    }

    @Override
    public String formula() {
        return "d(stored)/dt = Q - capacity, never below nothing; largest stored <= holds";
    }

    @Override
    public String source() {
        return "balance of volumes; outflow by the strip integral of Torricelli's law";
    }

    @Override
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.RECEIVER);
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL, Trait.NEEDS_TIME, Trait.OF_NORMAL_DUMP);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a wider or deeper channel, a smaller opening, or a slower tilt");
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        Channel channel = analysis.design().channel();
        if (channel == null) {
            return List.of();
        }
        Findings make = new Findings(this, analysis.design());
        Cycle cycle = timing.dump();
        if (cycle == null) {
            return List.of(make.untimed("", timing));
        }
        Extreme peak = cycle.largest(Moment::discharge);
        Text note = Text.of(
                "{} at most, against {} that it carries away",
                Text.amount(peak.value(), Kind.FLOW, "L/s", 1),
                Text.amount(channel.capacity(), Kind.FLOW, "L/s", 1));
        if (channel.holds() <= 0) {
            return List.of(make.compare("", peak.value(), channel.capacity(), 1, Kind.FLOW, peak, note));
        }
        return List.of(make.compare("", stored(cycle, channel), channel.holds(), 1, Kind.VOLUME, peak, note));
    }

    private static double stored(Cycle cycle, Channel channel) {
        double stored = 0;
        double most = 0;
        for (int i = 1; i < cycle.moments().size(); i++) {
            Moment before = cycle.moments().get(i - 1);
            Moment now = cycle.moments().get(i);
            double in = Math.max(0, before.volume() - now.volume());
            stored = Math.max(0, stored + in - channel.capacity() * (now.time() - before.time()));
            most = Math.max(most, stored);
        }
        return most;
    }
}
