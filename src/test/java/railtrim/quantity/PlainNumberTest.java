package railtrim.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PlainNumberTest {
    private static final String LETTERS = "0179.,kKmMuRVvAWCF%slLoOheinp -+Ω";

    /** The short way must never read what the whole grammar refuses, nor read it otherwise: all texts of up to three characters, and longer ones by chance. */
    @Test
    void whatIsReadTheShortWayIsReadTheSameByTheWholeGrammar() {
        int read = 0;
        for (Unit unit : Unit.values()) {
            for (int a = 0; a < LETTERS.length(); a++) {
                read += same(text(a), unit);
                for (int b = 0; b < LETTERS.length(); b++) {
                    read += same(text(a, b), unit);
                    for (int c = 0; c < LETTERS.length(); c++) {
                        read += same(text(a, b, c), unit);
                    }
                }
            }
        }
        Random chance = new Random(20);
        for (int i = 0; i < 100_000; i++) {
            int[] letters =
                    chance.ints(4 + chance.nextInt(5), 0, LETTERS.length()).toArray();
            read += same(text(letters), Unit.values()[chance.nextInt(Unit.values().length)]);
        }
        assertTrue(read > 1000, "the short way was tried on " + read);
    }

    private static int same(String text, Unit unit) {
        Optional<Typed> read = PlainNumber.read(text, unit);
        read.ifPresent(typed -> assertEquals(Spelling.takeApart(text, unit), typed, text));
        return read.isPresent() ? 1 : 0;
    }

    private static String text(int... letters) {
        StringBuilder text = new StringBuilder();
        for (int letter : letters) {
            text.append(LETTERS.charAt(letter));
        }
        return text.toString();
    }
}
