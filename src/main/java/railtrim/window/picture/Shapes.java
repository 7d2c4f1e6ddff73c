package railtrim.window.picture;

import javafx.geometry.VPos;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;

/** Marks on a sheet as shapes on the screen, each with the style class of its ink. */
record Shapes(FontRuler ruler) {
    Shape of(Mark mark) {
        Shape shape = shape(mark);
        shape.getStyleClass().addAll("ink", mark.ink().styleClass());
        return shape;
    }

    private Shape shape(Mark mark) {
        if (mark instanceof Mark.Line line) {
            return new Line(line.x1(), line.y1(), line.x2(), line.y2());
        }
        if (mark instanceof Mark.Box box) {
            Rectangle rectangle = new Rectangle(box.x(), box.y(), box.width(), box.height());
            rectangle.setArcWidth(2 * box.round());
            rectangle.setArcHeight(2 * box.round());
            return rectangle;
        }
        if (mark instanceof Mark.Disc disc) {
            return new Circle(disc.x(), disc.y(), disc.radius());
        }
        if (mark instanceof Mark.Strokes strokes) {
            return strokes(strokes);
        }
        return writing((Mark.Writing) mark);
    }

    private static Shape strokes(Mark.Strokes strokes) {
        if (strokes.closed()) {
            Polygon polygon = new Polygon();
            polygon.getPoints().setAll(strokes.points());
            return polygon;
        }
        Polyline polyline = new Polyline();
        polyline.getPoints().setAll(strokes.points());
        return polyline;
    }

    private Text writing(Mark.Writing writing) {
        Text text = new Text(writing.text());
        text.setFont(ruler.font(writing.type(), writing.part()));
        text.setTextOrigin(VPos.CENTER);
        text.setX(writing.left());
        text.setY(writing.y());
        return text;
    }
}
