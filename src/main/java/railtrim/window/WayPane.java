package railtrim.window;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import railtrim.procedure.Outlook;
import railtrim.procedure.Phase;
import railtrim.procedure.State.StepState;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;
import railtrim.window.kit.Frames;
import railtrim.window.kit.Handle;
import railtrim.window.kit.Icon;
import railtrim.window.kit.PlainScroll;

/**
 * The way: the phases as a trace with a pad each, and below the open phase its steps. What is done, what comes next and what must be
 * done again is a shape and a word, not a colour alone. Finished steps can be read again.
 */
final class WayPane {
    /** A stretch of the way in the list. */
    private enum Mark {
        DONE,
        HERE,
        AGAIN,
        AHEAD,
        SKIPPED,
        NOT_NEEDED
    }

    /** @param below its steps, on the page only while the phase is open: what is on the page costs time with each picture, seen or not */
    private record PhaseRow(Button head, StackPane pad, VBox whole, Node below) {}

    /** How a line of the list looks; it is dressed anew only when this changes, for each new sign has to be styled. */
    private record Dress(Mark mark, String text, String said, boolean shown, boolean folded) {}

    private final Words words;
    private final Desk desk;
    private final Map<Phase, PhaseRow> phases = new EnumMap<>(Phase.class);
    private final Map<String, Button> steps = new HashMap<>();
    private final Map<Button, Dress> worn = new HashMap<>();
    private final VBox list = Build.column("way-list");
    private final ScrollPane scroll = new PlainScroll(list);
    private boolean folded;

    WayPane(Words words, Desk desk) {
        this.words = words;
        this.desk = desk;
        scroll.getStyleClass().add("way");
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        Handle.give(scroll, "way");
        scroll.setAccessibleText(words.of("window.way"));
        scroll.setFocusTraversable(false);
        for (Phase phase : Phase.values()) {
            if (desk.state().steps().stream().anyMatch(each -> each.step().phase() == phase)) {
                list.getChildren().add(phase(phase));
            }
        }
    }

    Parent node() {
        return scroll;
    }

    /** Pads only, for a narrow window. */
    void fold(boolean fold) {
        if (fold != folded) {
            folded = fold;
            scroll.pseudoClassStateChanged(javafx.css.PseudoClass.getPseudoClass("folded"), fold);
            show();
        }
    }

    void show() {
        list.setDisable(desk.makingSafe());
        for (Map.Entry<Phase, PhaseRow> each : phases.entrySet()) {
            show(each.getKey(), each.getValue());
        }
        if (scroll.getScene() != null) {
            Frames.whenLaidOut(scroll.getScene(), this::reveal);
        }
    }

    /** Where the person is comes into sight; with all steps of a long phase open, the way is higher than a low window. */
    private void reveal() {
        StepState shown = desk.shown();
        Node here = folded || desk.atEnd()
                ? phases.get(shown.step().phase()).head()
                : steps.get(shown.step().id());
        Reveal.within(scroll, here);
    }

    private void show(Phase phase, PhaseRow row) {
        List<StepState> within = desk.state().steps().stream()
                .filter(each -> each.step().phase() == phase)
                .toList();
        boolean open = desk.shown().step().phase() == phase && !desk.atEnd();
        Mark mark = mark(within);
        dress(row.head(), row.pad(), mark, words.of("phase." + phase.id()), open, !open || mark != Mark.HERE);
        row.head().setDisable(within.stream().noneMatch(Desk::readable));
        boolean unfolded = open && !folded;
        if (unfolded) {
            within.forEach(this::show);
        }
        if (unfolded != row.whole().getChildren().contains(row.below())) {
            if (unfolded) {
                row.whole().getChildren().add(row.below());
            } else {
                row.whole().getChildren().remove(row.below());
            }
        }
    }

    private void show(StepState each) {
        Button button = steps.get(each.step().id());
        boolean shown = desk.shown() == each && !desk.atEnd();
        Mark mark = mark(each);
        dress(
                button,
                (StackPane) button.getGraphic(),
                mark,
                words.of("step." + each.step().id() + ".title"),
                shown,
                true);
        button.setDisable(!Desk.readable(each));
        Build.present(button, mark != Mark.NOT_NEEDED);
    }

    private void dress(Button button, StackPane pad, Mark mark, String name, boolean shown, boolean say) {
        String word = words.of(
                "window.way." + mark.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
        boolean plain = mark == Mark.DONE || mark == Mark.AHEAD;
        String text = folded ? "" : plain || !say ? name : name + "\n" + word;
        Dress now = new Dress(mark, text, words.of("window.way.say", name, word), shown, folded);
        Dress before = worn.put(button, now);
        if (now.equals(before)) {
            return;
        }
        if (before == null || before.mark() != mark) {
            pad.getChildren().setAll(sign(mark));
            pad.getStyleClass().setAll("pad", "pad-" + mark.name().toLowerCase(java.util.Locale.ROOT));
        }
        button.setText(text);
        button.setAccessibleText(now.said());
        button.pseudoClassStateChanged(javafx.css.PseudoClass.getPseudoClass("shown"), shown);
        button.setTooltip(folded ? new Tooltip(now.said()) : null);
    }

    private static Node sign(Mark mark) {
        return switch (mark) {
            case DONE -> Icon.TICK.draw(12, "pad-sign");
            case AGAIN -> Icon.AGAIN.draw(12, "pad-sign");
            case HERE -> new StackPane();
            case AHEAD, NOT_NEEDED -> new StackPane();
            case SKIPPED -> Icon.CROSS.draw(10, "pad-sign");
        };
    }

    private VBox phase(Phase phase) {
        StackPane pad = new StackPane();
        StackPane gutter = new StackPane(trace(), pad);
        gutter.getStyleClass().add("gutter");
        Button head = Build.dress(new Button(), "phase-" + phase.id(), "", () -> lookAt(phase), "way-phase");
        head.setWrapText(true);
        head.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(head, Priority.ALWAYS);
        HBox line = Build.row("way-line", gutter, head);
        VBox inner = Build.column("way-steps");
        for (StepState each : desk.state().steps()) {
            if (each.step().phase() == phase) {
                inner.getChildren().add(step(each));
            }
        }
        HBox.setHgrow(inner, Priority.ALWAYS);
        StackPane run = new StackPane(trace());
        run.getStyleClass().add("gutter");
        HBox below = Build.row("way-line", run, inner);
        VBox whole = new VBox(line);
        phases.put(phase, new PhaseRow(head, pad, whole, below));
        return whole;
    }

    private Button step(StepState each) {
        String id = each.step().id();
        Button button = Build.dress(new Button(), Ids.step(id), "", () -> desk.look(id), "way-step");
        button.setGraphic(new StackPane());
        button.setWrapText(true);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setMinHeight(Region.USE_PREF_SIZE);
        steps.put(id, button);
        return button;
    }

    /** Opens the phase at its current step, else at its first readable one. */
    private void lookAt(Phase phase) {
        StepState now = desk.state().current();
        if (now.step().phase() == phase) {
            desk.look(now.step().id());
            return;
        }
        desk.state().steps().stream()
                .filter(each -> each.step().phase() == phase)
                .filter(Desk::readable)
                .findFirst()
                .ifPresent(each -> desk.look(each.step().id()));
    }

    private static Region trace() {
        Region trace = new Region();
        trace.getStyleClass().add("trace");
        trace.setMaxHeight(Double.MAX_VALUE);
        return trace;
    }

    private Mark mark(List<StepState> within) {
        if (within.stream().anyMatch(each -> mark(each) == Mark.HERE)) {
            return Mark.HERE;
        }
        if (within.stream().anyMatch(each -> mark(each) == Mark.AGAIN)) {
            return Mark.AGAIN;
        }
        if (within.stream().allMatch(each -> mark(each) == Mark.NOT_NEEDED)) {
            return Mark.NOT_NEEDED;
        }
        boolean ahead = within.stream().anyMatch(each -> mark(each) == Mark.AHEAD);
        return ahead ? Mark.AHEAD : Mark.DONE;
    }

    private Mark mark(StepState each) {
        boolean here = each == desk.state().current() && !desk.state().complete();
        return here
                ? Mark.HERE
                : switch (each.status()) {
                    case DONE -> Mark.DONE;
                    case CURRENT -> Mark.HERE;
                    case STALE -> new Outlook(desk.state()).nextRound(each) ? Mark.AHEAD : Mark.AGAIN;
                    case SKIPPED -> Mark.SKIPPED;
                    case LOCKED -> Mark.AHEAD;
                    case NOT_NEEDED -> new Outlook(desk.state()).expected(each) ? Mark.AHEAD : Mark.NOT_NEEDED;
                };
    }
}
