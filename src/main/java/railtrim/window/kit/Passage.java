package railtrim.window.kit;

import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/** Words that only stand there and break where they must, without the machinery of a label. */
public final class Passage extends TextFlow {
    /** @param classes of the passage; the colour is that of its text, of class {@code passage} */
    public Passage(String words, String... classes) {
        super(text(words, "passage"));
        getStyleClass().addAll(classes);
        setMinHeight(USE_PREF_SIZE);
    }

    /** A paragraph of its own below those before. */
    Passage then(String words, String styleClass) {
        getChildren().add(text("\n" + words, "passage", styleClass));
        return this;
    }

    private static Text text(String words, String... classes) {
        Text text = new Text(Together.of(words));
        text.getStyleClass().addAll(classes);
        return text;
    }
}
