package railtrim.window.picture;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Stream;
import railtrim.procedure.Figures;
import railtrim.procedure.Logbook;
import railtrim.quantity.RailSign;

/**
 * The way down over the time it took; breaks longer than {@link #BREAK} are cut to that.
 *
 * @param held output voltages in order
 * @param warm temperatures in order
 * @param stock volts, magnitude, empty where not known
 * @param sign how the meter shows the output
 */
record LogData(List<Held> held, List<Warm> warm, OptionalDouble stock, RailSign sign) {
    /** Minutes; long enough to be seen as a break beside one-minute waits. */
    static final double BREAK = 10;

    LogData {
        held = List.copyOf(held);
        warm = List.copyOf(warm);
    }

    /**
     * @param minutes of work since the first reading
     * @param added ohms across the leg, empty where not known
     * @param fault the answer's id, empty where none was seen
     */
    record Held(double minutes, double volts, OptionalDouble added, Optional<String> fault) {}

    record Warm(double minutes, double celsius, boolean regulator) {}

    static LogData of(Figures figures) {
        Logbook book = Logbook.of(figures);
        List<Instant> times = new ArrayList<>(new TreeSet<>(Stream.concat(
                        book.held().stream().map(Logbook.Held::time),
                        book.warm().stream().map(Logbook.Warm::time))
                .toList()));
        List<Double> minutes = minutes(times);
        return new LogData(
                book.held().stream()
                        .map(each -> new Held(
                                minutes.get(times.indexOf(each.time())), each.volts(), each.added(), each.fault()))
                        .toList(),
                book.warm().stream()
                        .map(each ->
                                new Warm(minutes.get(times.indexOf(each.time())), each.celsius(), each.regulator()))
                        .toList(),
                figures.stock(),
                figures.sign());
    }

    /** @param times in order, each once */
    private static List<Double> minutes(List<Instant> times) {
        List<Double> minutes = new ArrayList<>();
        double at = 0;
        for (int i = 0; i < times.size(); i++) {
            if (i > 0) {
                double gap = Duration.between(times.get(i - 1), times.get(i)).toMillis() / 60_000.0;
                at += Math.min(gap, BREAK);
            }
            minutes.add(at);
        }
        return minutes;
    }

    /** Of the last reading; at least one, so that a scale can be drawn. */
    double end() {
        return Stream.concat(held.stream().map(Held::minutes), warm.stream().map(Warm::minutes))
                .reduce(1.0, Math::max);
    }
}
