package railtrim.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import railtrim.circuit.Place;
import railtrim.procedure.Field;
import railtrim.procedure.State;

/**
 * What to touch now. It follows the first reading that is still asked for, so that the probes move on in the picture as the readings come in; a step
 * that asks for no such reading says itself what is touched.
 *
 * @param clips the spots are held by clips that were fitted with the power off
 * @param solder the added part is soldered in this step
 * @param lift one lead of the added part is off the board
 */
record Touch(List<Spot> spots, boolean clips, boolean solder, boolean lift) {
    static Touch of(State state) {
        State.StepState now = state.current();
        Optional<Place> place = state.figures().place();
        List<String> said = now.step().spots();
        for (String field : open(now)) {
            Optional<List<Spot>> spots = reading(field, place);
            if (spots.isPresent()) {
                boolean lifted = field.equals("setting.trimmer") || field.equals("setting.again");
                boolean clips = field.equals("ref.volts") || field.equals("clip.pair");
                return new Touch(spots.get(), clips, said.contains("solder"), lifted);
            }
        }
        return new Touch(said(said, place), said.contains("reference"), said.contains("solder"), false);
    }

    /** Number fields first: whoever answers a question beside them has the probes down. */
    private static List<String> open(State.StepState now) {
        List<String> numbers = new ArrayList<>();
        List<String> others = new ArrayList<>();
        for (Field field : now.step().fields()) {
            if (now.missing().contains(field.id())) {
                (field instanceof Field.Number ? numbers : others).add(field.id());
            }
        }
        numbers.addAll(others);
        return numbers;
    }

    private static List<Spot> said(List<String> said, Optional<Place> place) {
        if (said.contains("reference")) {
            return Spot.reference(place);
        }
        if (said.contains("leg")) {
            return Spot.loweringLeg(place);
        }
        return said.contains("output") ? Spot.output() : List.of();
    }

    /** Where the probes go for a reading; empty for a field that is no reading on the divider. */
    private static Optional<List<Spot>> reading(String field, Optional<Place> place) {
        return switch (field) {
            case "leg.ohms",
                    "leg.again",
                    "solder.leg",
                    "clip.leg",
                    "proof.total",
                    "smooth.low",
                    "smooth.total",
                    "fault.max",
                    "setting.total",
                    "fit.total" -> Optional.of(Spot.loweringLeg(place));
            case "leg.reversed" -> Optional.of(Spot.swapped(Spot.loweringLeg(place)));
            case "other.ohms", "proof.other", "fit.other", "ref.volts", "clip.pair" ->
                Optional.of(Spot.reference(place));
            case "setting.trimmer", "setting.again" -> Optional.of(List.of());
            default ->
                field.endsWith(".dead") || field.endsWith(".rail") || field.equals("rail.ohms")
                        ? Optional.of(Spot.output())
                        : Optional.empty();
        };
    }
}
