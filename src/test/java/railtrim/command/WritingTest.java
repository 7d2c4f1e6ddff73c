package railtrim.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import railtrim.quantity.Unit;

/** How answers are written. Expected texts follow from RFC 8259 and from the layout itself. */
class WritingTest {
    @Test
    void jsonNumbersArePlainDecimals() {
        Json json = Json.object()
                .put("nano", 1e-8)
                .put("mega", 1e7)
                .put("zero", -0.0)
                .put("count", 3)
                .put("long", 123456789012L);
        assertEquals(
                "{\"nano\":0.00000001,\"mega\":10000000,\"zero\":0,\"count\":3,\"long\":123456789012}",
                JsonText.of(json.map()));
    }

    @Test
    void whatIsNotFiniteIsNull() {
        Json json = Json.object().put("open", Double.POSITIVE_INFINITY).put("unknown", Double.NaN);
        assertEquals("{\"open\":null,\"unknown\":null}", JsonText.of(json.map()));
    }

    @Test
    void textsListsAndTruthsKeepTheirKind() {
        Json json = Json.object().put("list", List.of("a \"b\"", 1.5)).put("truth", true);
        assertEquals("{\"list\":[\"a \\\"b\\\"\",1.5],\"truth\":true}", JsonText.of(json.map()));
    }

    @Test
    void pairsAndTablesAreAligned() {
        Sheet sheet = new Sheet()
                .pair("Leg", "220.0 Ω")
                .pair("Output", "3.1 V")
                .blank()
                .table(1, List.of("Part", "Output"), List.of(List.of("a", "3.000 V"), List.of("long one", "12.000 V")));
        assertEquals(
                List.of(
                        "Leg      220.0 Ω",
                        "Output   3.1 V",
                        "",
                        "Part         Output",
                        "a           3.000 V",
                        "long one   12.000 V"),
                sheet.lines());
    }

    @Test
    void longSentencesAreBrokenBetweenWordsAndIndented() {
        assertEquals(List.of("- one two", "  three", "  four"), Wrap.lines("- ", "one two three four", 9));
        assertEquals(List.of("averyverylongword", "short"), Wrap.lines("", "averyverylongword short", 10));
    }

    @Test
    void aNumberStaysWithItsUnit() {
        assertEquals(List.of("it reads", "1.241 V now"), Wrap.lines("", "it reads 1.241 V now", 14));
    }

    @Test
    void limitsAreRoundNumbers() {
        assertEquals("0.1 Ω", Typed.limit(0.1, Unit.OHM));
        assertEquals("100 MΩ", Typed.limit(100e6, Unit.OHM));
        assertEquals("60 V", Typed.limit(60, Unit.VOLT));
        assertEquals("12.5 V", Typed.limit(12.5, Unit.VOLT));
    }
}
