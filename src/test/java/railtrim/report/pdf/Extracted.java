package railtrim.report.pdf;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.markedcontent.BeginMarkedContentSequence;
import org.apache.pdfbox.contentstream.operator.markedcontent.BeginMarkedContentSequenceWithProperties;
import org.apache.pdfbox.contentstream.operator.markedcontent.EndMarkedContentSequence;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import railtrim.report.Checklist;
import railtrim.report.Checklist.Block;

/** What a program finds that takes the text out of a printed checklist; and all the texts that went in. */
public final class Extracted {
    private Extracted() {}

    /** The text proper, without white space (a page adds and takes away some where lines break) and without the edges of the pages. */
    public static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return bare(new WithoutEdges().getText(document));
        }
    }

    /** All pages, line by line. */
    public static String lines(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new WithoutEdges().getText(document);
        }
    }

    /** One page's text proper, line by line. */
    static String words(PDDocument document, int page) throws IOException {
        WithoutEdges reader = new WithoutEdges();
        reader.setStartPage(page);
        reader.setEndPage(page);
        return reader.getText(document);
    }

    /** Leaves out what the file itself marks as no part of the text (ISO 32000-1, 14.8.2.2: artifacts). */
    private static final class WithoutEdges extends PDFTextStripper {
        private final Deque<Boolean> artifact = new ArrayDeque<>();

        WithoutEdges() {
            addOperator(new BeginMarkedContentSequence(this));
            addOperator(new BeginMarkedContentSequenceWithProperties(this));
            addOperator(new EndMarkedContentSequence(this));
        }

        @Override
        public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
            artifact.push(COSName.ARTIFACT.equals(tag));
        }

        @Override
        public void endMarkedContentSequence() {
            artifact.pop();
        }

        @Override
        protected void processTextPosition(TextPosition text) {
            if (!artifact.contains(true)) {
                super.processTextPosition(text);
            }
        }
    }

    public static String bare(String text) {
        return text.replaceAll("[\\s\\u00A0]", "");
    }

    static List<String> texts(Checklist checklist) {
        return Stream.concat(
                        Stream.concat(Stream.of(checklist.title()), checklist.missing().stream()),
                        checklist.sections().stream()
                                .flatMap(section -> Stream.concat(
                                        Stream.of(section.title(), section.mark()),
                                        section.blocks().stream().flatMap(Extracted::texts))))
                .toList();
    }

    private static Stream<String> texts(Block block) {
        if (block instanceof Block.Says says) {
            return Stream.of(says.text());
        } else if (block instanceof Block.Points points) {
            return points.texts().stream();
        } else if (block instanceof Block.Deeds deeds) {
            return deeds.texts().stream();
        } else if (block instanceof Block.Pairs pairs) {
            return pairs.pairs().stream().flatMap(pair -> Stream.of(pair.name(), pair.value()));
        } else if (block instanceof Block.Grid grid) {
            return grid.rows().stream().flatMap(List::stream);
        } else if (block instanceof Block.Picture picture) {
            return Stream.of(picture.inWords());
        }
        return Stream.empty();
    }
}
