package railtrim.procedure;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.quantity.BadInput;
import railtrim.quantity.QuantityReader;
import railtrim.quantity.Unit;

/** What a count of the last place of each reading is worth, as it was typed: it tells the range of the meter the reading was taken on. */
final class LastDigits {
    private final Map<Unit, Map<Long, Double>> byValue = new EnumMap<>(Unit.class);

    LastDigits(Job job) {
        for (Entry entry : job.entries()) {
            if (entry.fact() instanceof Fact.Reading reading) {
                OptionalDouble typed = of(reading.typed(), reading.unit());
                if (typed.isPresent()) {
                    // The same value typed twice: the coarser one errs on the wide side.
                    byValue.computeIfAbsent(reading.unit(), unit -> new HashMap<>())
                            .merge(key(reading.value()), typed.getAsDouble(), Math::max);
                }
            }
        }
    }

    /** Of a reading of this job; empty for a value that was not read. */
    OptionalDouble of(double asRead, Unit unit) {
        Double found = byValue.getOrDefault(unit, Map.of()).get(key(asRead));
        return found == null ? OptionalDouble.empty() : OptionalDouble.of(found);
    }

    /** Empty for a text that only a file made by hand can hold. */
    static OptionalDouble of(String text, Unit unit) {
        try {
            return OptionalDouble.of(QuantityReader.lastDigit(text, unit));
        } catch (BadInput unreadable) {
            return OptionalDouble.empty();
        }
    }

    private static long key(double value) {
        return Math.round(Math.abs(value) * 1e6);
    }
}
