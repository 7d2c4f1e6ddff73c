package railtrim.window;

import java.util.List;
import java.util.Locale;
import javafx.application.Application;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.skin.ButtonSkin;
import javafx.scene.control.skin.LabelSkin;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;
import railtrim.window.kit.Icon;
import railtrim.window.kit.SparingScroll;
import railtrim.window.kit.Tile;

/**
 * While the toolkit comes up on one processor, another one goes through what the first page needs and is not bound to the window’s thread: words,
 * fonts, and a control of each kind, made, measured and thrown away. What stays are classes that are loaded and ready. Reading the style sheets here
 * as well was tried: the toolkit reads them once more, and nothing was gained.
 */
final class HeadStart {
    private HeadStart() {}

    static void begin() {
        Thread thread = new Thread(HeadStart::run, "head start");
        thread.setDaemon(true);
        thread.start();
    }

    /** Nodes that are in no window may be made on any thread. */
    static void run() {
        Words words = Words.english().numbersOf(Locale.getDefault(Locale.Category.FORMAT));
        if (controlsCanBeMade()) {
            text(words.of("window.start.promise"));
            controls(words);
            styles();
        }
    }

    /**
     * The first control that is made asks for the name of the theme, and would have the toolkit read another one if there were none. As long as the
     * toolkit is not running only the name is kept; {@link Theme} has it read.
     */
    private static boolean controlsCanBeMade() {
        try {
            Application.setUserAgentStylesheet(Theme.sheet("theme-light"));
        } catch (IllegalStateException notYetRunning) {
            return Application.getUserAgentStylesheet() != null;
        }
        return true;
    }

    private static void text(String sentence) {
        Text text = new Text(sentence);
        text.getLayoutBounds();
        text.setFont(Font.font(
                text.getFont().getFamily(), FontWeight.BOLD, text.getFont().getSize()));
        text.getLayoutBounds();
    }

    private static void controls(Words words) {
        Label label = Build.label(words.of("window.title"), "start-name");
        label.setSkin(new LabelSkin(label));
        Tile tile = new Tile("", words.of("window.new"), words.of("window.new.about"), () -> {}, Icon.MARK.draw(28));
        Button link = Build.button("", words.of("window.glossary"), () -> {}, "link");
        for (Button button : List.of(tile.first().button(), link)) {
            button.setSkin(new ButtonSkin(button));
        }
        VBox column = Build.column("start-begin", label, tile.node(), Build.prose(""), new FlowPane(link));
        Region page = new SparingScroll(Build.row("start", column), "start-scroll");
        page.resize(Shell.WIDTH, Shell.HEIGHT);
        page.layout();
    }

    private static void styles() {
        Label.getClassCssMetaData();
        Button.getClassCssMetaData();
        VBox.getClassCssMetaData();
        HBox.getClassCssMetaData();
        FlowPane.getClassCssMetaData();
        SVGPath.getClassCssMetaData();
        Text.getClassCssMetaData();
    }
}
