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
     * @param inputOhms how much the input gives way, volts per ampere of the load
     * @param minimumLoad amperes below which the output rises; {@code unloadedRise} by this fraction where nothing is drawn at all
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
            double inputOhms,
            double minimumLoad,
            double unloadedRise,
            OptionalDouble controlSupply,
            double outputOhms,
            double railOhms,
            double decaySeconds) {
        /** Output magnitude for the two legs as they are, the output's own give and the input's apart. */
        public double magnitude(double upperOhms, double lowerOhms) {
            return Regulation.magnitude(this, upperOhms, lowerOhms);
        }

        /** The most the regulator can give while so much is drawn. */
        double ceiling(double amperes) {
            return Math.max(0, input - inputOhms * amperes - dropout);
        }

        /** What the output rises to where too little is drawn, as a factor: 1 from the minimum load up. */
        double rise(double amperes) {
            return amperes >= minimumLoad ? 1 : 1 + unloadedRise * (1 - amperes / minimumLoad);
        }

        /** What is left of an output set to so many volts where so much is drawn, volts. */
        double given(double open, double amperes) {
            return Math.min(ceiling(amperes), open * rise(amperes)) - outputOhms * amperes;
        }

        /** The same divider behind another input. @param volts and @param ohms of it */
        Divider behind(double volts, double ohms) {
            return new Divider(
                    place,
                    reference,
                    upper,
                    lower,
                    bias,
                    volts,
                    dropout,
                    ohms,
                    minimumLoad,
                    unloadedRise,
                    controlSupply,
                    outputOhms,
                    railOhms,
                    decaySeconds);
        }

        public double ohms(Leg leg) {
            return leg == Leg.UPPER ? upper.value() : lower.value();
        }
    }

    /** What the chip is doing. */
    public enum Work {
        IDLE,
        /** The load it was named by. */
        NAMED,
        /** Another program, which may ask more of it. */
        OTHER
    }

    /**
     * @param stockAmperes at stock voltage under the named load with the chip as warm as that makes it
     * @param idle fraction of the switching current that is drawn when no load is run
     * @param kind how the switching current follows the voltage
     * @param leakage fraction of {@code stockAmperes} that leaks: it follows the voltage and the warmth of the chip, not the work
     * @param clock as a fraction of the clock at which {@code stockAmperes} was drawn; the switching current follows it
     */
    public record Load(
            String name,
            double stockAmperes,
            double idle,
            Heat.LoadKind kind,
            double leakage,
            double clock,
            Optional<Other> other) {}

    /**
     * Another program to try the chip with.
     *
     * @param share of the named load's switching current; @param failsHigher volts by which the chip fails higher with it, less than 0 for lower
     */
    public record Other(String name, double share, double failsHigher) {}

    /** Thermal resistances in kelvin per watt, the time constants of both parts' warming, and the room, °C. */
    public record Warmth(double chip, double regulator, double seconds, double regulatorSeconds, double room) {}

    /**
     * @param hot voltage below which the warm chip fails; @param cold likewise at room temperature
     * @param spread standard deviation of both from one power-up to the next; draws are cut off at three of these
     * @param damage voltage above which the chip dies
     */
    public record Failing(double hot, double cold, double spread, double damage, Seen shows) {
        /** The highest voltage at which any run with the named load can fail. */
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

    /** Current of the chip at a voltage, amperes. */
    public double amperes(double volts, Work work, double celsius) {
        return new Draw(this).amperes(volts, work, celsius);
    }

    /** The same under the named load, with the chip as warm as that makes it at stock. */
    public double amperes(double volts) {
        return amperes(volts, Work.NAMED, warmAtStock());
    }

    /** Temperature of the chip under the named load as its maker left it, °C. */
    double warmAtStock() {
        return new Draw(this).warmAtStock();
    }

    /** Lowest output under load with {@code added} ohms across the lowering leg, volts. */
    public double loadedWithAdded(double added) {
        return given(withAdded(added), amperes(withAdded(added)));
    }

    /** What is left of the output where so much is drawn, volts. */
    double given(double open, double amperes) {
        return divider.given(open, amperes);
    }

    /** The highest output as the maker left it: with nothing to do, and the chip cold. */
    double mostAtStock() {
        return Math.max(stock(), given(stock(), amperes(stock(), Work.IDLE, warmth.room())));
    }

    /** The highest voltage at which any run can fail, with any load. */
    public double worstFail() {
        return failing.worst()
                + Math.max(0, load.other().map(Other::failsHigher).orElse(0.0));
    }

    /** The chip's rated maximum, where it is known. */
    public OptionalDouble ratedHigh() {
        return chip.rated().map(range -> OptionalDouble.of(range.high())).orElse(OptionalDouble.empty());
    }
}
