package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.io.IOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.css.CssParser;
import javafx.css.Selector;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.MenuButton;
import javafx.stage.PopupWindow;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.procedure.Procedure;

/** The theme is shipped without the rules for controls that this program has not. Nothing is left out that would show. */
class ThemeTest {
    @TempDir
    Path folder;

    private final Set<String> seen = new HashSet<>();
    private final Set<String> missed = new TreeSet<>();

    @Test
    void noRuleThatWasLeftOutIsForAnythingInTheWindow() throws Exception {
        List<Selector> leftOut = leftOut(new PrimerLight().getUserAgentStylesheet(), "theme-light");
        assertTrue(leftOut.size() > 500, "only " + leftOut.size() + " rules left out");
        Files.createDirectories(folder.resolve("jobs"));
        try (Opened window = Opened.in(folder)) {
            see(window, leftOut);
            window.press("shelf");
            see(window, leftOut);
            List<Moment> moments = Moments.of("sound-board");
            // The states of a step are made of the same kinds of node.
            for (int i = 0; i < moments.size(); i += 5) {
                window.show(moments.get(i), Procedure.builtIn());
                see(window, leftOut);
            }
        }
        assertEquals(Set.of(), missed);
        assertTrue(seen.size() > 300, "only " + seen.size() + " kinds of node seen");
    }

    @Test
    void lightAndDarkHaveTheSameRules() throws IOException {
        List<Selector> light = leftOut(new PrimerLight().getUserAgentStylesheet(), "theme-light");
        List<Selector> dark = leftOut(new PrimerDark().getUserAgentStylesheet(), "theme-dark");
        assertEquals(texts(light), texts(dark));
    }

    private static Set<String> texts(List<Selector> selectors) {
        return selectors.stream().map(Selector::toString).collect(Collectors.toSet());
    }

    private static List<Selector> leftOut(String whole, String ours) throws IOException {
        Set<String> kept = texts(selectors(ThemeTest.class.getResource("/railtrim/style/" + ours + ".css")));
        return List.copyOf(
                selectors(ThemeTest.class.getResource("/" + whole.replaceFirst(".*(?=atlantafx/)", ""))).stream()
                        .filter(selector -> !kept.contains(selector.toString()))
                        .collect(Collectors.toMap(Selector::toString, Function.identity(), (one, same) -> one))
                        .values());
    }

    private static List<Selector> selectors(URL sheet) throws IOException {
        List<Selector> selectors = new ArrayList<>();
        new CssParser().parse(sheet).getRules().forEach(rule -> selectors.addAll(rule.getSelectors()));
        return selectors;
    }

    /** Each kind of node once, with all it lies in; what opens over the page as well. */
    private void see(Opened window, List<Selector> leftOut) throws Exception {
        window.layOut();
        window.fx(() -> {
            Scene scene = window.shell.scene();
            see(scene.getRoot(), "", leftOut);
            List<Node> opening = new ArrayList<>();
            collect(scene.getRoot(), opening);
            for (Node control : opening) {
                if (control instanceof MenuButton menu) {
                    menu.show();
                } else if (control instanceof ComboBoxBase<?> box) {
                    box.show();
                }
                List<Window> open = List.copyOf(Window.getWindows());
                for (Window popup : open) {
                    if (popup instanceof PopupWindow) {
                        popup.getScene().getRoot().applyCss();
                        see(popup.getScene().getRoot(), "popup", leftOut);
                        popup.hide();
                    }
                }
            }
            return null;
        });
    }

    private static void collect(Node node, List<Node> opening) {
        if ((node instanceof MenuButton || node instanceof ComboBoxBase<?>) && !node.isDisabled()) {
            opening.add(node);
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, opening));
        }
    }

    private void see(Node node, String above, List<Selector> leftOut) {
        String kind = above + " > " + node.getTypeSelector() + node.getStyleClass();
        if (seen.add(kind)) {
            leftOut.stream()
                    .filter(selector -> selector.applies(node))
                    .forEach(selector -> missed.add(selector + " for " + kind));
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> see(child, kind, leftOut));
        }
    }
}
