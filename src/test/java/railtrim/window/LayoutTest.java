package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.procedure.Words;

/** No writing is cut short, leaves its place or lies on other writing; {@link LayoutProof} looks at all pages in more windows. */
class LayoutTest {
    @TempDir
    Path folder;

    /** The smallest window that is promised, with the text at one and a half times its size, in words 40 % longer than English. */
    @Test
    void everyStepHoldsInASmallWindowWithLargeTextAndLongWords() throws Exception {
        List<Moment> pages = Moments.of("sound-board").stream()
                .filter(moment -> List.of("filled", "card", "finished").contains(moment.state()))
                .toList();
        assertTrue(pages.size() > 45, "pages: " + pages.size());
        List<String> found = WindowFit.problems(LongWords.words(), folder, pages, 1024, 700, 21);
        assertEquals(List.of(), found, String.join("\n", found));
    }

    /** The line that says so is laid out only once it is known that there is more below; the rest of the page is then as it was. */
    @Test
    void theLineThatThereIsMoreBelowStandsInItsPlaceWhereAnAnswerMadeThePageLonger() throws Exception {
        List<Moment> pages = Moments.of("sound-board").stream()
                .filter(moment ->
                        moment.step().endsWith(".off") && moment.state().equals("out of range"))
                .toList();
        assertTrue(pages.size() > 3, "pages: " + pages.size());
        List<String> found = WindowFit.problems(Words.english(), folder, pages, 1024, 700, 14);
        assertEquals(List.of(), found, String.join("\n", found));
    }
}
