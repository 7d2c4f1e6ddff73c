package railtrim.window.picture;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javafx.scene.layout.Background;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;

/** Writes the shapes of a picture as SVG 1.1, with the colours and strokes the style sheets gave them. */
final class Svg {
    private final StringBuilder out = new StringBuilder();

    private Svg() {}

    static String of(PictureView view) {
        Svg svg = new Svg();
        String wide = number(view.sheetWidth());
        String high = number(view.sheetHeight());
        svg.out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\""
                + wide + "\" height=\"" + high + "\" viewBox=\"0 0 " + wide + " " + high + "\" role=\"img\">\n");
        svg.out.append("<title>").append(escaped(view.says())).append("</title>\n");
        svg.out.append("<rect width=\"100%\" height=\"100%\" fill=\"" + colour(paper(view)) + "\"/>\n");
        view.shapes().forEach(svg::shape);
        return svg.out.append("</svg>\n").toString();
    }

    /** The colour behind the picture: that of the nearest region below it that has one. */
    static Color paper(Region view) {
        for (javafx.scene.Node node = view; node != null; node = node.getParent()) {
            if (node instanceof Region region) {
                Background background = region.getBackground();
                if (background != null
                        && !background.getFills().isEmpty()
                        && background.getFills().get(0).getFill() instanceof Color color
                        && color.isOpaque()) {
                    return color;
                }
            }
        }
        return (Color) view.getScene().getFill();
    }

    private void shape(Shape shape) {
        if (shape instanceof Line line) {
            element(
                    "line",
                    shape,
                    place("x1", line.getStartX(), "y1", line.getStartY(), "x2", line.getEndX(), "y2", line.getEndY()));
        } else if (shape instanceof Rectangle box) {
            element(
                    "rect",
                    shape,
                    place(
                            "x",
                            box.getX(),
                            "y",
                            box.getY(),
                            "width",
                            box.getWidth(),
                            "height",
                            box.getHeight(),
                            "rx",
                            box.getArcWidth() / 2));
        } else if (shape instanceof Circle disc) {
            element("circle", shape, place("cx", disc.getCenterX(), "cy", disc.getCenterY(), "r", disc.getRadius()));
        } else if (shape instanceof Polygon polygon) {
            element("polygon", shape, points(polygon.getPoints()));
        } else if (shape instanceof Polyline polyline) {
            element("polyline", shape, points(polyline.getPoints()));
        } else {
            text((Text) shape);
        }
    }

    private void element(String name, Shape shape, String place) {
        out.append('<').append(name).append(place).append(paint("fill", shape.getFill()));
        if (shape.getStroke() != null) {
            out.append(paint("stroke", shape.getStroke()));
            out.append(place("stroke-width", shape.getStrokeWidth()));
            out.append(" stroke-linecap=\"round\" stroke-linejoin=\"round\"");
            if (!shape.getStrokeDashArray().isEmpty()) {
                out.append(" stroke-dasharray=\"" + joined(shape.getStrokeDashArray()) + "\"");
            }
        }
        out.append(shape.getOpacity() < 1 ? place("opacity", shape.getOpacity()) : "")
                .append("/>\n");
    }

    /** Its width is written down, so that in another font it still keeps to its place. */
    private void text(Text text) {
        double baseline = text.getLayoutBounds().getMinY() + text.getBaselineOffset();
        out.append("<text").append(place("x", text.getX(), "y", baseline));
        out.append(place(
                "textLength",
                text.getLayoutBounds().getWidth(),
                "font-size",
                text.getFont().getSize()));
        out.append(" lengthAdjust=\"spacingAndGlyphs\" font-family=\""
                + escaped(text.getFont().getFamily()) + ", sans-serif\"");
        if (text.getFont().getStyle().toLowerCase(Locale.ROOT).contains("bold")) {
            out.append(" font-weight=\"bold\"");
        }
        out.append(paint("fill", text.getFill()))
                .append('>')
                .append(escaped(text.getText()))
                .append("</text>\n");
    }

    private static String points(List<Double> points) {
        return " points=\"" + joined(points) + "\"";
    }

    private static String joined(List<Double> numbers) {
        return numbers.stream().map(Svg::number).collect(Collectors.joining(" "));
    }

    private static String place(Object... namesAndNumbers) {
        StringBuilder place = new StringBuilder();
        for (int i = 0; i < namesAndNumbers.length; i += 2) {
            place.append(' ')
                    .append(namesAndNumbers[i])
                    .append("=\"")
                    .append(number((Double) namesAndNumbers[i + 1]))
                    .append('"');
        }
        return place.toString();
    }

    private static String paint(String name, Paint paint) {
        boolean seen = paint instanceof Color color && color.getOpacity() > 0;
        String opacity =
                seen && !((Color) paint).isOpaque() ? place(name + "-opacity", ((Color) paint).getOpacity()) : "";
        return " " + name + "=\"" + (seen ? colour((Color) paint) : "none") + "\"" + opacity;
    }

    private static String colour(Color color) {
        return String.format("#%02x%02x%02x", part(color.getRed()), part(color.getGreen()), part(color.getBlue()));
    }

    private static int part(double share) {
        return (int) Math.round(share * 255);
    }

    /** To a hundredth of a unit. */
    private static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replaceFirst("\\.?0+$", "");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
