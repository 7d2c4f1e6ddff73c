package railtrim.command;

import java.util.ArrayList;
import java.util.List;
import railtrim.quantity.BadInput;
import railtrim.quantity.Message;
import railtrim.quantity.Meter;
import railtrim.quantity.RangeRow;
import railtrim.quantity.Unit;

/** A meter as it is named on the command line: one of the classes, or rows of its manual with a semicolon between them. */
final class NamedMeter {
    private NamedMeter() {}

    static Meter of(String option, String text) {
        return switch (text.strip()) {
            case "basic" -> Meter.basic();
            case "middle" -> Meter.middle();
            case "fine" -> Meter.fine();
            default -> ofRows(option, text);
        };
    }

    private static Meter ofRows(String option, String text) {
        if (!text.matches("(?s).*[0-9].*")) {
            throw new BadOption(option, Message.of("command.wrong.meter", Typed.shown(text)));
        }
        List<Meter.Range> volts = new ArrayList<>();
        List<Meter.Range> ohms = new ArrayList<>();
        for (String row : text.split(";")) {
            (unit(row) == Unit.OHM ? ohms : volts).add(row(option, row, unit(row)));
        }
        return Meter.ofRanges(volts, ohms);
    }

    static Meter.Range row(String option, String row, Unit unit) {
        try {
            return RangeRow.read(row, unit);
        } catch (BadInput e) {
            throw new BadOption(option, e);
        }
    }

    /** A row of volts says so; one of ohms may be as short as 20k. */
    private static Unit unit(String row) {
        return row.matches("(?is).*[0-9] *[µum]?v.*") ? Unit.VOLT : Unit.OHM;
    }
}
