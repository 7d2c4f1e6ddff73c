package railtrim.window;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import javafx.geometry.Bounds;
import javafx.geometry.Insets;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;

/** What lies under what, told from the colours that the style sheets came out at, in the order in which it is painted. */
final class Painted {
    private record Layer(Node node, Insets insets, Color colour, double opacity, Bounds inScene) {
        /** What a node lies in is below it even where that is scrolled out of sight; what scrolls lies over nothing but its own. */
        boolean under(Node other, Point2D at) {
            Node scrolled = null;
            for (Node each = other; each != null; each = each.getParent()) {
                if (each == node) {
                    return true;
                }
                scrolled = scrolled == null && each instanceof ScrollPane ? each : scrolled;
            }
            return inScene.contains(at) && (scrolled == null || within(scrolled)) && covers(at);
        }

        private boolean within(Node whole) {
            for (Node each = node; each != null; each = each.getParent()) {
                if (each == whole) {
                    return true;
                }
            }
            return false;
        }

        private boolean covers(Point2D point) {
            Point2D at = node.sceneToLocal(point);
            if (node instanceof Shape shape) {
                return shape.contains(at);
            }
            Bounds whole = node.getLayoutBounds();
            return at.getX() >= whole.getMinX() + insets.getLeft()
                    && at.getX() <= whole.getMaxX() - insets.getRight()
                    && at.getY() >= whole.getMinY() + insets.getTop()
                    && at.getY() <= whole.getMaxY() - insets.getBottom();
        }
    }

    private final List<Layer> layers = new ArrayList<>();
    private final BiConsumer<Node, Painted> look;

    private Painted(BiConsumer<Node, Painted> look) {
        this.look = look;
    }

    /** @param look called with each visible node, when all below it is painted and it is not */
    static void walk(Node root, BiConsumer<Node, Painted> look) {
        new Painted(look).paint(root, 1);
    }

    private void paint(Node node, double above) {
        if (!node.isVisible()) {
            return;
        }
        double opacity = above * node.getOpacity();
        look.accept(node, this);
        if (node instanceof Region region && region.getBackground() != null) {
            for (BackgroundFill fill : region.getBackground().getFills()) {
                add(node, fill.getInsets(), fill.getFill(), opacity);
            }
        } else if (node instanceof Shape shape && !(node instanceof Text)) {
            add(node, Insets.EMPTY, shape.getFill(), opacity);
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> paint(child, opacity));
        }
    }

    private void add(Node node, Insets insets, Object paint, double opacity) {
        if (paint instanceof Color colour && colour.getOpacity() * opacity > 0) {
            layers.add(new Layer(node, insets, colour, opacity, node.localToScene(node.getLayoutBounds())));
        }
    }

    /** The colour at a point of the scene, of what is painted so far below a node. */
    Color under(Node node, Point2D point) {
        Color seen = Color.WHITE;
        for (Layer layer : layers) {
            if (layer.under(node, point)) {
                seen = over(layer.colour(), layer.opacity(), seen);
            }
        }
        return seen;
    }

    static Color over(Color colour, double opacity, Color below) {
        double share = colour.getOpacity() * opacity;
        return new Color(
                colour.getRed() * share + below.getRed() * (1 - share),
                colour.getGreen() * share + below.getGreen() * (1 - share),
                colour.getBlue() * share + below.getBlue() * (1 - share),
                1);
    }

    static double opacity(Node node) {
        double opacity = 1;
        for (Node each = node; each != null; each = each.getParent()) {
            opacity *= each.getOpacity();
        }
        return opacity;
    }

    static Point2D middle(Node node) {
        Bounds at = node.localToScene(node.getLayoutBounds());
        return new Point2D(at.getCenterX(), at.getCenterY());
    }

    /** WCAG 2.1, "contrast ratio": 1 to 21. */
    static double contrast(Color one, Color other) {
        double light = Math.max(luminance(one), luminance(other));
        double dark = Math.min(luminance(one), luminance(other));
        return (light + 0.05) / (dark + 0.05);
    }

    /** WCAG 2.1, "relative luminance". */
    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double channel) {
        return channel <= 0.03928 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }
}
