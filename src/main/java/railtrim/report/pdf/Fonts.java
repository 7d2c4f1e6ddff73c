package railtrim.report.pdf;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The fonts of one document, and which of them has which letter. A letter that none has is written as its Unicode number, never as a question mark. */
final class Fonts implements Closeable {
    private final PDDocument document;
    private final Face plain;
    private final Face bold;
    /** Those of other scripts, large files, taken up when first needed. */
    private final Map<String, Face> far = new HashMap<>();

    private boolean numbered;

    Fonts(PDDocument document) throws IOException {
        this.document = document;
        this.plain = face("DejaVuSansCondensed.ttf");
        this.bold = face("DejaVuSansCondensed-Bold.ttf");
    }

    /** A font, the letters it has, and their widths where the writing is one point high. */
    private record Face(TrueTypeFont file, PDType0Font font, CmapLookup letters, Map<Integer, Double> widths) {
        boolean has(int point) {
            return letters.getGlyphId(point) > 0;
        }

        double width(int point) {
            return widths.computeIfAbsent(point, each -> {
                try {
                    return font.getStringWidth(Character.toString(each)) / 1000.0;
                } catch (IOException e) {
                    throw new java.io.UncheckedIOException(e);
                }
            });
        }
    }

    /** Letters in one font, as they are drawn. */
    record Piece(PDType0Font font, String text) {}

    /** @param said the letters as they were typed; @param width where the writing is one point high */
    record Line(String said, List<Piece> pieces, double width) {
        /** Whether the letters drawn are not the letters said, so that a reader of the file has to be told. */
        boolean differs() {
            StringBuilder drawn = new StringBuilder();
            pieces.forEach(piece -> drawn.append(piece.text()));
            return !drawn.toString().equals(said);
        }
    }

    private Face face(String name) throws IOException {
        try (InputStream in = Fonts.class.getResourceAsStream("/railtrim/fonts/" + name)) {
            TrueTypeFont file = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            return new Face(file, PDType0Font.load(document, file, true), file.getUnicodeCmapLookup(), new HashMap<>());
        }
    }

    Line line(String said, boolean strong) throws IOException {
        List<Piece> pieces = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        Face now = strong ? bold : plain;
        double width = 0;
        for (int point : Letters.asDrawn(said).codePoints().toArray()) {
            Optional<Face> found = faceOf(point, strong);
            Face face = found.orElse(strong ? bold : plain);
            numbered |= found.isEmpty();
            String letters = found.isPresent() ? Character.toString(point) : numbered(point);
            if (face != now && !text.isEmpty()) {
                pieces.add(new Piece(now.font(), text.toString()));
                text.setLength(0);
            }
            now = face;
            text.append(letters);
            width += letters.codePoints().mapToDouble(face::width).sum();
        }
        if (!text.isEmpty()) {
            pieces.add(new Piece(now.font(), text.toString()));
        }
        return new Line(said, pieces, width);
    }

    /** Of a text in one line, where the writing is one point high. */
    double width(String text, boolean strong) throws IOException {
        Face near = strong ? bold : plain;
        if (!text.codePoints().allMatch(point -> Letters.stays(point) && near.has(point))) {
            return line(text, strong).width();
        }
        return text.codePoints().mapToDouble(near::width).sum();
    }

    private Optional<Face> faceOf(int point, boolean strong) throws IOException {
        Face near = strong ? bold : plain;
        if (near.has(point)) {
            return Optional.of(near);
        }
        String name = Character.UnicodeScript.of(point) == Character.UnicodeScript.HANGUL
                ? "NanumSquareR.ttf"
                : "DroidSansFallbackFull.ttf";
        if (!far.containsKey(name)) {
            far.put(name, face(name));
        }
        return Optional.of(far.get(name)).filter(face -> face.has(point));
    }

    /** Whether a letter was written as its number, so that the reader has to be told what that means. */
    boolean numbered() {
        return numbered;
    }

    private static String numbered(int point) {
        return String.format(Locale.ROOT, "[U+%04X]", point);
    }

    /** After the document has been saved: until then it reads from the font files. */
    @Override
    public void close() throws IOException {
        plain.file().close();
        bold.file().close();
        for (Face face : far.values()) {
            face.file().close();
        }
    }
}
