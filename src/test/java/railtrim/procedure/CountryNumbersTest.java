package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import railtrim.quantity.Display;
import railtrim.quantity.QuantityReader;
import railtrim.quantity.Unit;

/** Numbers shown as the reader's country writes them; decimal signs as in Unicode CLDR. */
class CountryNumbersTest {
    @Test
    void aCountryWithADecimalCommaSeesOne() {
        Words german = Words.english().numbersOf(Locale.GERMANY);
        assertEquals("3,310 V", german.number("3.310 V"));
        assertEquals("Expect 3,200 V to 3,600 V", german.of("window.expect.between", "3.200 V", "3.600 V"));
        assertEquals("−3,310 V ± 0,023 V", german.number("−3.310 V ± 0.023 V"));
        assertEquals("3,05", german.number("3.05"));
    }

    @Test
    void aCountryWithAPointSeesAPoint() {
        for (Locale country : List.of(Locale.US, Locale.JAPAN, new Locale("de", "CH"), new Locale("ar", "EG"))) {
            assertEquals("3.310 V", Words.english().numbersOf(country).number("3.310 V"), country.toString());
        }
    }

    @Test
    void onlyNumbersAreWrittenAnew() {
        Words german = Words.english().numbersOf(Locale.GERMANY);
        for (String other : List.of("board 1.2", "LM1117.5 rev.2", "v1.2.3", "job.railtrim", "1.2.2026", "")) {
            assertEquals(other, german.number(other));
        }
    }

    @Test
    void everyNumberShownCanBeTypedAsItStands() {
        Words german = Words.english().numbersOf(Locale.GERMANY);
        Map<Unit, Double> values = Map.of(Unit.VOLT, 3.31, Unit.OHM, 4700.5, Unit.AMPERE, 0.0123, Unit.CELSIUS, 64.6);
        values.forEach((unit, value) -> {
            String shown = german.number(Display.of(value, unit));
            assertEquals(
                    QuantityReader.read(Display.of(value, unit), unit).value(),
                    QuantityReader.read(shown, unit).value(),
                    shown);
        });
    }

    @Test
    void whatIsHandedOnKeepsThePoint() {
        assertEquals(
                "3.310 V", Words.english().numbersOf(Locale.GERMANY).withPoint().number("3.310 V"));
    }
}
