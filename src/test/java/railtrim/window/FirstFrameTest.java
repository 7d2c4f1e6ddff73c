package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.procedure.Procedure;
import railtrim.window.kit.Frames;

/** What is painted first is what stays: nothing jumps, and no picture is black for the length of a frame. */
class FirstFrameTest {
    /** Pixels; heights in parts of the text size are rounded once more. */
    private static final double JUMP = 4;

    @TempDir
    Path folder;

    @Test
    void thePageOfAJobStaysAsItWasFirstPainted() throws Exception {
        List<Moment> moments = Moments.of("sound-board").stream()
                .filter(each -> each.state().equals("fresh"))
                .toList();
        assertTrue(moments.size() > 30, "only " + moments.size() + " steps");
        try (Opened window = Opened.in(folder)) {
            // The window has its size; only then can a page be asked to fit it at once.
            window.layOut();
            for (Moment moment : moments) {
                CompletableFuture<List<Look>> first = window.fx(() -> {
                    window.showNow(moment, Procedure.builtIn());
                    return nextPainted(window.shell.scene());
                });
                List<Look> painted = first.get(20, TimeUnit.SECONDS);
                window.settle();
                window.layOut();
                List<Look> after = window.fx(() -> looks(window.shell.scene().getRoot()));
                assertEquals(List.of(), jumps(painted, after), moment.step());
            }
        }
    }

    /** A sign, a label or a mark of a drawing: its words and colour, and where it lies. */
    private record Look(String what, Bounds place) {
        boolean like(Look other) {
            return what.equals(other.what)
                    && Math.abs(place.getMinX() - other.place.getMinX()) < JUMP
                    && Math.abs(place.getMinY() - other.place.getMinY()) < JUMP
                    && Math.abs(place.getWidth() - other.place.getWidth()) < JUMP
                    && Math.abs(place.getHeight() - other.place.getHeight()) < JUMP;
        }
    }

    /** What is another after than it was first, or lies elsewhere. */
    private static List<String> jumps(List<Look> first, List<Look> after) {
        List<String> jumps = new ArrayList<>();
        for (int i = 0; i < Math.max(first.size(), after.size()); i++) {
            Optional<Look> before = at(first, i);
            Optional<Look> then = at(after, i);
            if (before.isEmpty() || then.isEmpty() || !before.get().like(then.get())) {
                jumps.add(before + " became " + then);
            }
        }
        return jumps;
    }

    private static Optional<Look> at(List<Look> looks, int place) {
        return place < looks.size() ? Optional.of(looks.get(place)) : Optional.empty();
    }

    /** How the scene looks after the next layout, which is what is then painted. */
    private static CompletableFuture<List<Look>> nextPainted(Scene scene) {
        CompletableFuture<List<Look>> looks = new CompletableFuture<>();
        Frames.whenLaidOut(scene, () -> looks.complete(looks(scene.getRoot())));
        return looks;
    }

    /** Place, and colour of a drawn mark, of everything that can be seen. */
    private static List<Look> looks(Node node) {
        List<Look> looks = new ArrayList<>();
        add(node, looks);
        return looks;
    }

    private static void add(Node node, List<Look> looks) {
        // That there is more below is known only once the step has been laid out.
        if (!node.isVisible() || node.getStyleClass().contains("more-below")) {
            return;
        }
        if (node instanceof Shape || node instanceof Labeled) {
            String what = node instanceof Shape shape ? shape.getFill() + words(shape) : ((Labeled) node).getText();
            looks.add(new Look(node.getStyleClass() + " " + what, node.localToScene(node.getLayoutBounds())));
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> add(child, looks));
        }
    }

    private static String words(Shape shape) {
        return shape instanceof Text text ? text.getText() : "";
    }
}
