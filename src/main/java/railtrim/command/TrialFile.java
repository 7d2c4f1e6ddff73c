package railtrim.command;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;
import railtrim.quantity.BadInput;
import railtrim.quantity.Message;
import railtrim.quantity.QuantityReader;
import railtrim.quantity.Unit;
import railtrim.threshold.Trial;

/**
 * Runs down to the fault, from a CSV text with the columns {@code run,volts,fault} and, where wanted, {@code cold}, {@code load} and
 * {@code dwell}: a whole number, a voltage with its unit, yes or no, yes or no, free words, seconds.
 */
final class TrialFile {
    private static final int MOST_ROWS = 5_000;

    /** A week. */
    private static final double LONGEST_DWELL = 7 * 24 * 3600;

    private static final List<String> NEEDED = List.of("run", "volts", "fault");

    private final String option;

    private TrialFile(String option) {
        this.option = option;
    }

    /** @throws BadOption naming the line and what is wrong with it */
    static List<Trial> read(String option, String name) {
        return new TrialFile(option).trials(TextFile.read(option, name));
    }

    private List<Trial> trials(String csv) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setIgnoreHeaderCase(true)
                .setDuplicateHeaderMode(DuplicateHeaderMode.DISALLOW)
                .setIgnoreEmptyLines(true)
                .setTrim(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(csv), format)) {
            if (!parser.getHeaderNames().stream()
                    .map(column -> column.toLowerCase(Locale.ROOT))
                    .toList()
                    .containsAll(NEEDED)) {
                throw wrong("command.wrong.trials-columns", String.join(",", NEEDED));
            }
            List<Trial> trials = new ArrayList<>();
            for (CSVRecord row : parser) {
                trials.add(trial(row, Long.toString(parser.getCurrentLineNumber())));
                if (trials.size() > MOST_ROWS) {
                    throw wrong("command.wrong.trials-too-many", Integer.toString(MOST_ROWS));
                }
            }
            if (trials.isEmpty()) {
                throw wrong("command.wrong.trials-none");
            }
            return trials;
        } catch (UncheckedIOException | CSVException | IllegalArgumentException broken) {
            throw wrong("command.wrong.trials-broken");
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private Trial trial(CSVRecord row, String line) {
        if (!row.isConsistent()) {
            throw wrong("command.wrong.trials-row", line);
        }
        String run = row.get("run");
        if (!run.matches("[1-9]\\d{0,3}")) {
            throw wrong("command.wrong.trials-run", line, Typed.shown(run));
        }
        return new Trial(
                Integer.parseInt(run),
                volts(row.get("volts"), line),
                yes(row.get("fault"), line),
                row.isMapped("cold") && yes(row.get("cold"), line),
                row.isMapped("load") ? row.get("load") : "",
                row.isMapped("dwell") && !row.get("dwell").isEmpty() ? dwell(row.get("dwell"), line) : Double.NaN);
    }

    private double dwell(String text, String line) {
        try {
            double seconds = QuantityReader.read(text, Unit.SECOND).value();
            if (seconds > 0 && seconds <= LONGEST_DWELL) {
                return seconds;
            }
        } catch (BadInput e) {
            throw wrong("command.wrong.trials-dwell", line, Typed.shown(text));
        }
        throw wrong("command.wrong.trials-dwell", line, Typed.shown(text));
    }

    private double volts(String text, String line) {
        double volts;
        try {
            volts = Math.abs(QuantityReader.read(text, Unit.VOLT).value());
        } catch (BadInput e) {
            throw wrong("command.wrong.trials-volts", line, Typed.shown(text));
        }
        if (volts < 0.1 || volts > Typed.MOST_VOLTS) {
            throw wrong("command.wrong.trials-volts", line, Typed.shown(text));
        }
        return volts;
    }

    private boolean yes(String text, String line) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw wrong("command.wrong.trials-yes-no", line, Typed.shown(text));
        };
    }

    private BadOption wrong(String key, String... values) {
        return new BadOption(option, Message.of(key, values));
    }
}
