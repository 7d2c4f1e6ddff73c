package railtrim.report.pdf;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import railtrim.report.Paper;

/** Words across the whole page, under everything else: too pale to hide a letter, dark enough for a copier. */
final class Watermark {
    private static final float GREY = 0.88f;
    private static final double SLANT = Math.toRadians(52);

    private Watermark() {}

    static void draw(PDPageContentStream ink, Fonts fonts, String words, Paper paper) throws IOException {
        Fonts.Line line = fonts.line(words, true);
        double diagonal = Math.hypot(paper.width(), paper.height());
        double size = 0.78 * diagonal / line.width();
        double half = line.width() * size / 2;
        double x = paper.width() / 2 - Math.cos(SLANT) * half + Math.sin(SLANT) * size * 0.36;
        double y = paper.height() / 2 - Math.sin(SLANT) * half - Math.cos(SLANT) * size * 0.36;
        ink.setNonStrokingColor(GREY);
        ink.beginText();
        ink.setTextMatrix(Matrix.getRotateInstance(SLANT, (float) x, (float) y));
        for (Fonts.Piece piece : line.pieces()) {
            ink.setFont(piece.font(), (float) size);
            ink.showText(piece.text());
        }
        ink.endText();
    }
}
