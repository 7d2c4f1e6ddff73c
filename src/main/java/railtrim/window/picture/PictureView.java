package railtrim.window.picture;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;
import javafx.scene.transform.Scale;

/** Shows a drawing, as large as its space allows, and draws it anew when the shape of that space changes. */
final class PictureView extends Region {
    /** The smallest sheet a drawing is asked to fill. */
    static final double LEAST_WIDTH = 320;

    static final double LEAST_HEIGHT = 340;
    /** The largest; what is left over stays empty around it. */
    static final double MOST_WIDTH = 420;

    static final double MOST_HEIGHT = 480;

    private static final double MOST_SCALE = 1.8;

    private final Drawing drawing;
    private final Group group = new Group();
    private final Scale scale = new Scale(1, 1);
    /** Never seen: takes on the family of the window's font. */
    private final Text sample = new Text();

    private FontRuler ruler;
    private double sheetWidth;
    private double sheetHeight;

    PictureView(Drawing drawing) {
        this.drawing = drawing;
        getStyleClass().add("picture");
        getStylesheets()
                .add(PictureView.class
                        .getResource("/railtrim/style/pictures.css")
                        .toExternalForm());
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(drawing.says());
        setMinSize(260, 260);
        setPrefSize(340, 420);
        setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        group.setManaged(false);
        group.setAutoSizeChildren(false);
        group.setMouseTransparent(true);
        group.getTransforms().add(scale);
        sample.setManaged(false);
        sample.setVisible(false);
        getChildren().addAll(group, sample);
    }

    @Override
    protected void layoutChildren() {
        double room = Math.min(getWidth() / LEAST_WIDTH, getHeight() / LEAST_HEIGHT);
        if (room <= 0) {
            return;
        }
        double factor = Math.min(room, MOST_SCALE);
        double wide = Math.min(MOST_WIDTH, Math.floor(getWidth() / factor));
        double high = Math.min(MOST_HEIGHT, Math.floor(getHeight() / factor));
        draw(Math.max(LEAST_WIDTH, wide), Math.max(LEAST_HEIGHT, high));
        scale.setX(factor);
        scale.setY(factor);
        group.setLayoutX(snapPositionX((getWidth() - sheetWidth * factor) / 2));
        group.setLayoutY(snapPositionY((getHeight() - sheetHeight * factor) / 2));
    }

    private void draw(double wide, double high) {
        String family = sample.getFont().getFamily();
        boolean sameFont = ruler != null && ruler.family().equals(family);
        if (sameFont && wide == sheetWidth && high == sheetHeight) {
            return;
        }
        if (!sameFont) {
            ruler = new FontRuler(family);
        }
        sheetWidth = wide;
        sheetHeight = high;
        Sheet sheet = new Sheet(wide, high, ruler);
        drawing.drawOn(sheet);
        List<Node> nodes = sheet.marks().stream().map(this::node).toList();
        group.getChildren().setAll(nodes);
    }

    private Node node(Mark mark) {
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
        text.setFont(ruler.font(writing.type()));
        text.setTextOrigin(VPos.CENTER);
        text.setX(writing.left());
        text.setY(writing.y());
        return text;
    }
}
