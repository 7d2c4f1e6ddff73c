package railtrim.window;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import railtrim.practice.Answer;
import railtrim.practice.Hand;

/** Somebody at one step of a job, with the keyboard of the window: slips there, reads what is said, and mends it with what the bench really shows. */
final class SlippingPerson {
    private static final int MOST_ANSWERS = 60;

    private final Opened window;
    private final Desk desk;
    private final Hand hand;
    private final Typist typist;

    SlippingPerson(Opened window, Desk desk, Hand hand) {
        this.window = window;
        this.desk = desk;
        this.hand = hand;
        this.typist = new Typist(window, desk);
    }

    Desk desk() {
        return desk;
    }

    /** Types into the field the window leads to, or goes there with Tab, and presses Enter. */
    void types(String field, String text) throws TimeoutException {
        reach(Ids.field(field));
        window.fx(() -> {
            ((TextInputControl) window.node(Ids.field(field))).selectAll();
            return null;
        });
        window.type(text);
        window.press(KeyCode.ENTER);
        window.layOut();
    }

    /** Says once more that the meter shows what was typed. */
    void insists(String field) throws TimeoutException {
        reach(Ids.sure(field));
        window.press(KeyCode.SPACE);
        window.layOut();
    }

    void picks(String field, String option) throws TimeoutException {
        reach(Ids.option(field, option));
        window.press(KeyCode.SPACE);
        window.layOut();
    }

    void presses(String id) throws TimeoutException {
        reach(id);
        window.press(KeyCode.SPACE);
        window.layOut();
    }

    void readsTheCautions() throws TimeoutException {
        while (desk.state().card().isEmpty() && !desk.shown().open().isEmpty()) {
            typist.give(new Answer.Acknowledged(desk.shown().open().get(0)));
        }
    }

    /** One thing right, as the bench shows it. */
    void answers() throws TimeoutException {
        typist.give(hand.next(desk.state(), desk.course()));
    }

    void answersUntilAsked(String field) throws TimeoutException {
        for (int i = 0; i < MOST_ANSWERS; i++) {
            if (hand.next(desk.state(), desk.course()) instanceof Answer.Typed typed
                    && typed.field().equals(field)) {
                return;
            }
            answers();
        }
        throw new AssertionError(field + " is never asked for");
    }

    private void reach(String id) throws TimeoutException {
        window.layOut();
        if (!window.focused().equals(id)) {
            window.tabTo(id);
        }
    }

    /** The words are in sight: on the page, above its foot, not below a scroll. */
    void sees(String key) throws TimeoutException {
        String template = Stream.of(window.words.bundle().getString(key).split("\\{\\d[^}]*}", -1))
                .map(Pattern::quote)
                .collect(Collectors.joining(".*"));
        Pattern words = Pattern.compile(template, Pattern.DOTALL);
        window.until(
                key + " in sight; there is " + inSight() + ", found "
                        + desk.state().current().findings(),
                () -> inSight().stream().anyMatch(text -> words.matcher(text).matches()));
    }

    private List<String> inSight() {
        try {
            window.layOut();
            return window.fx(() -> {
                List<String> texts = new ArrayList<>();
                double foot = window.has("make-safe")
                        ? inScene(window.node("make-safe")).getMinY()
                        : Double.MAX_VALUE;
                collect(window.shell.scene().getRoot(), 0, foot, texts);
                return texts;
            });
        } catch (TimeoutException e) {
            throw new AssertionError(e);
        }
    }

    private static void collect(Node node, double top, double bottom, List<String> texts) {
        if (!node.isVisible()) {
            return;
        }
        Bounds at = inScene(node);
        if (node instanceof Labeled said && at.getMinY() >= top - 1 && at.getMaxY() <= bottom + 1) {
            texts.add(said.getText());
        }
        boolean scrolls = node instanceof ScrollPane;
        if (node instanceof Parent parent) {
            double from = scrolls ? Math.max(top, at.getMinY()) : top;
            double to = scrolls ? Math.min(bottom, at.getMaxY()) : bottom;
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, from, to, texts));
        }
    }

    private static Bounds inScene(Node node) {
        return Opened.look(() -> node.localToScene(node.getBoundsInLocal()));
    }

    /** The way does not go on: Next is shut, and neither Enter on the page nor a click on Next leads away. */
    void staysAt(String step) throws TimeoutException {
        window.layOut();
        shut(step);
        Node button = window.node("next");
        Bounds next = Opened.look(() -> button.localToScreen(button.getBoundsInLocal()));
        window.robot.clickOn(next.getCenterX(), next.getCenterY());
        window.settle();
        shut(step);
    }

    private void shut(String step) {
        String at = desk.state().current().step().id();
        if (!at.equals(step)) {
            throw new AssertionError("the way went on from " + step + " to " + at);
        }
        if (!window.node("next").isDisabled()) {
            throw new AssertionError("Next is open at " + step);
        }
    }

    /** Gives right answers until the step is done, and goes on with Next. */
    void mendsAndGoesOnFrom(String step) throws TimeoutException {
        for (int i = 0; i < MOST_ANSWERS && desk.state().current().step().id().equals(step); i++) {
            Answer answer = hand.next(desk.state(), desk.course());
            if (answer instanceof Answer.Reopened || answer instanceof Answer.Alarmed) {
                window.fx(() -> {
                    Walk.give(desk, answer);
                    return null;
                });
            } else {
                typist.give(answer);
            }
        }
        if (desk.nextOpen()) {
            window.until("Next in focus", () -> window.focused().equals("next"));
            window.press(KeyCode.ENTER);
        }
        if (desk.shown().step().id().equals(step)) {
            throw new AssertionError("the way does not go on from " + step);
        }
    }
}
