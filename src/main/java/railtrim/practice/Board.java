package railtrim.practice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.Leg;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;
import railtrim.heat.Heat;

/**
 * A virtual board: what its user can read off it, and the truth that only shows through a meter. Volts (magnitudes), ohms, amperes,
 * °C, seconds.
 */
public record Board(
        Label label,
        Feed feed,
        Chip chip,
        Regulator regulator,
        Divider divider,
        Load load,
        Warmth warmth,
        Failing failing) {

    /** @throws railtrim.quantity.BadInput naming the field that is missing, unknown or out of range */
    public static Board of(String json) {
        return BoardReader.read(json);
    }

    /** What is told about the board before anything is measured; maker and story are invented. */
    public record Label(String name, String maker, String story, String teaches) {}

    /** @param kind adapter, bench, inside or mains; @param highestRail of all the rails on the board, volts */
    public record Feed(String kind, double highestRail) {}

    /** @param rated supply range in the chip's papers, where there are any */
    public record Chip(String name, Optional<Range> rated) {}

    public record Range(double low, double high) {}

    /** How the output voltage of the regulator is set. */
    public enum Control {
        ADJUSTABLE("adjustable"),
        FIXED("fixed"),
        CODED("coded");

        private final String id;

        Control(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }
    }

    /**
     * @param family id of a known family, or "other"
     * @param sheet figures to copy off the data sheet where the family is "other"
     * @param pins roles, pin 1 first
     * @param switching whether it switches, so that its loss is not (Vin − V)·I
     */
    public record Regulator(
            String marking,
            String family,
            Optional<Sheet> sheet,
            Outline outline,
            List<PinRole> pins,
            Optional<PinRole> tab,
            Control control,
            boolean switching) {
        public Regulator {
            pins = List.copyOf(pins);
        }
    }

    /** Figures as a data sheet prints them. */
    public record Sheet(
            double referenceLow,
            double reference,
            double referenceHigh,
            double bias,
            double dropout,
            double minimumLoad,
            double inputHighest) {}

    /** A part as marked and as it truly is. @param off fraction by which the true value is above the marked one */
    public record Real(double marked, double off) {
        public double value() {
            return marked * (1 + off);
        }
    }

    /**
     * The regulator's divider and what surrounds it.
     *
     * @param controlSupply voltage of the control pin of regulators that have one
     * @param railOhms from the output to ground through the unpowered load; it spoils ohm readings of the legs
     * @param outputOhms how much the output gives way under load, volts per ampere
     * @param decaySeconds time constant of the rail's fall after switching off
     */
    public record Divider(
            Place place,
            Real reference,
            Real upper,
            Real lower,
            double bias,
            double input,
            double dropout,
            OptionalDouble controlSupply,
            double outputOhms,
            double railOhms,
            double decaySeconds) {
        /** Output magnitude without load for the two legs as they are. */
        public double magnitude(double upperOhms, double lowerOhms) {
            return Regulation.magnitude(this, upperOhms, lowerOhms);
        }

        public double ohms(Leg leg) {
            return leg == Leg.UPPER ? upper.value() : lower.value();
        }
    }

    /**
     * @param stockAmperes at stock voltage under the named load; @param idle fraction of it drawn when the load is not run
     * @param kind how the current follows the voltage
     */
    public record Load(String name, double stockAmperes, double idle, Heat.LoadKind kind) {}

    /** Thermal resistances in kelvin per watt, and the time constant of both parts' warming. */
    public record Warmth(double chip, double regulator, double seconds, double room) {}

    /**
     * @param hot voltage below which the warm chip fails; @param cold likewise at room temperature
     * @param spread standard deviation of both from one power-up to the next; draws are cut off at three of these
     * @param damage voltage above which the chip dies
     */
    public record Failing(double hot, double cold, double spread, double damage, Seen shows) {
        /** The highest voltage at which any run can fail. */
        public double worst() {
            return Math.max(hot, cold) + 3 * spread;
        }
    }

    /** Output magnitude as the maker left it, without load, volts. */
    public double stock() {
        return divider.magnitude(divider.upper().value(), divider.lower().value());
    }

    /** Output magnitude with {@code added} ohms across the lowering leg, without load, volts. */
    public double withAdded(double added) {
        Leg lowering = divider.place().loweringLeg();
        double total = Regulation.parallel(divider.ohms(lowering), added);
        return lowering == Leg.UPPER
                ? divider.magnitude(total, divider.lower().value())
                : divider.magnitude(divider.upper().value(), total);
    }

    /** Current of the load at a voltage, amperes. */
    public double amperes(double volts, boolean loaded) {
        double atStock = load.stockAmperes() * (loaded ? 1 : load.idle());
        return load.kind() == Heat.LoadKind.DIGITAL ? atStock * volts / stock() : volts > 0 ? atStock : 0;
    }

    /** Lowest output under load with {@code added} ohms across the lowering leg, volts. */
    public double loadedWithAdded(double added) {
        double open = withAdded(added);
        return open - divider.outputOhms() * amperes(open, true);
    }

    /** The chip's rated maximum, where it is known. */
    public OptionalDouble ratedHigh() {
        return chip.rated().map(range -> OptionalDouble.of(range.high())).orElse(OptionalDouble.empty());
    }
}
