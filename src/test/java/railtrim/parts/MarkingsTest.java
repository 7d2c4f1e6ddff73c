package railtrim.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.parts.Markings.Reading;
import railtrim.quantity.BadInput;

class MarkingsTest {
    private static Reading first(String marking) {
        return Markings.read(marking).get(0);
    }

    /** 25X to 25E: Walsin WFxxR data sheet V03 p. 4; the others computed from the E96 series, counted from 1. 24 is 174 and 25 is 178. */
    @ParameterizedTest
    @CsvSource({
        "25X, 17.8",
        "25A, 178",
        "25B, 1780",
        "25C, 17800",
        "25D, 178000",
        "25E, 1780000",
        "01A, 100",
        "01Y, 1.00",
        "01C, 10000",
        "10X, 12.4",
        "12C, 13000",
        "18C, 15000",
        "24B, 1740",
        "25H, 1780",
        "30A, 200",
        "34D, 221000",
        "68X, 49.9",
        "69C, 51100",
        "72E, 5490000",
        "85B, 7500",
        "88A, 806",
        "92Z, 0.887",
        "96F, 97600000",
        "25c, 17800"
    })
    void anEia96CodeIsAPlaceInTheSeriesAndAPowerOfTen(String code, double ohms) {
        Reading reading = first(code);
        assertEquals(ohms, reading.ohms(), 1e-9 * ohms);
        assertEquals("eia-96", reading.scheme());
        assertEquals(0.01, reading.tolerance().orElseThrow());
    }

    /** 13R is 1.33 Ω as EIA-96 and 13 Ω as a letter code: both are shown, and that it needs a meter. */
    @Test
    void aCodeThatCanBeReadTwoWaysShowsBoth() {
        List<Reading> readings = Markings.read("13R");
        assertEquals(
                List.of("rkm", "eia-96"), readings.stream().map(Reading::scheme).toList());
        assertEquals(13, readings.get(0).ohms(), 1e-12);
        assertEquals(1.33, readings.get(1).ohms(), 1e-12);
        readings.forEach(each ->
                assertTrue(each.notes().stream().anyMatch(note -> note.key().equals("parts.mark.several"))));
        assertTrue(readings.get(1).notes().stream().anyMatch(note -> note.key().equals("parts.mark.rare-letter")));
        // Z, Y, X, A to F are the usual letters: one reading, no doubt
        assertEquals(1, Markings.read("25C").size());
        assertTrue(first("25C").notes().isEmpty());
    }

    /** IEC 60062: R47 0.47, 4R7, 470R, 4K7, 47K3, 4M7. */
    @ParameterizedTest
    @CsvSource({
        "R47, 0.47",
        "4R7, 4.7",
        "470R, 470",
        "4K7, 4700",
        "47K3, 47300",
        "4M7, 4700000",
        "1k2, 1200",
        "12R0, 12.0",
        "1G, 1000000000",
        "10K, 10000",
        "K47, 470"
    })
    void aLetterStandsWhereThePointIs(String code, double ohms) {
        Reading reading = first(code);
        assertEquals(ohms, reading.ohms(), 1e-9 * ohms);
        assertEquals("rkm", reading.scheme());
        assertTrue(reading.tolerance().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        "4K7J, 4700, 0.05",
        "470RF, 470, 0.01",
        "4K7K, 4700, 0.1",
        "1M0M, 1000000, 0.2",
        "R47G, 0.47, 0.02",
        "103J, 10000, 0.05",
        "1002B, 10000, 0.001",
        // the rest of the letters, from memory
        "470RL, 470, 0.0001",
        "470RP, 470, 0.0002",
        "470RW, 470, 0.0005",
        "470RC, 470, 0.0025",
        "470RD, 470, 0.005",
        "470RN, 470, 0.3"
    })
    void aLastLetterIsTheTolerance(String code, double ohms, double tolerance) {
        assertEquals(ohms, first(code).ohms(), 1e-9 * ohms);
        assertEquals(tolerance, first(code).tolerance().orElseThrow());
    }

    @Test
    void aSmallMCouldBeMilliSoBothAreShown() {
        List<Reading> readings = Markings.read("4m7");
        assertEquals(4.7e6, readings.get(0).ohms(), 1);
        assertEquals(0.0047, readings.get(1).ohms(), 1e-12);
        assertEquals(1, Markings.read("4M7").size());
    }

    /** 220 is 22 Ω (GW Instek GDS-200 p. 178 uses it so); 103 and 1002 are 10 kΩ, 4992 is 49.9 kΩ, computed; 000 is a jumper. */
    @ParameterizedTest
    @CsvSource({
        "220, 22, digits-3", "103, 10000, digits-3", "1002, 10000, digits-4", "4992, 49900, digits-4",
        "000, 0, jumper", "0, 0, jumper", "101, 100, digits-3", "999, 99000000000, digits-3"
    })
    void theLastDigitCountsTheNoughts(String code, double ohms, String scheme) {
        assertEquals(ohms, first(code).ohms(), 1e-9 * ohms);
        assertEquals(scheme, first(code).scheme());
    }

    @Test
    void twoHundredAndTwentyWarnsThatItIsTwentyTwo() {
        assertTrue(first("220").notes().stream().anyMatch(note -> note.key().equals("parts.mark.nought")));
        assertTrue(first("221").notes().isEmpty());
    }

    /** IEC 60062 colours; the example of the command line: brown black red gold is 1 kΩ 5 %. */
    @ParameterizedTest
    @CsvSource({
        "brown black red gold, 1000, 0.05, bands-4",
        "yellow violet orange silver, 47000, 0.1, bands-4",
        "red red black, 22, 0.2, bands-3",
        "red violet gold gold, 2.7, 0.05, bands-4",
        "green blue silver brown, 0.56, 0.01, bands-4",
        "blue grey black black brown, 680, 0.01, bands-5",
        "Blue Gray Black Orange Purple, 680000, 0.001, bands-5",
        "brown-green-black-pink-blue, 0.15, 0.0025, bands-5"
    })
    void bandsAreReadFromTheLeft(String bands, double ohms, double tolerance, String scheme) {
        Reading reading = first(bands);
        assertEquals(ohms, reading.ohms(), 1e-9 * ohms);
        assertEquals(tolerance, reading.tolerance().orElseThrow());
        assertEquals(scheme, reading.scheme());
        assertTrue(reading.tempco().isEmpty());
    }

    @Test
    void aSixthBandIsTheTemperatureCoefficient() {
        Reading reading = first("red yellow white brown brown red");
        assertEquals(2490, reading.ohms());
        assertEquals(50, reading.tempco().orElseThrow());
        assertEquals("bands-6", reading.scheme());
        // white has no temperature coefficient: only the other end is left
        List<Reading> turned = Markings.read("red red black brown brown white");
        assertEquals(List.of(911.0), turned.stream().map(Reading::ohms).toList());
        assertEquals(50, turned.get(0).tempco().orElseThrow());
    }

    /** brown black black brown brown is 1 kΩ; from the other end, brown brown black black brown, 110 Ω. Both are E96 values. */
    @Test
    void bandsThatMakeSenseFromBothEndsAreReadFromBoth() {
        List<Reading> readings = Markings.read("brown black black brown brown");
        assertEquals(
                List.of(1000.0, 110.0), readings.stream().map(Reading::ohms).toList());
        assertEquals("parts.mark.other-end", readings.get(1).notes().get(0).key());
        // gold is no digit: one end only
        assertEquals(1, Markings.read("brown black red gold").size());
        assertEquals(1000, first("gold red black brown").ohms());
        // the same from both ends: one reading
        assertEquals(1, Markings.read("brown red red brown").size());
    }

    @Test
    void greyAsToleranceIsDoubtful() {
        Reading reading = first("red red red red grey");
        assertEquals(0.0001, reading.tolerance().orElseThrow());
        assertTrue(reading.notes().stream().anyMatch(note -> note.key().equals("parts.mark.grey")));
    }

    @Test
    void aSingleBlackBandIsAJumper() {
        assertEquals(0, first("black").ohms());
        assertEquals("bands-1", first("black").scheme());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "00A",
                "97A",
                "99C",
                "25Q",
                "",
                "R",
                "hello",
                "4K7X",
                "12345",
                "brown",
                "brown red",
                "4..7",
                "brown black red gold gold gold gold",
                "brown black plaid gold",
                "black black black black",
                "010",
                "12345R",
                "gold gold gold gold"
            })
    void whatIsNoMarkingIsRefused(String marking) {
        assertThrows(BadInput.class, () -> Markings.read(marking));
    }

    @Test
    void aVeryLongMarkingIsRefusedWithoutRepeatingItAll() {
        BadInput refusal = assertThrows(BadInput.class, () -> Markings.read("x".repeat(200)));
        assertTrue(refusal.told().values().get(0).length() < 50);
    }

    /** There and back, for every value of E24 (two digits) and E96 (three) over the decades that are sold. */
    @Test
    void whatIsWrittenReadsBackAsTheSameValue() {
        for (Series series : List.of(Series.E24, Series.E96)) {
            for (double ohms : series.between(0.1, 20e6)) {
                double tolerance = series == Series.E24 ? 0.05 : 0.01;
                List<Marks.Mark> marks = Marks.of(ohms, tolerance, OptionalDouble.empty());
                assertFalse(marks.isEmpty(), ohms + " Ω");
                for (Marks.Mark mark : marks) {
                    assertTrue(
                            Markings.read(mark.text()).stream()
                                    .anyMatch(reading -> reading.scheme().equals(mark.scheme())
                                            && Math.abs(reading.ohms() - ohms) < 1e-9 * ohms),
                            ohms + " Ω as " + mark);
                }
                if (series == Series.E96) {
                    assertTrue(marks.stream().anyMatch(mark -> mark.scheme().equals("eia-96")), ohms + " Ω");
                }
            }
        }
    }

    @Test
    void aValueIsWrittenInEveryWayThereIs() {
        assertEquals(
                List.of(
                        new Marks.Mark("bands-4", "yellow violet red gold"),
                        new Marks.Mark("rkm", "4K7"),
                        new Marks.Mark("digits-3", "472"),
                        new Marks.Mark("digits-4", "4701")),
                Marks.of(4700, 0.05, OptionalDouble.empty()));
        assertEquals(
                List.of(
                        new Marks.Mark("bands-6", "yellow white white red brown red"),
                        new Marks.Mark("rkm", "49K9"),
                        new Marks.Mark("digits-4", "4992"),
                        new Marks.Mark("eia-96", "68C")),
                Marks.of(49_900, 0.01, OptionalDouble.of(50)));
        assertEquals(
                List.of(new Marks.Mark("bands-4", "yellow violet silver gold"), new Marks.Mark("rkm", "R47")),
                Marks.of(0.47, 0.05, OptionalDouble.empty()));
        assertEquals(List.of(), Marks.of(12_345.678, 0.01, OptionalDouble.empty()));
        assertEquals(List.of(), Marks.of(-1, 0.01, OptionalDouble.empty()));
        assertEquals(List.of(), Marks.of(Double.POSITIVE_INFINITY, 0.01, OptionalDouble.empty()));
    }

    /** IEC 60062, sixth band, as Vishay's colour card has it. */
    @ParameterizedTest
    @CsvSource({
        "black, 250",
        "brown, 100",
        "red, 50",
        "orange, 15",
        "yellow, 25",
        "green, 20",
        "blue, 10",
        "violet, 5",
        "grey, 1",
    })
    void theSixthBandIsTheDrift(String colour, double ppm) {
        Reading reading = Markings.read("red red black brown brown " + colour).stream()
                .filter(each -> each.ohms() == 2200)
                .findFirst()
                .orElseThrow();
        assertEquals(ppm, reading.tempco().orElseThrow(), 1e-12);
    }
}
