package railtrim.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import railtrim.procedure.Words;
import railtrim.quantity.Accuracy;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Quantity;
import railtrim.quantity.QuantityReader;
import railtrim.quantity.Unit;

/** {@code accuracy}: how far a reading can be off, from the line in the meter's manual. */
@Command(name = "accuracy", description = "${bundle:command.accuracy.about}")
final class MeterAccuracy implements Asked {
    private final Words words;

    @Parameters(index = "0", paramLabel = "3.555V", description = "${bundle:command.option.accuracy-reading}")
    private String reading;

    @Option(names = "--rdg", required = true, paramLabel = "0.5%", description = "${bundle:command.option.rdg}")
    private String percent;

    @Option(names = "--digits", required = true, paramLabel = "2", description = "${bundle:command.option.digits}")
    private String digits;

    @Option(
            names = "--resolution",
            required = true,
            paramLabel = "10mV",
            description = "${bundle:command.option.resolution}")
    private String resolution;

    MeterAccuracy(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Quantity read = reading();
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
        Accuracy accuracy = new Accuracy(rdg, counts, count);
        double half = accuracy.halfWidth(read.value());
        double standard = accuracy.standardUncertainty(read.value());
        Json json = Json.object().put("halfWidth", half).put("standardUncertainty", standard);
        Sheet sheet = new Sheet()
                .pair(words.of("command.label.half-width"), "± " + Display.of(half, read.unit()))
                .pair(words.of("command.label.standard-uncertainty"), Display.of(standard, read.unit()))
                .pair(
                        words.of("command.label.expanded"),
                        Display.withUncertainty(read.value(), 2 * standard, read.unit()));
        return Answer.done(json.map(), sheet);
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
