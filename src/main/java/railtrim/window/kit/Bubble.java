package railtrim.window.kit;

import java.util.Optional;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.controlsfx.control.PopOver;

/**
 * Something to read beside what it is about. Escape, its own button or a click elsewhere closes it; that click counts where it was made, and what
 * stands at the left of the window's foot is never covered, so that Make safe stays one press away. The focus goes back where it was.
 */
public final class Bubble {
    private static final double LEAST_SIDE_ROOM = 380;

    /** Down to here, as a part of the window's height; below it is the foot. */
    private static final double LOWEST = 0.88;

    /** The tip of the bubble and the shadow around it. */
    private static final double TIP = 24;

    private Bubble() {}

    /** @param beside what it is about; whatever has the focus now gets it back */
    public static void show(Node beside, String title, Node content, String close) {
        Node back = Optional.ofNullable(beside.getScene().getFocusOwner()).orElse(beside);
        PopOver bubble = new PopOver();
        Button away = Build.button("bubble-close", close, () -> {}, "plain");
        ScrollPane scroll = new PlainScroll(content);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.getStyleClass().add("step-scroll");
        VBox box = Build.column("bubble", Build.prose(title, "bubble-title"), scroll, away);
        Handle.give(box, "bubble");
        PopOver.ArrowLocation arrow = arrow(beside);
        box.setMaxHeight(room(beside, arrow));
        box.setAccessibleText(title);
        away.setOnAction(event -> bubble.hide());
        bubble.setContentNode(box);
        bubble.getStyleClass().add("bubble-frame");
        bubble.setDetachable(false);
        bubble.setAnimated(false);
        bubble.setArrowLocation(arrow);
        bubble.setConsumeAutoHidingEvents(false);
        // The window itself may be closing, and the bubble with it.
        bubble.setOnHidden(event -> Platform.runLater(() -> giveBack(back)));
        bubble.show(beside);
        groundWhereNothingShinesThrough(bubble, box);
        Platform.runLater(() -> {
            // Only now is it known how wide the lines are, and so how many there will be.
            scroll.setPrefViewportHeight(
                    content.prefHeight(scroll.getViewportBounds().getWidth()));
            away.requestFocus();
        });
    }

    /** Where the system lays no windows over each other, what should be seen through is white: there all is as the box, without a shadow. */
    private static void groundWhereNothingShinesThrough(PopOver bubble, Region box) {
        if (!Platform.isSupported(ConditionalFeature.TRANSPARENT_WINDOW)) {
            bubble.getStyleClass().add("bubble-flat");
            box.applyCss();
            Optional.ofNullable(box.getBackground())
                    .map(ground -> ground.getFills().get(0).getFill())
                    .ifPresent(bubble.getScene()::setFill);
        }
    }

    private static void giveBack(Node back) {
        if (back.getScene() != null
                && back.getScene().getWindow() != null
                && back.getScene().getWindow().isShowing()) {
            back.requestFocus();
        }
    }

    /** Beside it where there is room, else below. */
    private static PopOver.ArrowLocation arrow(Node beside) {
        Bounds at = beside.localToScene(beside.getBoundsInLocal());
        double scene = beside.getScene().getWidth();
        boolean low = at.getMinY() > beside.getScene().getHeight() * LOWEST / 2;
        if (scene - at.getMaxX() > LEAST_SIDE_ROOM) {
            return low ? PopOver.ArrowLocation.LEFT_BOTTOM : PopOver.ArrowLocation.LEFT_TOP;
        }
        return low ? PopOver.ArrowLocation.BOTTOM_RIGHT : PopOver.ArrowLocation.TOP_RIGHT;
    }

    private static double room(Node beside, PopOver.ArrowLocation arrow) {
        Bounds at = beside.localToScene(beside.getBoundsInLocal());
        double lowest = beside.getScene().getHeight() * LOWEST;
        return switch (arrow) {
            case LEFT_TOP -> lowest - at.getMinY();
            case LEFT_BOTTOM -> at.getMaxY();
            case BOTTOM_RIGHT -> at.getMinY() - TIP;
            default -> lowest - at.getMaxY() - TIP;
        };
    }
}
