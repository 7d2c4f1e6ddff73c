package railtrim.window;

import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import railtrim.window.kit.Build;
import railtrim.window.kit.PlainScroll;

/**
 * A question laid over the page, inside the window. While one is open the page below is disabled, so neither mouse nor Tab reaches
 * it; of a job only Make safe stays free, in its place at the foot. Escape takes the safe way out, which never loses anything.
 */
final class Sheet {
    private final StackPane root;
    private final Node page;
    private final StackPane veil = new StackPane();
    private final ChangeListener<Number> footChanged = (of, was, is) -> leaveFree(is.doubleValue());
    private Optional<JobPage> job = Optional.empty();
    private Runnable leave = () -> {};
    private Runnable opening = () -> {};
    private Runnable closed = () -> {};

    Sheet(StackPane root, Node page) {
        this.root = root;
        this.page = page;
        veil.getStyleClass().add("veil");
    }

    /** The page below is now this job, or none. */
    void over(Optional<JobPage> now) {
        uncover();
        job = now;
        if (open()) {
            cover();
        }
    }

    private void cover() {
        page.setDisable(job.isEmpty());
        job.ifPresent(covered -> {
            covered.cover(true);
            covered.footHeight().addListener(footChanged);
        });
        leaveFree(job.map(covered -> covered.footHeight().get()).orElse(0.0));
    }

    private void uncover() {
        page.setDisable(false);
        job.ifPresent(covered -> {
            covered.cover(false);
            covered.footHeight().removeListener(footChanged);
        });
    }

    private void leaveFree(double foot) {
        StackPane.setMargin(veil, new Insets(0, 0, foot, 0));
    }

    boolean open() {
        return root.getChildren().contains(veil);
    }

    /** @param safe the way out that Escape takes and that has the focus at first, unless {@code body} holds a field to fill */
    void ask(String title, Node body, Button safe, Button... others) {
        ScrollPane middle = new PlainScroll(body);
        middle.setFitToWidth(true);
        middle.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        middle.setFocusTraversable(false);
        middle.getStyleClass().add("step-scroll");
        VBox box = lay(title, middle, safe, others);
        box.setMaxHeight(Region.USE_PREF_SIZE);
        // How high running text is, is known once its lines are broken.
        middle.viewportBoundsProperty()
                .addListener((of, was, is) -> middle.setPrefViewportHeight(body.prefHeight(is.getWidth())));
        open(box, body, safe);
    }

    /** With all the room there is; {@code body} scrolls by itself. */
    void askWide(String title, Node body, Button safe, Button... others) {
        VBox box = lay(title, body, safe, others);
        box.getStyleClass().add("sheet-wide");
        VBox.setVgrow(body, Priority.ALWAYS);
        open(box, body, safe);
    }

    private VBox lay(String title, Node middle, Button safe, Button... others) {
        HBox buttons = Build.row("sheet-buttons", Build.spring());
        buttons.getChildren().addAll(others);
        buttons.getChildren().add(safe);
        return Build.column("sheet", Build.prose(title, "sheet-title"), middle, buttons);
    }

    private void open(VBox box, Node body, Button safe) {
        opening.run();
        leave = safe::fire;
        veil.getChildren().setAll(box);
        if (!open()) {
            root.getChildren().add(veil);
        }
        cover();
        Platform.runLater(() -> {
            // What scrolls joins the scene only when it is styled; before that it cannot take the focus.
            veil.applyCss();
            veil.layout();
            Node first = body.lookup(".first-focus");
            (first == null ? safe : first).requestFocus();
        });
    }

    void leave() {
        leave.run();
    }

    /** Goes away whatever it asked, the safe way where that is open. */
    void giveWay() {
        if (open()) {
            leave();
            close();
        }
    }

    /** Called before a sheet is shown. */
    void onOpen(Runnable first) {
        opening = first;
    }

    /** Called some time after a sheet was closed; another may have been opened since. */
    void onClosed(Runnable then) {
        closed = then;
    }

    void close() {
        root.getChildren().remove(veil);
        veil.getChildren().clear();
        uncover();
        Platform.runLater(closed);
    }
}
