package railtrim.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import railtrim.quantity.Accuracy;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Meter;
import railtrim.quantity.RangeRow;
import railtrim.quantity.Unit;

/** The rows of the accuracy table a person copies from the manual of their meter, one for each range they will use, smallest first. */
public final class MeterRows {
    /** The answer that asks for them. */
    static final String CLASS = "rows";

    public static final List<String> VOLTS = List.of("range.volt.1", "range.volt.2", "range.volt.3");
    public static final List<String> OHMS = List.of("range.ohm.1", "range.ohm.2", "range.ohm.3", "range.ohm.4");

    /** Most legs and trimmers are smaller. Above it the meter counts as it does on its last row. */
    private static final double OHMS_TO_HOLD = 15_000;

    /** Where the person does not know their supply yet. */
    private static final double VOLTS_TO_HOLD = 12;

    private MeterRows() {}

    static Unit unit(String field) {
        return VOLTS.contains(field) ? Unit.VOLT : Unit.OHM;
    }

    static boolean chosen(Figures figures) {
        return figures.chose("meter.class", CLASS);
    }

    /** The next row is asked for while the one before it does not hold what will be read. */
    static boolean asked(Figures figures, String field) {
        List<String> fields = unit(field) == Unit.VOLT ? VOLTS : OHMS;
        int index = fields.indexOf(field);
        return chosen(figures)
                && (index == 0
                        || row(figures, fields.get(index - 1))
                                .filter(before -> before.fullScale() < toHold(figures, unit(field)))
                                .isPresent());
    }

    private static double toHold(Figures figures, Unit unit) {
        return unit == Unit.OHM
                ? OHMS_TO_HOLD
                : figures.magnitude("rail.highest").orElse(VOLTS_TO_HOLD);
    }

    /**
     * The row as it was understood, and what it means for a reading in the middle of the range.
     *
     * @throws BadInput for what is no row, or no larger range than the one before
     */
    static List<Message> readBack(Figures figures, String field, String text) {
        Unit unit = unit(field);
        Meter.Range range = RangeRow.read(text, unit);
        Optional<Meter.Range> before = before(figures, field);
        if (before.isPresent() && range.fullScale() <= before.get().fullScale()) {
            throw BadInput.of("verdict.range-not-larger", RangeRow.written(before.get(), unit));
        }
        double middle = Math.pow(10, Math.floor(Math.log10(range.fullScale() / 2)));
        return List.of(Message.of(
                "verdict.range-read",
                RangeRow.written(range, unit),
                Display.brief(middle, unit),
                Display.brief(range.accuracy().halfWidth(middle), unit)));
    }

    private static Optional<Meter.Range> before(Figures figures, String field) {
        List<String> fields = unit(field) == Unit.VOLT ? VOLTS : OHMS;
        int index = fields.indexOf(field);
        return index == 0 ? Optional.empty() : row(figures, fields.get(index - 1));
    }

    /** The row typed into one of {@link #VOLTS} or {@link #OHMS}. */
    public static Optional<Meter.Range> row(Figures figures, String field) {
        return figures.text(field).flatMap(text -> Figures.attempt(() -> RangeRow.read(text, unit(field))));
    }

    /** All that {@link #meter} depends on. */
    static List<Object> typed(Figures figures) {
        List<Object> typed = new ArrayList<>(List.of("meter rows", figures.magnitude("rail.highest")));
        Stream.concat(VOLTS.stream(), OHMS.stream()).map(figures::text).forEach(typed::add);
        return List.copyOf(typed);
    }

    /** Empty until a row of each kind was typed. */
    static Optional<Meter> meter(Figures figures) {
        List<Meter.Range> volts = rows(figures, VOLTS);
        List<Meter.Range> ohms = rows(figures, OHMS);
        return volts.isEmpty() || ohms.isEmpty() ? Optional.empty() : Optional.of(Meter.ofRanges(volts, ohms));
    }

    private static List<Meter.Range> rows(Figures figures, List<String> fields) {
        List<Meter.Range> rows = new ArrayList<>();
        for (String field : fields) {
            if (asked(figures, field)) {
                row(figures, field).ifPresent(rows::add);
            }
        }
        return rows;
    }

    /** The rows that count, as they were understood; none where a class of meter was picked. */
    public static List<String> written(Figures figures) {
        return Stream.concat(VOLTS.stream(), OHMS.stream())
                .filter(field -> asked(figures, field))
                .flatMap(field -> row(figures, field).map(range -> RangeRow.written(range, unit(field))).stream())
                .toList();
    }

    /**
     * A reading whose last digit is not the one its range shows: a zero was left out, or it was taken on a larger range. Once a larger range was said to
     * be in use, its last digit is believed.
     *
     * @param text as typed
     */
    static Optional<Message> oddDigits(Figures figures, Field.Number field, double value, String text) {
        Unit unit = field.unit();
        boolean trial = field.id().startsWith("meter.");
        boolean asMeterShowsIt =
                (unit == Unit.VOLT || unit == Unit.OHM) && field.measured() && !trial && !RailFields.isDead(field.id());
        OptionalDouble typed = asMeterShowsIt && chosen(figures) ? LastDigits.of(text, unit) : OptionalDouble.empty();
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        Meter known = figures.meter();
        double digit = typed.getAsDouble();
        Accuracy smallest = known.at(unit, value);
        // Below a tenth of the smallest range that was copied the meter may well have a smaller one.
        double least = known.ranges(unit).get(0).fullScale() / 10;
        if (Math.abs(value) < least || smallest.endsWith(digit) || figures.onLargerRange(unit, digit)) {
            return Optional.empty();
        }
        String key = digit < smallest.resolution() ? "verdict.digits-too-fine" : "verdict.digits-left-out";
        return Optional.of(Message.of(key, text.strip(), Display.brief(smallest.resolution(), unit)));
    }
}
