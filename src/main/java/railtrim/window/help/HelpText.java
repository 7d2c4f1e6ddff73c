package railtrim.window.help;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import railtrim.procedure.Glossary;
import railtrim.procedure.Help;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;

/** Help about one field: a drawing, what it is, how to measure it, what a wrong answer means, and the words of the trade in it. */
public final class HelpText {
    private final Words words;
    private final Glossary glossary;

    public HelpText(Words words) {
        this.words = words;
        this.glossary = new Glossary(words);
    }

    public Node of(String field) {
        Help help = Help.of(words, glossary, field);
        VBox box = Build.column("help-text");
        Sketch.of(help.topic()).ifPresent(sketch -> box.getChildren().add(sketch.draw(words)));
        part(box, "window.help.what", Optional.of(help.what()));
        part(box, "window.help.how", help.how());
        part(box, "window.help.wrong", Optional.of(help.wrong()));
        help.terms().forEach(gloss -> box.getChildren().add(term(gloss)));
        return box;
    }

    private void part(VBox box, String title, Optional<String> text) {
        text.ifPresent(each -> box.getChildren()
                .add(Build.column(
                        "help-part", Build.label(words.of(title), "help-heading"), Build.prose(each, "help-words"))));
    }

    static Node term(Glossary.Gloss gloss) {
        return Build.prose(gloss.term() + ": " + gloss.meaning(), "help-term");
    }

    /** Every word of the trade, as a list. */
    public Node glossary() {
        VBox box = Build.column("help-text");
        glossary.all()
                .forEach(gloss -> box.getChildren()
                        .add(Build.column(
                                "help-part",
                                Build.label(gloss.term(), "help-heading"),
                                Build.prose(gloss.meaning(), "help-words"))));
        return box;
    }
}
