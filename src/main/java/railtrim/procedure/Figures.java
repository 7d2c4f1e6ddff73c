package railtrim.procedure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.Circuit;
import railtrim.circuit.Faults;
import railtrim.circuit.LineSolve;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;
import railtrim.circuit.RegulatorFamily;
import railtrim.heat.Heat;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.parts.Resistors;
import railtrim.parts.Trimmers;
import railtrim.quantity.Meter;
import railtrim.threshold.FailVoltage;
import railtrim.threshold.MarginBudget;
import railtrim.threshold.Trial;

/** Everything the facts so far say about the circuit, computed afresh; what is not known yet is empty. Voltages are magnitudes. */
public final class Figures {
    Figures() {}

    private static UnsupportedOperationException soon() {
        return new UnsupportedOperationException();
    }

    /** Latest value of a number field that still counts (not reopened since), as read, SI units. */
    public OptionalDouble number(String field) {
        throw soon();
    }

    /** As {@link #number} for a resistance, with the meter's lead zero taken off. */
    public OptionalDouble ohms(String field) {
        throw soon();
    }

    public Optional<Fact.Reading> reading(String field) {
        throw soon();
    }

    public Optional<String> choice(String field) {
        throw soon();
    }

    public Optional<String> text(String field) {
        throw soon();
    }

    /** Every fact ever written for a field, oldest first, those that no longer count included. */
    public List<Entry> history(String field) {
        throw soon();
    }

    public Meter meter() {
        throw soon();
    }

    public Optional<RegulatorFamily> family() {
        throw soon();
    }

    public Optional<Place> place() {
        throw soon();
    }

    public Optional<Outline> outline() {
        throw soon();
    }

    /** Roles given so far, pin 1 first, then the tab where the outline has one; empty Optional where not given yet. */
    public List<Optional<PinRole>> pins() {
        throw soon();
    }

    public OptionalDouble reference() {
        throw soon();
    }

    public OptionalDouble stock() {
        throw soon();
    }

    public OptionalDouble input() {
        throw soon();
    }

    public OptionalDouble ratedLow() {
        throw soon();
    }

    public OptionalDouble ratedHigh() {
        throw soon();
    }

    /** Lowest voltage the person wants to explore. */
    public OptionalDouble floor() {
        throw soon();
    }

    /** Predicted voltage at power-up with the trimmer in hand at its maximum. */
    public OptionalDouble start() {
        throw soon();
    }

    /** Last output reading with the board on, empty while it is off. */
    public OptionalDouble now() {
        throw soon();
    }

    /** Last rail reading of any kind, power on or off, signed as read. */
    public OptionalDouble rail() {
        throw soon();
    }

    public OptionalDouble lastGood() {
        throw soon();
    }

    /** Highest voltage at which a fault was seen. */
    public OptionalDouble fault() {
        throw soon();
    }

    /** Where the next decrement should land, in the step-down. */
    public OptionalDouble nextTarget() {
        throw soon();
    }

    /** The voltage chosen after the margin. */
    public OptionalDouble target() {
        throw soon();
    }

    /** Voltage with the fixed resistor fitted, as read. */
    public OptionalDouble fitted() {
        throw soon();
    }

    /** The leg as read on the board, lead zero taken off, ohms. */
    public OptionalDouble readLeg() {
        throw soon();
    }

    public OptionalDouble readOther() {
        throw soon();
    }

    /** Best estimate of the true circuit so far. */
    public Optional<Circuit> circuit() {
        throw soon();
    }

    /** Readings that lie on the straight line, stock first. */
    public List<LineSolve.Point> points() {
        throw soon();
    }

    public Optional<LineSolve.Solution> solution() {
        throw soon();
    }

    /** Ohms across the leg now: the trimmer's maximum, its setting, or the fixed resistor; infinity for none; empty where not known. */
    public OptionalDouble addedNow() {
        throw soon();
    }

    public List<Faults.Effect> faults() {
        throw soon();
    }

    public List<Trimmers.Candidate> trimmers() {
        throw soon();
    }

    public Optional<Trimmers.InHand> trimmerInHand() {
        throw soon();
    }

    public List<Trial> trials() {
        throw soon();
    }

    public Optional<FailVoltage> failVoltage() {
        throw soon();
    }

    public Optional<MarginBudget> budget() {
        throw soon();
    }

    public List<Resistors.Candidate> resistors() {
        throw soon();
    }

    public Optional<Resistors.Candidate> chosen() {
        throw soon();
    }

    public Optional<Heat.Powers> powers() {
        throw soon();
    }
}
