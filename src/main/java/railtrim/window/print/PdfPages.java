package railtrim.window.print;

import java.awt.image.BufferedImage;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** The pages of a document as pictures, drawn from the very bytes that would be written to a file. */
public final class PdfPages implements Closeable {
    private static final double POINTS_PER_INCH = 72;

    private final PDDocument document;
    private final PDFRenderer renderer;
    private boolean closed;

    public PdfPages(byte[] pdf) {
        try {
            document = Loader.loadPDF(pdf);
            renderer = new PDFRenderer(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public int count() {
        return document.getNumberOfPages();
    }

    /** In points, as is {@link #height}; all pages have the size of the first. */
    public double width() {
        return document.getPage(0).getMediaBox().getWidth();
    }

    public double height() {
        return document.getPage(0).getMediaBox().getHeight();
    }

    /** Slow; on any thread. An empty picture once this is closed. @param page from 0; @param scale pixels a point */
    public synchronized Image picture(int page, double scale) {
        if (closed) {
            return new WritableImage(1, 1);
        }
        try {
            float inch = (float) (scale * POINTS_PER_INCH);
            BufferedImage drawn = renderer.renderImageWithDPI(page, inch, ImageType.RGB);
            int width = drawn.getWidth();
            int height = drawn.getHeight();
            WritableImage image = new WritableImage(width, height);
            int[] colours = drawn.getRGB(0, 0, width, height, null, 0, width);
            image.getPixelWriter().setPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), colours, 0, width);
            return image;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public synchronized void close() {
        closed = true;
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
