package railtrim.window;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;
import railtrim.window.kit.Icon;

/** The foot: Make safe, Back, Pause and note, Next; and above it, on every powered step, the rule when to stop. */
final class Foot {
    private final Desk desk;
    private final Button makeSafe;
    private final Button back;
    private final Button pause;
    private final Button next;
    private final HBox bar;
    private final HBox stopRule;
    private boolean covered;

    Foot(Words words, Desk desk, Runnable makingSafe, Runnable pausing) {
        this.desk = desk;
        this.makeSafe = Build.button("make-safe", words.of("window.make-safe"), makingSafe, "make-safe");
        makeSafe.setGraphic(Icon.STOP_HAND.draw(18));
        this.back = Build.button("back", words.of("window.back"), desk::back, "plain");
        this.pause = Build.button("pause", words.of("window.pause"), pausing, "plain");
        this.next = Build.button("next", words.of("window.next"), desk::next, "primary");
        this.bar = Build.row("foot", makeSafe, Build.spring(), back, pause, next);
        Label rule = Build.prose(words.of("stop-rule.on"), "stop-rule-text");
        this.stopRule = Build.row("stop-rule", Icon.STOP_HAND.draw(18), rule);
        Handle.give(stopRule, "stop-rule");
    }

    Node node() {
        return bar;
    }

    Node stopRule() {
        return stopRule;
    }

    /** A sheet lies over the page: of all there is to press, only Make safe is left. */
    void cover(boolean is) {
        covered = is;
        show();
    }

    void focusNext() {
        next.requestFocus();
    }

    boolean nextOpen() {
        return !next.isDisabled();
    }

    void show() {
        State state = desk.state();
        boolean makingSafe = desk.makingSafe();
        makeSafe.setDisable(makingSafe);
        back.setDisable(covered || !desk.backOpen());
        pause.setDisable(covered || makingSafe || state.complete());
        next.setDisable(covered || !desk.nextOpen());
        boolean on = desk.shown().step().power().startsOn()
                || desk.shown().step().power().endsOn();
        Build.present(stopRule, on && state.card().isEmpty() && !desk.atEnd());
        bar.pseudoClassStateChanged(javafx.css.PseudoClass.getPseudoClass("on"), state.power() != State.Power.OFF);
    }
}
