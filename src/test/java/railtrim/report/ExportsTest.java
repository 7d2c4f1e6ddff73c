package railtrim.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import railtrim.heat.Heat;
import railtrim.job.BuiltIn;
import railtrim.job.Job;
import railtrim.practice.Board;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Figures;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Meter;
import railtrim.quantity.Unit;
import railtrim.report.pdf.Extracted;
import railtrim.report.pdf.PdfLabel;
import railtrim.report.pdf.PdfReport;
import railtrim.report.pdf.SampleJobs;
import railtrim.report.shelf.Comparison;
import railtrim.report.shelf.Shelf;
import railtrim.threshold.Trial;

/** Whatever a job is written as says the same numbers, and they are the core's. */
class ExportsTest {
    private static final Procedure PROCEDURE = Procedure.builtIn();
    private static final Words WORDS = Words.english();
    private static State finished;
    private static Checklist checklist;
    private static String html;
    private static List<String> all;

    @BeforeAll
    static void playAJob() throws Exception {
        Board board = Board.of(BuiltIn.text("demo-data/boards/network-blade.json"));
        finished = PROCEDURE.state(
                new Rehearsal(PROCEDURE, Meter.middle()).play(board, 1).job());
        checklist = Checklist.of(finished, PROCEDURE, WORDS);
        html = HtmlReport.write(checklist, WORDS);
        all = List.of(
                Extracted.bare(shown(html)),
                Extracted.bare(MarkdownReport.write(checklist, "").replace("\\", "")),
                Extracted.bare(CsvReport.write(checklist, "")),
                Extracted.text(PdfReport.write(checklist, WORDS, Paper.A4)));
    }

    @Test
    void everyFigureOfTheCoreIsInEveryExportToTheDigitsPrinted() {
        Figures figures = finished.figures();
        List<String> wanted = new ArrayList<>();
        wanted.add(Display.volts(figures.stock().orElseThrow()));
        wanted.add(Display.volts(figures.fitted().orElseThrow()));
        wanted.add(Display.volts(figures.target().orElseThrow()));
        wanted.add(Display.volts(figures.reference().orElseThrow()));
        wanted.add(Display.volts(figures.failVoltage().orElseThrow().fail()));
        wanted.add(Display.volts(figures.failVoltage().orElseThrow().bracketHigh()));
        wanted.add(Display.volts(figures.budget().orElseThrow().recommended()));
        figures.budget().orElseThrow().lines().forEach(line -> wanted.add(Display.volts(line.volts())));
        figures.trials().stream().map(Trial::volts).map(Display::volts).forEach(wanted::add);
        figures.slips().forEach(slip -> slip.volts().ifPresent(volts -> wanted.add(Display.volts(volts))));
        wanted.add(Display.ohms(figures.chosen().orElseThrow().added()));
        wanted.add(Display.volts(figures.chosen().orElseThrow().lowest()));
        wanted.add(Display.ohms(figures.solution().orElseThrow().leg()));
        Heat.Powers powers = figures.powers().orElseThrow();
        for (double watts :
                List.of(powers.loadBefore(), powers.loadAfter(), powers.regulatorBefore(), powers.regulatorAfter())) {
            wanted.add(Display.of(watts, Unit.WATT));
        }
        for (String export : all) {
            wanted.forEach(figure -> assertTrue(export.contains(Extracted.bare(figure)), figure));
        }
    }

    @Test
    void noExportHasANumberTheOthersDoNotHave() {
        Set<String> inPage = numbers(shown(html));
        Set<String> inTable = numbers(CsvReport.write(checklist, WORDS.of("report.note")));
        Set<String> pictures = new TreeSet<>(inPage);
        pictures.removeAll(inTable);
        // Only what numbers the ticks of the drawings' scales is not in the table for a spreadsheet.
        pictures.removeIf(number -> number.matches("\\d\\.\\d\\d0"));
        pictures.removeIf(number -> number.matches("[1-8]"));
        assertEquals(Set.of(), pictures);
        inTable.removeAll(inPage);
        assertEquals(Set.of(), inTable);
    }

    private static List<String> webPages() {
        State half = PROCEDURE.state(new Job("half", finished.job().entries().subList(0, 60)));
        return Stream.of(
                        checklist,
                        Checklist.of(half, PROCEDURE, WORDS),
                        Checklist.of(SampleJobs.played("delay-unit"), PROCEDURE, WORDS),
                        Checklist.of(SampleJobs.played("playout-module"), PROCEDURE, WORDS),
                        new Worksheet(PROCEDURE, WORDS).build(),
                        new Comparison(new Shelf(List.of()), WORDS).document())
                .map(list -> HtmlReport.write(list, WORDS))
                .toList();
    }

    @Test
    void theWebPagesAreValidForACheckerOfHtmlAndCss() throws Exception {
        for (String page : webPages()) {
            EmbeddedValidator validator = new EmbeddedValidator();
            validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
            assertEquals("", validator.validate(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8))));
        }
    }

    /** A page that somebody else opens fetches nothing: it names no place in the web at all. */
    @Test
    void everyLinkLeadsToTheOnePlaceOnItsPageThatHasItsName() {
        for (String page : webPages()) {
            List<String> places = all("id", page);
            assertEquals(places.size(), Set.copyOf(places).size(), places.toString());
            List<String> links = all("href", page);
            assertFalse(links.isEmpty());
            for (String link : links) {
                assertTrue(link.startsWith("#") && places.contains(link.substring(1)), link);
            }
            assertEquals(List.of(), all("src", page));
            assertFalse(page.contains("://"), "an address of the web");
        }
    }

    /** The contents name every part in its order, and each name leads to that very part. */
    @Test
    void theContentsLeadToEachPartInItsOrder() {
        Matcher links = Pattern.compile("<a href=\"#([^\"]*)\">([^<]*)</a>").matcher(html);
        List<String> named = new ArrayList<>();
        while (links.find()) {
            named.add(links.group(2));
            String there = html.substring(html.indexOf("id=\"" + links.group(1) + "\""));
            assertTrue(there.substring(there.indexOf("<h2>") + 4).startsWith(links.group(2)), links.group());
        }
        assertEquals(
                checklist.sections().stream()
                        .filter(section -> section.level() == 2)
                        .map(Checklist.Section::title)
                        .toList(),
                named);
    }

    private static List<String> all(String attribute, String page) {
        Matcher found = Pattern.compile(" " + attribute + "=\"([^\"]*)\"").matcher(page);
        List<String> values = new ArrayList<>();
        while (found.find()) {
            values.add(found.group(1));
        }
        return values;
    }

    @Test
    void theStickerSaysTheNewVoltageTheResistorAndTheDay() throws Exception {
        String text = Extracted.text(PdfLabel.write(Label.of(finished, PROCEDURE, WORDS), WORDS, Paper.A4));
        assertTrue(
                text.contains(
                        Extracted.bare(Display.volts(finished.figures().fitted().orElseThrow()))),
                text);
        finished.figures()
                .chosen()
                .orElseThrow()
                .values()
                .forEach(ohms -> assertTrue(text.contains(Extracted.bare(Display.part(ohms))), text));
        assertTrue(text.contains("2026-01-10"), text);
        Job half = new Job("half", finished.job().entries().subList(0, 100));
        String unfinished =
                Extracted.text(PdfLabel.write(Label.of(PROCEDURE.state(half), PROCEDURE, WORDS), WORDS, Paper.A4));
        assertTrue(unfinished.contains("NOTCOMPLETE") && unfinished.contains("Donotrun"), unfinished);
    }

    /** What a reader of the page sees: no marks, no measures of the drawings. */
    static String shown(String page) {
        return page.replaceAll("(?s)<(style|title)>.*?</\\1>", " ")
                .replaceAll("<[^>]*>", " ")
                .replace("&#39;", "'")
                .replace("&quot;", "\"")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&");
    }

    private static Set<String> numbers(String text) {
        Set<String> numbers = new TreeSet<>();
        Matcher found = Pattern.compile("\\d+(\\.\\d+)?").matcher(text);
        while (found.find()) {
            numbers.add(found.group());
        }
        return numbers;
    }
}
