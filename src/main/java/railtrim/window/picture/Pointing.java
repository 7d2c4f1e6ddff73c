package railtrim.window.picture;

import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Bounds;
import javafx.geometry.Side;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;

/** The mouse and the keyboard in a picture: what is pointed at tells its number, and what can be answered there is answered by a click, Enter or Space. */
final class Pointing {
    private static final PseudoClass ANSWERS = PseudoClass.getPseudoClass("answers");

    private final PictureView view;
    private final Answering answering;
    private Optional<Detail> current = Optional.empty();

    Pointing(PictureView view, Answering answering) {
        this.view = view;
        this.answering = answering;
        view.setOnMouseMoved(event -> pointAt(view.at(event.getX(), event.getY())));
        view.setOnMouseExited(event -> pointAt(Optional.empty()));
        view.setOnMousePressed(this::pressed);
        view.setOnKeyPressed(this::key);
        view.focusedProperty().addListener((of, was, is) -> focusChanged(is));
    }

    void drawnAnew() {
        pointAt(Optional.empty());
    }

    private void focusChanged(boolean focused) {
        pointAt(focused ? view.details().stream().findFirst() : Optional.empty());
    }

    private void pointAt(Optional<Detail> detail) {
        if (!detail.equals(current)) {
            current = detail;
            view.point(detail);
            view.pseudoClassStateChanged(ANSWERS, detail.filter(this::open).isPresent());
        }
    }

    private boolean open(Detail detail) {
        return detail.asks().filter(asks -> !choices(asks).isEmpty()).isPresent();
    }

    private List<Answering.Choice> choices(Detail.Asks asks) {
        return answering.choices(asks.field()).stream()
                .filter(choice -> asks.answer().isEmpty() || asks.answer().get().equals(choice.id()))
                .toList();
    }

    private void pressed(MouseEvent event) {
        if (event.getButton() == MouseButton.PRIMARY) {
            view.at(event.getX(), event.getY()).ifPresent(this::ask);
        }
    }

    private void key(KeyEvent event) {
        switch (event.getCode()) {
            case RIGHT, DOWN -> step(event, 1);
            case LEFT, UP -> step(event, -1);
            case HOME -> go(event, 0);
            case END -> go(event, view.details().size() - 1);
            case ENTER, SPACE ->
                current.filter(this::open).ifPresent(detail -> {
                    ask(detail);
                    event.consume();
                });
            default -> {
                // All other keys belong to the window.
            }
        }
    }

    private void step(KeyEvent event, int by) {
        int now = current.map(view.details()::indexOf)
                .orElse(by > 0 ? -1 : view.details().size());
        go(event, Math.max(0, Math.min(view.details().size() - 1, now + by)));
    }

    private void go(KeyEvent event, int index) {
        if (!view.details().isEmpty()) {
            pointAt(Optional.of(view.details().get(index)));
            event.consume();
        }
    }

    private void ask(Detail detail) {
        detail.asks().filter(asks -> open(detail)).ifPresent(asks -> {
            if (asks.answer().isPresent()) {
                answering.choose(asks.field(), asks.answer().get());
            } else {
                menu(asks, view.boundsOf(detail));
            }
        });
    }

    private void menu(Detail.Asks asks, Bounds at) {
        if (view.getScene() == null) {
            // The press took the focus from a field whose entry changed the picture: another one is there now.
            return;
        }
        ContextMenu menu = new ContextMenu();
        for (Answering.Choice choice : choices(asks)) {
            MenuItem item = new MenuItem(choice.name());
            item.setId("picture-answer-" + choice.id());
            item.setMnemonicParsing(false);
            item.setOnAction(event -> answering.choose(asks.field(), choice.id()));
            menu.getItems().add(item);
        }
        menu.show(view, Side.TOP, at.getMinX(), at.getMaxY() + 4);
    }
}
