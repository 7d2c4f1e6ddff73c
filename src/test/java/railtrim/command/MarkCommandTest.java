package railtrim.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarkCommandTest {
    private static JsonObject reading(Ran ran, int place) {
        return ran.json().getAsJsonArray("readings").get(place).getAsJsonObject();
    }

    /** IEC 60062 for bands, letters and digits; 25C from the Walsin data sheet. */
    @ParameterizedTest
    @CsvSource({
        "brown black red gold, 1000, 0.05, bands-4",
        "25C, 17800, 0.01, eia-96",
        "4R7, 4.7, , rkm",
        "103, 10000, , digits-3"
    })
    void aMarkingIsReadAsOhmsToleranceAndScheme(String marking, double ohms, Double tolerance, String scheme) {
        Ran ran = Ran.of("mark", "--json", marking);
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(ohms, reading(ran, 0).get("ohms").getAsDouble(), 1e-9 * ohms);
        assertEquals(scheme, reading(ran, 0).get("scheme").getAsString());
        if (tolerance == null) {
            assertTrue(reading(ran, 0).get("tolerance").isJsonNull());
        } else {
            assertEquals(tolerance, reading(ran, 0).get("tolerance").getAsDouble());
        }
    }

    @Test
    void coloursMayStandInQuotesOrNot() {
        assertEquals(
                Ran.of("mark", "--json", "brown black red gold").out(),
                Ran.line("mark --json brown black red gold").out());
        assertTrue(Ran.line("mark brown black red gold").out().contains("four bands"));
    }

    @Test
    void anAmbiguousCodeShowsAllReadingsAndSaysToMeasure() {
        Ran ran = Ran.of("mark", "13R");
        assertEquals(0, ran.exit());
        assertTrue(ran.out().contains("13 Ω") && ran.out().contains("1.33 Ω"), ran.out());
        assertTrue(ran.out().contains("more than one way"), ran.out());
    }

    @Test
    void aValueIsMarkedInEveryWay() {
        Ran ran = Ran.line("mark --json --value 4k99 --tolerance 1% --tempco 50");
        List<String> texts = ran.json().getAsJsonArray("markings").asList().stream()
                .map(each -> each.getAsJsonObject().get("text").getAsString())
                .toList();
        assertEquals(List.of("yellow white white brown brown red", "4K99", "4991", "68B"), texts);
    }

    @ParameterizedTest
    @CsvSource({"97A", "brown plaid", "''", "xyz"})
    void whatIsNoMarkingIsBadInputInOneLine(String marking) {
        Ran ran = Ran.of("mark", "--json", marking);
        assertEquals(2, ran.exit());
        assertEquals("", ran.out());
        assertEquals(1, ran.err().lines().count());
    }

    @Test
    void eitherAMarkingOrAValueIsGiven() {
        assertEquals(2, Ran.line("mark --json").exit());
        assertEquals(2, Ran.line("mark 4K7 --value 4k7").exit());
        assertEquals(1, Ran.line("mark --value 12345.678R").exit());
    }
}
