package railtrim.window.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.practice.Jobs;
import railtrim.procedure.State;
import railtrim.procedure.Step;

/** Pictures of whole jobs, from the first screen to the last. */
class JobPicturesTest {
    /** The board whose pictures are kept to look at. */
    private static final String KEPT = "sound-board";

    @ParameterizedTest
    @ValueSource(strings = {"network-blade", "playout-module", "sound-board", "storage-controller"})
    void everyPictureOfAJobFitsAndSaysWhatItShows(String board) {
        List<State> states = Jobs.states(board, 7);
        List<String> wrong = Screen.on(() -> {
            Screen.dark(false);
            List<String> found = new ArrayList<>();
            Set<Drawing> seen = new HashSet<>();
            for (State state : states) {
                String step = state.current().step().id();
                Drawing drawing = drawing(state);
                if (!seen.add(drawing)) {
                    continue;
                }
                PictureView view = Screen.laidOut(drawing, 300, 360);
                found.addAll(Fit.problems(board + " " + step, view));
                if (drawing.says().isBlank()) {
                    found.add(board + " " + step + " says nothing");
                }
                if (board.equals(KEPT)) {
                    Screen.save("job-%03d-%s".formatted(seen.size(), step), view);
                }
            }
            return found;
        });
        assertEquals(List.of(), wrong, String.join("\n", wrong));
    }

    static Drawing drawing(State state) {
        return Pictures.drawing(state.current().picture(), state, Samples.WORDS);
    }

    @Test
    void aPictureIsAnImageWithWordsForThoseWhoDoNotSeeIt() {
        State first = Jobs.states("network-blade", 1).get(0);
        for (Step.Picture kind : Step.Picture.values()) {
            Node node = Screen.on(() -> Pictures.of(kind, first.current(), first, Samples.WORDS, Answering.none()));
            assertEquals(AccessibleRole.IMAGE_VIEW, node.getAccessibleRole());
            assertTrue(node.getAccessibleText().endsWith("."), kind + ": " + node.getAccessibleText());
            assertFalse(node.getAccessibleText().contains("{"));
        }
    }

    @Test
    void everyKindOfPictureComesUpInAJob() {
        Set<Step.Picture> seen = new HashSet<>();
        Jobs.states("network-blade", 7)
                .forEach(state -> seen.add(state.current().picture()));
        assertEquals(Set.of(Step.Picture.values()), seen);
    }
}
