package railtrim.window;

import javafx.scene.Node;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import railtrim.procedure.State;
import railtrim.procedure.Step;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;
import railtrim.window.picture.Pictures;

/** The picture beside the step: what to touch now. */
final class Side {
    private final Words words;
    private final Desk desk;
    private final StackPane picture = new StackPane();
    private final VBox side = Build.column("side", picture);
    private State drawn;
    private String drawnStep = "";

    Side(Words words, Desk desk) {
        this.words = words;
        this.desk = desk;
        picture.setId("picture");
        picture.setMinSize(0, 0);
        VBox.setVgrow(picture, Priority.ALWAYS);
    }

    Node node() {
        return side;
    }

    void width(double pixels) {
        side.setMinWidth(pixels);
        side.setPrefWidth(pixels);
        side.setMaxWidth(pixels);
    }

    void show() {
        Step step = desk.shown().step();
        if (drawn == desk.state() && drawnStep.equals(step.id())) {
            return;
        }
        drawn = desk.state();
        drawnStep = step.id();
        picture.getChildren().setAll(Pictures.forStep(step.picture(), desk.state(), words));
    }
}
