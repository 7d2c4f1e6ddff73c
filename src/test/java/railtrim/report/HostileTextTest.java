package railtrim.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.commonmark.ext.autolink.AutolinkExtension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.node.ThematicBreak;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.procedure.Procedure;
import railtrim.procedure.Words;
import railtrim.quantity.PlainText;
import railtrim.quantity.Unit;
import railtrim.report.pdf.Extracted;
import railtrim.report.pdf.PdfReport;

/** Names, notes and answers from a stranger's file stay what they are: text. */
class HostileTextTest {
    /** Each would do something in one of the formats if it were not escaped (OWASP cross-site scripting, CSV injection; Trojan Source). */
    private static final List<String> HOSTILE = List.of(
            "<script>alert(1)</script>",
            "\"><img src=x onerror=alert(1)>",
            "' onmouseover='alert(1)",
            "</title></style><b>bold</b>",
            "<!-- --> <![CDATA[x]]> &lt;b&gt; &#60;",
            "[click](javascript:alert(1))",
            "![x](https://evil.example/x.png)",
            "<https://evil.example>",
            "https://evil.example/a_b_c www.evil.example mail@evil.example",
            "[ref]: https://evil.example",
            "*bold* _thin_ `code` ~~gone~~ **x**",
            "# heading",
            "- item",
            "1. item",
            "1) item",
            "+ item",
            "> quote",
            "---",
            "===",
            "```",
            "a | b || c \\| d \\",
            "=HYPERLINK(\"https://evil.example\",\"x\")",
            "+1+cmd|' /C calc'!A0",
            "-2+3",
            "@SUM(1)",
            "＝1+1",
            "\t=1+1",
            "${7*7} <#assign x=1> <#include \"/etc/passwd\"> ${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
            "{0} {1} ''quoted'' '{0}'",
            "abc\u202Egpj.exe \u2066x\u2069 \u200f\u061c",
            "nul\u0000bell\u0007esc\u001b[31m",
            "two\nlines\r\nand\ttab\u2028sep",
            "Ω µ „Orgel“ 漢字 🎹");

    private static final Set<Format> TEXTS = EnumSet.complementOf(EnumSet.of(Format.PDF, Format.LABEL));
    private static final Procedure PROCEDURE = Procedure.builtIn();

    @TempDir
    Path folder;

    @TempDir
    Path elsewhere;

    @Test
    void inTheWebPageItIsTextAndNothingElse() throws Exception {
        Document page = parse(Files.readString(write(hostileJob()).get(0)));
        String text = page.getDocumentElement().getTextContent();
        for (String hostile : HOSTILE) {
            assertTrue(text.contains(PlainText.of(hostile)), hostile);
        }
        NodeList all = page.getElementsByTagName("*");
        Set<String> elements = new HashSet<>();
        Set<String> attributes = new HashSet<>();
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            elements.add(element.getTagName());
            for (int a = 0; a < element.getAttributes().getLength(); a++) {
                attributes.add(element.getAttributes().item(a).getNodeName());
            }
        }
        assertTrue(
                Set.of(
                                "html",
                                "head",
                                "meta",
                                "title",
                                "style",
                                "body",
                                "main",
                                "div",
                                "section",
                                "nav",
                                "a",
                                "span",
                                "h1",
                                "h2",
                                "h3",
                                "p",
                                "ul",
                                "ol",
                                "li",
                                "table",
                                "thead",
                                "tbody",
                                "tr",
                                "th",
                                "td",
                                "figure",
                                "figcaption",
                                "svg",
                                "line",
                                "rect",
                                "circle",
                                "text")
                        .containsAll(elements),
                elements.toString());
        assertTrue(
                Set.of(
                                "lang",
                                "id",
                                "href",
                                "charset",
                                "http-equiv",
                                "content",
                                "name",
                                "class",
                                "scope",
                                "aria-hidden",
                                "aria-label",
                                "role",
                                "viewBox",
                                "width",
                                "height",
                                "x",
                                "y",
                                "x1",
                                "y1",
                                "x2",
                                "y2",
                                "cx",
                                "cy",
                                "r")
                        .containsAll(attributes),
                attributes.toString());
    }

    @Test
    void thePageAllowsItsOwnStyleSheetAndNothingMore() throws Exception {
        String html = Files.readString(write(hostileJob()).get(0));
        Document page = parse(html);
        String style = page.getElementsByTagName("style").item(0).getTextContent();
        byte[] digest = java.security.MessageDigest.getInstance("SHA-256")
                .digest(style.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        String hash = java.util.Base64.getEncoder().encodeToString(digest);
        assertTrue(html.contains("default-src 'none'; style-src 'sha256-" + hash + "'"));
        assertFalse(style.contains("url(") || style.contains("@import"), "nothing is fetched");
    }

    @Test
    void inMarkdownItMakesNoLinkNoHtmlAndNoMarkup() throws Exception {
        String markdown = Files.readString(write(hostileJob()).get(1));
        Node page = Parser.builder()
                .extensions(List.of(TablesExtension.create(), AutolinkExtension.create()))
                .build()
                .parse(markdown);
        List<String> made = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        page.accept(new AbstractVisitor() {
            @Override
            public void visit(Link link) {
                made.add("link " + link.getDestination());
            }

            @Override
            public void visit(Image image) {
                made.add("image " + image.getDestination());
            }

            @Override
            public void visit(HtmlInline html) {
                made.add("html " + html.getLiteral());
            }

            @Override
            public void visit(HtmlBlock html) {
                made.add("html " + html.getLiteral());
            }

            @Override
            public void visit(Code code) {
                made.add("code " + code.getLiteral());
            }

            @Override
            public void visit(FencedCodeBlock code) {
                made.add("code " + code.getLiteral());
            }

            @Override
            public void visit(Emphasis emphasis) {
                made.add("emphasis");
            }

            @Override
            public void visit(BlockQuote quote) {
                made.add("quote");
            }

            @Override
            public void visit(ThematicBreak rule) {
                made.add("rule");
            }

            @Override
            public void visit(Text literal) {
                text.append(literal.getLiteral());
            }
        });
        assertEquals(List.of(), made);
        for (String hostile : HOSTILE) {
            assertTrue(joined(text.toString()).contains(joined(PlainText.of(hostile))), hostile);
        }
        // Each heading is one of ours: as many as the checklist has sections, and one for the title.
        long headings = markdown.lines().filter(line -> line.startsWith("#")).count();
        assertEquals(
                1
                        + Checklist.of(PROCEDURE.state(hostileJob()), PROCEDURE, Words.english())
                                .sections()
                                .size(),
                headings);
    }

    @Test
    void escapedMarkdownReadsAsItselfWhereverItStands() {
        Parser parser = Parser.builder()
                .extensions(List.of(TablesExtension.create(), AutolinkExtension.create()))
                .build();
        for (String hostile : HOSTILE) {
            String plain = PlainText.of(hostile);
            for (String before : List.of("", "- ", "1. ", "## ", "**x**: ")) {
                StringBuilder read = new StringBuilder();
                parser.parse(before + MarkdownReport.escape(plain)).accept(new AbstractVisitor() {
                    @Override
                    public void visit(Text literal) {
                        read.append(literal.getLiteral());
                    }
                });
                assertTrue(joined(read.toString()).endsWith(joined(plain)), before + plain + " read as " + read);
            }
        }
    }

    /** Spaces are put in where a reader would make a link; they are all that may differ. */
    private static String joined(String text) {
        return text.replace(" ", "");
    }

    @Test
    void inATableForASpreadsheetNothingIsAFormula() throws Exception {
        String csv = Files.readString(write(hostileJob()).get(2));
        try (CSVParser rows = CSVParser.parse(csv, CSVFormat.RFC4180)) {
            rows.forEach(row -> row.forEach(cell -> assertTrue(
                    cell.isEmpty() || "=+-@＝＋－＠".indexOf(cell.charAt(0)) < 0 || cell.matches("[-+]?\\d+(\\.\\d+)?"),
                    cell)));
        }
        assertEquals("-3.5", CsvReport.harmless("-3.5"), "a plain number stays one");
        assertEquals("'-3.5 V", CsvReport.harmless("-3.5 V"));
        // A spreadsheet that parts cells at semicolons sees two cells here.
        assertEquals("organ;'=1+1;\"'@SUM(1); 3.5", CsvReport.harmless("organ;=1+1;\"@SUM(1); 3.5"));
    }

    @Test
    void onPaperItIsTextAndOpensNothing() throws Exception {
        Checklist checklist = Checklist.of(PROCEDURE.state(hostileJob()), PROCEDURE, Words.english());
        byte[] pdf = PdfReport.write(checklist, Words.english(), Paper.A4);
        String text = Extracted.text(pdf);
        for (String hostile : HOSTILE) {
            String letters = PlainText.of(hostile).replace("🎹", "[U+1F3B9]");
            assertTrue(text.contains(Extracted.bare(letters)), hostile);
        }
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertNull(document.getDocumentCatalog().getOpenAction());
            assertNull(document.getDocumentCatalog().getNames(), "no script, no file inside");
            for (PDPage page : document.getPages()) {
                assertEquals(List.of(), page.getAnnotations(), "no link");
            }
        }
    }

    @Test
    void nothingThatHidesOrTurnsRoundIsShown() throws Exception {
        for (Path file : write(hostileJob())) {
            Files.readString(file).codePoints().forEach(point -> {
                boolean lineEnd = point == '\n' || point == '\r';
                int type = Character.getType(point);
                assertTrue(
                        lineEnd || type != Character.CONTROL && type != Character.FORMAT,
                        () -> file + ": " + Integer.toHexString(point));
            });
        }
    }

    @Test
    void fileNamesKeepToLettersAndStayInTheirFolder() throws Exception {
        List<String> names = new ArrayList<>(HOSTILE);
        names.addAll(List.of(
                "../../etc/passwd", "..", "", "   ", "CON", "nul", "Com1", "LPT9", "a".repeat(300), "/abs", "C:\\x"));
        for (String name : names) {
            Job job = new Job(name, List.of());
            for (Path file : write(job)) {
                assertEquals(folder.toRealPath(), file.getParent());
                String base = file.getFileName().toString().replaceAll(" checklist\\.(html|md|csv)$", "");
                assertTrue(base.matches("[A-Za-z0-9 _-]{1,60}"), base);
                assertFalse(base.matches("(?i)con|nul|com1|lpt9"), base);
            }
        }
        assertEquals("Organ no 3", FileName.of("Organ no 3", "job"));
    }

    @Test
    void aLinkInTheFolderIsReplacedAndNotFollowed() throws Exception {
        Path outside = Files.writeString(elsewhere.resolve("precious"), "precious");
        Files.createSymbolicLink(folder.resolve("organ checklist.md"), outside);
        Files.createSymbolicLink(folder.resolve("organ checklist.md.tmp"), outside);
        write(new Job("organ", List.of()));
        assertEquals("precious", Files.readString(outside));
        assertFalse(Files.isSymbolicLink(folder.resolve("organ checklist.md")));
    }

    /** A job in which every text that can be hostile is. */
    private static Job hostileJob() {
        List<Fact> facts = new ArrayList<>();
        for (String hostile : HOSTILE) {
            facts.add(new Fact.Note("scope", "board.name", hostile));
            facts.add(new Fact.Note(hostile, hostile, hostile));
            facts.add(new Fact.Choice("scope", "supply.kind", hostile));
            facts.add(new Fact.Acknowledged("scope", hostile));
            facts.add(new Fact.Reading("meter", "meter.proof", 1.5, Unit.VOLT, hostile));
            facts.add(new Fact.Reading(hostile, hostile, 1.5, Unit.VOLT, hostile));
            facts.add(new Fact.Alarm("scope", hostile));
            facts.add(new Fact.Reopened("scope", hostile));
            facts.add(new Fact.Skipped("scope", hostile));
            facts.add(new Fact.Paused("scope", hostile));
        }
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            entries.add(new Entry(entries.size() + 1, Instant.parse("2026-03-01T09:00:00Z"), 1, 0, fact));
        }
        return new Job(HOSTILE.get(0) + HOSTILE.get(5), entries);
    }

    private List<Path> write(Job job) {
        return ReportWriter.write(PROCEDURE.state(job), PROCEDURE, Words.english(), folder, TEXTS, Paper.A4);
    }

    /** The page is written so that a strict XML reader takes it: one mark not escaped and it is refused. */
    private static Document parse(String html) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setExpandEntityReferences(false);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
    }
}
