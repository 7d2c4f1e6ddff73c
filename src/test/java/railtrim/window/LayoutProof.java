package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import railtrim.procedure.Words;

/** Every step in each of its states, from the smallest window that is promised to the largest, with text up to twice its size. */
@Tag("long")
class LayoutProof {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "1024, 700, 14, false",
        "1240, 800, 14, true",
        "1240, 800, 21, false",
        "1024, 700, 21, true",
        "1024, 700, 28, false",
        "2560, 1440, 14, true",
        "2560, 1440, 28, true"
    })
    void everyStepHoldsInEachOfItsStates(int width, int height, int text, boolean longWords) throws Exception {
        Words words = longWords ? LongWords.words() : Words.english();
        List<String> found = WindowFit.problems(words, folder, Moments.of("sound-board"), width, height, text);
        assertEquals(List.of(), found, String.join("\n", found));
    }
}
