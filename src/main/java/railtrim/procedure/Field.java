package railtrim.procedure;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import railtrim.quantity.Message;
import railtrim.quantity.Unit;

/** Something a step asks for. Its words are in the bundle: {@code field.ID.label}, {@code field.ID.help}. */
public sealed interface Field {
    String id();

    /** Whether it is asked for, given what is known so far. */
    Predicate<Figures> asked();

    /** What a reading outside its expected range leads to. */
    enum Outside {
        /** Ask to measure again; a second look that says the same shows the step's out-of-range branch. */
        MEASURE_AGAIN,
        /** Odd but possible: after a second look it is taken, with a warning that goes into the export. */
        ODD,
        /** Power off at once: the make-safe card. */
        MAKE_SAFE
    }

    /** Expected interval, SI units, inclusive, with the sentence that says where it comes from. */
    record Expected(double low, double high, Message because) {}

    /**
     * @param hardLow below this (or above {@code hardHigh}) a reading is impossible and refused
     * @param expected empty where nothing can be expected yet
     * @param again id of the field this is a second, independent reading of; the first is hidden while this is typed
     */
    record Number(
            String id,
            Unit unit,
            double hardLow,
            double hardHigh,
            Function<Figures, Optional<Expected>> expected,
            Outside outside,
            Optional<String> again,
            Predicate<Figures> asked)
            implements Field {
        private static final Set<String> WRITTEN = Set.of(
                "rail.highest",
                "rated.low",
                "rated.high",
                "meter.volt.percent",
                "meter.volt.digits",
                "meter.ohm.percent",
                "meter.ohm.digits",
                "iron.set",
                "load.current",
                "aim.drop",
                "aim.lowest",
                "target.volts");

        /** Whether a meter or thermometer tells it; else it is copied from paper, a label or a dial, or chosen. */
        public boolean measured() {
            return !WRITTEN.contains(id) && !id.startsWith("sheet.");
        }
    }

    /** An answer to pick; {@code label} is the words for it. */
    record Option(String id, Message label) {}

    record Choice(String id, Function<Figures, List<Option>> options, Predicate<Figures> asked) implements Field {}

    /**
     * Free words of at most 2000 characters, or a line with a grammar of its own.
     *
     * @param readBack how the words were understood, to be shown beside them; throws {@link railtrim.quantity.BadInput} for what cannot be
     */
    record Text(
            String id, boolean required, Predicate<Figures> asked, BiFunction<Figures, String, List<Message>> readBack)
            implements Field {}

    /** The person says "I have switched it on" or "… off". */
    record Switch(String id, boolean on) implements Field {
        @Override
        public Predicate<Figures> asked() {
            return figures -> true;
        }
    }
}
