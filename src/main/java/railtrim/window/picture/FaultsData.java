package railtrim.window.picture;

import java.util.List;
import java.util.OptionalDouble;
import railtrim.procedure.Figures;
import railtrim.procedure.Slip;
import railtrim.quantity.RailSign;

/**
 * What each slip at the divider and the pins would do to the output.
 *
 * @param slips worst first
 * @param limit the most the chip may have, magnitude, volts: its rated maximum, else stock; empty where neither is known
 * @param rated whether the limit is the rated maximum
 * @param sign how the meter shows the output
 */
record FaultsData(List<Slip> slips, OptionalDouble limit, boolean rated, RailSign sign) {
    FaultsData {
        slips = List.copyOf(slips);
    }

    static FaultsData of(Figures figures) {
        boolean rated = figures.ratedHigh().isPresent();
        return new FaultsData(figures.slips(), rated ? figures.ratedHigh() : figures.stock(), rated, figures.sign());
    }

    List<Slip> harmful() {
        return slips.stream().filter(Slip::harmful).toList();
    }

    List<Slip> harmless() {
        return slips.stream().filter(slip -> !slip.harmful()).toList();
    }
}
