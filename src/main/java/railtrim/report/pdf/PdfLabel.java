package railtrim.report.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import railtrim.procedure.Words;
import railtrim.report.Label;
import railtrim.report.Paper;

/** The sticker twice, to cut out: one for the board, one for the case. */
public final class PdfLabel {
    private static final double MILLIMETRE = 72 / 25.4;
    private static final double WIDTH = 74 * MILLIMETRE;
    private static final double HEIGHT = 38 * MILLIMETRE;
    private static final double PAD = 7;
    private static final int COPIES = 2;

    private PdfLabel() {}

    public static byte[] write(Label label, Words words, Paper paper) {
        try {
            return bytes(label, words, paper);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] bytes(Label label, Words words, Paper paper) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        CRC32 sum = new CRC32();
        sum.update(label.toString().getBytes(StandardCharsets.UTF_8));
        try (PDDocument document = new PDDocument();
                Fonts fonts = new Fonts(document)) {
            document.setDocumentId(sum.getValue());
            document.getDocumentInformation().setTitle(words.of("report.label.title"));
            document.getDocumentCatalog().setLanguage("en");
            try (Pages pages = new Pages(document, paper, fonts, "")) {
                Flow flow = new Flow(pages);
                flow.paragraph(words.of("report.label.cut"), Type.TEXT, "P");
                for (int copy = 0; copy < COPIES; copy++) {
                    sticker(pages, label);
                    pages.down(18);
                }
                pages.structure().into(document);
            }
            document.save(bytes);
        }
        return bytes.toByteArray();
    }

    private static void sticker(Pages pages, Label label) throws IOException {
        double top = pages.y();
        pages.begin(Optional.empty());
        pages.box(Pages.LEFT, top, WIDTH, HEIGHT, 1, 0.8);
        pages.end();
        double y = top + PAD;
        y = lines(pages, label.warning(), Type.STEP, y, 2);
        y = lines(pages, label.voltage(), Type.MARK, y, 1);
        for (String line : label.lines()) {
            y = lines(pages, line, Type.NOTE, y, 2);
        }
        pages.down(HEIGHT);
    }

    private static double lines(Pages pages, String text, Type type, double from, int most) throws IOException {
        PDStructureElement element = pages.structure().in(pages.structure().whole(), "P");
        List<String> lines = Breaks.broken(pages.fonts(), text, type, WIDTH - 2 * PAD);
        double y = from;
        pages.begin(Optional.of(element));
        for (String line : lines.subList(0, Math.min(most, lines.size()))) {
            pages.write(line, Pages.LEFT + PAD, y, type);
            y += type.lead();
        }
        pages.end();
        return y;
    }
}
