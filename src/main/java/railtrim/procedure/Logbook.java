package railtrim.procedure;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.job.Entry;
import railtrim.job.Fact;

/**
 * What was read under power from the stock voltage on, in the order of the facts, readings that no longer count included.
 *
 * @param held output voltages
 * @param warm temperatures
 */
public record Logbook(List<Held> held, List<Warm> warm) {
    /** Read with nothing added: what would be worked out of it is the rounding of the sum. */
    private static final String STOCK = "stock.volts";

    public Logbook {
        held = List.copyOf(held);
        warm = List.copyOf(warm);
    }

    /**
     * @param volts magnitude
     * @param added ohms across the leg that give this voltage, by the law; empty at stock and above, and where the circuit is not known
     * @param fault what was seen, as the answer's id; empty where all was well or nobody looked
     */
    public record Held(Instant time, double volts, OptionalDouble added, Optional<String> fault) {
        private Held with(String seen) {
            return new Held(time, volts, added, Optional.of(seen));
        }
    }

    public record Warm(Instant time, double celsius, boolean regulator) {}

    public static Logbook of(Figures figures) {
        List<Held> held = new ArrayList<>();
        List<Warm> warm = new ArrayList<>();
        for (Entry entry : figures.job().entries()) {
            if (entry.fact() instanceof Fact.Reading reading) {
                read(figures, entry.time(), reading, held, warm);
            } else if (entry.fact() instanceof Fact.Choice choice
                    && Descent.FAULTS.contains(choice.option())
                    && !held.isEmpty()) {
                held.set(held.size() - 1, held.get(held.size() - 1).with(choice.option()));
            }
        }
        return new Logbook(held, warm);
    }

    private static void read(Figures figures, Instant time, Fact.Reading reading, List<Held> held, List<Warm> warm) {
        String field = reading.field();
        if (field.equals(STOCK) || RailFields.isLowered(field)) {
            double volts = Math.abs(reading.value());
            OptionalDouble added = field.equals(STOCK) ? OptionalDouble.empty() : added(figures, volts);
            held.add(new Held(time, volts, added, Optional.empty()));
        } else if (field.endsWith("temp.chip") || field.endsWith("temp.reg")) {
            warm.add(new Warm(time, reading.value(), field.endsWith("reg")));
        }
    }

    private static OptionalDouble added(Figures figures, double volts) {
        return figures.circuit()
                .filter(circuit -> volts > circuit.reference() && volts < circuit.stock())
                .map(circuit -> OptionalDouble.of(circuit.addedFor(volts)))
                .orElse(OptionalDouble.empty());
    }
}
