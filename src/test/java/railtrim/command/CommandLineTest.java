package railtrim.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandLineTest {
    @Test
    void withoutACommandTheOnesThereAreAreShown() {
        Ran ran = Ran.of("--help");
        assertEquals(0, ran.exit());
        for (String command : List.of(
                "predict",
                "faults",
                "solve",
                "trimmer",
                "resistor",
                "preferred",
                "mark",
                "margin",
                "heat",
                "accuracy",
                "rehearse",
                "check",
                "text")) {
            assertTrue(ran.out().contains("\n  " + command + " "), command);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "predict",
                "faults",
                "solve",
                "trimmer",
                "resistor",
                "preferred",
                "mark",
                "margin",
                "heat",
                "accuracy",
                "rehearse",
                "check",
                "text"
            })
    void everyCommandExplainsItself(String command) {
        Ran ran = Ran.of(command, "--help");
        assertEquals(0, ran.exit());
        assertEquals("", ran.err());
        assertTrue(ran.out().startsWith("Usage: railtrim " + command + " "));
        assertFalse(ran.out().contains("command.") || ran.out().contains("${"), ran.out());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "predict --place out-adj --reference 1.25V --upper 120R --lower 220R --added 1k",
                "faults --place shunt --reference 2.495V --upper 10k --lower 10k",
                "solve --place fb-gnd --reference 1.24V --point open:3.286V --point 20k:3.130V",
                "trimmer --place out-adj --reference 1.25V --upper 120R --lower 220R --start-drop 2% --lowest 2.9V",
                "resistor --place out-adj --reference 1.25V --upper 120R --lower 220R --target 3V",
                "preferred --series E24 --near 4.6k",
                "heat --input 5V --stock 3.3V --target 3.0V --ambient 25C --chip 70C",
                "accuracy 3.555V --rdg 0.5% --digits 2 --resolution 10mV",
                "rehearse demo-data/boards/playout-module.json",
            })
    void forPeopleAnAnswerIsLinesWithoutKeysOrBrokenSigns(String line) {
        Ran ran = Ran.line(line);
        assertEquals("", ran.err());
        assertTrue(ran.out().lines().count() >= 3, ran.out());
        assertFalse(ran.out().contains("command.") || ran.out().contains("{0}"), ran.out());
        assertFalse(ran.out().contains("NaN") || ran.out().contains("Infinity"), ran.out());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "predict --place shunt --reference 2.495V --stock -5.01V --leg 10k --bias 2uA --added 100k",
                "faults --place negative-out-adj --reference 1.25V --upper 120R --lower 365R --input -12V --dropout 1.5V",
                "trimmer --place negative-out-adj --reference 1.25V --stock -5.08V --leg 365R --start-drop 2% --lowest -4V",
                "resistor --place negative-out-adj --reference 1.25V --stock 5.08V --leg 365R --target 4.5V --most 1",
                "heat --input -12V --stock -5V --target -4.5V",
            })
    void aMinusSignIsTakenWhereThereCanBeOne(String line) {
        Ran ran = Ran.line(line, "--json");
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(1, ran.out().lines().count());
        assertTrue(ran.json().size() > 0);
    }

    @Test
    void everyVoltageOfANegativeRegulatorIsNegative() {
        Ran faults = Ran.line("faults --json --place negative-out-adj --reference 1.25V --upper 120R --lower 365R"
                + " --input -12V --dropout 1.5V --added 1k");
        assertTrue(CircuitCommandsTest.list(faults, "faults").stream()
                .allMatch(fault -> fault.get("voltage").getAsDouble() < 0));
        Ran resistor = Ran.line("resistor --json --place negative-out-adj --reference 1.25V --upper 120R --lower 365R"
                + " --target -4.5V --at-least -4.4V --most 1");
        assertTrue(CircuitCommandsTest.list(resistor, "candidates").stream()
                .allMatch(candidate -> candidate.get("voltage").getAsDouble() <= -4.4
                        && candidate.get("lowest").getAsDouble() < 0
                        && candidate.get("highest").getAsDouble() < 0));
    }
}
