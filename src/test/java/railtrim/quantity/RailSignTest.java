package railtrim.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A meter with black on ground shows a negative rail with a minus sign (common practice, no source). */
class RailSignTest {
    private static final RailSign POSITIVE = new RailSign(false);
    private static final RailSign NEGATIVE = new RailSign(true);

    @Test
    void aVoltageOfANegativeRailIsWrittenWithATrueMinusSign() {
        assertEquals("\u22125.127 V", NEGATIVE.volts(5.127));
        assertEquals("\u22125.127 V ± 0.038 V", NEGATIVE.volts(5.127, 0.038));
        assertEquals(OptionalDouble.of(-5.127), NEGATIVE.shown(OptionalDouble.of(5.127)));
    }

    @Test
    void aVoltageOfAPositiveRailIsWrittenAsItIs() {
        assertEquals("5.127 V", POSITIVE.volts(5.127));
        assertEquals("5.127 V ± 0.038 V", POSITIVE.volts(5.127, 0.038));
        assertEquals(5.127, POSITIVE.shown(5.127));
    }

    @Test
    void whatIsNotKnownStaysSo() {
        assertEquals(OptionalDouble.empty(), NEGATIVE.shown(OptionalDouble.empty()));
    }

    @Test
    void aDeadRailHasNoSign() {
        assertEquals("0.000 V", NEGATIVE.volts(0));
        assertEquals("0.00", String.format(java.util.Locale.ROOT, "%.2f", NEGATIVE.shown(0)));
    }

    /** −4.216 V and 0.150 V further from zero are −4.366 V. */
    @Test
    void aMarginLeadsAwayFromZero() {
        assertEquals("\u22124.216 V \u2212 0.150 V", NEGATIVE.volts(4.216) + NEGATIVE.further() + Display.volts(0.15));
        assertEquals("4.216 V + 0.150 V", POSITIVE.volts(4.216) + POSITIVE.further() + Display.volts(0.15));
    }
}
