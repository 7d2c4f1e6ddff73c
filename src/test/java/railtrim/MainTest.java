package railtrim;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class MainTest {
    @Test
    void theWindowOpensForNothingAndForOneJob() {
        assertTrue(Main.forWindow());
        assertTrue(Main.forWindow("my board.railtrim"));
    }

    @Test
    void everythingElseIsACommand() {
        assertFalse(Main.forWindow("predict"));
        assertFalse(Main.forWindow("check", "board.railtrim"));
        assertFalse(Main.forWindow("--help"));
    }
}
