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
    record Trimmer(double ohms, int turns, double stopOhms) {
        String name() {
            return Display.ohms(ohms);
        }
    }

    record Resistor(List<Double> values, Part.Joined joined, double tolerance) {
        String name() {
            return values.stream()
                    .map(Display::ohms)
                    .collect(Collectors.joining(joined == Part.Joined.PARALLEL ? " ∥ " : " + "));
        }
    }

    private Drawer() {}

    /** The trimmer picked in the job ("10000x25"), with its stop resistor where one is fitted. */
    static Optional<Trimmer> trimmer(Figures figures) {
        return figures.choice("trimmer.pick").filter(pick -> pick.contains("x")).map(pick -> {
            double ohms = Double.parseDouble(pick.substring(0, pick.indexOf('x')));
            int turns = Integer.parseInt(pick.substring(pick.indexOf('x') + 1));
            boolean stop =
                    figures.choice("trimmer.stop").filter("fitted"::equals).isPresent();
            return new Trimmer(ohms, turns, stop ? stopOhms(figures, ohms, turns) : 0);
        });
    }

    private static double stopOhms(Figures figures, double ohms, int turns) {
        return figures.trimmers().stream()
                .filter(each -> Math.round(each.nominal()) == Math.round(ohms) && each.turns() == turns)
                .mapToDouble(each -> each.stopResistor())
                .findFirst()
                .orElse(0);
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
