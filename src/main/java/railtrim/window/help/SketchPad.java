package railtrim.window.help;

import java.util.List;
import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.CubicCurve;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.SVGPath;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import javafx.scene.transform.Scale;

/** A small sheet of 260 × 124 on which a help drawing is made; its colours come from the style sheet, its size from the text. */
final class SketchPad {
    static final double WIDTH = 260;
    static final double HEIGHT = 124;

    private static final double USUAL_TEXT = 14;

    private final Group group = new Group();

    /** @param says what the drawing shows, for people who do not see it */
    Node node(String says) {
        StackPane pane = new StackPane();
        pane.getStyleClass().add("sketch");
        pane.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        pane.setAccessibleText(says);
        String size = String.format(
                Locale.ROOT,
                "-fx-min-width: %1$.2fem; -fx-pref-width: %1$.2fem; -fx-max-width: %1$.2fem;"
                        + " -fx-min-height: %2$.2fem; -fx-pref-height: %2$.2fem; -fx-max-height: %2$.2fem;",
                WIDTH / USUAL_TEXT,
                HEIGHT / USUAL_TEXT);
        pane.setStyle(size);
        Scale scale = new Scale();
        scale.xProperty().bind(pane.widthProperty().divide(WIDTH));
        scale.yProperty().bind(pane.heightProperty().divide(HEIGHT));
        group.setManaged(false);
        group.setAutoSizeChildren(false);
        group.setMouseTransparent(true);
        group.getTransforms().setAll(scale);
        pane.getChildren().setAll(group);
        return pane;
    }

    void line(double x1, double y1, double x2, double y2, String kind) {
        add(new Line(x1, y1, x2, y2), kind);
    }

    void box(double x, double y, double width, double height, double round, String kind) {
        Rectangle box = new Rectangle(x, y, width, height);
        box.setArcWidth(2 * round);
        box.setArcHeight(2 * round);
        add(box, kind);
    }

    void disc(double x, double y, double radius, String kind) {
        add(new Circle(x, y, radius), kind);
    }

    void path(String path, String kind) {
        SVGPath shape = new SVGPath();
        shape.setContent(path);
        add(shape, kind);
    }

    void write(String text, double x, double y, String kind) {
        Text words = new Text(text);
        words.setTextOrigin(VPos.CENTER);
        words.setTextAlignment(TextAlignment.CENTER);
        add(words, kind);
        words.layoutBoundsProperty()
                .addListener(
                        (of, was, is) -> words.setX(x - words.getLayoutBounds().getWidth() / 2));
        words.setX(x - words.getLayoutBounds().getWidth() / 2);
        words.setY(y);
    }

    /** A lead from a socket of the meter to a point, with a sign at its tip so that the two are told apart without colour. */
    void lead(double fromX, double fromY, double toX, double toY, boolean red) {
        double back = fromX < toX ? -1 : 1;
        double holdX = toX + back * 30;
        double holdY = toY + 9;
        String kind = red ? "sk-red" : "sk-black";
        for (String layer : List.of("sk-lead-edge", kind)) {
            add(new CubicCurve(fromX, fromY, fromX + 40, fromY + 26, holdX - 34, holdY + 12, holdX, holdY), layer);
        }
        add(new Line(holdX, holdY, toX + back * 9, toY + 2.7), kind + "-grip");
        line(toX + back * 9, toY + 2.7, toX, toY, "sk-tip");
        disc(holdX, holdY, 7.5, kind + "-disc");
        write(red ? "+" : "−", holdX, holdY - 0.5, kind + "-sign");
    }

    private void add(Shape shape, String kind) {
        shape.getStyleClass().add(kind);
        group.getChildren().add(shape);
    }
}
