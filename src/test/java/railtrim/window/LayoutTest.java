package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.procedure.Procedure;
import railtrim.procedure.Words;

/** No writing is cut short, leaves its place or lies on other writing. */
class LayoutTest {
    @TempDir
    Path folder;

    /** The smallest window that is promised, with the text at one and a half times its size, in words 40 % longer than English. */
    @Test
    void everyStepHoldsInASmallWindowWithLargeTextAndLongWords() throws Exception {
        List<Moment> pages = Moments.of("sound-board").stream()
                .filter(moment ->
                        List.of("locked", "filled", "card", "finished").contains(moment.state()))
                .toList();
        assertTrue(pages.size() > 60, "pages: " + pages.size());
        assertEquals(List.of(), problems(LongWords.words(), pages, 1024, 700, 21));
    }

    private List<String> problems(Words words, List<Moment> pages, int width, int height, int text) throws Exception {
        List<String> found = new ArrayList<>();
        Procedure procedure = Procedure.builtIn();
        try (Opened window = Opened.with(words, folder)) {
            window.size(width, height, text);
            for (Moment page : pages) {
                window.show(page, procedure);
                found.addAll(window.fx(() -> WindowFit.problems(page.name(), window.shell.scene())));
            }
        }
        return found;
    }
}
