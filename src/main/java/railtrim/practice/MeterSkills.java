package railtrim.practice;

import java.util.Map;

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

        skills.put("place.pair", asked -> asked.picked(piece.reference().id()));
        skills.put("place.leg", asked -> asked.picked(piece.leg().id()));
        skills.put("clip.pair", asked -> {
            piece.bench.clip(piece.reference());
            return asked.picked(piece.reference().id());
        });
        skills.put(
                "ref.volts",
                asked -> asked.typed(piece.volts(piece.bench.clipped().orElse(piece.reference()))));

        skills.put("leg.ohms", asked -> asked.typed(piece.ohms(piece.leg())));
        skills.put("leg.again", asked -> asked.typed(piece.ohms(piece.leg())));
        skills.put("leg.reversed", asked -> asked.typed(piece.swapped(piece.leg())));
        skills.put("other.ohms", asked -> asked.typed(piece.ohms(piece.otherLeg())));
        skills.put("rail.ohms", asked -> asked.typed(piece.ohms(Node.Pair.RAIL)));

        // Under load.
        for (String field : new String[] {"stock.volts", "first.loaded", "soak.volts", "cold.volts", "fit.loaded"}) {
            skills.put(field, asked -> {
                piece.bench.runLoad(10);
                return asked.typed(piece.rail());
            });
        }
        skills.put("input.volts", asked -> asked.typed(piece.volts(new Node.Pair(Node.INPUT, Node.GROUND))));
        for (String field : new String[] {"first.seen", "down.seen", "soak.seen", "cold.seen", "fit.seen"}) {
            skills.put(
                    field,
                    asked -> asked.picked(piece.bench
                            .runLoad(asked.course().dwellLeft() + 5.0)
                            .id()));
        }

        skills.put("temp.how", asked -> asked.picked("thermocouple"));
        for (String prefix : new String[] {"temp.", "fit.temp."}) {
            skills.put(prefix + "chip", asked -> asked.typed(Workpiece.celsius(piece.bench.chipTemperature())));
            skills.put(prefix + "reg", asked -> asked.typed(Workpiece.celsius(piece.bench.regulatorTemperature())));
            skills.put(prefix + "room", asked -> asked.typed(Workpiece.celsius(piece.bench.roomTemperature())));
        }

        // Proof by resistance, before any power.
        for (String field : new String[] {"proof.total", "fit.total", "setting.total", "fault.max"}) {
            skills.put(field, asked -> asked.typed(piece.ohms(piece.leg())));
        }
        for (String step : new String[] {"proof", "fit"}) {
            skills.put(step + ".other", asked -> asked.typed(piece.ohms(piece.otherLeg())));
            skills.put(step + ".rail", asked -> asked.typed(piece.ohms(Node.Pair.RAIL)));
        }
    }
}
