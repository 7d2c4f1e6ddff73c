package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.procedure.Procedure;
import railtrim.procedure.StepSums;
import railtrim.procedure.Sum;
import railtrim.window.kit.Together;

/** What a step works out can be followed: each of its sums has a button that opens it, and what is good to know stands together. */
class WorkedOutTest {
    private static final Set<String> WORKS_OUT = Set.of("agree", "first.load", "down.set", "budget", "choose", "hand");

    @TempDir
    Path folder;

    @Test
    void everySumOfAStepHasAButtonNamedAfterIt() throws Exception {
        Set<String> steps = new HashSet<>();
        try (Opened window = Opened.in(folder)) {
            for (Moment moment : Moments.of("sound-board")) {
                if (moment.state().equals("filled") && WORKS_OUT.contains(moment.step())) {
                    Desk desk = window.show(moment, Procedure.builtIn());
                    String step = desk.shown().step().id();
                    List<Sum> sums = StepSums.at(step, desk.state().figures());
                    for (int i = 0; i < sums.size(); i++) {
                        Button button = (Button) window.node(Ids.sum(step) + "-" + i);
                        assertEquals(
                                window.words.of(
                                        "window.sum.of",
                                        window.words.of(sums.get(i).what())),
                                button.getText());
                        steps.add(step);
                    }
                }
            }
        }
        assertEquals(WORKS_OUT, steps);
    }

    @Test
    void noSumTellsAReadingThatIsHiddenForItsSecond() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.show(moment("agree fresh"), Procedure.builtIn());
            assertEquals(Set.of(), window.node("findings").lookupAll(".sum-link"));
            window.show(moment("agree filled"), Procedure.builtIn());
            assertEquals(2, window.node("findings").lookupAll(".sum-link").size());
        }
    }

    @Test
    void whatIsGoodToKnowIsSaidUnderOneWord() throws Exception {
        try (Opened window = Opened.in(folder)) {
            Desk desk = window.show(moment("ends filled"), Procedure.builtIn());
            Node findings = window.node("findings");
            assertTrue(desk.shown().findings().size() > 2);
            assertEquals(
                    desk.shown().findings().stream()
                            .map(finding -> window.words.of(finding.message()))
                            .toList(),
                    findings.lookupAll(".finding-message").stream()
                            .map(label -> Together.plain(((Label) label).getText()))
                            .toList());
            assertEquals(1, findings.lookupAll(".finding-word").size());
        }
    }

    private static Moment moment(String name) {
        return Moments.of("sound-board").stream()
                .filter(moment -> moment.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
