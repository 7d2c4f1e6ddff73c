package railtrim.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import railtrim.parts.PartsBox.Part;
import railtrim.quantity.BadInput;
import railtrim.quantity.Message;

class PartsBoxTest {
    private static final String HEAD = "value,tolerance,count\n";

    @Test
    void aBoxOfResistorsIsRead() {
        PartsBox box = PartsBox.of(HEAD + "4k7,1%,10\n220R,5%,3\n1 kΩ,0.1%,1\n");
        assertEquals(List.of(new Part(4700, 0.01, 10), new Part(220, 0.05, 3), new Part(1000, 0.001, 1)), box.parts());
    }

    @Test
    void aSheetFromASpreadsheetIsReadToo() {
        PartsBox box = PartsBox.of("\uFEFFCount;Drawer;Value;Tolerance\r\n10;A3;4k7;1%\r\n\r\n2;\"B;1\";220R;5%\r\n");
        assertEquals(List.of(new Part(4700, 0.01, 10), new Part(220, 0.05, 2)), box.parts());
    }

    @Test
    void theSameValueInTwoRowsIsCountedTogether() {
        assertEquals(
                List.of(new Part(4700, 0.01, 12), new Part(4700, 0.05, 1)),
                PartsBox.of(HEAD + "4k7,1%,10\n4k7,5%,1\n4.7k,1%,2\n").parts());
    }

    /** Line numbers as an editor shows them. */
    @ParameterizedTest
    @CsvSource({
        "'4k7,1%,10\nx,1%,2', parts.box.value, 3",
        "'4k7,1%,10\n\n0R,1%,2', parts.box.value, 4",
        "'4k7,60%,10', parts.box.tolerance, 2",
        "'4k7,one,10', parts.box.tolerance, 2",
        "'4k7,1%,0', parts.box.count, 2",
        "'4k7,1%,1.5', parts.box.count, 2",
        "'4k7,1%,', parts.box.missing, 2",
        "'4k7,1%,3\n4k7', parts.box.missing, 3",
    })
    void aBadLineIsNamed(String rows, String key, String line) {
        Message told = refusal(HEAD + rows);
        assertEquals(key, told.key());
        assertEquals(line, told.values().get(0));
    }

    @ParameterizedTest
    @CsvSource({
        "'', parts.box.empty",
        "'value,tolerance,count', parts.box.empty",
        "'value,tolerance\n4k7,1%', parts.box.columns",
        "'4k7,1%,10', parts.box.columns",
        "'value,tolerance,count\n\"4k7,1%,10', parts.box.broken",
        "'value,tolerance,count\n\"4k7\"x,1%,10', parts.box.broken",
    })
    void aListThatIsNoPartsBoxIsRefusedInWords(String text, String key) {
        assertEquals(key, refusal(text).key());
    }

    @Test
    void aVeryLongListIsRefusedBeforeItIsRead() {
        assertEquals(
                "parts.box.too-large", refusal(HEAD + "x".repeat(64 * 1024)).key());
        assertEquals(
                "parts.box.too-large", refusal(HEAD + "Ω".repeat(33 * 1024)).key());
    }

    /** The largest and the least of everything: a million megohms, half of its value off or nothing, a hundred thousand of one, 64 KiB. */
    @Test
    void whatLiesOnALimitIsTaken() {
        String rows = HEAD + "1000000M,50%,100000\n1k,0%,1\n";
        List<Part> parts = List.of(new Part(1e12, 0.5, 100_000), new Part(1000, 0, 1));
        assertEquals(parts, PartsBox.of(rows).parts());
        assertEquals(
                parts,
                PartsBox.of(rows + "\n".repeat(64 * 1024 - rows.length())).parts());
        assertEquals(
                "parts.box.too-large",
                refusal(rows + "\n".repeat(64 * 1024 - rows.length() + 1)).key());
    }

    @Test
    void fiveThousandRowsAreReadAndOneMoreIsNot() {
        // 11 bytes a row stay within 64 KiB.
        assertEquals(
                List.of(new Part(1, 0.01, 5000)),
                PartsBox.of(HEAD + "1R,1%,1\n".repeat(5000)).parts());
        assertEquals(
                "parts.box.too-many-rows",
                refusal(HEAD + "1R,1%,1\n".repeat(5001)).key());
    }

    @Test
    void aStrangersTextIsShownShortAndWithoutControlCharacters() {
        Message told = refusal(HEAD + "\u202Eabc\u0007" + "z".repeat(100) + ",1%,1");
        assertEquals(" abc " + "z".repeat(35) + "…", told.values().get(1));
    }

    private static Message refusal(String csv) {
        return assertThrows(BadInput.class, () -> PartsBox.of(csv)).told();
    }
}
