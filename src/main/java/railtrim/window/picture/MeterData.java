package railtrim.window.picture;

import java.util.Optional;
import railtrim.job.Fact;
import railtrim.procedure.Figures;

/**
 * The meter, tried before it is trusted.
 *
 * @param cell what it showed on a fresh cell, as typed
 * @param tips what it showed with its two tips pressed together, as typed
 */
record MeterData(Optional<String> cell, Optional<String> tips) {
    static MeterData of(Figures figures) {
        return new MeterData(typed(figures, "meter.proof"), typed(figures, "meter.zero"));
    }

    private static Optional<String> typed(Figures figures, String field) {
        return figures.reading(field).map(Fact.Reading::typed).map(String::strip);
    }
}
