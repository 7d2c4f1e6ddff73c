package railtrim.practice;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;
import railtrim.parts.Trimmers;
import railtrim.procedure.Field;

/** Choosing, fitting and turning the trimmer: from the first aim to the voltage that is to stay. */
final class TrimmerSkills {
    /** Trimmers are ±10 % (Bourns 3296 and 3362). */
    private static final double TOLERANCE = 0.10;

    /** Long enough for the chip to be at room temperature, seconds. */
    private static final double COLD = 3600;

    /** So many runs give a measured spread; more are seldom worth an evening. */
    private static final int RUNS = 5;

    private TrimmerSkills() {}

    static void teach(Map<String, Skill> skills, Workpiece piece) {
        skills.put("aim.drop", asked -> asked.typed("2 %"));
        skills.put("aim.lowest", TrimmerSkills::lowest);
        skills.put("trimmer.pick", asked -> pick(asked, piece));
        skills.put("trimmer.stop", asked -> fitStop(asked, piece));
        skills.put("trimmer.max", asked -> loose(asked, piece, 1));
        skills.put("trimmer.min", asked -> loose(asked, piece, 0));
        skills.put("trimmer.at", asked -> {
            piece.trimmerToMaximum();
            return asked.picked("maximum");
        });

        skills.put("solder.pair", asked -> {
            piece.resistorOff();
            piece.trimmerToMaximum();
            piece.trimmer.ifPresent(part -> piece.bench.solder(part, piece.leg()));
            return asked.picked(piece.leg().id());
        });
        skills.put("proof.total", asked -> inPlace(asked, piece, 1));
        skills.put("smooth.low", asked -> inPlace(asked, piece, 0));
        skills.put("smooth.feel", asked -> asked.picked("falls-smoothly"));
        skills.put("smooth.total", asked -> inPlace(asked, piece, 1));

        skills.put("down.max", asked -> inPlace(asked, piece, 1));
        skills.put("set.max", asked -> inPlace(asked, piece, 1));
        skills.put("down.volts", asked -> turnTo(asked, piece, asked.figures().nextTarget(), false));
        skills.put("down.end", asked -> atTheEnd(asked, piece));
        skills.put("set.volts", asked -> turnTo(asked, piece, asked.figures().target(), true));
        skills.put(
                "fault.text",
                asked -> asked.typed("Under load it showed: "
                        + piece.board().failing().shows().id()));
        skills.put("fault.again", asked -> again(asked, piece));
        skills.put("target.volts", TrimmerSkills::target);
        skills.put("target.reason", asked -> asked.typed("A practice board may be taken to its edge."));
        skills.put("cool.how", asked -> {
            piece.bench.waitSeconds(COLD);
            return asked.picked("room-temperature");
        });

        skills.put("setting.trimmer", asked -> onItsOwn(asked, piece));
    }

    /**
     * A third below stock, where hardly a chip still works, but clear of the reference, which nothing can go below; less deep each time no trimmer is
     * to be had for it.
     */
    private static Answer lowest(Skill.Asked asked) {
        OptionalDouble stock = asked.figures().stock();
        OptionalDouble reference = asked.figures().reference();
        if (stock.isEmpty() || reference.isEmpty()) {
            return new Answer.Stuck("aim.lowest: stock or reference is not known yet");
        }
        int before = asked.figures().history("aim.lowest").size();
        double lowest = Math.max((0.68 + 0.03 * before) * stock.getAsDouble(), 1.1 * reference.getAsDouble());
        return asked.typed(Workpiece.volts(lowest));
    }

    private static Answer pick(Skill.Asked asked, Workpiece piece) {
        Optional<String> first = firstOption(asked);
        if (first.isEmpty()) {
            return new Answer.Stuck("trimmer.pick: no trimmer is offered");
        }
        piece.takeOff();
        fetch(piece, first.get(), 0);
        return asked.picked(first.get());
    }

    private static Answer fitStop(Skill.Asked asked, Workpiece piece) {
        String pick = asked.figures().choice("trimmer.pick").orElse("");
        for (Trimmers.Candidate candidate : asked.figures().trimmers()) {
            Picked wanted = Picked.of(pick);
            if (Math.round(candidate.nominal()) == wanted.ohms()
                    && Math.round(candidate.fine()) == wanted.fine()
                    && candidate.turns() == wanted.turns()) {
                fetch(piece, pick, candidate.stopResistor());
                return asked.picked("fitted");
            }
        }
        return new Answer.Stuck("trimmer.stop: no stop resistor is known for " + pick);
    }

    private static void fetch(Workpiece piece, String pick, double stopOhms) {
        Picked wanted = Picked.of(pick);
        piece.trimmer = Optional.of(
                piece.bench.takeTrimmers(wanted.ohms(), wanted.fine(), wanted.turns(), TOLERANCE, stopOhms));
    }

    /** A trimmer as the procedure writes it: "10000x25", or "10000x25+200x25" with a fine one, 0 for none, in series. */
    private record Picked(long ohms, long fine, int turns) {
        static Picked of(String pick) {
            String[] parts = pick.split("[x+]");
            return new Picked(
                    Long.parseLong(parts[0]),
                    parts.length > 2 ? Long.parseLong(parts[2]) : 0,
                    Integer.parseInt(parts[1]));
        }
    }

    private static Answer loose(Skill.Asked asked, Workpiece piece, double travel) {
        piece.takeOff();
        return withTrimmer(asked, piece, part -> {
            piece.turnAll(part, travel);
            return asked.typed(piece.bench.ohms(part));
        });
    }

    private static Answer inPlace(Skill.Asked asked, Workpiece piece, double travel) {
        return withTrimmer(asked, piece, part -> {
            piece.turnAll(part, travel);
            return asked.typed(piece.ohms(piece.leg()));
        });
    }

    private static Answer onItsOwn(Skill.Asked asked, Workpiece piece) {
        return withTrimmer(asked, piece, part -> {
            piece.bench.lift(part);
            Shown shown = piece.bench.ohms(part);
            piece.bench.lower(part);
            return asked.typed(shown);
        });
    }

    /** Turns slowly with an eye on the meter, and stops at the position that shows nearest to the target. */
    private static Answer turnTo(Skill.Asked asked, Workpiece piece, OptionalDouble target, boolean neverBelow) {
        if (target.isEmpty()) {
            return new Answer.Stuck(asked.field() + ": there is no target to turn to");
        }
        double wanted = target.getAsDouble();
        double most = asked.course()
                .expected(asked.field())
                .map(range -> Math.max(Math.abs(range.low()), Math.abs(range.high())))
                .orElse(Double.POSITIVE_INFINITY);
        return withTrimmer(asked, piece, part -> {
            if (part.fine().isPresent()) {
                comeNear(piece, part, wanted);
            }
            Screw screw = part.fine()
                    .map(fine -> new Screw(fine, travel -> piece.bench.turnFine(part, travel)))
                    .orElseGet(() -> new Screw(part.trimmer(), travel -> piece.bench.turn(part, travel)));
            settle(piece, screw, wanted, neverBelow);
            downTo(piece, screw, most);
            while (magnitude(piece) > most
                    && part.fine().isPresent()
                    && part.trimmer().travel() > 0) {
                coarseOneFurther(piece, part);
                settle(piece, screw, wanted, neverBelow);
                downTo(piece, screw, most);
            }
            return asked.typed(piece.rail());
        });
    }

    /** With the fine trimmer at its maximum, down with the coarse one, and a stop before its next notch could go past. */
    private static void comeNear(Workpiece piece, Part.Trimmer part, double wanted) {
        Screw coarse = new Screw(part.trimmer(), travel -> piece.bench.turn(part, travel));
        piece.bench.turnFine(part, 1);
        hurry(piece, coarse, wanted);
        while (magnitude(piece) < wanted && coarse.trimmer().travel() < 1) {
            coarse.by(1);
        }
        double notch = 0;
        while (magnitude(piece) - wanted > 3 * notch && coarse.trimmer().travel() > 0) {
            double before = magnitude(piece);
            coarse.by(-1);
            notch = Math.max(notch, before - magnitude(piece));
        }
        if (magnitude(piece) < wanted) {
            coarse.by(1);
        }
    }

    /** On down where the meter still shows more than may be. */
    private static void downTo(Workpiece piece, Screw screw, double most) {
        while (magnitude(piece) > most && screw.trimmer().travel() > 0) {
            screw.by(-1);
        }
    }

    /** The fine one came to its end too soon: back with it, and the coarse one down by half of what the fine one can make good. */
    private static void coarseOneFurther(Workpiece piece, Part.Trimmer part) {
        Screw coarse = new Screw(part.trimmer(), travel -> piece.bench.turn(part, travel));
        double fine = part.fine().map(VirtualTrimmer::marked).orElse(0.0);
        double notch = part.trimmer().marked() * part.trimmer().finest();
        piece.bench.turnFine(part, 1);
        coarse.by(-Math.max(1, (int) (fine / 2 / notch)));
    }

    /** To the notch that shows nearest, or nearest above. */
    private static void settle(Workpiece piece, Screw screw, double wanted, boolean neverBelow) {
        hurry(piece, screw, wanted);
        double now = magnitude(piece);
        while (now < wanted && screw.trimmer().travel() < 1) {
            screw.by(1);
            now = magnitude(piece);
        }
        double above = now;
        while (now > wanted && screw.trimmer().travel() > 0) {
            above = now;
            screw.by(-1);
            now = passOver(piece, screw, wanted);
        }
        double below = wanted - now;
        if (below > 0 && (neverBelow || above - wanted < below)) {
            screw.by(1);
        }
    }

    /**
     * Over the notches at which the meter would still show more than wanted, in one go: on the even part of the track each of them is below the
     * one before, so an eye on the meter sees nothing there. The next one is left to be turned to. Gives what the meter shows then.
     */
    private static double passOver(Workpiece piece, Screw screw, double wanted) {
        VirtualTrimmer trimmer = screw.trimmer();
        int more = 0;
        int less = magnitude(piece) > wanted ? trimmer.evenNotchesDown() : 0;
        while (less - more > 1) {
            int middle = (more + less) / 2;
            boolean above = piece.bench.glance(trimmer, trimmer.travel() - middle * trimmer.finest()) > wanted;
            more = above ? middle : more;
            less = above ? less : middle;
        }
        if (more > 0) {
            screw.by(-more);
        }
        return magnitude(piece);
    }

    /** Turns faster while the reading is far away, by at most a quarter of what is left as far as the last turn tells, and stops a few notches off. */
    private static void hurry(Workpiece piece, Screw screw, double wanted) {
        double now = magnitude(piece);
        double perNotch = Double.POSITIVE_INFINITY;
        int last = 0;
        while (true) {
            int down = now > wanted ? 1 : -1;
            double room = down > 0
                    ? screw.trimmer().travel() / 8
                    : 1 - screw.trimmer().travel();
            double most = Math.min(room / screw.trimmer().finest(), Math.abs(now - wanted) / (4 * perNotch));
            int notches = last == 0 ? 1 : (int) Math.min(2.0 * last, most);
            if (notches < 1 || now == wanted) {
                return;
            }
            screw.by(-down * notches);
            double before = now;
            now = magnitude(piece);
            double count = piece.bench.meter().meter().voltsAt(now).resolution();
            perNotch = Math.max(Math.abs(now - before), count) / notches;
            last = notches;
        }
    }

    /** One of the screws to turn. */
    private record Screw(VirtualTrimmer trimmer, DoubleConsumer turn) {
        void by(int notches) {
            turn.accept(trimmer.travel() + notches * trimmer.finest());
        }
    }

    private static Answer atTheEnd(Skill.Asked asked, Workpiece piece) {
        return withTrimmer(asked, piece, part -> asked.picked(part.atItsEnd() ? "at-end" : "not-yet"));
    }

    private static double magnitude(Workpiece piece) {
        return piece.bench.glance();
    }

    /** Five ways down in all: the second from cold, the third with another program where the board has one. */
    private static Answer again(Skill.Asked asked, Workpiece piece) {
        long runs = asked.figures().history("fault.again").size() + 1;
        if (runs >= RUNS) {
            return asked.picked("enough");
        }
        if (runs == 1) {
            piece.bench.waitSeconds(COLD);
            return asked.picked("cold");
        }
        boolean another = runs == 2 && piece.board().load().other().isPresent();
        return asked.picked(another ? "load" : "hot");
    }

    private static Answer target(Skill.Asked asked) {
        return asked.figures()
                .budget()
                .map(budget -> asked.typed(Workpiece.volts(Math.ceil(budget.recommended() * 1000) / 1000)))
                .orElseGet(() -> new Answer.Stuck("target.volts: no margin was worked out"));
    }

    private static Answer withTrimmer(
            Skill.Asked asked, Workpiece piece, java.util.function.Function<Part.Trimmer, Answer> work) {
        return piece.trimmer
                .map(work)
                .orElseGet(() -> new Answer.Stuck(asked.field() + ": no trimmer was fetched yet"));
    }

    /** The option offered first, which is the recommended one. */
    static Optional<String> firstOption(Skill.Asked asked) {
        Optional<Field> field = asked.course().field(asked.field());
        if (field.isPresent() && field.get() instanceof Field.Choice choice) {
            List<Field.Option> options = choice.options().apply(asked.figures());
            return options.stream().findFirst().map(Field.Option::id);
        }
        return Optional.empty();
    }
}
