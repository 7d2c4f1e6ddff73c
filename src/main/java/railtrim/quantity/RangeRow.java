package railtrim.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One row of the accuracy table in a meter's manual as it is printed there: range, last digit, accuracy, {@code 6 V 1 mV ±(0.5 % + 3)}. */
public final class RangeRow {
    private static final int LONGEST = 80;
    /** A display shows at least 199, and no hand meter or bench meter more than 2 million steps. */
    private static final double FEWEST_STEPS = 199;

    private static final double MOST_STEPS = 2e6;
    private static final double MOST_PERCENT = 20;
    private static final double MOST_DIGITS = 1000;

    private static final String SIZE = "([0-9]+(?:[.,][0-9]+)? *(?:[µumkM]?(?:V|Ω|ohms?|R)|[kM]))";
    private static final String BETWEEN = "[ ,:|/]*";
    private static final String PERCENT = "([0-9]+(?:[.,][0-9]+)?) *% *(?:of +)?(?:rdg|rd|reading)?\\.?";
    private static final String DIGITS = "([0-9]+) *(?:digits?|dgts?|dig|counts?|cts?|lsd|d)?\\.?";
    private static final Pattern ROW = Pattern.compile(
            SIZE + BETWEEN + SIZE + BETWEEN + "±? *\\(? *±? *" + PERCENT + " *(?:\\+|±)/?-? *" + DIGITS + " *\\)?",
            Pattern.CASE_INSENSITIVE);

    private RangeRow() {}

    /**
     * @param unit volts or ohms
     * @throws BadInput with what was read, what is expected and what to do
     */
    public static Meter.Range read(String text, Unit unit) {
        Matcher row = ROW.matcher(plain(text));
        if (!row.matches()) {
            throw BadInput.of("quantity.range-row", shown(text), example(unit));
        }
        double name = QuantityReader.read(row.group(1).strip(), unit).value();
        double lastDigit = QuantityReader.read(row.group(2).strip(), unit).value();
        double percent = Double.parseDouble(row.group(3).replace(',', '.'));
        double digits = Double.parseDouble(row.group(4));
        if (percent > MOST_PERCENT || digits > MOST_DIGITS) {
            throw BadInput.of("quantity.accuracy-impossible", shown(text));
        }
        double steps = name / lastDigit;
        if (!(steps >= FEWEST_STEPS * (1 - 1e-9) && steps <= MOST_STEPS)) {
            throw BadInput.of("quantity.range-steps", Display.of(name, unit), Display.of(lastDigit, unit));
        }
        return new Meter.Range(fullScale(name, lastDigit), new Accuracy(percent, digits, lastDigit));
    }

    /** The row as it may be typed again: {@code 6 V, 1 mV, ±(0.5 % + 3)}. */
    public static String written(Meter.Range range, Unit unit) {
        Accuracy accuracy = range.accuracy();
        double steps = Math.rint(range.fullScale() / accuracy.resolution());
        double name = (steps + 1) % 10 == 0 ? (steps + 1) * accuracy.resolution() : range.fullScale();
        return size(name, unit) + ", " + size(accuracy.resolution(), unit) + ", ±("
                + size(accuracy.percent(), Unit.PERCENT) + " + " + size(accuracy.digits(), Unit.COUNT) + ")";
    }

    private static String size(double value, Unit unit) {
        String written = Display.of(value, unit);
        return written.replaceFirst("(\\.[0-9]*?)0+(?![0-9])", "$1").replaceFirst("\\.(?![0-9])", "");
    }

    /** A range called 6 V shows up to 5.999 V; one that is given as 5.999 V does so too. */
    private static double fullScale(double name, double lastDigit) {
        double steps = Math.rint(name / lastDigit);
        return steps % 10 == 0 ? (steps - 1) * lastDigit : steps * lastDigit;
    }

    private static String example(Unit unit) {
        return unit == Unit.OHM ? "600 Ω 0.1 Ω ±(0.9 % + 2)" : "6 V 1 mV ±(0.5 % + 3)";
    }

    private static String plain(String text) {
        String blanks = text.replaceAll("[\\s\\p{Zs}]+", " ").strip();
        return blanks.replace('\u2126', 'Ω').replace('\u03BC', 'µ').replace("+/-", "±");
    }

    private static String shown(String text) {
        String plain = plain(text).replaceAll("[\\p{Cc}\\p{Cf}]", "□");
        return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST) + "…";
    }
}
