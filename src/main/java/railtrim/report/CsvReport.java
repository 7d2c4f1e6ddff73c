package railtrim.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import railtrim.report.Checklist.Block;
import railtrim.report.Checklist.Section;

/**
 * The tables of the checklist for a spreadsheet (RFC 4180): section, then the cells. A cell that a spreadsheet would take for a formula gets an
 * apostrophe in front (OWASP ASVS 1.2.10), unless it is a plain number, or a voltage of a negative rail with its true minus sign.
 */
final class CsvReport {
    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d{1,9}(\\.\\d{1,9})?");
    /** Where commas are decimal marks a spreadsheet parts the cells at semicolons, and quotes do not keep it from that. */
    private static final Pattern INNER_START = Pattern.compile("(;[\\s\"]*)(?=[=+@＝＋－＠−-])");

    private static final Pattern BELOW_ZERO = Pattern.compile("\u2212\\d{1,4}\\.\\d{1,6} V( ± \\d{1,4}\\.\\d{1,6} V)?");
    private static final String FORMULA_STARTS = "=+-@\t\r\n\0＝＋－＠−";

    private CsvReport() {}

    static String write(Checklist checklist, String missingWords) {
        StringBuilder page = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(page, CSVFormat.RFC4180)) {
            print(printer, List.of(checklist.title(), checklist.mark()));
            for (String missing : checklist.missing()) {
                print(printer, List.of(missingWords, missing));
            }
            for (Section section : checklist.sections()) {
                section(printer, section);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return page.toString();
    }

    private static void section(CSVPrinter printer, Section section) throws IOException {
        for (Block block : section.blocks()) {
            if (block instanceof Block.Grid grid) {
                print(printer, row(section, grid.head()));
                for (List<String> cells : grid.rows()) {
                    print(printer, row(section, cells));
                }
            } else if (block instanceof Block.Pairs pairs) {
                for (Checklist.Pair pair : pairs.pairs()) {
                    print(printer, row(section, List.of(pair.name(), pair.value())));
                }
            } else {
                for (String text : texts(block)) {
                    print(printer, row(section, List.of(text)));
                }
            }
        }
    }

    private static List<String> texts(Block block) {
        if (block instanceof Block.Says says) {
            return List.of(says.text());
        } else if (block instanceof Block.Points points) {
            return points.texts();
        } else if (block instanceof Block.Deeds deeds) {
            return deeds.texts();
        } else if (!(block instanceof Block.Picture)) {
            // Sheets of paper and boxes to write in mean nothing in a table.
            return List.of();
        }
        return List.of(((Block.Picture) block).inWords());
    }

    private static List<String> row(Section section, List<String> cells) {
        List<String> row = new ArrayList<>();
        row.add(section.title());
        row.add(section.mark());
        row.addAll(cells);
        return row;
    }

    private static void print(CSVPrinter printer, List<String> cells) throws IOException {
        printer.printRecord(cells.stream().map(CsvReport::harmless).toList());
    }

    static String harmless(String whole) {
        String cell = INNER_START.matcher(whole).replaceAll("$1'");
        boolean formula = !cell.isEmpty() && FORMULA_STARTS.indexOf(cell.charAt(0)) >= 0;
        boolean number =
                NUMBER.matcher(cell).matches() || BELOW_ZERO.matcher(cell).matches();
        return formula && !number ? "'" + cell : cell;
    }
}
