package railtrim.command;

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
                .put("high", read.value() + half);
        Sheet sheet = new Sheet()
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
        if ((meter != null) == typed || typed && !all) {
            throw BadInput.of("command.wrong.accuracy-which");
        }
        if (meter != null) {
            return ofClass(read);
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

    private Accuracy ofClass(Quantity read) {
        Meter known = Named.meter("--meter", meter);
        if (read.unit() == Unit.AMPERE) {
            throw BadInput.of("command.wrong.meter-amperes");
        }
        return read.unit() == Unit.OHM ? known.ohmsAt(read.value()) : known.voltsAt(read.value());
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
