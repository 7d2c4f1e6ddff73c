package railtrim.procedure;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
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

    private List<Entry> read = List.of();

    /** A job only grows, so what was read of it before stays; a job that does not go on from there is read anew. */
    LastDigits of(Job job) {
        List<Entry> entries = job.entries();
        int known = read.size();
        boolean goesOn = known <= entries.size() && (known == 0 || entries.get(known - 1) == read.get(known - 1));
        if (!goesOn) {
            byValue.clear();
            known = 0;
        }
        entries.subList(known, entries.size()).forEach(this::take);
        read = entries;
        return this;
    }

    private void take(Entry entry) {
        if (entry.fact() instanceof Fact.Reading reading) {
            OptionalDouble typed = of(reading.typed(), reading.unit());
            if (typed.isPresent()) {
                // The same value typed twice: the coarser one errs on the wide side.
                byValue.computeIfAbsent(reading.unit(), unit -> new HashMap<>())
                        .merge(key(reading.value()), typed.getAsDouble(), Math::max);
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
