package railtrim.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.LineSolve;
import railtrim.procedure.Figures;
import railtrim.quantity.RailSign;

/**
 * Readings against the straight line 1/(|V| − Vref) over 1/Radded.
 *
 * @param reference volts, empty where not known (then nothing can be drawn)
 * @param fit the line, empty with fewer than two readings
 * @param suspect the one to measure again, where not all fit
 * @param sign how the meter shows the voltages
 */
record LineData(
        OptionalDouble reference, List<Reading> readings, Optional<Fit> fit, Optional<Reading> suspect, RailSign sign) {
    LineData {
        readings = List.copyOf(readings);
    }

    /**
     * @param added ohms, infinity for none
     * @param volts magnitude
     * @param uncertainty standard, volts, 0 where not known
     */
    record Reading(double added, double volts, double uncertainty) {
        /** Siemens. */
        double across() {
            return 1 / added;
        }
    }

    /**
     * @param leg ohms; {@code legCurrent} amperes
     * @param worst largest distance of a reading from the line, volts
     */
    record Fit(double leg, double legCurrent, double worst) {
        /** Magnitude above the reference with so many siemens across the leg, volts. */
        double above(double across) {
            return legCurrent / (1 / leg + across);
        }
    }

    static LineData of(Figures figures) {
        List<Reading> readings = new ArrayList<>();
        for (LineSolve.Point point : figures.points()) {
            readings.add(new Reading(point.added(), point.volts(), point.uncertainty()));
        }
        Optional<Fit> fit =
                figures.solution().map(found -> new Fit(found.leg(), found.legCurrent(), found.worstResidual()));
        Optional<Reading> suspect = figures.lineCheck().suspect().map(found -> readings.get(found.index()));
        return new LineData(figures.reference(), readings, fit, suspect, figures.sign());
    }

    /** Readings that can be drawn: above the reference. */
    List<Reading> drawable() {
        double least = reference.orElse(Double.MAX_VALUE);
        return readings.stream().filter(reading -> reading.volts() > least).toList();
    }
}
