package railtrim.window.kit;

import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What scrolls, and under it a line that says so for as long as there is more below than can be seen. */
public final class MoreBelow {
    /** So much of the padding at the end need not be seen, pixels. */
    private static final double SLACK = 8;

    private final ScrollPane scroll;
    private final Label line;
    private final VBox box;

    private MoreBelow(ScrollPane scroll, String words) {
        this.scroll = scroll;
        this.line = Build.label(words, "more-below");
        this.box = new VBox(scroll, line);
        line.setGraphic(Icon.DOWN.draw(12));
        line.setMaxWidth(Double.MAX_VALUE);
        line.setAlignment(Pos.CENTER);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        box.setMinHeight(0);
        Build.present(line, false);
        scroll.vvalueProperty().addListener((of, was, is) -> look());
        scroll.viewportBoundsProperty().addListener((of, was, is) -> look());
        box.heightProperty().addListener((of, was, is) -> look());
        scroll.getContent().layoutBoundsProperty().addListener((of, was, is) -> look());
    }

    public static VBox under(ScrollPane scroll, String words) {
        return new MoreBelow(scroll, words).box;
    }

    /** The line keeps its place while there is too much for the whole box, so that coming and going it moves nothing; where not even it fits, it is left out. */
    private void look() {
        double whole = scroll.getContent().getLayoutBounds().getHeight();
        double seen = scroll.getViewportBounds().getHeight();
        double below = (1 - scroll.getVvalue()) * (whole - seen);
        boolean placed = line.isManaged();
        line.setManaged(whole > box.getHeight() + SLACK && box.getHeight() >= line.prefHeight(-1));
        if (line.isManaged() != placed) {
            // Found out in the middle of a layout, when the box cannot ask for another one.
            Platform.runLater(box::requestLayout);
        }
        line.setVisible(line.isManaged() && below > SLACK);
    }
}
