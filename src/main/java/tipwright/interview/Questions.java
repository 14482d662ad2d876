// SPDX-License-Identifier: Apache-2.0
package tipwright.interview;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import tipwright.design.tank.UsualSlurry;
import tipwright.interview.Question.Reader;
import tipwright.quantity.Kind;
import tipwright.quantity.QuantityException;

/** All questions, in the order in which they are asked; which of them are asked follows from the answers before. */
final class Questions {
    private static final String MARKED =
            "Make one mark on the frame that the tape reaches from everywhere. Two readings from it: along towards the dump end,"
                    + " then up; a minus for the other way, or down.";
    private static final Function<Answers, String> BOTH = units(
            "Along and up from the mark; or from two known places: '55 in from mark, 12 in from pivot, above'.",
            "Along and up from the mark; or from two known places: '1400 mm from mark, 300 mm from pivot, above'.");

    static final List<Question> ALL = List.of(
            ask("name", "What is the machine called?", "Any name.", a -> "My tank", Questions::always, Measure.line()),
            ask(
                    "unit",
                    "What does your tape show: in or mm?",
                    "A bare number is taken in it.",
                    a -> "in",
                    Questions::always,
                    Measure.word("in", "mm")),
            ask(
                    "shape",
                    "What is the tank: round, tub or drum?",
                    "round: a shell that lies lengthwise, dump end flat with a door. tub: open on top, straight sides. drum: stands"
                            + " upright, open on top.",
                    a -> "round",
                    Questions::always,
                    Measure.word("round", "tub", "drum")),
            ask(
                    "around",
                    "How far is it around the shell?",
                    "The tape round the outside, square to the shell.",
                    usual(Usual::around),
                    Questions::shell,
                    Measure.size()),
            ask(
                    "length",
                    "How long is the straight shell?",
                    "Outside, from weld seam to weld seam, without the dished head.",
                    units("50 in", "1270 mm"),
                    Questions::round,
                    Measure.size()),
            ask(
                    "dish",
                    "Is the front head flat, or how deep is its dish?",
                    "'flat', or the depth: a straight edge across the head, the tape from it to the weld seam.",
                    usual(Usual::dish),
                    Questions::round,
                    Questions::dish),
            ask(
                    "height",
                    "How high is the drum?",
                    "From the floor of the drum to its rim, outside.",
                    units("34 5/8 in", "880 mm"),
                    Questions::drum,
                    Measure.size()),
            ask(
                    "width",
                    "How wide is the tub across?",
                    "Outside, along the pivot.",
                    units("40 in", "1000 mm"),
                    Questions::tub,
                    Measure.size()),
            ask(
                    "wall",
                    "How thick is the wall?",
                    units(
                            "'3/16 plate', '16 ga', or as a caliper shows it.",
                            "As a caliper shows it, without paint and rust."),
                    shaped("3/16 plate", "5 mm", "18 ga", "1.2 mm"),
                    Questions::always,
                    Measure.thickness()),
            ask(
                    "tank-low",
                    "Where is the lowest line of the shell, at its front end?",
                    MARKED,
                    usual(Usual::low),
                    Questions::shell,
                    Questions::place),
            ask(
                    "tank-high",
                    "Where is the highest line of the shell, at its dump end?",
                    BOTH,
                    usual(Usual::tankHigh),
                    Questions::shell,
                    Questions::place),
            ask(
                    "bottom-front",
                    "Where is the tub's lower corner at the front, seen from the side?",
                    MARKED,
                    usual(Usual::low),
                    Questions::tub,
                    Questions::place),
            ask(
                    "bottom-dump",
                    "Where is its lower corner at the dump end?",
                    BOTH,
                    usual(Usual::bottomDump),
                    Questions::tub,
                    Questions::place),
            ask(
                    "top-dump",
                    "Where is its upper corner at the dump end?",
                    BOTH,
                    usual(Usual::topDump),
                    Questions::tub,
                    Questions::place),
            ask(
                    "top-front",
                    "Where is its upper corner at the front?",
                    BOTH,
                    usual(Usual::topFront),
                    Questions::tub,
                    Questions::place),
            ask(
                    "door",
                    "How wide is the door's opening across, what does the door weigh, and does it hinge above, at the side or below?",
                    units(
                            "The tape straight across the hole in the dump end; 'about 38 lb' will do, a scale is better.",
                            "The tape straight across the hole in the dump end; 'about 17 kg' will do, a scale is better."),
                    usual(Usual::door),
                    Questions::round,
                    Questions::door),
            ask(
                    "carried",
                    "What else turns with the tank, and what does it weigh?",
                    "Cradle, brackets, hoses, half the actuator, all together.",
                    units("about 60 lb", "about 27 kg"),
                    Questions::always,
                    Measure.of(Kind.MASS)),
            ask(
                    "slurry",
                    "What is in it? A full bucket on a scale is best: volume, full, empty",
                    a -> units("'5 gal, 57 lb, 2 lb'", "'20 L, 27 kg, 1 kg'").apply(a)
                            + "; or a density; or a usual kind: "
                            + UsualSlurry.all().stream().map(UsualSlurry::name).collect(Collectors.joining(", ")) + ".",
                    units("5 gal, 57 lb, 2 lb", "20 L, 27 kg, 1 kg"),
                    Questions::always,
                    Questions::slurry),
            ask(
                    "volume",
                    "How much of it?",
                    "By buckets or by the drum; or as a share of a full tank: '80 %'.",
                    usual(Usual::volume),
                    Questions::always,
                    Questions::volume),
            ask(
                    "pivot",
                    "Where is the middle of the pivot shaft?",
                    BOTH,
                    usual(Usual::pivot),
                    Questions::always,
                    Questions::place),
            ask(
                    "bearings",
                    "How far apart are the two pivot bearings, across?",
                    "From the middle of one to the middle of the other.",
                    usual(Usual::bearings),
                    Questions::always,
                    Measure.size()),
            ask(
                    "bearing",
                    "Which shaft, and what do the bearings stand? Diameter, static load rating",
                    "Caliper on the shaft; the static rating C0 from the seller of the pillow-block bearing.",
                    units("1 1/2 in, 4000 lbf", "40 mm, 19 kN"),
                    Questions::always,
                    Measure.several(Kind.LENGTH, Kind.FORCE)),
            ask(
                    "drive",
                    "What tilts it: electric, hydraulic or winch?",
                    "electric: an actuator with a screw. hydraulic: one cylinder or two alike. winch: a rope wound by hand.",
                    a -> a.is("shape", "tub") ? "hydraulic" : a.is("shape", "drum") ? "winch" : "electric",
                    Questions::always,
                    Measure.word("electric", "hydraulic", "winch")),
            ask(
                    "side-by-side",
                    "One cylinder in the middle, or two, how far apart across?",
                    "'one', or the distance from the middle of one to the middle of the other.",
                    units("20 in", "500 mm"),
                    Questions::hydraulic,
                    Questions::apart),
            ask(
                    "frame-pin",
                    "Where is the pin on the frame?",
                    a -> "Middle of the pin; of a winch: where the rope leaves the sheave. " + BOTH.apply(a),
                    usual(Usual::framePin),
                    Questions::always,
                    Questions::place),
            ask(
                    "tank-pin",
                    "Where is the pin on the tank?",
                    a -> "Middle of the pin; of a winch: where the rope is hooked in. " + BOTH.apply(a),
                    usual(Usual::tankPin),
                    Questions::always,
                    Questions::place),
            ask(
                    "lengths",
                    "How long is it pin to pin when closed, and how far does it come out?",
                    units(
                            "Two readings: '22 1/2 in, 18 in'. Of a rope: the shortest it gets, and how much of it is wound.",
                            "Two readings: '570 mm, 460 mm'. Of a rope: the shortest it gets, and how much of it is wound."),
                    usual(Usual::lengths),
                    Questions::always,
                    Measure.several(Kind.LENGTH, Kind.LENGTH)),
            ask(
                    "rating",
                    "What force is it good for?",
                    "On its plate: the push of an actuator, the pull of a winch.",
                    a -> a.is("drive", "winch")
                            ? units("1200 lbf", "5 kN").apply(a)
                            : units("2700 lbf", "12 kN").apply(a),
                    Questions::rated,
                    Measure.of(Kind.FORCE)),
            ask(
                    "bore",
                    "Bore and rod of the cylinder?",
                    "Two readings: inside diameter of the barrel, diameter of the rod.",
                    units("2 in, 1 1/4 in", "50 mm, 30 mm"),
                    Questions::hydraulic,
                    Measure.several(Kind.LENGTH, Kind.LENGTH)),
            ask(
                    "pressure",
                    "What is the relief valve set to?",
                    "On the gauge, with the cylinder against its end.",
                    units("1800 psi", "120 bar"),
                    Questions::hydraulic,
                    Measure.of(Kind.PRESSURE)),
            ask(
                    "lock-valve",
                    "Is there a lock valve on the port of each cylinder: yes or no?",
                    "A block right at the cylinder's port; a valve at the other end of a hose is none.",
                    a -> "yes",
                    Questions::hydraulic,
                    Measure.word("yes", "no")),
            ask(
                    "turn",
                    "How much rope does one turn of the crank wind?",
                    "A chalk mark on the rope; ten turns are more exact.",
                    units("3/4 in", "20 mm"),
                    Questions::winch,
                    Measure.size()),
            ask(
                    "tilt",
                    "How far does it tip?",
                    "At its end stop, the angle to where it lies stowed; a level with a scale shows it.",
                    usual(Usual::tilt),
                    Questions::always,
                    Measure.of(Kind.ANGLE)));

    private Questions() {}

    private static boolean always(Answers a) {
        return true;
    }

    private static boolean round(Answers a) {
        return a.is("shape", "round");
    }

    private static boolean tub(Answers a) {
        return a.is("shape", "tub");
    }

    private static boolean drum(Answers a) {
        return a.is("shape", "drum");
    }

    private static boolean shell(Answers a) {
        return !tub(a);
    }

    private static boolean hydraulic(Answers a) {
        return a.is("drive", "hydraulic");
    }

    private static boolean winch(Answers a) {
        return a.is("drive", "winch");
    }

    private static boolean rated(Answers a) {
        return !hydraulic(a);
    }

    private static Question ask(
            String id,
            String text,
            String tape,
            Function<Answers, String> usual,
            Predicate<Answers> wanted,
            Reader reader) {
        return ask(id, text, a -> tape, usual, wanted, reader);
    }

    private static Question ask(
            String id,
            String text,
            Function<Answers, String> tape,
            Function<Answers, String> usual,
            Predicate<Answers> wanted,
            Reader reader) {
        return new Question(id, text, tape, usual, wanted, reader);
    }

    private static Function<Answers, String> usual(Function<Usual, String> which) {
        return a -> which.apply(new Usual(a));
    }

    private static Function<Answers, String> units(String us, String metric) {
        return a -> a.unit().equals("in") ? us : metric;
    }

    private static Function<Answers, String> shaped(String us, String metric, String drumUs, String drumMetric) {
        return a -> (a.is("shape", "drum") ? units(drumUs, drumMetric) : units(us, metric)).apply(a);
    }

    private static String place(String typed, Answers before) throws QuantityException {
        return TapePlace.read(typed, before).kept();
    }

    /** Across, weight and, unless it hinges above, where it hinges. */
    private static String door(String typed, Answers before) throws QuantityException {
        int last = typed.lastIndexOf(',');
        if (last < 0 || typed.indexOf(',') == last) {
            return Measure.several(Kind.LENGTH, Kind.MASS).read(typed, before) + ", above";
        }
        String hinge = Measure.word("above", "side", "below").read(typed.substring(last + 1), before);
        return Measure.several(Kind.LENGTH, Kind.MASS).read(typed.substring(0, last), before) + ", " + hinge;
    }

    private static String dish(String typed, Answers before) throws QuantityException {
        return typed.strip().equalsIgnoreCase("flat") ? "flat" : Measure.size().read(typed, before);
    }

    private static String apart(String typed, Answers before) throws QuantityException {
        return typed.strip().equalsIgnoreCase("one") ? "one" : Measure.size().read(typed, before);
    }

    private static String slurry(String typed, Answers before) throws QuantityException {
        if (typed.contains(",")) {
            return Measure.several(Kind.VOLUME, Kind.MASS, Kind.MASS).read(typed, before);
        }
        String[] kinds = UsualSlurry.all().stream().map(UsualSlurry::name).toArray(String[]::new);
        boolean number = typed.chars().anyMatch(Character::isDigit);
        return number
                ? Measure.of(Kind.DENSITY).read(typed, before)
                : Measure.word(kinds).read(typed, before);
    }

    private static String volume(String typed, Answers before) throws QuantityException {
        return Measure.of(typed.contains("%") ? Kind.RATIO : Kind.VOLUME).read(typed, before);
    }
}
