package railtrim.practice;

import java.util.List;
import java.util.Optional;

/** Something to put across two pins of the practice board. */
public sealed interface Part {
    /** True resistance between its two leads, ohms. */
    double ohms();

    /** A fixed resistor, or two of them joined. */
    record Fixed(String marked, double ohms) implements Part {}

    /** A trimmer with its stop resistor in series, and maybe a fine trimmer too. */
    final class Trimmer implements Part {
        private final VirtualTrimmer trimmer;
        private final Optional<VirtualTrimmer> fine;
        private final double stopOhms;

        Trimmer(VirtualTrimmer trimmer, Optional<VirtualTrimmer> fine, double stopOhms) {
            this.trimmer = trimmer;
            this.fine = fine;
            this.stopOhms = stopOhms;
        }

        /** The only one, or the coarse one of two. */
        public VirtualTrimmer trimmer() {
            return trimmer;
        }

        public Optional<VirtualTrimmer> fine() {
            return fine;
        }

        /** Nothing is left to turn down. */
        public boolean atItsEnd() {
            return trimmer.travel() <= trimmer.finest()
                    && fine.filter(each -> each.travel() > each.finest()).isEmpty();
        }

        public double stopOhms() {
            return stopOhms;
        }

        @Override
        public double ohms() {
            // Without a function in between: while it turns this is asked for thousands of times.
            double fineOhms = fine.isPresent() ? fine.get().ohms() : 0;
            return trimmer.ohms() + fineOhms + stopOhms;
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
