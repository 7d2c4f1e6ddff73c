package railtrim.command;

import java.util.List;
import java.util.Optional;
import railtrim.circuit.Place;
import railtrim.circuit.PlaceTelling;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Meter;

/** Where the reference sits, told from the two voltages at the adjust pin; a plain no where both fit. */
final class SolvePlace {
    /** Half the published spread of a reference, as a fraction, where only its nominal value is given: wide enough for every family known here. */
    private static final double SPREAD = 0.04;

    private final Words words;
    private final Meter meter;

    SolvePlace(Words words, Meter meter) {
        this.words = words;
        this.meter = meter;
    }

    Answer answer(double reference, String outAdjust, String adjustGround, String place, List<String> points) {
        if (outAdjust == null || adjustGround == null || place != null || !points.isEmpty()) {
            throw BadInput.of("command.wrong.place-telling");
        }
        double upper = Typed.signedVolts("--out-adj", outAdjust);
        double lower = Typed.signedVolts("--adj-gnd", adjustGround);
        if (upper * lower < 0) {
            throw BadInput.of("command.wrong.place-signs");
        }
        boolean negative = upper < 0;
        PlaceTelling told = PlaceTelling.of(
                Math.abs(upper),
                meter.voltsAt(upper).standardUncertainty(upper),
                Math.abs(lower),
                meter.voltsAt(lower).standardUncertainty(lower),
                reference * (1 - SPREAD),
                reference * (1 + SPREAD));
        Optional<Place> found = told.place(negative);
        Json json = Json.object()
                .put("told", Named.word(told))
                .put("place", found.map(Place::id).orElse(""));
        Sheet sheet = new Sheet().say(words.of("command.place." + Named.word(told)));
        return Answer.of(found.isPresent(), json.map(), sheet);
    }
}
