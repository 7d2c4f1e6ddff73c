package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.circuit.Circuit;
import railtrim.circuit.RegulatorFamilies;
import railtrim.circuit.RegulatorFamily;
import railtrim.job.BuiltIn;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;

class BoardTest {
    private static final String SOUND = DemoBoards.text("sound-board");

    @ParameterizedTest
    @ValueSource(strings = {"sound-board", "storage-controller", "network-blade", "playout-module"})
    void everyDemoBoardLoadsAndStandsFirm(String name) {
        Board board = DemoBoards.named(name);
        assertTrue(board.stock() > board.failing().worst(), name);
        assertTrue(board.stock() < board.divider().input() - board.divider().dropout(), name);
        // Boards of the 1990s: 75 to 90 % of stock is where ours fail (the range the demonstration asks for, no
        // source).
        double share = board.failing().worst() / board.stock();
        assertTrue(share > 0.75 && share < 0.9, name + " fails at " + share);
    }

    @ParameterizedTest
    @ValueSource(strings = {"sound-board", "storage-controller", "network-blade"})
    void aDemoBoardsRegulatorIsAsItsDataSheetSays(String name) {
        Board board = DemoBoards.named(name);
        RegulatorFamily family = RegulatorFamilies.of(BuiltIn.text("regulators.json"))
                .named(board.regulator().family())
                .orElseThrow();
        double reference = board.divider().reference().value();
        assertEquals(family.place(), board.divider().place());
        assertTrue(reference >= family.referenceLow() && reference <= family.referenceHigh(), name);
        assertEquals(
                family.pinouts().get(board.regulator().outline()),
                board.regulator().pins());
    }

    /** The law worked out by hand: 1.247 V across 120.504 Ω and 57 µA on top, into 198.78 Ω. */
    @Test
    void theSoundBoardsStockVoltageIsWhatItsDividerGives() {
        double byHand = 1.247 + (1.247 / 120.504 + 0.000057) * 198.78;
        assertEquals(byHand, DemoBoards.named("sound-board").stock(), 1e-9);
    }

    /** Two sums written apart have to agree. */
    @ParameterizedTest
    @ValueSource(strings = {"sound-board", "storage-controller", "network-blade"})
    void theBoardsOwnSumAgreesWithTheLaw(String name) {
        Board board = DemoBoards.named(name);
        Board.Divider divider = board.divider();
        Circuit circuit = Circuit.fromResistors(
                divider.place(),
                divider.reference().value(),
                divider.upper().value(),
                divider.lower().value(),
                divider.bias());
        assertEquals(circuit.stock(), board.stock(), 1e-12);
        for (double added : new double[] {50, 470, 1000, 10_000, 1e6}) {
            assertEquals(circuit.magnitude(added), board.withAdded(added), 1e-12);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"maker\": \"Ottermere Audio\"|\"makr\": \"Ottermere Audio\"|practice.field-missing",
                "\"idle\": 0.6|\"idle\": 0.6, \"weight\": 2|practice.field-unknown",
                "\"idle\": 0.6|\"idle\": 0.6, \"idle\": 0.7|practice.field-twice",
                "\"idle\": 0.6|\"idle\": 6|practice.field-out-of-range",
                "\"idle\": 0.6|\"idle\": 1e-1|practice.field-not-a-number",
                "\"idle\": 0.6|\"idle\": NaN|practice.file-broken",
                "\"idle\": 0.6|\"idle\": \"0.6\"|practice.field-not-a-number",
                "\"kind\": \"digital\"|\"kind\": \"analogue\"|practice.field-not-one-of",
                "\"switching\": false|\"switching\": null|practice.field-unexpected",
                "\"outline\": \"TO-220\"|\"outline\": \"TO-220-5\"|practice.pins-do-not-fit",
                "\"outline\": \"TO-220\"|\"outline\": \"TO-3\"|circuit.outline-unknown",
                "[\"adjust\"|[\"trim\"|circuit.pin-role-unknown",
                "\"place\": \"out-adj\"|\"place\": \"in-adj\"|circuit.place-unknown",
                "\"input\": 5.06|\"input\": 4.0|practice.board-starved",
                "\"hot\": 2.71|\"hot\": 3.4|practice.board-fails-at-stock",
                "\"damage\": 4.6|\"damage\": 3.0|practice.board-dies-at-stock",
                "\"feed\": {|\"feed\": ({|practice.file-broken",
                "railtrim practice board 1|railtrim practice board 2|practice.field-not-one-of",
            })
    void aSpoiltBoardFileIsRefusedInWords(String was, String becomes, String key) {
        assertTrue(SOUND.contains(was), was);
        String spoilt = SOUND.replace(was, becomes);
        BadInput refused = assertThrows(BadInput.class, () -> Board.of(spoilt));
        assertEquals(key, refused.told().key());
        assertTrue(Words.english().has(key), key);
    }

    @Test
    void aFileThatIsNoObjectOrIsCutShortIsRefused() {
        for (String text : new String[] {"", "[]", "3", "{", SOUND.substring(0, SOUND.length() / 2), SOUND + "{}"}) {
            assertThrows(BadInput.class, () -> Board.of(text), text);
        }
    }

    @Test
    void aFileThatIsFarTooLongIsRefusedUnread() {
        BadInput refused = assertThrows(BadInput.class, () -> Board.of(" ".repeat(70_000) + SOUND));
        assertEquals("practice.file-too-long", refused.told().key());
    }
}
