package railtrim.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import railtrim.procedure.Figures;
import railtrim.procedure.State.StepState;
import railtrim.procedure.Step;
import railtrim.procedure.StepSums;
import railtrim.procedure.Sum;
import railtrim.procedure.Words;
import railtrim.quantity.Message;
import railtrim.window.help.SumText;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;
import railtrim.window.kit.Icon;

/** What the readings of a step say together, with a way back to where the mend is likely to be, and the sums behind it. */
final class Findings {
    private final Words words;
    private final Desk desk;
    private final VBox box = Build.column("findings");

    Findings(Words words, Desk desk) {
        this.words = words;
        this.desk = desk;
        Handle.give(box, "findings");
    }

    Node node() {
        return box;
    }

    void show(StepState step) {
        Optional<Message> besideTimer = desk.working() ? Dwell.brokenOff(step) : Optional.empty();
        List<Step.Finding> findings = step.findings().stream()
                .filter(finding -> besideTimer.filter(finding.message()::equals).isEmpty())
                .toList();
        box.getChildren().setAll(byKind(findings).stream().map(this::together).toList());
        List<Node> sums = sums(step.step().id());
        if (!sums.isEmpty()) {
            box.getChildren().add(Build.column("finding-sums", sums.toArray(Node[]::new)));
        }
        Build.present(box, !box.getChildren().isEmpty());
    }

    /** A way to the sum behind each number that this step works out; none while a reading is hidden, for it may be in the sum. */
    private List<Node> sums(String step) {
        List<Node> buttons = new ArrayList<>();
        Figures figures = desk.state().figures();
        if (desk.hidden().stream().anyMatch(field -> !figures.history(field).isEmpty())) {
            return buttons;
        }
        for (Sum sum : StepSums.at(step, figures)) {
            String text = words.of("window.sum.of", words.of(sum.what()));
            buttons.add(SumText.button(words, Ids.sum(step) + "-" + buttons.size(), text, () -> Optional.of(sum)));
        }
        return buttons;
    }

    /** Findings of a kind that follow each other, as one says its word but once. */
    private static List<List<Step.Finding>> byKind(List<Step.Finding> findings) {
        List<List<Step.Finding>> rows = new ArrayList<>();
        for (Step.Finding finding : findings) {
            if (rows.isEmpty() || rows.get(rows.size() - 1).get(0).kind() != finding.kind()) {
                rows.add(new ArrayList<>());
            }
            rows.get(rows.size() - 1).add(finding);
        }
        return rows;
    }

    private Node together(List<Step.Finding> findings) {
        String kind = findings.get(0).kind().name().toLowerCase(Locale.ROOT);
        Icon icon = switch (findings.get(0).kind()) {
            case SAYS -> Icon.NOTE;
            case WARNS -> Icon.AGAIN;
            case BLOCKS, STOPS -> Icon.CROSS;
        };
        VBox text = Build.column("finding-text", Build.label(words.of("window.finding." + kind), "finding-word"));
        findings.forEach(finding -> text.getChildren().add(message(finding)));
        HBox.setHgrow(text, Priority.ALWAYS);
        HBox row = Build.row("finding", icon.draw(20), text);
        row.getStyleClass().add("finding-" + kind);
        return row;
    }

    private Node message(Step.Finding finding) {
        VBox message = Build.column("finding-line", Build.prose(words.of(finding.message()), "finding-message"));
        if (!finding.backTo().isEmpty()) {
            String title = words.of("step." + finding.backTo() + ".title");
            message.getChildren()
                    .add(Build.button(
                            "back-to-" + finding.backTo().replace('.', '-'),
                            words.of("window.finding.back-to", title),
                            () -> desk.look(finding.backTo()),
                            "link"));
        }
        return message;
    }
}
