package railtrim.practice;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Choosing the fixed resistor, fetching it, and putting it where the trimmer was. */
final class ResistorSkills {
    private ResistorSkills() {}

    static void teach(Map<String, Skill> skills, Workpiece piece) {
        skills.put("res.series", asked -> asked.picked("E24"));
        skills.put("res.tolerance", asked -> asked.picked("1"));
        skills.put("res.most", asked -> asked.picked("2"));
        skills.put("res.pick", asked -> pick(asked, piece));
        skills.put(
                "hand.ohms",
                asked -> piece.resistor
                        .map(part -> asked.typed(piece.bench.ohms(part)))
                        .orElseGet(() -> new Answer.Stuck("hand.ohms: no resistor was fetched yet")));
        skills.put("fit.pair", asked -> {
            piece.trimmer.ifPresent(piece.bench::remove);
            piece.resistor.ifPresent(part -> piece.bench.solder(part, piece.leg()));
            return asked.picked(piece.leg().id());
        });
        skills.put("fit.left", asked -> asked.picked("resistor-only"));
    }

    private static Answer pick(Skill.Asked asked, Workpiece piece) {
        Optional<String> first = TrimmerSkills.firstOption(asked);
        if (first.isEmpty()) {
            return new Answer.Stuck("res.pick: no resistor is offered");
        }
        double tolerance =
                Double.parseDouble(asked.figures().choice("res.tolerance").orElse("1")) / 100;
        Combination chosen = Combination.of(first.get());
        piece.resistor = Optional.of(piece.bench.takeResistors(chosen.values(), chosen.joined(), tolerance));
        return asked.picked(first.get());
    }

    /** One or two resistors as the procedure writes them: "single:680", "series:470+220", "parallel:1000+2200". */
    record Combination(Part.Joined joined, List<Double> values) {
        static Combination of(String pick) {
            int colon = pick.indexOf(':');
            List<Double> values = Arrays.stream(pick.substring(colon + 1).split("\\+"))
                    .map(Double::valueOf)
                    .toList();
            return new Combination(pick.startsWith("parallel") ? Part.Joined.PARALLEL : Part.Joined.SERIES, values);
        }

        /** Resistance of the combination with every part off by this fraction, ohms. */
        double ohms(double off) {
            return joined.of(values.stream().map(ohms -> ohms * (1 + off)).toList());
        }
    }
}
