package railtrim.window;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import railtrim.procedure.Field;
import railtrim.procedure.Labels;
import railtrim.procedure.Sum;
import railtrim.procedure.Verdict;
import railtrim.procedure.Words;
import railtrim.quantity.Message;
import railtrim.quantity.Unit;
import railtrim.window.help.HelpText;
import railtrim.window.help.SumText;
import railtrim.window.kit.Bubble;
import railtrim.window.kit.Build;
import railtrim.window.kit.Icon;

/** What surrounds every entry: label, what to expect, how to measure it, the entry, the read-back, and the verdict under it. */
final class FieldFrame {
    private final Words words;
    private final Label label;
    private final Label how = Build.prose("", "help");
    private final Label expected = Build.prose("", "expect");
    private final Label because = Build.prose("", "expect-because");
    private final Label proposed = Build.prose("", "proposed");
    private final Label readBack = Build.prose("", "read-back");
    private final VBox verdict = Build.column("verdicts");
    private final Button showSum;
    private final Button sure;
    /** In reading order; on the page are those that have something to say, once the frame has its place there. */
    private final List<Node> parts;

    private final VBox box = Build.column("field");
    private Optional<Sum> sum = Optional.empty();

    FieldFrame(Words words, Field of, Node entry, Node named, Runnable saySure) {
        this.words = words;
        String field = of.id();
        label = Build.prose(Labels.of(words, field), "field-label");
        label.setLabelFor(named);
        sure = Build.button(Ids.sure(field), words.of(sureKey(of)), saySure, "plain");
        sure.setAccessibleText(sure.getText() + ": " + Labels.of(words, field));
        showSum = SumText.button(words, Ids.sum(field), words.of("window.sum"), () -> sum);
        showSum.setAccessibleText(words.of("window.sum.of", Labels.of(words, field)));
        how.setText(Labels.help(words, field).orElse(""));
        Node head = Build.row("field-head", label, help(field));
        parts = List.of(head, how, expected, because, showSum, proposed, entry, readBack, verdict, sure);
        parts.forEach(part -> Build.present(part, part == head || part == entry));
    }

    private static String sureKey(Field field) {
        boolean written = field instanceof Field.Number number && !number.measured();
        return written ? "window.sure.written" : "window.sure";
    }

    private Button help(String field) {
        Button help = Build.button(Ids.help(field), "?", () -> {}, HelpSheet.ASK);
        help.setAccessibleText(words.of("window.help.say", label.getText()));
        help.setTooltip(new Tooltip(words.of("window.help.tip")));
        help.setOnAction(event ->
                Bubble.show(help, label.getText(), new HelpText(words).of(field), words.of("window.sheet.close")));
        return help;
    }

    /** What the job says that was taken over as a plan. It stands beside the entry and is never in it. */
    void proposed(Optional<String> says) {
        proposed.setText(says.orElse(""));
        Build.present(proposed, says.isPresent());
        layAnew();
    }

    /** Not before it is first shown: what is put into a box that has its place on the page is styled once, else once for each box around it. */
    private void layAnew() {
        if (!box.getChildren().isEmpty()) {
            lay();
        }
    }

    private void lay() {
        Build.lay(box, parts.stream().filter(Node::isManaged).toList());
    }

    Node node() {
        return box;
    }

    /** What the entry sounds like to someone who cannot see the lines around it. */
    String spoken() {
        return expected.isVisible() ? label.getText() + ". " + expected.getText() : label.getText();
    }

    void readBack(String text) {
        readBack.setText(text);
        Build.present(readBack, !text.isEmpty());
        layAnew();
    }

    void show(FieldView.Standing standing, Unit unit) {
        Optional<Field.Expected> range = standing.expected();
        expected.setText(
                range.map(each -> FieldWords.expected(words, each, unit)).orElse(""));
        because.setText(range.map(each -> words.of(each.because())).orElse(""));
        Build.present(expected, range.isPresent());
        Build.present(
                because,
                range.isPresent() && standing.open() && standing.answer().isEmpty());
        Build.present(how, !how.getText().isEmpty() && !standing.familiar());
        sum = standing.sum();
        Build.present(showSum, sum.isPresent());
        box.pseudoClassStateChanged(javafx.css.PseudoClass.getPseudoClass("locked"), !standing.open());
        box.pseudoClassStateChanged(
                javafx.css.PseudoClass.getPseudoClass("answered"),
                standing.answer().isPresent());
        showVerdict(standing.verdict());
        lay();
    }

    private void showVerdict(Optional<Verdict> said) {
        verdict.getChildren().clear();
        said.ifPresent(each -> {
            if (each instanceof Verdict.Accept accept) {
                lines(accept.says(), Icon.TICK, "verdict-good");
            } else if (each instanceof Verdict.AskAgain again) {
                lines(again.says(), Icon.AGAIN, "verdict-odd");
            } else if (each instanceof Verdict.Refuse refuse) {
                lines(refuse.says(), Icon.CROSS, "verdict-bad");
            }
        });
        Build.present(verdict, !verdict.getChildren().isEmpty());
        Build.present(sure, said.filter(Verdict.AskAgain.class::isInstance).isPresent());
    }

    private void lines(List<Message> says, Icon icon, String styleClass) {
        for (Message message : says) {
            HBox line = Build.row("verdict", icon.draw(16, styleClass), Build.prose(words.of(message), styleClass));
            verdict.getChildren().add(line);
        }
    }
}
