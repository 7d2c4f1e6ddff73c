package railtrim.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import railtrim.quantity.Display;
import railtrim.quantity.QuantityReader;
import railtrim.quantity.Unit;

class PartValuesTest {
    @ParameterizedTest
    @CsvSource({
        "560, 560 Ω",
        "4700, 4.7 kΩ",
        "10000, 10 kΩ",
        "100000, 100 kΩ",
        "1000, 1 kΩ",
        "237, 237 Ω",
        "49900, 49.9 kΩ",
        "1000000, 1 MΩ",
        "0.47, 0.47 Ω",
        "4.7, 4.7 Ω"
    })
    void aValueIsWrittenAsOnTheBag(double ohms, String written) {
        assertEquals(written, Display.part(ohms));
    }

    @Test
    void everyPreferredValueReadsBackAsItself() {
        for (double ohms : Series.E192.between(0.1, 1e8)) {
            assertEquals(ohms, QuantityReader.read(Display.part(ohms), Unit.OHM).value(), 1e-9 * ohms);
        }
    }
}
