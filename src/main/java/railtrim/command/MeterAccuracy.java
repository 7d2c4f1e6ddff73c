package railtrim.command;

import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import railtrim.procedure.Words;
import railtrim.quantity.Accuracy;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Meter;
import railtrim.quantity.Quantity;
import railtrim.quantity.QuantityReader;
import railtrim.quantity.Unit;

/** {@code accuracy}: how far a reading can be off, from the line in the meter's manual. */
@Command(name = "accuracy", description = "${bundle:command.accuracy.about}")
final class MeterAccuracy implements Asked {
    private final Words words;

    @Parameters(index = "0", paramLabel = "3.555V", description = "${bundle:command.option.accuracy-reading}")
    private String reading;

    @Option(names = "--rdg", paramLabel = "0.5%", description = "${bundle:command.option.rdg}")
    private String percent;

    @Option(names = "--digits", paramLabel = "2", description = "${bundle:command.option.digits}")
    private String digits;

    @Option(names = "--resolution", paramLabel = "10mV", description = "${bundle:command.option.resolution}")
    private String resolution;

    @Option(names = "--meter", paramLabel = "basic", description = "${bundle:command.option.accuracy-meter}")
    private String meter;

    @Option(
            names = "--range",
            paramLabel = "\"2V 1mV 0.5%+2\"",
            description = "${bundle:command.option.accuracy-range}")
    private List<String> rows;

    MeterAccuracy(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Quantity read = reading();
        Accuracy accuracy = accuracy(read);
        double half = accuracy.halfWidth(read.value());
        double standard = accuracy.standardUncertainty(read.value());
        Json json = Json.object()
                .put("halfWidth", half)
                .put("standardUncertainty", standard)
                .put("expanded", 2 * standard)
                .put("low", read.value() - half)
                .put("high", read.value() + half)
                .put("percent", accuracy.percent())
                .put("digits", accuracy.digits())
                .put("resolution", accuracy.resolution());
        Sheet sheet = new Sheet()
                .pair(
                        words.of("command.label.accuracy-line"),
                        words.of(
                                "command.accuracy.line",
                                Display.brief(accuracy.percent(), Unit.PERCENT),
                                Display.brief(accuracy.digits(), Unit.COUNT),
                                Display.brief(accuracy.resolution(), read.unit())))
                .pair(words.of("command.label.half-width"), "± " + Display.of(half, read.unit()))
                .pair(words.of("command.label.standard-uncertainty"), Display.of(standard, read.unit()))
                .pair(
                        words.of("command.label.expanded"),
                        Display.withUncertainty(read.value(), 2 * standard, read.unit()));
        return Answer.done(json.map(), sheet);
    }

    private Accuracy accuracy(Quantity read) {
        boolean typed = percent != null || digits != null || resolution != null;
        boolean all = percent != null && digits != null && resolution != null;
        if (!typed && read.unit() == Unit.AMPERE) {
            throw BadInput.of("command.wrong.meter-amperes");
        }
        long ways = Stream.of(typed, meter != null, rows != null)
                .filter(given -> given)
                .count();
        if (ways != 1 || typed && !all) {
            throw BadInput.of("command.wrong.accuracy-which");
        }
        if (rows != null) {
            return onRange(read);
        }
        if (meter != null) {
            return NamedMeter.of("--meter", meter).at(read.unit(), read.value());
        }
        double rdg = 100 * Typed.fraction("--rdg", percent, 0, 20);
        double counts = Typed.whole("--digits", digits, 0, 1000);
        double count = Typed.between("--resolution", resolution, read.unit(), 1e-9, 1e6);
        if (count > Math.abs(read.value()) && read.value() != 0) {
            throw new BadOption(
                    "--resolution",
                    Message.of(
                            "command.wrong.resolution",
                            Display.of(count, read.unit()),
                            Display.of(read.value(), read.unit())));
        }
        return new Accuracy(rdg, counts, count);
    }

    /** Of the range the reading was taken on: the smallest that holds it, or a larger one where its last digit says so. */
    private Accuracy onRange(Quantity read) {
        List<Meter.Range> ranges = rows.stream()
                .map(row -> NamedMeter.row("--range", row, read.unit()))
                .toList();
        Meter known = read.unit() == Unit.OHM ? Meter.ofRanges(List.of(), ranges) : Meter.ofRanges(ranges, List.of());
        double lastDigit = QuantityReader.lastDigit(reading, read.unit());
        if (ranges.stream().noneMatch(range -> range.accuracy().endsWith(lastDigit))) {
            return known.at(read.unit(), read.value());
        }
        return known.at(read.unit(), read.value(), lastDigit);
    }

    /** Volts, ohms or amperes, whichever the unit says. */
    private Quantity reading() {
        for (Unit unit : new Unit[] {Unit.OHM, Unit.AMPERE}) {
            try {
                return QuantityReader.read(reading, unit);
            } catch (BadInput e) {
                // not this unit; volts, tried last, tell what is wrong
            }
        }
        try {
            return QuantityReader.read(reading, Unit.VOLT);
        } catch (BadInput e) {
            throw new BadOption(words.of("command.accuracy.reading"), e);
        }
    }
}
