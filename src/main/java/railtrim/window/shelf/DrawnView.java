package railtrim.window.shelf;

import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import javafx.scene.transform.Scale;
import railtrim.report.Checklist.Block;
import railtrim.report.Drawing;
import railtrim.report.Drawing.Shape;

/** A drawing of the report in the window, as wide as there is room; its meaning in words is its spoken text. */
final class DrawnView extends Region {
    /** Height of the letters in units of the drawing, as in the printed report. */
    private static final double LETTERS = 12.5;

    private static final double DOT = 4;
    /** Its letters grow so far beyond those around it, and no further. */
    private static final double MOST = 1.1;

    private final Drawing drawing;
    private final Group group = new Group();
    private final Scale scale = new Scale(1, 1);
    /** Shows nothing, and has the size of the letters around it. */
    private final Text around = new Text();

    DrawnView(Block.Picture picture) {
        this.drawing = picture.drawing();
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(picture.inWords());
        getStyleClass().add("drawn");
        group.setManaged(false);
        group.getTransforms().add(scale);
        drawing.shapes().forEach(shape -> group.getChildren().add(node(shape, drawing.width())));
        around.setManaged(false);
        getChildren().addAll(group, around);
    }

    @Override
    protected double computePrefWidth(double height) {
        return drawing.width();
    }

    @Override
    protected double computePrefHeight(double width) {
        return drawing.height() * (width > 0 ? factor(width) : 1);
    }

    @Override
    public javafx.geometry.Orientation getContentBias() {
        return javafx.geometry.Orientation.HORIZONTAL;
    }

    @Override
    protected void layoutChildren() {
        scale.setX(factor(getWidth()));
        scale.setY(factor(getWidth()));
    }

    private double factor(double width) {
        return Math.min(MOST * around.getFont().getSize() / LETTERS, width / drawing.width());
    }

    private static Node node(Shape shape, double room) {
        if (shape instanceof Shape.Line line) {
            Line drawn = new Line(line.x1(), line.y1(), line.x2(), line.y2());
            drawn.getStyleClass().addAll("drawn-line", "drawn-" + line.style());
            return drawn;
        } else if (shape instanceof Shape.Box box) {
            Rectangle drawn = new Rectangle(box.x(), box.y(), box.width(), box.height());
            drawn.getStyleClass().add("drawn-box");
            return drawn;
        } else if (shape instanceof Shape.Dot dot) {
            Circle drawn = new Circle(dot.x(), dot.y(), DOT);
            drawn.getStyleClass().add("drawn-dot");
            return drawn;
        }
        return letters((Shape.Label) shape, room);
    }

    private static Node letters(Shape.Label label, double room) {
        Text text = new Text(label.text());
        text.setFont(Font.font(LETTERS));
        text.setTextOrigin(VPos.BASELINE);
        if (text.getLayoutBounds().getWidth() > room) {
            // Longer than the drawing is wide, as some languages have it.
            text.setWrappingWidth(room);
            text.setTextAlignment(TextAlignment.CENTER);
            text.setX(0);
            text.setY(label.y());
            text.getStyleClass().add("drawn-text");
            return text;
        }
        double width = text.getLayoutBounds().getWidth();
        text.setX(label.x()
                - switch (label.anchor()) {
                    case "middle" -> width / 2;
                    case "end" -> width;
                    default -> 0;
                });
        text.setY(label.y());
        text.getStyleClass().add("drawn-text");
        return text;
    }
}
