package railtrim.command;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Meter;
import railtrim.quantity.Unit;

/** {@code solve}: the true leg and the current through it, from readings with different resistors across the leg. */
@Command(name = "solve", description = "${bundle:command.solve.about}")
final class Solve implements Asked {
    private final Words words;

    @Option(names = "--place", paramLabel = "PLACE", description = "${bundle:command.option.solve-place}")
    private String place;

    @Option(names = "--reference", paramLabel = "1.25V", description = "${bundle:command.option.reference}")
    private String reference;

    @Option(names = "--point", paramLabel = "1k:3.1392V", description = "${bundle:command.option.point}")
    private List<String> points = List.of();

    @Option(names = "--out-adj", paramLabel = "1.25V", description = "${bundle:command.option.out-adj}")
    private String outAdjust;

    @Option(names = "--adj-gnd", paramLabel = "2.3V", description = "${bundle:command.option.adj-gnd}")
    private String adjustGround;

    @Option(names = "--ohms", paramLabel = "out-adj:78.9R", description = "${bundle:command.option.ohms}")
    private List<String> ohms = List.of();

    @Option(names = "--meter", paramLabel = "basic", description = "${bundle:command.option.solve-meter}")
    private String meter;

    @Option(names = "--bias", paramLabel = "60uA", description = "${bundle:command.option.bias}")
    private String bias;

    @Option(names = "--target", paramLabel = "3.0V", description = "${bundle:command.option.solve-target}")
    private String target;

    @Option(names = "--leads", paramLabel = "0.2R", description = "${bundle:command.option.leads}")
    private String leads;

    Solve(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Meter read = NamedMeter.of("--meter", meter == null ? "basic" : meter);
        if (!ohms.isEmpty()) {
            if (!points.isEmpty() || place != null || reference != null || outAdjust != null || adjustGround != null) {
                throw BadInput.of("command.wrong.ohms-alone");
            }
            return new SolveOhms(words, read, leadOhms()).answer(ohms);
        }
        if (reference == null) {
            throw BadInput.of("command.wrong.solve-reference");
        }
        double referenceVolts = Typed.reference("--reference", reference);
        if (outAdjust != null || adjustGround != null) {
            return new SolvePlace(words, read).answer(referenceVolts, outAdjust, adjustGround, place, points);
        }
        if (place == null || points.isEmpty()) {
            throw BadInput.of("command.wrong.solve-which");
        }
        return new SolveLine(words, read, meter == null, leadOhms(), CircuitOptions.placeNamed(place), referenceVolts)
                .answer(bias == null ? 0 : CircuitOptions.biasTyped(bias), points, target);
    }

    private double leadOhms() {
        return leads == null ? 0 : Typed.between("--leads", leads, Unit.OHM, 0, 5);
    }
}
