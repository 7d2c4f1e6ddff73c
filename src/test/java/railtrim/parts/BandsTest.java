package railtrim.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static railtrim.parts.Bands.Colour.*;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import railtrim.parts.Bands.Colour;

/** Digits, multipliers and tolerances of IEC 60062:2016. */
class BandsTest {
    @Test
    void aFivePerCentResistorHasFourBands() {
        assertEquals(List.of(YELLOW, VIOLET, RED, GOLD), Bands.of(4_700, 0.05));
        assertEquals(List.of(BROWN, BLACK, BLACK, SILVER), Bands.of(10, 0.10));
        assertEquals(List.of(GREEN, BLUE, YELLOW, GOLD), Bands.of(560_000, 0.05));
    }

    @Test
    void aValueOfThreeDigitsHasFiveBands() {
        assertEquals(List.of(RED, ORANGE, VIOLET, BLACK, BROWN), Bands.of(237, 0.01));
        assertEquals(List.of(YELLOW, WHITE, WHITE, RED, VIOLET), Bands.of(49_900, 0.001));
        assertEquals(List.of(RED, ORANGE, VIOLET, BLACK, GOLD), Bands.of(237, 0.05));
    }

    /** Common practice, no source: metal film of 1 % carries five bands whatever its value. */
    @Test
    void aOnePerCentResistorHasFiveBandsEvenForTwoDigits() {
        assertEquals(List.of(BLUE, GREY, BLACK, BLACK, BROWN), Bands.of(680, 0.01));
        assertEquals(List.of(BROWN, BLACK, BLACK, BROWN, RED), Bands.of(1_000, 0.02));
    }

    @Test
    void smallValuesHaveMetalMultipliers() {
        assertEquals(List.of(YELLOW, VIOLET, GOLD, GOLD), Bands.of(4.7, 0.05));
        assertEquals(List.of(YELLOW, VIOLET, SILVER, GOLD), Bands.of(0.47, 0.05));
        assertEquals(List.of(YELLOW, VIOLET, PINK, GOLD), Bands.of(0.047, 0.05));
        assertEquals(List.of(YELLOW, VIOLET, BLACK, SILVER, BROWN), Bands.of(4.7, 0.01));
    }

    @Test
    void twentyPerCentHasNoToleranceBand() {
        assertEquals(List.of(BROWN, GREEN, ORANGE), Bands.of(15_000, 0.20));
    }

    @ParameterizedTest
    @CsvSource({
        "0.10, SILVER",
        "0.05, GOLD",
        "0.02, RED",
        "0.01, BROWN",
        "0.005, GREEN",
        "0.0025, BLUE",
        "0.001, VIOLET",
        "0.0005, ORANGE",
        "0.0002, YELLOW",
        "0.0001, GREY"
    })
    void theLastBandIsTheTolerance(double tolerance, Colour colour) {
        List<Colour> bands = Bands.of(330, tolerance);
        assertEquals(colour, bands.get(bands.size() - 1));
    }

    @Test
    void whatCannotBeWrittenInBandsHasNone() {
        assertEquals(List.of(), Bands.of(1234, 0.01));
        assertEquals(List.of(), Bands.of(1000, 0.03));
        assertEquals(List.of(), Bands.of(0, 0.01));
        assertEquals(List.of(), Bands.of(-4.7, 0.01));
        assertEquals(List.of(), Bands.of(Double.NaN, 0.01));
        assertEquals(List.of(), Bands.of(Double.POSITIVE_INFINITY, 0.05));
        assertEquals(List.of(), Bands.of(0.0012, 0.05));
        assertEquals(List.of(), Bands.of(1e12, 0.05));
    }

    /** The digits read back give the value: for every preferred value that can be bought. */
    @Test
    void bandsReadBackGiveTheValue() {
        for (double ohms : Series.E192.between(0.1, 1e7)) {
            assertEquals(ohms, read(Bands.of(ohms, 0.005)), 1e-9 * ohms);
        }
        for (double ohms : Series.E24.between(0.01, 1e7)) {
            assertEquals(ohms, read(Bands.of(ohms, 0.05)), 1e-9 * ohms);
        }
    }

    private static double read(List<Colour> bands) {
        int digits = bands.size() - 2;
        double value = 0;
        for (Colour digit : bands.subList(0, digits)) {
            value = 10 * value + digit.ordinal();
        }
        int exponent = switch (bands.get(digits)) {
            case GOLD -> -1;
            case SILVER -> -2;
            case PINK -> -3;
            default -> bands.get(digits).ordinal();
        };
        return value * Math.pow(10, exponent);
    }
}
