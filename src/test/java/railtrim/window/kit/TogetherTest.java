package railtrim.window.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;

class TogetherTest {
    /** "_" stands for the space at which no line is broken. */
    private static void becomes(String expected, String text) {
        String together = Together.of(text);
        assertEquals(expected.replace('_', '\u00a0'), together);
        assertEquals(text, Together.plain(together));
    }

    @Test
    void aNumberAndItsUnitStayOnOneLine() {
        becomes("Expect −0.1_V to 0.1_V", "Expect −0.1 V to 0.1 V");
        becomes("at 9.82_kΩ, 53_mV, 185_mW or 1.2_A.", "at 9.82 kΩ, 53 mV, 185 mW or 1.2 A.");
        becomes("Within 3_°C of the room, at 95_% confidence", "Within 3 °C of the room, at 95 % confidence");
    }

    @Test
    void theUncertaintyBeginsALineOnlyWithItsSign() {
        becomes("2.841_V ±_0.021_V", "2.841 V ± 0.021 V");
        becomes("±(0.9_% + 2)", "±(0.9 % + 2)");
    }

    @Test
    void aWordBehindANumberIsNoUnit() {
        for (String plain : new String[] {"25 turns", "after 5 minutes", "Pins 2 and 3", "3 Weeks", "", "plain"}) {
            assertEquals(plain, Together.of(plain));
        }
        assertSame(null, Together.of(null));
    }
}
