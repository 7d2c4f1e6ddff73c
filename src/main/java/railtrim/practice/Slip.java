package railtrim.practice;

import java.util.Locale;

/** What a tired or hurried hand does wrong. */
public enum Slip {
    /** kΩ for Ω, mV for V, or the other way round. */
    PREFIX,
    /** The decimal point one place off. */
    DECIMAL,
    /** The decimal point left out. */
    COMMA,
    /** Another kind of unit than the meter shows. */
    UNIT,
    /** The reading before this one typed once more. */
    STALE,
    /** Read on a range too large, with its last digits gone. */
    RANGE,
    /** A probe on another pin than the one that was named. */
    PROBE_SLIP,
    /** Red where black should be. */
    SWAPPED_PROBES,
    /** The two legs of the divider taken for one another. */
    SWAPPED_LEGS,
    /** The leads' own resistance not read. */
    NO_LEAD_ZERO,
    /** A question answered with the line below. */
    WRONG_ANSWER,
    /** Soldered across the leg that raises the output. */
    WRONG_LEG,
    /** Soldered across two pins that are no leg at all. */
    WRONG_PIN,
    /** Solder runs from the adjust pin to its neighbour. */
    BRIDGE,
    /** A joint that holds for now and opens when the board has warmed. */
    DRY_JOINT,
    /** Another resistor out of the drawer than the one picked. */
    SWAPPED_RESISTOR,
    /** The trimmer at its minimum when the board is switched on. */
    TRIMMER_AT_MINIMUM,
    /** Turned past the voltage that was to be set. */
    OVERSHOOT,
    /** Said to be off, but not switched off. */
    LEFT_ON,
    /** Said to be on, but not switched on. */
    LEFT_OFF,
    /** Switched on in the middle of work that needs it off. */
    LIVE,
    /** "All well" over a fault. */
    MISSED_FAULT,
    /** Said to be cold, but not waited for. */
    NO_COLD_START,
    /** Walked away in the middle of it and back the next day. */
    NEXT_DAY;

    /** Name in tables: "swapped-legs". */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A mistake in what is typed, which only typing the truth undoes. */
    boolean onPaper() {
        return compareTo(WRONG_ANSWER) <= 0;
    }

    /** A mistake of the iron, which only the iron undoes. */
    boolean inWiring() {
        return this == WRONG_LEG || this == WRONG_PIN || this == BRIDGE || this == DRY_JOINT;
    }
}
