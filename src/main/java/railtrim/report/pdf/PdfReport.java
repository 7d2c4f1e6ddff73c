package railtrim.report.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.zip.CRC32;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import railtrim.procedure.Words;
import railtrim.report.Checklist;
import railtrim.report.Checklist.Block;
import railtrim.report.Checklist.Section;
import railtrim.report.Paper;

/** The checklist on paper. The same checklist gives the same bytes: nothing in the file is from a clock or from chance. */
public final class PdfReport {
    /** A step is kept whole that takes no more than so much of a page. */
    private static final double WHOLE = 0.4;
    /** What the heading of a part takes more than that of a step, and what of a long first step has to be under it, points. */
    private static final double PART_MORE = 12;

    private static final double FIRST_ROWS = 120;

    private final Checklist checklist;
    private final Words words;
    private final Paper paper;
    private final PDDocumentOutline outline = new PDDocumentOutline();

    private PdfReport(Checklist checklist, Words words, Paper paper) {
        this.checklist = checklist;
        this.words = words;
        this.paper = paper;
    }

    public static byte[] write(Checklist checklist, Words words, Paper paper) {
        try {
            return new PdfReport(checklist, words, paper).bytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private byte[] bytes() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument();
                Fonts fonts = new Fonts(document)) {
            describe(document);
            try (Pages pages = new Pages(document, paper, fonts, checklist.mark())) {
                Flow flow = new Flow(pages);
                top(flow);
                List<Section> sections = checklist.sections();
                for (int i = 0; i < sections.size(); i++) {
                    pages.need(together(pages, flow, sections, i));
                    section(pages, flow, sections.get(i));
                }
                if (fonts.numbered()) {
                    flow.paragraph(words.of("report.numbered"), Type.NOTE, "P");
                }
                pages.structure().into(document);
            }
            edges(document, fonts);
            document.save(bytes);
        }
        return bytes.toByteArray();
    }

    private void describe(PDDocument document) {
        CRC32 sum = new CRC32();
        sum.update(checklist.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        document.setDocumentId(sum.getValue());
        String title = checklist.complete() ? checklist.title() : checklist.title() + " (" + checklist.mark() + ")";
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setCreator("Railtrim");
        document.getDocumentInformation().setProducer("Railtrim");
        document.getDocumentCatalog().setLanguage("en");
        document.getDocumentCatalog().setDocumentOutline(outline);
        PDViewerPreferences shown = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        shown.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(shown);
    }

    private void top(Flow flow) throws IOException {
        flow.heading(checklist.title(), "", Type.TITLE, "H1");
        if (!checklist.complete()) {
            flow.paragraph(checklist.mark(), Type.MARK, "P");
            flow.paragraph(words.of("report.missing.see"), Type.STRONG, "P");
        }
    }

    /** A short step is not torn apart, and the heading of a phase stays with its first step: what has to be on one page, points. */
    private static double together(Pages pages, Flow flow, List<Section> sections, int index) throws IOException {
        Section section = sections.get(index);
        boolean leads = section.level() == 2
                && index + 1 < sections.size()
                && sections.get(index + 1).level() == 3;
        if (section.level() == 2 && !leads) {
            return 0;
        }
        double most = pages.room() * WHOLE;
        double own = flow.height(section);
        if (leads) {
            double first = flow.height(sections.get(index + 1));
            return own + PART_MORE + Math.max(FIRST_ROWS, first <= most ? first : 0);
        }
        return own <= most ? own : 0;
    }

    private void section(Pages pages, Flow flow, Section section) throws IOException {
        boolean part = section.level() == 2;
        // Every page and the top of it carry the mark already; on each part it is for those who hold one sheet.
        flow.heading(
                section.title(), section.mark(), part ? Type.PART : Type.STEP, part ? "H2" : "H3", section.blocks());
        if (part) {
            bookmark(pages, section.title());
        }
        for (int i = 0; i < section.blocks().size(); i++) {
            Block block = section.blocks().get(i);
            boolean leadsIn = block instanceof Block.Says
                    && i + 1 < section.blocks().size()
                    && section.blocks().get(i + 1) instanceof Block.Grid;
            flow.block(block, leadsIn);
            if (block instanceof Block.PageEnd) {
                missing(pages, flow);
            }
        }
    }

    /** After the first page, which has no room for a list as long as the whole way. */
    private void missing(Pages pages, Flow flow) throws IOException {
        if (!checklist.missing().isEmpty()) {
            flow.heading(words.of("report.missing.title"), checklist.mark(), Type.PART, "H2");
            bookmark(pages, words.of("report.missing.title"));
            flow.block(new Block.Points(checklist.missing()), false);
        }
        flow.paragraph(words.of("report.note"), Type.NOTE, "P");
    }

    private void bookmark(Pages pages, String title) {
        PDPageXYZDestination place = new PDPageXYZDestination();
        place.setPage(pages.page());
        place.setTop((int) Math.round(pages.up(pages.y() - 2 * Type.PART.lead())));
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(title);
        item.setDestination(place);
        outline.addLast(item);
    }

    /** Above and below the text of each page: what it belongs to, and which of how many it is. */
    private void edges(PDDocument document, Fonts fonts) throws IOException {
        int pages = document.getNumberOfPages();
        for (int i = 0; i < pages; i++) {
            PDPage page = document.getPage(i);
            try (PDPageContentStream ink = new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
                ink.beginMarkedContent(COSName.ARTIFACT);
                String number = words.of("report.page", Integer.toString(i + 1), Integer.toString(pages));
                edge(ink, fonts, checklist.title(), 28, false);
                edge(ink, fonts, number, 28, true);
                if (!checklist.complete()) {
                    edge(ink, fonts, checklist.mark(), paper.height() - 34, true);
                }
                ink.endMarkedContent();
            }
        }
    }

    private void edge(PDPageContentStream ink, Fonts fonts, String text, double base, boolean right)
            throws IOException {
        String first = Breaks.broken(fonts, text, Type.EDGE, (paper.width() - Pages.LEFT - Pages.RIGHT) * 0.7)
                .get(0);
        Fonts.Line line = fonts.line(first, false);
        double width = line.width() * Type.EDGE.size();
        ink.setNonStrokingColor(0f);
        ink.beginText();
        ink.newLineAtOffset((float) (right ? paper.width() - Pages.RIGHT - width : Pages.LEFT), (float) base);
        for (Fonts.Piece piece : line.pieces()) {
            ink.setFont(piece.font(), (float) Type.EDGE.size());
            ink.showText(piece.text());
        }
        ink.endText();
    }
}
