package railtrim.practice;

import java.util.List;

/** Something to put across two pins of the practice board. */
public sealed interface Part {
    /** True resistance between its two leads, ohms. */
    double ohms();

    /** A fixed resistor, or two of them joined. */
    record Fixed(String marked, double ohms) implements Part {}

    /** A trimmer with its stop resistor in series. */
    final class Trimmer implements Part {
        private final VirtualTrimmer trimmer;
        private final double stopOhms;

        Trimmer(VirtualTrimmer trimmer, double stopOhms) {
            this.trimmer = trimmer;
            this.stopOhms = stopOhms;
        }

        public VirtualTrimmer trimmer() {
            return trimmer;
        }

        public double stopOhms() {
            return stopOhms;
        }

        @Override
        public double ohms() {
            return trimmer.ohms() + stopOhms;
        }
    }

    /** How two resistors are joined. */
    enum Joined {
        SERIES,
        PARALLEL;

        double of(List<Double> ohms) {
            return this == SERIES
                    ? ohms.stream().mapToDouble(Double::doubleValue).sum()
                    : 1 / ohms.stream().mapToDouble(one -> 1 / one).sum();
        }
    }
}
