package railtrim.packaging;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * Draws {@code resources/icon/railtrim.svg}, which is kept to rectangles, circles and lines on a square of 64, in
 * the sizes that windows and packages ask for.
 */
final class IconDrawing {
    static final List<Integer> SIZES = List.of(16, 32, 48, 64, 128, 256, 512);
    private static final double SQUARE = 64;
    /** Drawn larger and brought down, so that thin lines come out even. */
    private static final int FINER = 4;

    private final NodeList shapes;

    private IconDrawing(NodeList shapes) {
        this.shapes = shapes;
    }

    static String name(int size) {
        return "railtrim-" + size + ".png";
    }

    static IconDrawing of(File svg) throws IOException {
        try {
            return new IconDrawing(DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(svg)
                    .getDocumentElement()
                    .getElementsByTagName("*"));
        } catch (ParserConfigurationException | SAXException e) {
            throw new IOException(svg.toString(), e);
        }
    }

    BufferedImage draw(int size) {
        BufferedImage fine = new BufferedImage(size * FINER, size * FINER, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = fine.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.scale(size * FINER / SQUARE, size * FINER / SQUARE);
        for (int i = 0; i < shapes.getLength(); i++) {
            draw(pen, (Element) shapes.item(i));
        }
        pen.dispose();
        return smaller(fine, size);
    }

    private static void draw(Graphics2D pen, Element element) {
        if (element.getTagName().equals("title")) {
            return;
        }
        Shape shape = shape(element);
        if (element.hasAttribute("fill")) {
            pen.setColor(Color.decode(element.getAttribute("fill")));
            pen.fill(shape);
        }
        if (element.hasAttribute("stroke")) {
            pen.setColor(Color.decode(element.getAttribute("stroke")));
            pen.setStroke(
                    new BasicStroke((float) at(element, "stroke-width"), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
            pen.draw(shape);
        }
    }

    private static Shape shape(Element element) {
        return switch (element.getTagName()) {
            case "rect" -> new RoundRectangle2D.Double(
                    at(element, "x"),
                    at(element, "y"),
                    at(element, "width"),
                    at(element, "height"),
                    2 * at(element, "rx"),
                    2 * at(element, "rx"));
            case "circle" -> {
                double r = at(element, "r");
                yield new Ellipse2D.Double(at(element, "cx") - r, at(element, "cy") - r, 2 * r, 2 * r);
            }
            case "line" -> new Line2D.Double(
                    at(element, "x1"), at(element, "y1"), at(element, "x2"), at(element, "y2"));
            default -> throw new IllegalArgumentException("the drawing is kept to rect, circle and line, but has "
                    + element.getTagName());
        };
    }

    private static double at(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }

    /** Each pixel the mean of the finer ones it covers, the clear ones counted as nothing. */
    private static BufferedImage smaller(BufferedImage fine, int size) {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        for (int y = 0; y < size; y++) {
            for (int x = 0; x < size; x++) {
                image.setRGB(x, y, mean(fine.getRGB(x * FINER, y * FINER, FINER, FINER, null, 0, FINER)));
            }
        }
        return image;
    }

    private static int mean(int[] pixels) {
        long alpha = 0;
        long red = 0;
        long green = 0;
        long blue = 0;
        for (int pixel : pixels) {
            int a = pixel >>> 24;
            alpha += a;
            red += (long) a * (pixel >> 16 & 0xff);
            green += (long) a * (pixel >> 8 & 0xff);
            blue += (long) a * (pixel & 0xff);
        }
        if (alpha == 0) {
            return 0;
        }
        return (int) (alpha / pixels.length << 24 | red / alpha << 16 | green / alpha << 8 | blue / alpha);
    }
}
