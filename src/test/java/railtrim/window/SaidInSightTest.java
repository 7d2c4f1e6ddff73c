package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.procedure.Procedure;

/** In a small window with large text, at every step of a whole job: what the person has to see next is seen whole without scrolling. */
class SaidInSightTest {
    @TempDir
    Path folder;

    @Test
    void anEntryThatWasNotTakenAndWhatIsSaidOfItAreInSightTogether() throws Exception {
        List<String> hidden = new ArrayList<>();
        try (Opened window = Opened.in(folder)) {
            window.size(1024, 700, 21);
            for (Moment moment : moments("refused", "out of range")) {
                Desk desk = window.show(moment, Procedure.builtIn());
                if (desk.state().card().isPresent()) {
                    continue;
                }
                Node entry = window.node(Ids.field(moment.typed().orElseThrow().field()));
                if (!inSight(window, entry)) {
                    hidden.add(moment.name() + ": the entry");
                }
                Node said = Opened.look(() -> window.node("step-scroll").lookup(".verdicts .verdict"));
                if (said == null || !inSight(window, said)) {
                    hidden.add(moment.name() + ": what is said");
                }
            }
        }
        assertEquals(List.of(), hidden);
    }

    @Test
    void aStepThatWasJustFinishedSaysSoInSight() throws Exception {
        List<String> hidden = new ArrayList<>();
        try (Opened window = Opened.in(folder)) {
            window.size(1024, 700, 21);
            for (Moment moment : moments("filled")) {
                window.show(moment, Procedure.builtIn());
                Label done = (Label) window.node("done-line");
                // On the way down each step waits for its next time as soon as it is finished.
                if (!done.getText().equals(window.words.of("window.done")) || !inSight(window, done)) {
                    hidden.add(moment.name() + ": " + done.getText());
                }
            }
        }
        assertEquals(List.of(), hidden);
    }

    /** With long words in a low window the steps of a phase are higher than the way has room for. */
    @Test
    void theStepThatIsShownIsInSightOnTheWay() throws Exception {
        List<String> hidden = new ArrayList<>();
        try (Opened window = Opened.with(LongWords.words(), folder)) {
            window.size(1240, 700, 14);
            for (Moment moment : moments("filled", "stale")) {
                window.show(moment, Procedure.builtIn());
                if (!inSight(window.node("way"), window.node(Ids.step(moment.step())))) {
                    hidden.add(moment.name());
                }
            }
        }
        assertEquals(List.of(), hidden);
    }

    private static List<Moment> moments(String... states) {
        return Moments.of("sound-board").stream()
                .filter(each -> List.of(states).contains(each.state()))
                .toList();
    }

    private static boolean inSight(Opened window, Node node) {
        return inSight(window.node("step-scroll"), node);
    }

    private static boolean inSight(Node scroll, Node node) {
        return Opened.look(() -> {
            Bounds place = scroll.localToScene(scroll.getBoundsInLocal());
            Bounds at = node.localToScene(node.getBoundsInLocal());
            return at.getMinY() >= place.getMinY() - 0.5 && at.getMaxY() <= place.getMaxY() + 0.5;
        });
    }
}
