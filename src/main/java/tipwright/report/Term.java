// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import tipwright.design.tank.CaseName;

/**
 * A word that the program prints, and what it means.
 *
 * @param word as printed
 * @param also other words for it: old ones, those of the JSON and of the design file
 * @param meaning a sentence or two
 */
public record Term(String word, List<String> also, String meaning) {
    private static final List<Term> OWN = List.of(
            of("passes", "The part has at least what the job asks for.", "pass"),
            of(
                    "close",
                    "It passes, but with little to spare, or it may happen without harm: the words beside it say which."),
            of("fails", "The job asks for more than there is.", "fail"),
            of(
                    "cannot tell",
                    "A size is missing, so the check could not run. It does not count as passed.",
                    "not checked"),
            of("verdict", "The worst of all checks: passes, close or fails."),
            of(
                    "normal dump",
                    "All goes as meant: the outlet opens when the file says, and the load leaves as it can.",
                    "normal"),
            of(
                    "if something goes wrong",
                    "The outlet stays shut, one actuator carries everything, a hose bursts, power is lost, a wheel sinks.",
                    "what-if",
                    "something goes wrong"),
            of(
                    "?",
                    "In a design file: which size or part do I need? 'check' finds the smallest that is sold and passes, and prints"
                            + " it under 'To buy'. It may stand for actuator, bearing, the bore of a cylinder or bush, the"
                            + " diameter of a pin or shaft, the leg of a weld, the section or awg of a cable, and the fuse.",
                    "to buy",
                    "shopping list",
                    "question mark"),
            of(
                    "the seller must state",
                    "Figures that have to stand in the maker's list or on the part's plate: at least as much, or at most, as"
                            + " printed beside them.",
                    "seller"),
            of("fix", "What to change so that the check passes.", "to mend", "mend"),
            of("needs", "What the job asks of the part.", "demand"),
            of("has", "What the part gives, after the safety factor. More is always better.", "capacity"),
            of("used", "How much of what there is the job asks for. Over 100 % fails.", "utilisation", "utilization"),
            of("worst at", "The tilt and the load at which the check is closest to failing.", "where"),
            of("factor", "What the rating is divided by, for safety.", "safety factor"),
            of("stowed", "The tank down, as it travels.", "home"),
            of("full tilt", "The tank as far over as the file says it goes.", "end"),
            of("tilt", "How far the tank is turned from where it is drawn."),
            of("pin to pin", "Length of the actuator between the centres of its two pins.", "length"),
            of("closed", "The shortest pin-to-pin length of the actuator.", "drawn in", "retracted"),
            of("fully out", "The longest pin-to-pin length of the actuator.", "drawn out", "extended"),
            of("stroke used", "How much of the actuator's stroke is out.", "stroke"),
            of("stroke left", "How much further the actuator could go before it hits its end."),
            of(
                    "lever arm",
                    "Square distance from the pivot to the line through the actuator. The longer it is, the less force.",
                    "arm",
                    "moment arm"),
            of(
                    "pushing angle",
                    "Angle between the actuator and the line from the pivot to its tank pin. 90 is best.",
                    "angle",
                    "transmission angle",
                    "transmission"),
            of(
                    "goes over by itself",
                    "The load passes over the pivot, and the tank starts to pull the actuator along.",
                    "over-centre",
                    "going over by itself"),
            of("push", "The actuator is pressed together.", "+"),
            of("pull", "The actuator is stretched.", "-"),
            of("raising", "While the tank goes up, friction against it.", "going up"),
            of("lowering", "While the tank comes down, friction against it.", "coming down"),
            of("at rest", "While the tank stands still; friction left out.", "stopped"),
            of(
                    "bearing",
                    "One of the two that carry the pivot shaft, by its number in the design file.",
                    "bearing load"),
            of("pushes", "Where the bearing's load goes, seen from the base of its housing.", "load goes"),
            of("into its base", "The load presses the housing onto what it is bolted to.", "onto base"),
            of("at an angle", "The load presses the housing onto its base at 30 to 60 deg.", "slanting"),
            of("sideways", "The load pushes the housing along its base."),
            of("off its base", "The load pulls the housing off its base: its bolts and its cap carry it.", "off base"),
            of("most loaded bearing", "The bearing that carries most."),
            of("pillow-block bearing", "A ball bearing in a housing with a foot.", "ball insert"),
            of("C0", "Static load rating of a bearing, from its maker's list.", "static load rating"),
            of(
                    "counterbalance valve",
                    "A valve at the cylinder that lets oil out only above its set pressure, so that the load cannot run away.",
                    "counterbalance"),
            of("throttle", "A narrow place on the oil's way that holds its flow back."),
            of("net section", "What is left of a plate beside the hole."),
            of("C", "Dynamic load rating of a bearing, from its maker's list.", "dynamic load rating"),
            of("shock factor", "What lands all at once counts as this many times its weight.", "shock"),
            of(
                    "seat",
                    "Where a bracket or the cradle sits on the tank's wall: 'seat' of a fastening in the design file.",
                    "bracket on the tank"),
            of(
                    "dished end",
                    "A rounded end of a tank: torispherical (a flat crown with a tight bend, the knuckle, at the rim), ellipsoidal or"
                            + " hemispherical (half a ball).",
                    "crown",
                    "knuckle",
                    "head",
                    "heads",
                    "torispherical",
                    "ellipsoidal",
                    "semi-ellipsoidal",
                    "hemispherical"),
            of("fill", "How much may be in the tank with every check passing."),
            of("rim", "The highest level at which nothing runs over, tank stowed.", "brim"),
            of("time", "From stowed up to full tilt, drained, and back down."),
            of("duty", "Share of the time that the actuator may run.", "on-time"),
            of("vent", "The opening through which air gets in while the tank drains."),
            of("grit", "The solids of the slurry, once settled.", "settled solids", "cake", "solids"),
            of("slurry", "What is in the tank: water with solids in it."),
            of("cradle", "What the tank lies in, and which turns with it."),
            of("saddle", "A rest that reaches round a round tank from below.", "saddles"),
            of("tolerance", "How far a place or a size may be off.", "weld tolerance"),
            of("points", "Hundredths of what may be used: from 76 % to 79 % used is 3 points more."),
            of(
                    "off",
                    "In the list of 'tipwright actuators': what is used at most when the pins and the pivot sit a little off, the worst way."),
            of("linkage", "Links, cranks and pins between the actuator and the tank.", "linkages", "mechanism"),
            of("zone", "Where a pin may go: under mounts: in the design file.", "zones"),
            of("candidate", "One set of places of the pins that 'tipwright place' tries.", "candidates"),
            of("seed", "The number that random choices start from: with the same one the answer is the same."),
            of("stress", "Force on each square millimetre or square inch of a part."),
            of("yield", "The stress from which steel stays bent.", "yields", "yielding"),
            of("tensile strength", "The stress at which steel tears.", "strength", "ultimate"),
            of(
                    "bending",
                    "A force across a part bends it: one side is stretched, the other pressed together.",
                    "bend",
                    "bent"),
            of("shear", "A force across a pin or bolt that would cut it through."),
            of("combined stress", "Bending, shear and twist of a part taken together.", "combined"),
            of("moment", "How hard something is turned or bent: force times lever arm.", "moments", "torque", "couple"),
            of("torsion", "Twist of a tube or shaft about its own length.", "twist", "twisted", "twisting"),
            of("brittle fracture", "Steel that breaks without bending first, in hard frost.", "fracture", "brittle"),
            of("pitting", "Small deep holes that rust eats."),
            of(
                    "fillet weld",
                    "A weld in the corner between two parts. Its leg is what you measure along a part; its throat, the thinnest way through it, is 0.7 of the leg.",
                    "fillet",
                    "leg",
                    "throat"),
            of(
                    "detail category",
                    "Number of a welded detail in the rules for fatigue: the swing of the stress, in MPa, that it bears two million times.",
                    "category"),
            of("critical depth", "How deep a stream is where it runs freely over an edge."),
            of("cheek", "One of the two plates beside a lug that hold its pin.", "cheeks"),
            of("clevis", "A fork whose pin goes through both sides.", "fork"),
            of("cross member", "The tube across the frame that carries the frame pin."),
            of("footprint", "The outline around the points that the machine stands on."),
            of(
                    "telescopic cylinder",
                    "A cylinder of several stages that slide out of each other.",
                    "telescopic",
                    "stage",
                    "stages"),
            of("sheave", "A grooved wheel that a rope runs over.", "sheaves"),
            of(
                    "pocket",
                    "A hollow inside the tank, behind a ridge, that keeps slurry when the tank tips.",
                    "pockets",
                    "ridge",
                    "sump"),
            of("pawl", "The catch that keeps a winch from turning back."),
            of("splice", "A rope's end that is woven back into the rope."),
            of(
                    "gauge",
                    "A number for the thickness of sheet steel, 16 ga being 0.06 in (1.5 mm), or of a wire (AWG). The higher, the thinner.",
                    "ga"),
            of("schedule", "A number for the wall of a steel pipe of a nominal size: 'schedule 40'.", "schedules"),
            of("prism", "A tank that has the same outline in the side view all the way across."),
            of("dead centre", "The actuator points straight at the pivot and cannot turn the tank."),
            of("stub", "The end of a pivot shaft that does not go all the way through.", "stub shaft"),
            of("radial", "Square to a shaft's length."),
            of(
                    "hash",
                    "Letters and figures that change as soon as anything in a file does: they show whether two files are the same.",
                    "hashes",
                    "sha"),
            of("hole crushing", "The pin presses the edge of its hole out of shape.", "crushing"),
            of("tear-out", "The pin tears out of the lug through its end.", "tear out", "tear"),
            of(
                    "static equivalent load",
                    "One load across a bearing that is as hard on it as its loads across and along the shaft together.",
                    "equivalent",
                    "equivalent load"),
            of(
                    "recoil",
                    "The tank springs up when its load leaves at once, and pulls at the actuator or presses on it."),
            of("sag", "How far a beam bends under its load.", "sags"),
            of(
                    "N",
                    "Newton, a force: about the weight of 0.1 kg. 1 kN is the weight of about 102 kg, or 225 lbf.",
                    "kN",
                    "newton"),
            of("lbf", "Pound-force: the weight of one pound.", "pound-force"),
            of(
                    "MPa",
                    "Stress or pressure: one newton on a square millimetre. It is 145 psi or 10 bar; 1 MPa is 1000 kPa.",
                    "kPa",
                    "Pa",
                    "GPa"),
            of("psi", "Pounds on a square inch; 1 ksi is 1000 psi.", "ksi"),
            of("gpm", "US gallons a minute."),
            of("frame pin", "The pin that holds the actuator to the frame."),
            of("tank pin", "The pin that holds the actuator to the tank.", "moving pin", "rod pin"));

    /** Copies the list. */
    public Term {
        also = List.copyOf(also);
    }

    private static Term of(String word, String meaning, String... also) {
        return new Term(word, List.of(also), meaning);
    }

    /** Every word that the program prints as a term of its own: the load cases first. */
    public static List<Term> all() {
        List<Term> all = new ArrayList<>();
        for (CaseName c : CaseName.values()) {
            all.add(new Term(c.shown(), List.of(c.key()), c.about()));
            if (!c.poured().equals(c.shown())) {
                all.add(new Term(c.poured(), List.of(), c.aboutPoured()));
            }
        }
        all.add(new Term(CaseName.NEVER_LETS_GO, List.of(CaseName.STUCK), CaseName.ABOUT_NEVER));
        all.addAll(OWN);
        return all;
    }

    /** The term of a word, new or old. */
    public static Optional<Term> find(String asked) {
        String word = asked.strip().toLowerCase(Locale.ROOT);
        return all().stream()
                .filter(t -> t.word.equalsIgnoreCase(word) || t.also.stream().anyMatch(a -> a.equalsIgnoreCase(word)))
                .findFirst();
    }

    /** The terms of several words that a word is one of: 'section' in 'net section'. */
    public static List<Term> within(String asked) {
        String word = asked.strip().toLowerCase(Locale.ROOT);
        return all().stream()
                .filter(t -> Prose.has(t.word, word) || t.also.stream().anyMatch(a -> Prose.has(a, word)))
                .toList();
    }

    /** 'worst at: the tilt and ...', for each of these, in a paragraph. */
    static List<String> legend(List<String> words) {
        Set<String> lines = new LinkedHashSet<>();
        for (String word : words) {
            find(word).ifPresent(t -> lines.addAll(Prose.wrap("  ", t.word + ": " + t.meaning)));
        }
        return List.copyOf(lines);
    }
}
