package railtrim.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import railtrim.procedure.Phase;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.report.Checklist;
import railtrim.report.Paper;
import railtrim.report.Printed;

/** The checklist on paper: everything in it, nothing lost, and no page that could be taken for a finished job's where it is not. */
class PdfReportTest {
    private static final Words WORDS = Words.english();
    private static State finished;
    private static Checklist checklist;
    private static byte[] pdf;
    private static byte[] letter;

    @BeforeAll
    static void playAJob() {
        finished = SampleJobs.played("network-blade");
        checklist = of(finished);
        pdf = PdfReport.write(checklist, WORDS, Paper.A4);
        letter = PdfReport.write(checklist, WORDS, Paper.LETTER);
    }

    private static byte[] on(Paper paper) {
        return paper == Paper.A4 ? pdf : letter;
    }

    @Test
    void theTextTakenOutOfThePagesIsTheTextOfTheChecklist() throws IOException {
        everyTextIsFound(checklist, pdf);
        everyTextIsFound(checklist, letter);
    }

    /** All pages of whole jobs: the same words in the same order, none lost, none twice, none from elsewhere but the pages' own edges. */
    @Test
    void theTextOfAllPagesIsTheTextOfTheChecklistInItsOrderAndNothingElse() throws IOException {
        State half = SampleJobs.first(finished, finished.job().entries().size() / 2);
        for (State state :
                List.of(finished, half, SampleJobs.played("delay-unit"), SampleJobs.played("playout-module"))) {
            Checklist list = of(state);
            for (Paper paper : Paper.values()) {
                assertEquals(
                        ReadingOrder.of(list, WORDS),
                        Extracted.text(PdfReport.write(list, WORDS, paper)),
                        state.job().name() + " " + paper);
            }
        }
    }

    @Test
    void aLongWayDownWithLongNotesLosesNothing() throws IOException {
        State down = SampleJobs.longWayDown(finished);
        Checklist longOne = of(down);
        String text = Extracted.text(PdfReport.write(longOne, WORDS, Paper.A4));
        for (String said : List.of(
                "Ηπλακέταδούλεψεκαλάωςτα2,7V", "画面が乱れ、音が途切れた", "화면이멈췄다.Café", "[U+1F3B9]Ω≤✓±∥µfirstofficefluff")) {
            assertTrue(text.contains(said), said);
        }
        assertTrue(down.figures().trials().size() >= 60);
        everyTextIsFound(shown(longOne, "report.part.down"), PdfReport.write(longOne, WORDS, Paper.LETTER));
    }

    /** PDFBox turns what was drawn from right to left, in joined letters, back into the letters as they are typed. */
    @Test
    void arabicIsDrawnJoinedAndRightToLeftAndReadBackAsTyped() throws IOException {
        Checklist note = of(SampleJobs.note("مقاومة واحدة لا غير"));
        String text = Extracted.text(PdfReport.write(note, WORDS, Paper.A4));
        assertTrue(text.contains("مقاومةواحدةلاغير"), text);
        // Unicode 15, table 9-3: seen, lam and meem in their first, joined (with alef) and single forms; turned round.
        assertEquals("\uFEE1\uFEFC\uFEB3", Letters.asDrawn("سلام"));
        assertEquals("V 2.7 \uFEE1\uFEFC\uFEB3", Letters.asDrawn("سلام 2.7 V"));
    }

    @Test
    void everyPageOfAnUnfinishedJobSaysSoAndNoPageOfAFinishedOne() throws IOException {
        assertEquals(0, pagesWith(pdf, "NOT COMPLETE"));
        for (int facts : List.of(0, 60, finished.job().entries().size() - 1)) {
            byte[] unfinished = PdfReport.write(of(SampleJobs.first(finished, facts)), WORDS, Paper.A4);
            try (PDDocument document = Loader.loadPDF(unfinished)) {
                assertEquals(document.getNumberOfPages(), pagesWith(unfinished, "NOT COMPLETE"));
            }
        }
    }

    @Test
    void everyPageIsNumberedAndOfTheSizeAskedFor() throws IOException {
        for (Paper paper : Paper.values()) {
            try (PDDocument document = Loader.loadPDF(on(paper))) {
                int count = document.getNumberOfPages();
                for (int page = 1; page <= count; page++) {
                    assertTrue(text(document, page).contains("Page " + page + " of " + count));
                    assertEquals(
                            paper.width(),
                            document.getPage(page - 1).getMediaBox().getWidth(),
                            0.01);
                    assertEquals(
                            paper.height(),
                            document.getPage(page - 1).getMediaBox().getHeight(),
                            0.01);
                }
            }
        }
    }

    @Test
    void theFirstPageTellsWhatWasDoneWhetherItIsSafeAndHowToUndoIt() throws IOException {
        for (Paper paper : Paper.values()) {
            try (PDDocument document = Loader.loadPDF(on(paper))) {
                String first = Extracted.bare(text(document, 1));
                for (String title : List.of("report.part.summary", "report.glance.safe", "report.part.undo")) {
                    assertTrue(first.contains(Extracted.bare(WORDS.of(title))), title);
                }
                assertTrue(first.contains(Extracted.bare(WORDS.of("report.undo.leave"))));
                assertFalse(first.contains(Extracted.bare(WORDS.of("report.part.board"))));
            }
        }
    }

    /** Whoever holds one sheet would look for what belongs to the heading on it. */
    @Test
    void noHeadingStandsAloneAtTheFootOfAPage() throws IOException {
        State half = SampleJobs.first(finished, finished.job().entries().size() / 2);
        for (State job : List.of(finished, half)) {
            Checklist list = of(job);
            // The sentence on what a phase is for is of its heading; its first step has to follow.
            List<String> headings = Stream.concat(
                            list.sections().stream().map(section -> section.title() + section.mark()),
                            Stream.of(Phase.values()).map(phase -> WORDS.of("phase." + phase.id() + ".aim")))
                    .map(Extracted::bare)
                    .toList();
            for (Paper paper : Paper.values()) {
                try (PDDocument document = Loader.loadPDF(PdfReport.write(list, WORDS, paper))) {
                    for (int page = 1; page <= document.getNumberOfPages(); page++) {
                        String[] lines = Extracted.words(document, page).strip().split("\\R");
                        String last = Extracted.bare(lines[lines.length - 1]);
                        assertFalse(headings.contains(last), paper + " page " + page + " ends with " + last);
                    }
                }
            }
        }
    }

    @Test
    void theSameJobGivesTheSameBytes() {
        assertArrayEquals(pdf, PdfReport.write(of(finished), WORDS, Paper.A4));
        assertArrayEquals(letter, PdfReport.write(of(finished), WORDS, Paper.LETTER));
        for (Printed printed : Printed.values()) {
            assertArrayEquals(
                    printed.pdf(Optional.of(finished), SampleJobs.PROCEDURE, WORDS, Paper.A4),
                    printed.pdf(Optional.of(SampleJobs.played("network-blade")), SampleJobs.PROCEDURE, WORDS, Paper.A4),
                    printed.name());
        }
    }

    @Test
    void theFileSaysItsTitleAndLanguageAndIsTagged() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(checklist.title(), document.getDocumentInformation().getTitle());
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
            assertFalse(document.getDocumentCatalog()
                    .getStructureTreeRoot()
                    .getKids()
                    .isEmpty());
        }
    }

    /** A reader without these fonts would show other letters, or none. */
    @Test
    void everyFontIsInTheFileAndOnlyTheLettersUsed() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                    assertTrue(font.getName().matches("[A-Z]{6}\\+.*"), font.getName());
                }
            }
        }
        assertTrue(pdf.length < 500_000, pdf.length + " bytes");
    }

    private static void everyTextIsFound(Checklist list, byte[] file) throws IOException {
        String text = Extracted.text(file);
        for (String said : Extracted.texts(list)) {
            assertTrue(text.contains(Extracted.bare(said)), said);
        }
    }

    /** One part of a checklist alone. */
    private static Checklist shown(Checklist list, String part) {
        return new Checklist(
                list.title(),
                list.mark(),
                List.of(),
                list.sections().stream()
                        .filter(section -> section.title().equals(WORDS.of(part)))
                        .toList());
    }

    private static int pagesWith(byte[] file, String words) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            int found = 0;
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                found += text(document, page).contains(words) ? 1 : 0;
            }
            return found;
        }
    }

    private static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }

    private static Checklist of(State state) {
        return Checklist.of(state, SampleJobs.PROCEDURE, WORDS);
    }
}
