package railtrim.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import railtrim.procedure.Caution;
import railtrim.procedure.State.StepState;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;
import railtrim.window.kit.Icon;
import railtrim.window.kit.Keys;
import railtrim.window.kit.Together;

/**
 * The cautions of a step, above what they guard. The first one not yet acknowledged is open in full with its own control; the others
 * are a line each, and open when their turn comes or when clicked.
 */
final class Cautions {
    private final Words words;
    private final Desk desk;
    private final VBox box = Build.column("cautions");
    private Optional<String> reread = Optional.empty();
    private Optional<Button> control = Optional.empty();
    private boolean narrow;
    private List<Object> built = List.of();

    Cautions(Words words, Desk desk) {
        this.words = words;
        this.desk = desk;
        Handle.give(box, "cautions");
    }

    Node node() {
        return box;
    }

    /** The control of the open caution, where one waits to be acknowledged. */
    Optional<Button> control() {
        return control;
    }

    /** Built anew only when something about them changed, so that the focus is not lost under a person's hand. */
    void show(StepState step, boolean working) {
        List<Object> now = List.of(step.step().id(), step.open(), step.step().cautions(), working, reread, narrow);
        if (!now.equals(built)) {
            built = now;
            build(step, working);
        }
    }

    private void build(StepState step, boolean working) {
        List<Node> shown = new ArrayList<>();
        control = Optional.empty();
        Optional<String> next = working ? step.open().stream().findFirst() : Optional.empty();
        if (narrow
                && next.isEmpty()
                && reread.isEmpty()
                && !step.step().cautions().isEmpty()) {
            box.getChildren().setAll(together(step, working));
            Build.present(box, true);
            return;
        }
        for (String id : step.step().cautions()) {
            Caution caution = desk.course().procedure().caution(id);
            boolean waits = working && step.open().contains(id);
            boolean its = next.filter(id::equals).isPresent();
            boolean again = reread.filter(id::equals).isPresent();
            shown.add(line(caution, waits, its, again, () -> toggle(id, step, working)));
            if (its || again) {
                shown.add(full(caution, its));
            }
        }
        box.getChildren().setAll(shown);
        Build.present(box, !shown.isEmpty());
    }

    /** @return whether that is a change */
    boolean narrow(boolean is) {
        boolean changed = narrow != is;
        narrow = is;
        return changed;
    }

    void fresh() {
        reread = Optional.empty();
    }

    /** All of them in one line, by their signal words; pressing one opens it again. */
    private Node together(StepState step, boolean working) {
        FlowPane flow = new FlowPane();
        flow.getStyleClass().add("cautions-together");
        for (String id : step.step().cautions()) {
            Caution caution = desk.course().procedure().caution(id);
            Button button = Build.dress(
                    new Button(words.of("window." + level(caution))),
                    "caution-" + id,
                    words.of("window." + level(caution)) + " " + caution.hazard(words),
                    () -> toggle(id, step, working),
                    "signal-button",
                    level(caution));
            button.setGraphic(Icon.of(caution.symbol()).draw(16));
            flow.getChildren().add(button);
        }
        return flow;
    }

    private void toggle(String id, StepState step, boolean working) {
        reread = reread.filter(id::equals).isPresent() ? Optional.empty() : Optional.of(id);
        show(step, working);
    }

    /** Signal word, sign, what it is about, and whether it was acknowledged. */
    private Node line(Caution caution, boolean waits, boolean its, boolean again, Runnable open) {
        Node signal = signal(caution);
        String state = waits ? its ? "" : words.of("window.caution.next") : words.of("window.caution.read");
        // In a narrow window there is room for the words of one only; pressing another shows those of that one.
        boolean kept = narrow && !its && !again;
        Button line = Build.dress(
                new Button(kept ? "" : Together.of(caution.hazard(words))),
                "caution-" + caution.id(),
                "",
                open,
                "caution-line");
        line.setAccessibleText(String.join(" ", words.of("window." + level(caution)), caution.hazard(words), state));
        line.setMaxWidth(Double.MAX_VALUE);
        line.setWrapText(true);
        line.setMinHeight(Region.USE_PREF_SIZE);
        line.setMinWidth(0);
        line.setFocusTraversable(!its);
        HBox.setHgrow(line, Priority.ALWAYS);
        HBox row = Build.row("caution", signal, line);
        if (!state.isEmpty()) {
            HBox mark = Build.row("caution-state", Build.label(state, "caution-state-word"));
            if (!waits) {
                mark.getChildren().add(0, Icon.TICK.draw(12));
            }
            mark.setMinWidth(Region.USE_PREF_SIZE);
            row.getChildren().add(mark);
        }
        row.getStyleClass().add(its ? "caution-open" : "caution-folded");
        return row;
    }

    /** As wide as the others, and wider where its word needs more. */
    private Node signal(Caution caution) {
        Label word = Build.label(words.of("window." + level(caution)), "signal-word");
        word.setMinWidth(Region.USE_PREF_SIZE);
        Region usual = new Region();
        usual.getStyleClass().add("signal-width");
        StackPane signal = new StackPane(
                usual, Build.row("signal-row", Icon.of(caution.symbol()).draw(20), word));
        signal.getStyleClass().addAll("signal", level(caution));
        return signal;
    }

    private Node full(Caution caution, boolean waits) {
        VBox body = Build.column(
                "caution-body",
                Build.prose(caution.consequence(words), "caution-consequence"),
                Build.prose(caution.avoidance(words), "caution-avoidance"));
        body.getStyleClass().add(level(caution) + "-edge");
        if (waits) {
            Button acknowledge = acknowledge(caution);
            body.getChildren().add(acknowledge);
            control = Optional.of(acknowledge);
        }
        return body;
    }

    private Button acknowledge(Caution caution) {
        String text = words.of("window.caution.acknowledge");
        Button button = Build.button(
                Ids.acknowledge(caution.id()),
                text,
                () -> desk.acknowledge(caution.id()),
                "acknowledge",
                Keys.NOT_BY_ENTER);
        button.setGraphic(Build.column("acknowledge-box"));
        button.setWrapText(true);
        button.setMinWidth(0);
        button.setAccessibleText(String.join(
                " ",
                words.of("window." + level(caution)),
                caution.hazard(words),
                caution.consequence(words),
                caution.avoidance(words),
                text));
        return button;
    }

    private static String level(Caution caution) {
        return "level-" + caution.level().name().toLowerCase(Locale.ROOT);
    }
}
