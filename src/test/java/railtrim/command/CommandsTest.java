package railtrim.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import picocli.CommandLine.Command;
import railtrim.procedure.Words;

class CommandsTest {
    @Test
    void everyCommandIsFoundUnderTheNameItGivesItself() {
        for (String name : Commands.NAMES) {
            Asked command = Commands.of(name, Terminal.system(), Words.english());
            assertEquals(name, command.getClass().getAnnotation(Command.class).name());
        }
    }

    @Test
    void theHelpListsEveryCommand() {
        String help = Ran.of("--help").out();
        for (String name : Commands.NAMES) {
            assertTrue(help.contains("\n  " + name + " "), name + " is missing in\n" + help);
        }
    }
}
