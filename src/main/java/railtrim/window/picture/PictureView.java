package railtrim.window.picture;

import java.util.List;
import java.util.Optional;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;
import javafx.scene.transform.Scale;

/**
 * Shows a drawing, as large as its space allows, and draws it anew when the shape of that space changes. What is pointed at, or reached with
 * the arrow keys, is framed and tells its number.
 */
final class PictureView extends Region {
    /** The smallest sheet a drawing is asked to fill. */
    static final double LEAST_WIDTH = 320;

    static final double LEAST_HEIGHT = 340;
    /** The largest; what is left over stays empty around it. */
    static final double MOST_WIDTH = 420;

    static final double MOST_HEIGHT = 480;

    private static final double MOST_SCALE = 1.8;
    /** Empty space above, pixels: in a high window the picture stays beside what is read. */
    private static final double MOST_ABOVE = 20;

    private static final double FRAME = 3;

    private final Drawing drawing;
    private final Group group = new Group();
    private final Scale scale = new Scale(1, 1);
    /** Never seen: takes on the family of the window's font. */
    private final Text sample = new Text();

    private final Rectangle frame = new Rectangle();
    private final Label note = new Label();
    private final Pointing pointing;

    private FontRuler ruler;
    private List<Detail> details = List.of();
    private double sheetWidth;
    private double sheetHeight;

    PictureView(Drawing drawing, Answering answering) {
        this.drawing = drawing;
        this.pointing = new Pointing(this, answering);
        getStyleClass().add("picture");
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
        frame.getStyleClass().add("picture-frame");
        note.getStyleClass().add("picture-note");
        note.setWrapText(true);
        for (Node over : List.of(frame, note)) {
            over.setManaged(false);
            over.setVisible(false);
            over.setMouseTransparent(true);
        }
        getChildren().addAll(group, sample, frame, note);
    }

    List<Detail> details() {
        return details;
    }

    String says() {
        return drawing.says();
    }

    /** The shapes as they are drawn now, in the order they lie on one another; in units of the sheet. */
    List<Shape> shapes() {
        return group.getChildren().stream().map(Shape.class::cast).toList();
    }

    double sheetWidth() {
        return sheetWidth;
    }

    double sheetHeight() {
        return sheetHeight;
    }

    Optional<Detail> at(double x, double y) {
        Point2D point = group.parentToLocal(x, y);
        return details.stream()
                .filter(detail -> detail.holds(point.getX(), point.getY()))
                .findFirst();
    }

    /** Where a detail lies on this node. */
    Bounds boundsOf(Detail detail) {
        Detail.Area area = detail.first();
        return group.localToParent(new BoundingBox(area.x(), area.y(), area.width(), area.height()));
    }

    /** Frames a detail and writes what it says beside it, or takes both away. */
    void point(Optional<Detail> detail) {
        frame.setVisible(detail.isPresent());
        note.setVisible(detail.isPresent());
        detail.ifPresent(each -> {
            Bounds bounds = boundsOf(each);
            frame.setX(bounds.getMinX() - FRAME);
            frame.setY(bounds.getMinY() - FRAME);
            frame.setWidth(bounds.getWidth() + 2 * FRAME);
            frame.setHeight(bounds.getHeight() + 2 * FRAME);
            note.setText(each.says());
            placeNote(bounds);
        });
        setAccessibleText(detail.map(Detail::says).orElseGet(drawing::says));
        notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
    }

    /** Below what it speaks of, or above it where there is no room below. */
    private void placeNote(Bounds bounds) {
        note.applyCss();
        double wide = Math.min(getWidth(), note.prefWidth(-1));
        double high = note.prefHeight(wide);
        double x = Math.max(0, Math.min(getWidth() - wide, bounds.getCenterX() - wide / 2));
        double below = bounds.getMaxY() + 2 * FRAME;
        double y = below + high <= getHeight() ? below : Math.max(0, bounds.getMinY() - 2 * FRAME - high);
        note.resizeRelocate(snapPositionX(x), snapPositionY(y), wide, high);
    }

    @Override
    protected void layoutChildren() {
        double room = Math.min(getWidth() / LEAST_WIDTH, getHeight() / LEAST_HEIGHT);
        if (room <= 0) {
            return;
        }
        // Letters grow with those around them, and a little beyond where there is room.
        double factor = Math.min(room, Math.max(MOST_SCALE, sample.getFont().getSize() / Type.PLAIN.size()));
        double wide = Math.min(MOST_WIDTH, Math.floor(getWidth() / factor));
        double high = Math.min(MOST_HEIGHT, Math.floor(getHeight() / factor));
        boolean moved = draw(Math.max(LEAST_WIDTH, wide), Math.max(LEAST_HEIGHT, high)) || scale.getX() != factor;
        scale.setX(factor);
        scale.setY(factor);
        group.setLayoutX(snapPositionX((getWidth() - sheetWidth * factor) / 2));
        group.setLayoutY(snapPositionY(Math.min(MOST_ABOVE, (getHeight() - sheetHeight * factor) / 2)));
        if (moved) {
            pointing.drawnAnew();
        }
    }

    /** @return whether it had to be drawn */
    private boolean draw(double wide, double high) {
        String family = sample.getFont().getFamily();
        boolean sameFont = ruler != null && ruler.family().equals(family);
        if (sameFont && wide == sheetWidth && high == sheetHeight) {
            return false;
        }
        if (!sameFont) {
            ruler = new FontRuler(family);
        }
        sheetWidth = wide;
        sheetHeight = high;
        Sheet sheet = new Sheet(wide, high, ruler, drawing.words());
        drawing.drawOn(sheet);
        Shapes shapes = new Shapes(ruler);
        group.getChildren()
                .setAll(sheet.marks().stream()
                        .map(shapes::of)
                        .map(Node.class::cast)
                        .toList());
        // In the middle of a layout nothing else styles them before they are painted: they would be seen in plain black
        // for a frame.
        group.applyCss();
        details = sheet.details();
        setFocusTraversable(!details.isEmpty());
        return true;
    }
}
