package railtrim.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.text.Text;
import railtrim.procedure.Procedure;
import railtrim.procedure.Words;

/** Finds writing in a window that is cut short, leaves its place, or lies on other writing. */
final class WindowFit {
    /** Line boxes are taller than the letters in them: this much of two boxes may meet without letters touching. */
    private static final double SLACK = 3;

    /** A line of writing, and the part of the window it can be seen in. */
    private record Line(Text text, Bounds at, Bounds seenIn, boolean scrolls) {}

    private final String where;
    private final List<String> found = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();

    private WindowFit(String where) {
        this.where = where;
    }

    /** What is found on pages in a window of that size, its text so many pixels high. */
    static List<String> problems(Words words, Path folder, List<Moment> pages, int width, int height, int text)
            throws TimeoutException {
        List<String> found = new ArrayList<>();
        Procedure procedure = Procedure.builtIn();
        try (Opened window = Opened.with(words, folder)) {
            window.size(width, height, text);
            for (Moment page : pages) {
                window.show(page, procedure);
                found.addAll(window.fx(() -> problems(page.name(), window.shell.scene())));
            }
        }
        return found;
    }

    static List<String> problems(String where, Scene scene) {
        WindowFit fit = new WindowFit(where);
        fit.look(scene.getRoot(), new BoundingBox(0, 0, scene.getWidth(), scene.getHeight()), false);
        fit.compare();
        return fit.found;
    }

    private void look(Node node, Bounds seenIn, boolean scrolls) {
        if (!node.isVisible() || node instanceof ScrollBar) {
            return;
        }
        if (node instanceof Labeled labeled) {
            cutShort(labeled);
        }
        if (node instanceof Text text && !text.getText().isBlank()) {
            line(new Line(text, text.localToScene(text.getBoundsInLocal()), seenIn, scrolls));
        } else if (node instanceof ScrollPane pane) {
            Bounds view = pane.localToScene(pane.getLayoutBounds());
            pane.lookupAll(".viewport").stream()
                    .filter(each -> each.getParent() == pane)
                    .forEach(each -> look(each, meet(seenIn, view), true));
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> look(child, seenIn, scrolls));
        }
    }

    /** The skin writes an ellipsis into the text it shows where the whole does not fit. */
    private void cutShort(Labeled labeled) {
        Optional<Text> shown = labeled.getChildrenUnmodifiable().stream()
                .filter(Text.class::isInstance)
                .map(Text.class::cast)
                .findFirst();
        String whole = labeled.isMnemonicParsing() ? labeled.getText().replace("_", "") : labeled.getText();
        shown.filter(text ->
                        whole != null && !whole.isBlank() && !text.getText().equals(whole))
                .ifPresent(text -> found.add(where + ": “" + whole + "” is cut to “" + text.getText() + "”"));
    }

    private void line(Line line) {
        boolean sideways = line.at().getMinX() < line.seenIn().getMinX() - 1
                || line.at().getMaxX() > line.seenIn().getMaxX() + 1;
        boolean upright = line.at().getMinY() < line.seenIn().getMinY() - SLACK
                || line.at().getMaxY() > line.seenIn().getMaxY() + SLACK;
        if (sideways || upright && !line.scrolls()) {
            found.add(where + ": “" + line.text().getText() + "” leaves its place");
        }
        lines.add(line);
    }

    private void compare() {
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                Bounds one = meet(lines.get(i).at(), lines.get(i).seenIn());
                Bounds two = meet(lines.get(j).at(), lines.get(j).seenIn());
                Bounds both = meet(one, two);
                if (both.getWidth() > 1 && both.getHeight() > SLACK) {
                    found.add(where + ": “" + lines.get(i).text().getText() + "” lies on “"
                            + lines.get(j).text().getText() + "”");
                }
            }
        }
    }

    private static Bounds meet(Bounds one, Bounds two) {
        double left = Math.max(one.getMinX(), two.getMinX());
        double top = Math.max(one.getMinY(), two.getMinY());
        double right = Math.min(one.getMaxX(), two.getMaxX());
        double bottom = Math.min(one.getMaxY(), two.getMaxY());
        return new BoundingBox(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
    }
}
