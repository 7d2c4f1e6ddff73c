package railtrim.report.pdf;

import java.io.Closeable;
import java.io.IOException;
import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import railtrim.report.Paper;

/** Pages that are written from top to bottom; {@link #y} is where the next piece begins, in points from the top edge. */
final class Pages implements Closeable {
    static final double LEFT = 50;
    static final double RIGHT = 42;
    private static final double TOP = 50;
    private static final double BOTTOM = 48;

    private final PDDocument document;
    private final Paper paper;
    private final Fonts fonts;
    private final Structure structure = new Structure();
    private final String watermark;
    private PDPage page;
    private PDPageContentStream ink;
    private double y;

    /** @param watermark words across every page, empty for none */
    Pages(PDDocument document, Paper paper, Fonts fonts, String watermark) throws IOException {
        this.document = document;
        this.paper = paper;
        this.fonts = fonts;
        this.watermark = watermark;
        turn();
    }

    Fonts fonts() {
        return fonts;
    }

    Structure structure() {
        return structure;
    }

    double width() {
        return paper.width() - LEFT - RIGHT;
    }

    double y() {
        return y;
    }

    void down(double points) {
        y += points;
    }

    double left() {
        return paper.height() - BOTTOM - y;
    }

    /** Of a page on which nothing stands yet. */
    double room() {
        return paper.height() - BOTTOM - TOP;
    }

    boolean fresh() {
        return y == TOP;
    }

    /** Begins a new page where less than so much is left. */
    void need(double points) throws IOException {
        if (left() < points && !fresh()) {
            turn();
        }
    }

    void turn() throws IOException {
        if (ink != null) {
            ink.close();
        }
        page = new PDPage(new PDRectangle((float) paper.width(), (float) paper.height()));
        document.addPage(page);
        structure.page(page);
        ink = new PDPageContentStream(document, page);
        y = TOP;
        if (!watermark.isEmpty()) {
            ink.beginMarkedContent(COSName.ARTIFACT);
            Watermark.draw(ink, fonts, watermark, paper);
            ink.endMarkedContent();
        }
    }

    PDPage page() {
        return page;
    }

    /** Marks what follows as a piece of an element, or as no part of the text where there is none. */
    void begin(Optional<PDStructureElement> element) throws IOException {
        if (element.isPresent()) {
            String type = element.get().getStructureType();
            ink.beginMarkedContent(COSName.getPDFName(type), structure.next(element.get(), page));
        } else {
            ink.beginMarkedContent(COSName.ARTIFACT);
        }
    }

    void end() throws IOException {
        ink.endMarkedContent();
    }

    /** One line; {@code top} is the upper edge of its lead. */
    void write(String text, double x, double top, Type type) throws IOException {
        Fonts.Line line = fonts.line(text, type.bold());
        double base = paper.height() - top - type.size() * 0.98;
        ink.setNonStrokingColor(0f);
        letters(line, x, base, type.size());
    }

    /** @param base of the letters, from the bottom edge of the page */
    void letters(Fonts.Line line, double x, double base, double size) throws IOException {
        if (line.differs()) {
            COSDictionary meant = new COSDictionary();
            meant.setItem(COSName.ACTUAL_TEXT, new COSString(line.said()));
            ink.beginMarkedContent(COSName.getPDFName("Span"), PDPropertyList.create(meant));
        }
        ink.beginText();
        ink.newLineAtOffset((float) x, (float) base);
        for (Fonts.Piece piece : line.pieces()) {
            ink.setFont(piece.font(), (float) size);
            ink.showTextWithPositioning(apart(piece.text()));
        }
        ink.endText();
        if (line.differs()) {
            ink.endMarkedContent();
        }
    }

    /** The font would join "fi" into one sign, and a search for "fine" would not find it: after each f begins a new piece. */
    private static Object[] apart(String text) {
        return text.split("(?<=f)");
    }

    void rule(double x1, double top1, double x2, double top2, double thick) throws IOException {
        ink.setStrokingColor(0f);
        ink.setLineWidth((float) thick);
        ink.moveTo((float) x1, (float) (paper.height() - top1));
        ink.lineTo((float) x2, (float) (paper.height() - top2));
        ink.stroke();
    }

    /** @param grey of the fill, 1 for white; @param thick of the edge, 0 for none */
    void box(double x, double top, double width, double height, double grey, double thick) throws IOException {
        ink.setNonStrokingColor((float) grey);
        ink.setStrokingColor(0f);
        ink.setLineWidth((float) thick);
        ink.addRect((float) x, (float) (paper.height() - top - height), (float) width, (float) height);
        if (thick > 0) {
            ink.fillAndStroke();
        } else {
            ink.fill();
        }
    }

    /** For drawings, which have their own marks. */
    PDPageContentStream ink() {
        return ink;
    }

    /** Height on the page, from the bottom edge, of a place counted from the top. */
    double up(double top) {
        return paper.height() - top;
    }

    @Override
    public void close() throws IOException {
        ink.close();
    }
}
