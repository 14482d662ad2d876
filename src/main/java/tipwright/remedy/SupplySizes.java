// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.key.Copy;
import tipwright.design.supply.Battery;
import tipwright.design.supply.Cable;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;

/** Thicker cables and other fuses; never a fuse larger than what cable and actuators are rated for. */
final class SupplySizes implements Proposer {
    @Override
    public String asked(Finding f) {
        return switch (f.id()) {
            case "electrical/voltage-drop" -> "cable";
            case "electrical/fuse" -> "fuse up";
            case "electrical/cable" -> "fuse down";
            case "what-if/burst-hose" -> "lock valve";
            default -> "";
        };
    }

    @Override
    public List<List<Proposal>> changes(Analysis analysis, String asked, Shop shop) {
        Design design = analysis.design();
        List<Proposal> all = new ArrayList<>();
        if (asked.equals("lock valve")) {
            all.add(new Proposal(
                    Text.words("a lock valve on the cylinder port"),
                    0.1,
                    Copy.with(design, "whatIf", Copy.with(design.whatIf(), "lockValve", true))));
        } else if (design.supply() instanceof Battery battery) {
            if (asked.equals("cable")) {
                cables(design, battery, shop, all);
            } else {
                fuses(design, battery, asked.equals("fuse up"), shop, all);
            }
        }
        return all.stream().map(List::of).toList();
    }

    private static void cables(Design design, Battery battery, Shop shop, List<Proposal> all) {
        Cable cable = battery.cable();
        if (cable == null) {
            return;
        }
        for (SoldSize s : SoldSize.of(SoldSize.Series.CABLE, shop.units())) {
            boolean gauge = shop.units() == UnitSystem.US;
            Cable put = Copy.with(Copy.with(cable, "awg", gauge ? s.size() : null), "section", gauge ? null : s.size());
            if (put.area() > cable.area() * 1.001) {
                all.add(new Proposal(
                        Text.words("a cable of " + s.label() + " in place of ")
                                .plus(Text.amount(cable.area(), Kind.AREA, "mm2", 1)),
                        0.05 * put.area() / cable.area(),
                        Copy.with(design, "supply", Copy.with(battery, "cable", put))));
            }
        }
    }

    private static void fuses(Design design, Battery battery, boolean up, Shop shop, List<Proposal> all) {
        Double fuse = battery.fuse();
        double most = bears(design, battery.cable());
        if (fuse == null || Double.isNaN(most)) {
            return;
        }
        List<SoldSize> sizes = new ArrayList<>(SoldSize.of(SoldSize.Series.FUSE, shop.units()));
        if (!up) {
            Collections.reverse(sizes);
        }
        for (SoldSize s : sizes) {
            if (up ? s.size() > fuse && s.size() <= most : s.size() < fuse) {
                all.add(new Proposal(
                        Text.words("a fuse of " + s.label() + " in place of ").plus(Text.amount(fuse, Kind.CURRENT)),
                        0.02 * Math.abs(Math.log(s.size() / fuse)),
                        Copy.with(design, "supply", Copy.with(battery, "fuse", s.size()))));
            }
        }
    }

    /**
     * The largest fuse that cable and actuators bear, A: no more than the cable's rating and the rated current of all actuators
     * together. Not a number where one of them is not known. Source: common practice, no source.
     */
    static double bears(Design design, @Nullable Cable cable) {
        Double rating = cable == null ? null : cable.rating();
        double rated = 0;
        for (PlacedActuator p : design.drive().actuators()) {
            ElectricActuator.Current current = p.actuator() instanceof ElectricActuator e ? e.current() : null;
            rated += current == null ? Double.NaN : current.rated();
        }
        return rating == null ? Double.NaN : Math.min(rating, rated);
    }
}
