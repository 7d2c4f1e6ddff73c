package railtrim.window.bench;

import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import java.util.function.Supplier;
import javafx.scene.Group;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import railtrim.practice.VirtualTrimmer;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/** One screw of a trimmer: a knob to drag round or to roll the wheel over, the way from end to end, and buttons for half a turn and for a touch. */
final class Screw {
    /** Turned by one notch of the wheel, in turns. */
    private static final double WHEEL = 0.05;

    private static final double TOUCH = 0.02;
    private static final double HALF = 0.5;
    private static final double RADIUS = 17;

    private final Words words;
    private final Consumer<Runnable> deed;
    private final DoubleConsumer turn;
    private final Supplier<VirtualTrimmer> trimmer;
    private final Slider travel = new Slider(0, 1, 0.5);
    private final Label turned = Build.label("", "bench-turned");
    private final StackPane knob = new StackPane();
    private final VBox box;
    private boolean showing;
    private boolean aimed;
    private double draggedFrom;

    /** @param id for the names of the controls; @param key of what the whole way is called */
    Screw(
            Words words,
            String id,
            String key,
            Supplier<VirtualTrimmer> trimmer,
            DoubleConsumer turn,
            Consumer<Runnable> deed) {
        this.words = words;
        this.trimmer = trimmer;
        this.turn = turn;
        this.deed = deed;
        Handle.give(travel, id + "-travel");
        travel.setAccessibleText(words.of(key));
        travel.setBlockIncrement(0.01);
        Handle.give(turned, id + "-turned");
        HBox.setHgrow(travel, Priority.ALWAYS);
        travel.valueProperty().addListener((of, was, is) -> {
            if (!showing) {
                deed.accept(() -> turn.accept(is.doubleValue()));
            }
        });
        knob.getStyleClass().add("knob");
        Handle.give(knob, id + "-knob");
        knob.setOnMousePressed(event -> draggedFrom = angle(event));
        knob.setOnMouseDragged(this::drag);
        // Only a wheel over a knob that the mouse was moved to turns it: not one that is scrolled past below a mouse
        // at rest.
        knob.setOnMouseMoved(event -> aimed = true);
        knob.setOnMouseExited(event -> aimed = false);
        knob.setOnScroll(this::wheel);
        // The slider takes these keys when they come up; gone down they would scroll the bench away from below it.
        travel.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.HOME || event.getCode() == KeyCode.END) {
                event.consume();
            }
        });
        FlowPane row = new FlowPane(
                nudge(id + "-down-more", "window.bench.down-more", -HALF),
                nudge(id + "-down", "window.bench.down", -TOUCH),
                knob,
                nudge(id + "-up", "window.bench.up", TOUCH),
                nudge(id + "-up-more", "window.bench.up-more", HALF));
        row.getStyleClass().add("bench-flow");
        row.setRowValignment(javafx.geometry.VPos.CENTER);
        box = Build.column("bench-part", row, travel, turned);
    }

    javafx.scene.Node node() {
        return box;
    }

    void show() {
        VirtualTrimmer now = trimmer.get();
        showing = true;
        travel.setValue(now.travel());
        showing = false;
        double turns = now.travel() * now.turns();
        turned.setText(words.of(
                "window.bench.turned", String.format(Locale.ROOT, "%.2f", turns), Integer.toString(now.turns())));
        Group head = PartArt.screw(RADIUS, 360 * turns);
        knob.getChildren().setAll(head);
    }

    private void wheel(ScrollEvent event) {
        if (!aimed) {
            return;
        }
        if (event.getDeltaY() != 0) {
            by(Math.signum(event.getDeltaY()) * WHEEL);
        }
        event.consume();
    }

    /** Right round the screw is one turn. */
    private void drag(MouseEvent event) {
        double now = angle(event);
        double by = Math.IEEEremainder(now - draggedFrom, 360);
        if (Math.abs(by) >= 360 * TOUCH) {
            draggedFrom = now;
            by(by / 360);
        }
    }

    private double angle(MouseEvent event) {
        return Math.toDegrees(Math.atan2(event.getY() - knob.getHeight() / 2, event.getX() - knob.getWidth() / 2));
    }

    private void by(double turns) {
        VirtualTrimmer now = trimmer.get();
        double wanted = now.travel() + turns / now.turns();
        deed.accept(() -> turn.accept(Math.max(0, Math.min(1, wanted))));
    }

    private Button nudge(String id, String key, double turns) {
        return Build.button(id, words.of(key), () -> by(turns), "plain", "bench-small");
    }
}
