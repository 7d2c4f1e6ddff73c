package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.procedure.Procedure;
import railtrim.procedure.Words;

/**
 * Every caution, every hold point and every card in the smallest window that is promised, its text at one and a half times the usual size: nothing is cut
 * or leaves its place, a caution is seen whole, the deed or what comes before it is in sight, and where there is more below the page says so.
 */
class HoldPointInSightTest {
    @TempDir
    Path folder;

    private final Procedure procedure = Procedure.builtIn();
    private final List<String> found = new ArrayList<>();

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void everyCautionHoldPointAndCardIsSeenAsItHasToBe(boolean dark) throws Exception {
        List<Moment> pages =
                Moments.of("sound-board").stream().filter(this::looked).toList();
        assertTrue(
                pages.stream().filter(page -> page.state().startsWith("locked")).count() > 25, pages::toString);
        assertTrue(pages.stream().filter(page -> page.state().equals("fresh")).count() > 15, pages::toString);
        try (Opened window = Opened.with(Words.english(), folder)) {
            window.size(1024, 700, 21);
            window.fx(() -> {
                window.shell.theme().dark(dark);
                return null;
            });
            for (Moment page : pages) {
                window.show(page, procedure);
                look(window, page);
            }
        }
        assertEquals(List.of(), found, String.join("\n", found));
    }

    private boolean looked(Moment page) {
        boolean hold = procedure.steps().stream()
                .anyMatch(step -> step.hold() && step.id().equals(page.step()));
        return page.state().startsWith("locked")
                || page.state().equals("card")
                || hold && page.state().equals("fresh");
    }

    private void look(Opened window, Moment page) throws Exception {
        found.addAll(window.fx(() -> WindowFit.problems(page.name(), window.shell.scene())));
        Bounds band = inScene(window.node("power"));
        double foot = inScene(window.node(window.has("stop-rule") ? "stop-rule" : "make-safe"))
                .getMinY();
        if (page.state().startsWith("locked")) {
            inSight(page, "the cautions", inScene(window.node("cautions")), band, foot);
        } else if (page.state().equals("fresh")) {
            boolean railFirst =
                    window.shell.desk().orElseThrow().course().deedWaitsFor().isPresent();
            String first = Ids.field(page.step() + ".dead");
            inSight(page, "what comes first", inScene(window.node(railFirst ? first : "action")), band, foot);
        }
        ScrollPane scroll = (ScrollPane) window.node("step-scroll");
        double below = scroll.getContent().getLayoutBounds().getHeight() * (1 - scroll.getVvalue())
                - scroll.getViewportBounds().getHeight();
        Node line = window.shell.scene().getRoot().lookup(".step-place .more-below");
        if (scroll.getVvalue() == 0 && below > 10 && !line.isVisible()) {
            found.add(page.name() + ": nothing says that there is more below");
        }
        if (line.isVisible()) {
            inSight(page, "the line that there is more", inScene(line), band, foot);
        }
    }

    private void inSight(Moment page, String what, Bounds at, Bounds band, double foot) {
        if (at.getMinY() < band.getMaxY() - 1 || at.getMaxY() > foot + 1 || at.getHeight() < 10) {
            found.add(page.name() + ": " + what + " at " + at + ", the foot at " + foot);
        }
    }

    private static Bounds inScene(Node node) {
        return Opened.look(() -> node.localToScene(node.getLayoutBounds()));
    }
}
