package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A yardstick that is itself wrong would pass any text, so it is held to counts known from elsewhere. */
class ReadingGradeTest {
    @Test
    void sixOneSyllableWordsGiveTheFormulasOwnValue() {
        // 0.39·6/1 + 11.8·6/6 − 15.59 = −1.45
        assertEquals(-1.45, ReadingGrade.of("The cat sat on the mat."), 1e-9);
    }

    @Test
    void aSentenceOfSixteenWordsAndTwentyThreeSyllablesIsCountedAsSuch() {
        // The sentence is given as an example of reading ease 69 (206.835 − 1.015·16 − 84.6·23/16 = 69.0), from memory.
        String text = "This sentence, taken as a reading passage unto itself, is being used to prove a point.";
        assertEquals(16, ReadingGrade.words(text).size());
        assertEquals(
                23,
                ReadingGrade.words(text).stream()
                        .mapToInt(ReadingGrade::syllables)
                        .sum());
    }

    /** Counts by any English dictionary. */
    @ParameterizedTest
    @CsvSource({
        "trimmer,2", "voltage,2", "measure,2", "minute,2", "reference,3", "before,2", "circuit,2", "twenty,2", "wire,1",
        "temperature,4", "divider,3", "needed,2", "pulled,1", "pushed,1", "ages,2", "makes,1", "table,2", "clips,1",
        "being,2", "whole,1", "solder,2", "maximum,3", "again,2", "iron,2", "rail,1", "scale,1"
    })
    void commonWordsOfTheTradeHaveTheSyllablesADictionaryGives(String word, int syllables) {
        assertEquals(syllables, ReadingGrade.syllables(word), word);
    }

    @Test
    void aNumberWithItsUnitCountsAsOneWord() {
        assertEquals(5, ReadingGrade.words("It reads below 0.1 V here.").size());
        assertEquals(1, ReadingGrade.sentences("It reads below 0.1 V here.").size());
    }
}
