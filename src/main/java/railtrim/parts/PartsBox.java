package railtrim.parts;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import railtrim.quantity.BadInput;
import railtrim.quantity.QuantityReader;
import railtrim.quantity.Unit;

/** Resistors at hand, from a CSV text with the columns {@code value,tolerance,count} (4k7,1%,10). */
public record PartsBox(List<Part> parts) {
    static final int MOST_ROWS = 5_000;
    static final int MOST_BYTES = 64 * 1024;
    private static final double LARGEST_TOLERANCE = 0.5;
    private static final double MOST_OF_ONE = 100_000;
    private static final List<String> COLUMNS = List.of("value", "tolerance", "count");

    /** @param ohms more than 0; @param tolerance fraction; @param count 1 or more */
    public record Part(double ohms, double tolerance, int count) {}

    public PartsBox {
        parts = List.copyOf(parts);
    }

    /**
     * The first line names the columns, in any order and case; other columns are left alone, empty lines too. A comma or a semicolon
     * parts the columns. Rows with the same value and tolerance are counted together.
     *
     * @throws BadInput naming the line and what is wrong with it; also for more than 5,000 rows or 64 KiB
     */
    public static PartsBox of(String csv) {
        if (csv.length() > MOST_BYTES || csv.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
            throw BadInput.of("parts.box.too-large", String.valueOf(MOST_BYTES / 1024));
        }
        // Spreadsheets put a byte order mark in front.
        String text = csv.startsWith("\uFEFF") ? csv.substring(1) : csv;
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(text.lines().findFirst().orElse("").contains(";") ? ';' : ',')
                .setIgnoreEmptyLines(true)
                .setTrim(true)
                .get();
        long line = 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            Rows rows = new Rows();
            for (CSVRecord row : parser) {
                line = parser.getCurrentLineNumber();
                rows.add(row, line);
            }
            return rows.box();
        } catch (UncheckedIOException | CSVException broken) {
            throw BadInput.of("parts.box.broken", String.valueOf(line));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** The rows read so far. */
    private static final class Rows {
        private final Map<Part, Integer> counts = new LinkedHashMap<>();
        private List<Integer> columns = List.of();
        private int rows;

        void add(CSVRecord row, long line) {
            if (columns.isEmpty()) {
                columns = COLUMNS.stream().map(name -> column(row, name)).toList();
                return;
            }
            rows++;
            if (rows > MOST_ROWS) {
                throw BadInput.of("parts.box.too-many-rows", String.valueOf(line), String.valueOf(MOST_ROWS));
            }
            String at = String.valueOf(line);
            double ohms = number(cell(row, 0, at), Unit.OHM, "parts.box.value", at);
            double percent = number(cell(row, 1, at), Unit.PERCENT, "parts.box.tolerance", at);
            double count = number(cell(row, 2, at), Unit.COUNT, "parts.box.count", at);
            require(ohms > 0 && ohms <= 1e12, "parts.box.value", at, shown(cell(row, 0, at)));
            require(
                    percent >= 0 && percent <= 100 * LARGEST_TOLERANCE,
                    "parts.box.tolerance",
                    at,
                    shown(cell(row, 1, at)));
            require(
                    count >= 1 && count <= MOST_OF_ONE && count == Math.rint(count),
                    "parts.box.count",
                    at,
                    shown(cell(row, 2, at)));
            counts.merge(new Part(ohms, percent / 100, 1), (int) count, Integer::sum);
        }

        PartsBox box() {
            require(!columns.isEmpty() && !counts.isEmpty(), "parts.box.empty");
            List<Part> parts = new ArrayList<>();
            counts.forEach((part, count) -> parts.add(new Part(part.ohms(), part.tolerance(), count)));
            return new PartsBox(parts);
        }

        private static int column(CSVRecord header, String name) {
            for (int i = 0; i < header.size(); i++) {
                if (header.get(i).toLowerCase(Locale.ROOT).equals(name)) {
                    return i;
                }
            }
            throw BadInput.of("parts.box.columns", name, shown(String.join(",", header.values())));
        }

        private String cell(CSVRecord row, int column, String line) {
            int at = columns.get(column);
            if (at >= row.size() || row.get(at).isEmpty()) {
                throw BadInput.of("parts.box.missing", line, COLUMNS.get(column));
            }
            return row.get(at);
        }

        private static double number(String text, Unit unit, String key, String line) {
            try {
                return QuantityReader.read(text, unit).value();
            } catch (BadInput unreadable) {
                throw BadInput.of(key, line, shown(text));
            }
        }

        private static void require(boolean holds, String key, String... values) {
            if (!holds) {
                throw BadInput.of(key, values);
            }
        }

        /** Enough of a stranger's text to find it, and no control characters. */
        private static String shown(String text) {
            String clean = text.replaceAll("[\\p{Cntrl}\\p{Cf}]", " ");
            return clean.length() <= 40 ? clean : clean.substring(0, 40) + "…";
        }
    }
}
