package railtrim.practice;

import java.util.Map;
import java.util.function.DoubleSupplier;

/** Readings of the board as the maker left it, and of the parts in place: volts with the power on, ohms with it off. */
final class MeterSkills {
    private MeterSkills() {}

    static void teach(Map<String, Skill> skills, Workpiece piece) {
        // The rail, dead or alive.
        for (String field : new String[] {
            "clip.dead",
            "ref.off.rail",
            "base.rail",
            "base.off.rail",
            "solder.dead",
            "first.volts",
            "down.start",
            "down.off.rail",
            "set.start",
            "set.off.rail",
            "cold.off.rail",
            "fit.dead",
            "fit.volts",
            "fit.off.rail",
            "safe.rail",
            "resume.rail"
        }) {
            skills.put(field, asked -> asked.typed(piece.rail()));
        }
        skills.put("resume.zero", asked -> asked.typed(piece.bench.leadsShorted()));
        skills.put("resume.where", asked -> asked.picked("as-left"));
        skills.put(
                "resume.marking", asked -> asked.typed(piece.board().regulator().marking()));
        skills.put("resume.total", asked -> asked.typed(piece.ohms(piece.leg())));

        skills.put("place.pair", asked -> asked.picked(piece.reference().id()));
        skills.put("place.leg", asked -> asked.picked(piece.leg().id()));
        skills.put("clip.pair", asked -> {
            piece.bench.clip(piece.reference());
            return asked.picked(piece.reference().id());
        });
        skills.put(
                "ref.volts",
                asked -> asked.typed(piece.volts(piece.bench.clipped().orElse(piece.reference()))));

        skills.put("leg.ohms", asked -> {
            piece.takeOff();
            return asked.typed(piece.ohms(piece.leg()));
        });
        skills.put("clip.leg", skills.get("leg.ohms"));
        skills.put("solder.leg", asked -> {
            piece.resistorOff();
            return asked.typed(piece.ohms(piece.leg()));
        });
        skills.put("leg.again", asked -> asked.typed(piece.ohms(piece.leg())));
        skills.put("leg.reversed", asked -> asked.typed(piece.swapped(piece.leg())));
        skills.put("other.ohms", asked -> asked.typed(piece.ohms(piece.otherLeg())));
        skills.put("rail.ohms", asked -> asked.typed(piece.ohms(Node.Pair.RAIL)));

        skills.put("stock.volts", asked -> underLoad(asked, piece));
        for (String step : new String[] {"first", "soak", "cold", "fit"}) {
            skills.put(step + ".seen", asked -> look(asked, piece));
        }
        skills.put("down.seen", asked -> lookOnTheWayDown(asked, piece));
        for (String field : new String[] {"first.loaded", "soak.volts", "cold.volts", "fit.loaded"}) {
            skills.put(field, asked -> underLoad(asked, piece));
        }
        skills.put("input.volts", asked -> asked.typed(piece.volts(new Node.Pair(Node.INPUT, Node.GROUND))));
        skills.put("temp.how", asked -> asked.picked("thermocouple"));
        for (String prefix : new String[] {"temp.", "fit.temp."}) {
            skills.put(prefix + "chip", asked -> settled(asked, piece, piece.bench::chipTemperature));
            skills.put(prefix + "reg", asked -> settled(asked, piece, piece.bench::regulatorTemperature));
            skills.put(prefix + "room", asked -> settled(asked, piece, piece.bench::roomTemperature));
        }

        // Proof by resistance, before any power.
        for (String field : new String[] {"fit.total", "setting.total"}) {
            skills.put(field, asked -> asked.typed(piece.ohms(piece.leg())));
        }
        for (String step : new String[] {"proof", "fit"}) {
            skills.put(step + ".other", asked -> asked.typed(piece.ohms(piece.otherLeg())));
            skills.put(step + ".rail", asked -> asked.typed(piece.ohms(Node.Pair.RAIL)));
        }
    }

    /** Runs the load for as long as the step asks, and a little longer: on a way down with another program, that one and then the named one. */
    private static Answer look(Skill.Asked asked, Workpiece piece) {
        return asked.picked(load(asked, piece).id());
    }

    /** With the trimmer at its end there is no lower to go. */
    private static Answer lookOnTheWayDown(Skill.Asked asked, Workpiece piece) {
        Seen seen = load(asked, piece);
        boolean atEnd = piece.trimmer.filter(Part.Trimmer::atItsEnd).isPresent();
        return asked.picked(seen == Seen.WELL && atEnd ? "enough" : seen.id());
    }

    /** Reads the rail under load; a fault is told before anything is read. */
    private static Answer underLoad(Skill.Asked asked, Workpiece piece) {
        Seen seen = load(asked, piece);
        String step = asked.field().substring(0, asked.field().indexOf('.'));
        return seen == Seen.WELL || step.equals("stock")
                ? asked.typed(piece.rail())
                : new Answer.Picked(step + ".seen", seen.id());
    }

    /** A temperature, once it has settled. */
    private static Answer settled(Skill.Asked asked, Workpiece piece, DoubleSupplier celsius) {
        piece.bench.waitSeconds(asked.course().dwellLeft());
        return asked.typed(Workpiece.celsius(celsius.getAsDouble()));
    }

    private static Seen load(Skill.Asked asked, Workpiece piece) {
        double wait = asked.course().dwellLeft();
        boolean other = asked.field().startsWith("down.") && anotherLoad(asked);
        if (other && piece.bench.runOther(wait + 10) != Seen.WELL) {
            return piece.bench.seen();
        }
        return piece.bench.runLoad(wait + 10);
    }

    private static boolean anotherLoad(Skill.Asked asked) {
        return asked.figures().chose("fault.again", "load");
    }
}
