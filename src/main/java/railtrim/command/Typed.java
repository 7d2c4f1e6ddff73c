package railtrim.command;

import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.QuantityReader;
import railtrim.quantity.Unit;

/**
 * Reads the value of an option and holds it to what a board of this kind can have. SI units. Every reader throws {@link BadOption}
 * for a value that cannot be read or lies outside. The limits are our own choice, wide enough for every regulator handled here.
 */
final class Typed {
    /** Railtrim stops above 60 V DC. */
    static final double MOST_VOLTS = 60;

    private static final double LEAST_VOLTS = 0.001;
    /** No reference in use lies below a few tenths of a volt; less is a mV typed for V. */
    private static final double LEAST_REFERENCE = 0.1;

    private static final double LEAST_OHMS = 0.1;
    private static final double MOST_OHMS = 100e6;

    private Typed() {}

    /** Volts as typed, sign kept; 0 is refused. */
    static double signedVolts(String option, String text) {
        double volts = read(option, text, Unit.VOLT);
        hold(option, text, Math.abs(volts), LEAST_VOLTS, MOST_VOLTS, Unit.VOLT);
        return volts;
    }

    static double reference(String option, String text) {
        return between(option, text, Unit.VOLT, LEAST_REFERENCE, MOST_VOLTS);
    }

    /** Volts of a rail as a magnitude: a minus sign is taken for a negative regulator or a shunt, and is a slip for any other. */
    static double railVolts(String option, String text, boolean minusAllowed) {
        double volts = signedVolts(option, text);
        if (volts < 0 && !minusAllowed) {
            throw new BadOption(option, Message.of("command.wrong.minus", Display.volts(volts)));
        }
        return Math.abs(volts);
    }

    static double ohms(String option, String text) {
        return between(option, text, Unit.OHM, LEAST_OHMS, MOST_OHMS);
    }

    /** A fraction from a typed per cent: {@code 2%} is 0.02. */
    /** As {@link #ohms}, less what the meter shows with its leads touching. */
    static double ohmsLessLeads(String option, String text, double leads) {
        double read = ohms(option, text);
        if (!(read > leads)) {
            throw new BadOption(option, Message.of("command.wrong.leads", shown(text), limit(leads, Unit.OHM)));
        }
        return read - leads;
    }

    static double fraction(String option, String text, double leastPercent, double mostPercent) {
        return between(option, text, Unit.PERCENT, leastPercent, mostPercent) / 100;
    }

    static double between(String option, String text, Unit unit, double least, double most) {
        double value = read(option, text, unit);
        hold(option, text, value, least, most, unit);
        return value;
    }

    /** A whole number with nothing after it. */
    static long whole(String option, String text, long least, long most) {
        String digits = text.strip();
        if (!digits.matches("\\d{1,18}") || Long.parseLong(digits) < least || Long.parseLong(digits) > most) {
            throw new BadOption(
                    option, Message.of("command.wrong.whole", shown(text), Long.toString(least), Long.toString(most)));
        }
        return Long.parseLong(digits);
    }

    /** What was typed, cut to a length that fits a line and without anything that is not a letter, digit or sign. */
    static String shown(String text) {
        String clean = text.replaceAll("\\p{C}", " ").strip();
        return clean.length() <= 40 ? clean : clean.substring(0, 40) + "…";
    }

    private static double read(String option, String text, Unit unit) {
        try {
            return QuantityReader.read(text, unit).value();
        } catch (BadInput e) {
            throw new BadOption(option, e);
        }
    }

    private static void hold(String option, String text, double value, double least, double most, Unit unit) {
        if (value < least || value > most) {
            throw new BadOption(
                    option,
                    Message.of(
                            "command.wrong.range." + Named.word(unit),
                            shown(text),
                            limit(least, unit),
                            limit(most, unit)));
        }
    }

    /** A limit is a round number: 0.1 Ω, not 0.1000 Ω. */
    static String limit(double value, Unit unit) {
        return Display.of(value, unit).replaceFirst("(\\.\\d*?)0+(?!\\d)", "$1").replaceFirst("\\.(?!\\d)", "");
    }
}
