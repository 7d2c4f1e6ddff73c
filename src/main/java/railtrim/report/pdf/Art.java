package railtrim.report.pdf;

import java.io.IOException;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import railtrim.report.Drawing;
import railtrim.report.Drawing.Shape;

/** Draws the shapes of a picture on a page; nothing in them is told apart by colour alone. */
final class Art {
    private static final double TEXT = 12.5;
    private static final float[] DASHES = {6, 4};
    private static final float[] SOLID = {};

    /** Red, green and blue of the colour bands (the names of the colours always stand beside them in words). */
    private static final Map<String, Integer> BANDS = Map.ofEntries(
            Map.entry("black", 0x000000),
            Map.entry("brown", 0x7A4A21),
            Map.entry("red", 0xC8102E),
            Map.entry("orange", 0xF08A00),
            Map.entry("yellow", 0xFFD800),
            Map.entry("green", 0x1E8A3C),
            Map.entry("blue", 0x1F4FB4),
            Map.entry("violet", 0x7A3F9D),
            Map.entry("grey", 0x8A8A8A),
            Map.entry("white", 0xFFFFFF),
            Map.entry("gold", 0xC9A227),
            Map.entry("silver", 0xC4C8CC),
            Map.entry("pink", 0xF4A6C0),
            Map.entry("body", 0xF3EAD7),
            Map.entry("grey-light", 0xE4E4E4),
            Map.entry("grey-dark", 0x9A9A9A));

    private final Pages pages;
    private final PDPageContentStream ink;
    private final double x;
    private final double top;
    private final double scale;

    Art(Pages pages, double x, double top, double scale) {
        this.pages = pages;
        this.ink = pages.ink();
        this.x = x;
        this.top = top;
        this.scale = scale;
    }

    void draw(Drawing drawing) throws IOException {
        for (Shape shape : drawing.shapes()) {
            if (shape instanceof Shape.Line line) {
                line(line);
            } else if (shape instanceof Shape.Box box) {
                box(box);
            } else if (shape instanceof Shape.Dot dot) {
                dot(dot);
            } else if (shape instanceof Shape.Label label) {
                label(label);
            }
        }
        ink.setLineDashPattern(SOLID, 0);
    }

    private float across(double units) {
        return (float) (x + units * scale);
    }

    private float up(double units) {
        return (float) pages.up(top + units * scale);
    }

    private void line(Shape.Line line) throws IOException {
        boolean leader = line.style().equals("leader");
        ink.setStrokingColor(leader ? 0.45f : 0f);
        ink.setLineWidth((float) (scale
                * switch (line.style()) {
                    case "thick" -> 3;
                    case "dashed" -> 2;
                    case "leader" -> 0.8;
                    default -> 1.2;
                }));
        ink.setLineDashPattern(line.style().equals("dashed") ? scaled() : SOLID, 0);
        ink.moveTo(across(line.x1()), up(line.y1()));
        ink.lineTo(across(line.x2()), up(line.y2()));
        ink.stroke();
    }

    private float[] scaled() {
        return new float[] {(float) (DASHES[0] * scale), (float) (DASHES[1] * scale)};
    }

    private void box(Shape.Box box) throws IOException {
        String look = box.style()
                .substring(
                        box.style().lastIndexOf("band-") < 0 ? 0 : box.style().lastIndexOf("band-") + 5);
        int colour = BANDS.getOrDefault(look, 0xFFFFFF);
        ink.setNonStrokingColor((colour >> 16 & 255) / 255f, (colour >> 8 & 255) / 255f, (colour & 255) / 255f);
        ink.setStrokingColor(0f);
        ink.setLineDashPattern(SOLID, 0);
        ink.setLineWidth((float) (scale
                * switch (box.style().split(" ")[0]) {
                    case "added" -> 3.5;
                    case "band" -> 0.8;
                    default -> 1.5;
                }));
        ink.addRect(across(box.x()), up(box.y() + box.height()), (float) (box.width() * scale), (float)
                (box.height() * scale));
        ink.fillAndStroke();
    }

    private void dot(Shape.Dot dot) throws IOException {
        float radius = (float) (4 * scale);
        float middleX = across(dot.x());
        float middleY = up(dot.y());
        // Four Bézier arcs; 0.5523 of the radius makes them a circle to 0.03 %.
        float reach = 0.5523f * radius;
        ink.setNonStrokingColor(0f);
        ink.moveTo(middleX + radius, middleY);
        ink.curveTo(middleX + radius, middleY + reach, middleX + reach, middleY + radius, middleX, middleY + radius);
        ink.curveTo(middleX - reach, middleY + radius, middleX - radius, middleY + reach, middleX - radius, middleY);
        ink.curveTo(middleX - radius, middleY - reach, middleX - reach, middleY - radius, middleX, middleY - radius);
        ink.curveTo(middleX + reach, middleY - radius, middleX + radius, middleY - reach, middleX + radius, middleY);
        ink.fill();
    }

    private void label(Shape.Label label) throws IOException {
        Fonts.Line line = pages.fonts().line(label.text(), label.style().equals("strong"));
        double size = TEXT * scale;
        double width = line.width() * size;
        double from = across(label.x())
                - switch (label.anchor()) {
                    case "middle" -> width / 2;
                    case "end" -> width;
                    default -> 0;
                };
        ink.setNonStrokingColor(0f);
        pages.letters(line, from, up(label.y()), size);
    }
}
