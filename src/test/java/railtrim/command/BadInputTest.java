package railtrim.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every option with every kind of slip: one line on the error stream, exit code 2, nothing on standard output. */
class BadInputTest {
    private static final String CIRCUIT = "--place out-adj --reference 1.25V --upper 120R --lower 220R --bias 60uA";
    private static final String MEASURED = "--place out-adj --reference 1.25V --stock 3.555V --leg 220R --bias 60uA";

    /** Commands that work, so that each of their options can be spoiled in turn. */
    private static final List<String> GOOD = List.of(
            "predict " + CIRCUIT + " --added 1k --input 12V --dropout 1.2V",
            "predict " + MEASURED + " --added 1k",
            "faults " + CIRCUIT + " --added 1k --rated-high 3.6V",
            "solve --place out-adj --reference 1.25V --bias 60uA --point open:3.555V --point 1k:3.139V",
            "trimmer " + CIRCUIT + " --start-drop 2% --lowest 2.9V --tolerance 10% --turns 25 --measured-max 9.8k"
                    + " --measured-min 600R",
            "resistor " + CIRCUIT + " --target 3.0V --at-least 2.9V --series E24 --tolerance 1% --most 2",
            "resistor " + CIRCUIT + " --target 3.0V --parts demo-data/parts-box.csv",
            "preferred --series E96 --near 237.2R",
            "heat --input 5V --stock 3.3V --target 3.0V --current 2A --load digital --ambient 25C --chip 70C",
            "accuracy 3.555V --rdg 0.5% --digits 2 --resolution 10mV",
            "rehearse demo-data/boards/playout-module.json --boards 1 --seed 1");

    /** Options of the circuit, the same in every command; spoiled once. */
    private static final Set<String> SHARED =
            Set.of("--place", "--reference", "--upper", "--lower", "--bias", "--input", "--dropout");

    /** Empty, words, two marks, a power of ten, not finite, an order of magnitude nobody has, a wrong unit, a joined slip. */
    private static final List<String> SLIPS = List.of(
            "",
            " ",
            "abc",
            "1,2.3V",
            "1.234,5R",
            "1e999",
            "1e999V",
            "NaN",
            "NaNV",
            "Infinity",
            "∞",
            "1d",
            "0x10p3",
            "--",
            "999999999999V",
            "99999999999999999999M",
            "3.3furlong",
            "5kg",
            "1k2k",
            "3V3V",
            "@file",
            "'3V'",
            "3 V 3",
            "\u0000",
            "2\n3V",
            "-",
            "%",
            "{0}");

    static Stream<List<String>> spoiled() {
        List<List<String>> all = new ArrayList<>();
        for (String good : GOOD) {
            List<String> words = List.of(good.split(" "));
            for (int i = 1; i < words.size(); i++) {
                boolean value = i == 1 || words.get(i - 1).startsWith("--");
                boolean done = SHARED.contains(words.get(i - 1)) && !good.startsWith("predict");
                if (!value || done || words.get(i).startsWith("--")) {
                    continue;
                }
                for (String slip : SLIPS) {
                    List<String> spoiled = new ArrayList<>(words);
                    spoiled.set(i, slip);
                    all.add(spoiled);
                }
            }
        }
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("goodOnes")
    void theLinesToBeSpoiledAreGoodThemselves(String good) {
        Ran ran = Ran.line(good);
        assertTrue(ran.exit() <= 1, ran.err());
        assertEquals("", ran.err());
    }

    static Stream<String> goodOnes() {
        return GOOD.stream();
    }

    @ParameterizedTest
    @MethodSource("spoiled")
    void everyOptionSaysInOneLineWhatIsWrongWithItsValue(List<String> spoiled) {
        refused(Ran.of(spoiled.toArray(String[]::new)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                // kΩ for Ω, both ways of giving a circuit
                "predict --place out-adj --reference 1.25V --upper 120k --lower 220k --added 1k",
                "predict --place out-adj --reference 1.25V --upper 120R --lower 220k --added 1k",
                "predict --place out-adj --reference 1.25V --stock 3.555V --leg 220k --added 1k",
                "predict --place fb-gnd --reference 1.24V --upper 1.65R --lower 1R --added 1k",
                "predict --place fb-gnd --reference 1.24V --upper 1.65k --lower 1R --added 1k",
                "faults --place negative-out-adj --reference 1.25V --stock -5V --leg 365k",
                // mV for V, either way
                "predict --place out-adj --reference 1.25V --stock 3.555mV --leg 220R --added 1k",
                "predict --place out-adj --reference 1.25mV --stock 3.555V --leg 220R --added 1k",
                "predict --place out-adj --reference 1250V --stock 3.555V --leg 220R --added 1k",
                "predict --place out-adj --reference 1.25V --stock 3555V --leg 220R --added 1k",
                // decimal mark lost or misplaced
                "predict --place out-adj --reference 1.25V --stock 355.5V --leg 220R --added 1k",
                // negative and zero
                "predict --place out-adj --reference -1.25V --stock 3.555V --leg 220R --added 1k",
                "predict --place out-adj --reference 1.25V --stock -3.555V --leg 220R --added 1k",
                "predict --place fb-gnd --reference 1.25V --stock -3.555V --leg 220R --added 1k",
                "predict --place out-adj --reference 0V --stock 3.555V --leg 220R --added 1k",
                "predict --place out-adj --reference 1.25V --stock 0V --leg 220R --added 1k",
                "predict --place out-adj --reference 1.25V --stock 3.555V --leg 0R --added 1k",
                "predict --place out-adj --reference 1.25V --stock 3.555V --leg -220R --added 1k",
                "predict --place out-adj --reference 1.25V --stock 3.555V --leg 220R --added 0R",
                "predict --place out-adj --reference 1.25V --stock 3.555V --leg 220R --added -1k",
                "predict --place out-adj --reference 1.25V --stock 3.555V --leg 220R --added 1k --bias -60uA",
                "predict --place out-adj --reference 1.25V --stock 3.555V --leg 220R --added 1k --bias 60mA",
                "preferred --series E24 --near 0R",
                "preferred --series E24 --near -1R",
                "preferred --series E25 --near 1R",
                // wrong units
                "predict --place out-adj --reference 1.25R --stock 3.555V --leg 220R --added 1k",
                "predict --place out-adj --reference 1.25V --stock 3.555A --leg 220R --added 1k",
                "predict --place out-adj --reference 1.25V --stock 3.555V --leg 220V --added 1k",
                "predict --place out-adj --reference 1.25V --stock 3.555V --leg 220R --added 1V",
                "predict --place out-adj --reference 1.25V --stock 3.555V --leg 220 --added 1k",
                "heat --input 5V --stock 3.3V --target 3.0V --current 2V",
                "heat --input 5V --stock 3.3V --target 3.0V --ambient 25V --chip 70C",
                // what does not go together
                "predict --place out-adj --reference 1.25V --added 1k",
                "predict --place out-adj --reference 1.25V --stock 3.555V --added 1k",
                "predict --place out-adj --reference 1.25V --upper 120R --added 1k",
                "predict --place out-adj --reference 1.25V --upper 120R --lower 220R --leg 220R --added 1k",
                "predict --place out-adj --reference 1.25V --stock 3.5V --leg 220R --upper 120R --lower 220R --added 1k",
                "predict --place out-adj --reference 1.25V --stock 1.25V --leg 220R --added 1k",
                "predict --place out-adj --reference 1.25V --stock 3.555V --leg 220R --added 1k --dropout 1V",
                "predict --place out-adj --reference 1.25V --stock 3.555V --leg 220R --added 1k --input 3V",
                "predict --place out-adj --reference 1.25V --stock 3.555V --leg 220R --added 1k --input 4V --dropout 1.2V",
                "predict --place fb-gnd --reference 1.25V --stock 3.555V --leg 220R --added 1k --bias 11mA",
                "predict --place buck --reference 1.25V --stock 3.555V --leg 220R --added 1k",
                "faults --place out-adj --reference 1.25V --stock 3.555V --leg 220R --rated-high 3.3V",
                "solve --place out-adj --reference 1.25V --point open:3.555V",
                "solve --place out-adj --reference 1.25V --point open:3.555V --point open:3.556V",
                "solve --place out-adj --reference 1.25V --point open:3.1V --point 1k:3.5V",
                "solve --place out-adj --reference 1.25V --point open:1.2V --point 1k:1.1V",
                "solve --place out-adj --reference 1.25V --point 1k --point open:3.5V",
                "solve --place out-adj --reference 1.25V --point 1k: --point open:3.5V",
                "solve --place out-adj --reference 1.25V --point :3V --point open:3.5V",
                "trimmer --place out-adj --reference 1.25V --stock 3.555V --leg 220R --start-drop 2% --lowest 1.2V",
                "trimmer --place out-adj --reference 1.25V --stock 3.555V --leg 220R --start-drop 2% --lowest 3.6V",
                "trimmer --place out-adj --reference 1.25V --stock 3.555V --leg 220R --start-drop 99% --lowest 3V",
                "trimmer --place out-adj --reference 1.25V --stock 3.555V --leg 220R --start-drop 2% --lowest 3V --turns 0",
                "trimmer --place out-adj --reference 1.25V --stock 3.555V --leg 220R --start-drop 2% --lowest 3V --turns 2.5",
                "trimmer --place out-adj --reference 1.25V --stock 3.555V --leg 220R --start-drop 2% --lowest 3V"
                        + " --measured-min 10R",
                "trimmer --place out-adj --reference 1.25V --stock 3.555V --leg 220R --start-drop 2% --lowest 3V"
                        + " --measured-max 1k --measured-min 2k",
                "resistor --place out-adj --reference 1.25V --stock 3.555V --leg 220R --target 3.6V",
                "resistor --place out-adj --reference 1.25V --stock 3.555V --leg 220R --target 1.2V",
                "resistor --place out-adj --reference 1.25V --stock 3.555V --leg 220R --target 3V --at-least 3.1V",
                "resistor --place out-adj --reference 1.25V --stock 3.555V --leg 220R --target 3V --most 4",
                "resistor --place out-adj --reference 1.25V --stock 3.555V --leg 220R --target 3V --most 0",
                "resistor --place out-adj --reference 1.25V --stock 3.555V --leg 220R --target 3V --parts missing.csv",
                "resistor --place out-adj --reference 1.25V --stock 3.555V --leg 220R --target 3V --parts src",
                "resistor --place out-adj --reference 1.25V --stock 3.555V --leg 220R --target 3V --parts pom.xml",
                "resistor --place out-adj --reference 1.25V --stock 3.555V --leg 220R --target 3V --series E24"
                        + " --parts demo-data/parts-box.csv",
                "heat --input 3V --stock 3.3V --target 3.0V",
                "heat --input 5V --stock 3.0V --target 3.3V",
                "heat --input 5V --stock 3.3V --target 3.0V --chip 70C",
                "heat --input 5V --stock 3.3V --target 3.0V --ambient 70C --chip 25C",
                "heat --input 5V --stock 3.3V --target 3.0V --load none",
                "accuracy 3.555V --rdg 0.5% --digits 2 --resolution 10R",
                "accuracy 3.555V --rdg 0.5% --digits 2 --resolution 10V",
                "accuracy --rdg 0.5% --digits 2 --resolution 10mV",
                "check missing.railtrim",
                "check pom.xml",
                "check src",
                "report missing.railtrim --out target",
                "report pom.xml --out target",
                "report missing.railtrim",
                "report missing.railtrim --out target --format pdf",
                "report missing.railtrim --out target --format html,",
                "text board.txt",
                "text .railtrim",
                "rehearse pom.xml",
                "rehearse missing.json",
                "rehearse demo-data/boards/playout-module.json --boards 0",
                // the line itself
                "predict",
                "predict --place out-adj --reference",
                "predict --bogus 1",
                "predict -x",
                "wiggle",
                "--bogus",
                "predict predict",
                "preferred --series E24 --series E96 --near 1R",
                "preferred --series E24 --near 1R extra",
            })
    void aLineThatCannotBeIsRefusedInOneLine(String line) {
        refused(Ran.line(line));
        refused(Ran.line(line, "--json"));
    }

    @Test
    void theRefusalNamesTheOptionAndWhatWasRead() {
        Ran ran = Ran.line("predict " + MEASURED + " --added 5V");
        assertTrue(ran.err().startsWith("--added: “5V” "), ran.err());
    }

    @Test
    void anUnknownCommandIsAnsweredWithTheOnesThereAre() {
        Ran ran = Ran.of("wiggle");
        assertTrue(ran.err().contains("“wiggle”"), ran.err());
        assertTrue(ran.err().contains("predict, faults, solve"), ran.err());
    }

    private static void refused(Ran ran) {
        assertEquals(2, ran.exit(), () -> ran.out() + ran.err());
        assertEquals("", ran.out());
        assertEquals(1, ran.err().lines().count(), ran.err());
        assertTrue(ran.err().endsWith("\n") && ran.err().length() > 20, ran.err());
        assertFalse(ran.err().contains("Exception") || ran.err().contains("\tat "), ran.err());
        assertFalse(ran.err().contains("inside Railtrim itself"), ran.err());
        assertFalse(ran.err().chars().anyMatch(sign -> sign != '\n' && Character.isISOControl(sign)), ran.err());
    }
}
