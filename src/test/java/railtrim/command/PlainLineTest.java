package railtrim.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import railtrim.procedure.Words;

class PlainLineTest {
    private static final String[] SUM = {
        "predict", "--place", "out-adj", "--reference", "1.25V", "--stock", "3.555V", "--leg", "220R", "--added", "1k"
    };

    /** Two readers of one line must not differ: each option the parser knows, with a value of its own, lands in the same place. */
    @Test
    void everyOptionIsTakenAsTheOptionParserTakesIt() throws IllegalAccessException {
        Predict plain = new Predict(Words.english());
        Predict parsed = new Predict(Words.english());
        CommandLine parser = new CommandLine(parsed);
        List<String> line = new ArrayList<>(List.of("predict"));
        for (OptionSpec option : parser.getCommandSpec().options()) {
            line.addAll(List.of(option.longestName(), "value " + line.size()));
        }
        assertTrue(line.size() > 20, "there are a dozen options");
        assertTrue(PlainLine.fill(plain, line.toArray(String[]::new)));
        parser.parseArgs(line.subList(1, line.size()).toArray(String[]::new));
        assertEquals(held(parsed), held(plain));
    }

    /** Without one of those it asks for, the parser has to say which. */
    @Test
    void aLineThatLacksWhatTheParserRequiresIsLeftToIt() {
        for (OptionSpec required : new CommandLine(new Predict(Words.english()))
                .getCommandSpec().requiredArgs().stream()
                        .map(OptionSpec.class::cast)
                        .toList()) {
            List<String> line = new ArrayList<>(List.of(SUM));
            int at = line.indexOf(required.longestName());
            line.remove(at);
            line.remove(at);
            assertTrue(
                    PlainLine.answer(Words.english(), line.toArray(String[]::new))
                            .isEmpty(),
                    required.longestName());
        }
    }

    @Test
    void whatIsNotPlainlyRightIsLeftToTheParser() {
        assertTrue(PlainLine.answer(Words.english(), SUM).isPresent());
        assertFalse(PlainLine.answer(Words.english()).isPresent());
        for (List<String> more : List.of(
                List.of("--help"),
                List.of("--json"),
                List.of("--meter"),
                List.of("--meter", ""),
                List.of("--stock", "-3.555V"),
                List.of("--leg", "220R"),
                List.of("--nothing", "1"),
                List.of("--tolerance", "many"))) {
            List<String> line = new ArrayList<>(List.of(SUM));
            line.addAll(more);
            assertFalse(
                    PlainLine.answer(Words.english(), line.toArray(String[]::new))
                            .isPresent(),
                    line.toString());
        }
    }

    private static Map<String, String> held(Object command) throws IllegalAccessException {
        Map<String, String> values = new TreeMap<>();
        for (Field field : command.getClass().getDeclaredFields()) {
            field.setAccessible(true);
            Object value = field.get(command);
            if (value instanceof CircuitOptions circuit) {
                values.putAll(held(circuit));
            } else if (field.getType() == String.class) {
                values.put(field.getName(), String.valueOf(value));
            }
        }
        return values;
    }
}
