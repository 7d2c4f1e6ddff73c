package railtrim.window;

import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.application.Application;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.skin.ButtonSkin;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import railtrim.job.OwnFolder;
import railtrim.job.RecentJobs;
import railtrim.procedure.Words;

/**
 * While the toolkit comes up on one processor, another one makes the start page, with all that it needs and that is not bound to the window’s thread:
 * words, fonts, controls. Reading the style sheets here as well was tried: the toolkit reads them once more, and nothing was gained.
 */
final class HeadStart {
    /** Whether the theme has a name, so that controls can be made. */
    private static final CompletableFuture<Boolean> NAMED = new CompletableFuture<>();

    private static final CompletableFuture<Optional<StartPage>> PAGE = new CompletableFuture<>();

    private HeadStart() {}

    static void begin() {
        Thread thread = new Thread(HeadStart::run, "head start");
        thread.setDaemon(true);
        thread.start();
    }

    /**
     * The first control that is made asks for the name of the theme, and would have the toolkit read another one if there were none. As long as the
     * toolkit is not running only the name is kept; {@link Theme} has it read. While the toolkit comes up naming would wait for it, so it is done
     * on the thread that starts it, right before.
     */
    static void nameTheme() {
        try {
            Application.setUserAgentStylesheet(Theme.sheet("theme-light"));
        } catch (IllegalStateException notYetRunning) {
            // As meant.
        } finally {
            NAMED.complete(Application.getUserAgentStylesheet() != null);
        }
    }

    /** The page, once it is made; empty where that could not be, and then it has to be made anew. */
    static Optional<StartPage> page() {
        return PAGE.join();
    }

    /** Nodes that are in no window may be made on any thread. */
    static void run() {
        try {
            Words words = words();
            if (NAMED.join()) {
                measure(words.of("window.start.promise"));
                PAGE.complete(Optional.of(page(words)));
                styles();
            }
        } finally {
            PAGE.complete(Optional.empty());
        }
    }

    /** With numbers as they are written where the person is. */
    static Words words() {
        return Words.english().numbersOf(Locale.getDefault(Locale.Category.FORMAT));
    }

    private static void measure(String sentence) {
        Text text = new Text(sentence);
        text.getLayoutBounds();
        text.setFont(Font.font(
                text.getFont().getFamily(), FontWeight.BOLD, text.getFont().getSize()));
        text.getLayoutBounds();
    }

    private static StartPage page(Words words) {
        StartPage page = new StartPage(words, new RecentJobs(OwnFolder.path()).files());
        dress(page.node());
        return page;
    }

    /** What the toolkit would give each button when it is styled first. */
    private static void dress(Parent parent) {
        parent.getChildrenUnmodifiable().forEach(child -> {
            if (child instanceof Button button) {
                button.setSkin(new ButtonSkin(button));
            } else if (child instanceof Parent more) {
                dress(more);
            }
        });
    }

    private static void styles() {
        Button.getClassCssMetaData();
        VBox.getClassCssMetaData();
        HBox.getClassCssMetaData();
        FlowPane.getClassCssMetaData();
        SVGPath.getClassCssMetaData();
        Text.getClassCssMetaData();
        TextFlow.getClassCssMetaData();
    }
}
