package railtrim.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The rows of a meter's manual on the command line. Widths worked out by hand from the rows. */
class MeterRowsCommandTest {
    @ParameterizedTest
    @CsvSource({
        // the smallest range that holds it: 0.5 % and 3 mV
        "3.555V, 0.020775, 0.001",
        // ends with 10 mV, as the 60 V range does: 0.8 % and 30 mV
        "3.56V, 0.05848, 0.01",
        // from neither; the smallest that holds it
        "3.5V, 0.0205, 0.001",
        "12.1V, 0.1268, 0.01",
        "-3.555V, 0.020775, 0.001",
    })
    void theRowOfTheRangeAReadingWasTakenOnCounts(String reading, double half, double resolution) {
        Ran ran = Ran.of(
                "accuracy", "--range", "6V 1mV 0.5%+3", "--range", "60V, 10 mV, ±(0.8 % + 3)", "--json", "--", reading);
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(half, ran.number("halfWidth"), 1e-9);
        assertEquals(half / Math.sqrt(3), ran.number("standardUncertainty"), 1e-9);
        assertEquals(resolution, ran.number("resolution"), 1e-12);
    }

    @Test
    void rowsGoWhereAClassOfMeterGoes() {
        Ran class2000 = predicted("basic");
        Ran better = predicted("6V 1mV 0.05%+3; 600R 0.1R 0.1%+2; 6k 1R 0.1%+2");
        assertEquals(0, better.exit(), better.err());
        assertEquals(class2000.number("voltage"), better.number("voltage"), 1e-12);
        assertTrue(better.number("standardUncertainty") < class2000.number("standardUncertainty") / 5, better.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"6V 0.5%+3", "600R 0.1R 0.9%+2", "6V 1V 0.5%+3", "6V 1mV 50%+3", "rows"})
    void aRowThatIsNoneIsTold(String row) {
        Ran ran = Ran.of("accuracy", "3.555V", "--range", row);
        assertEquals(2, ran.exit());
        assertTrue(
                ran.err().startsWith("--range: ") && ran.err().strip().lines().count() == 1, ran.err());
        assertEquals("", ran.out());
    }

    @Test
    void aClassAndRowsTogetherAreTooMuch() {
        assertEquals(
                2,
                Ran.of("accuracy", "3.555V", "--meter", "basic", "--range", "6V 1mV 0.5%+3")
                        .exit());
        assertEquals(2, Ran.of("accuracy", "3A", "--range", "6V 1mV 0.5%+3").exit());
        assertEquals(
                2,
                Ran.of("margin", "demo-data/trials.csv", "--meter", "6V 0.5%+3").exit());
    }

    private static Ran predicted(String meter) {
        return Ran.of(
                "predict",
                "--place",
                "out-adj",
                "--reference",
                "1.25V",
                "--stock",
                "3.555V",
                "--leg",
                "220R",
                "--added",
                "1k",
                "--meter",
                meter,
                "--json");
    }
}
