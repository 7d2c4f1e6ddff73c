package railtrim.window.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import railtrim.practice.Part;
import railtrim.procedure.Figures;
import railtrim.quantity.Display;

/** The drawer of parts: it holds what the job has chosen. */
final class Drawer {
    /** @param fine ohms of a fine trimmer in series, 0 for none */
    record Trimmer(double ohms, double fine, int turns, double stopOhms) {
        String name() {
            return fine > 0 ? Display.part(ohms) + " + " + Display.part(fine) : Display.part(ohms);
        }
    }

    record Resistor(List<Double> values, Part.Joined joined, double tolerance) {
        String name() {
            return values.stream()
                    .map(Display::part)
                    .collect(Collectors.joining(joined == Part.Joined.PARALLEL ? " ∥ " : " + "));
        }
    }

    private Drawer() {}

    /** The trimmer picked in the job ("10000x25", or "10000x25+200x25" for a coarse and a fine one), with its stop resistor where one is fitted. */
    static Optional<Trimmer> trimmer(Figures figures) {
        return figures.choice("trimmer.pick").filter(pick -> pick.contains("x")).map(pick -> {
            String[] parts = pick.split("[x+]");
            boolean stop =
                    figures.choice("trimmer.stop").filter("fitted"::equals).isPresent();
            return new Trimmer(
                    Double.parseDouble(parts[0]),
                    parts.length > 2 ? Double.parseDouble(parts[2]) : 0,
                    Integer.parseInt(parts[1]),
                    stop ? stopOhms(figures) : 0);
        });
    }

    private static double stopOhms(Figures figures) {
        return figures.trimmerPicked().map(each -> each.stopResistor()).orElse(0.0);
    }

    /** The resistors picked in the job: "single:680", "series:470+220", "parallel:1000+2200". */
    static Optional<Resistor> resistor(Figures figures) {
        return figures.choice("res.pick").filter(pick -> pick.contains(":")).map(pick -> {
            List<Double> values = Arrays.stream(
                            pick.substring(pick.indexOf(':') + 1).split("\\+"))
                    .map(Double::valueOf)
                    .toList();
            Part.Joined joined = pick.startsWith("parallel") ? Part.Joined.PARALLEL : Part.Joined.SERIES;
            double tolerance =
                    figures.choice("res.tolerance").map(Double::valueOf).orElse(1.0) / 100;
            return new Resistor(values, joined, tolerance);
        });
    }
}
