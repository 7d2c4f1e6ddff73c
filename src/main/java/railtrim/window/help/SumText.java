package railtrim.window.help;

import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import railtrim.procedure.Sum;
import railtrim.procedure.Words;
import railtrim.window.kit.Bubble;
import railtrim.window.kit.Build;

/** A sum as it is written on paper: the formula, the numbers put in, the result, and where each number is from. */
public final class SumText {
    private static final Pattern NUMBER = Pattern.compile("\\d+\\.\\d+");

    private SumText() {}

    /** A way to a sum. @param now the sum as it stands when the button is pressed */
    public static Button button(Words words, String id, String text, Supplier<Optional<Sum>> now) {
        Button button = Build.button(id, text, () -> {}, "link", "sum-link");
        button.setMinWidth(0);
        button.setOnAction(event -> now.get()
                .ifPresent(sum -> Bubble.show(
                        button,
                        words.of("window.sum.title", words.of(sum.what())),
                        of(words, sum),
                        words.of("window.sheet.close"))));
        return button;
    }

    /** Each number of a formula as the reader's country writes it. */
    private static String numbers(Words words, String formula) {
        return NUMBER.matcher(formula).replaceAll(number -> words.number(number.group()));
    }

    static Node of(Words words, Sum sum) {
        VBox box = Build.column("help-text");
        for (Sum.Line line : sum.lines()) {
            VBox lines = Build.column(
                    "sum-lines",
                    Build.prose(line.symbol() + " = " + numbers(words, line.formula()), "sum-line"),
                    Build.prose("  = " + numbers(words, line.putIn()), "sum-line"));
            if (!line.putIn().equals(line.result())) {
                lines.getChildren().add(Build.prose("  = " + numbers(words, line.result()), "sum-line", "sum-result"));
            }
            box.getChildren().add(lines);
        }
        VBox given = Build.column("help-part", Build.label(words.of("window.sum.given"), "help-heading"));
        sum.given()
                .forEach(each -> given.getChildren()
                        .add(Build.prose(
                                words.of("window.sum.given.line", each.symbol(), each.value(), words.of(each.says())),
                                "help-words")));
        VBox sources = Build.column("help-part", Build.label(words.of("window.sum.source"), "help-heading"));
        sum.sources().forEach(each -> sources.getChildren().add(Build.prose(words.of(each), "help-words")));
        box.getChildren().addAll(given, sources);
        return box;
    }
}
