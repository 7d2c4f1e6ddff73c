package railtrim.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/** A table with lines round its cells. Its head stands again on each page; a row goes on to the next page only if it is taller than half of one. */
final class Table {
    private static final double PAD = 3;
    private static final double AFTER = 5;
    private static final double THIN = 0.5;
    private static final double HEAD_GREY = 0.92;
    private static final double INDENT = Pages.LEFT;

    private final Pages pages;
    private final double[] widths;
    private final List<String> head;
    private final List<List<String>> rows;
    private Optional<PDStructureElement> table = Optional.empty();

    private Table(Pages pages, double[] widths, List<String> head, List<List<String>> rows) {
        this.pages = pages;
        this.widths = widths;
        this.head = head;
        this.rows = rows;
    }

    /** Columns in which nothing stands are left out: paper is narrow. Empty where nothing is left. */
    static Optional<Table> of(Pages pages, List<String> head, List<List<String>> rows) throws IOException {
        int[] kept = IntStream.range(0, head.size())
                .filter(i -> rows.stream().anyMatch(row -> !row.get(i).isEmpty()))
                .toArray();
        if (kept.length == 0) {
            return Optional.empty();
        }
        List<List<String>> all = new ArrayList<>();
        all.add(kept(head, kept));
        rows.forEach(row -> all.add(kept(row, kept)));
        double[] widths = Columns.of(pages.fonts(), all, Type.HEAD, Type.CELL, pages.width());
        return Optional.of(new Table(pages, widths, all.get(0), all.subList(1, all.size())));
    }

    /** On a page that has room for all of it, points. */
    double height() throws IOException {
        double height = height(tallest(lines(head, Type.HEAD)), Type.HEAD) + AFTER;
        for (List<String> row : rows) {
            height += height(row);
        }
        return height;
    }

    private double height(List<String> row) throws IOException {
        return height(tallest(lines(row, Type.CELL)), Type.CELL);
    }

    void write() throws IOException {
        table = Optional.of(pages.structure().in(pages.structure().whole(), "Table"));
        pages.need(4 * Type.CELL.lead() + 4 * PAD);
        head(false);
        for (int i = 0; i < rows.size(); i++) {
            if (i == rows.size() - 2 && height(rows.get(i)) + height(rows.get(i + 1)) > pages.left()) {
                // Nobody looks for one last row on a page of its own.
                turn();
            }
            row(rows.get(i), Type.CELL);
        }
        pages.down(AFTER);
    }

    private static List<String> kept(List<String> row, int[] columns) {
        return IntStream.of(columns).mapToObj(row::get).toList();
    }

    private void head(boolean again) throws IOException {
        List<List<String>> lines = lines(head, Type.HEAD);
        List<Optional<PDStructureElement>> cells = again ? none() : cells("TH");
        slice(lines, 0, tallest(lines), Type.HEAD, cells, true);
    }

    private List<Optional<PDStructureElement>> none() {
        return head.stream().map(each -> Optional.<PDStructureElement>empty()).toList();
    }

    private List<Optional<PDStructureElement>> cells(String type) {
        PDStructureElement row = pages.structure().in(table.orElseThrow(), "TR");
        return head.stream()
                .map(each -> Optional.of(pages.structure().in(row, type)))
                .toList();
    }

    private void row(List<String> texts, Type type) throws IOException {
        List<List<String>> lines = lines(texts, type);
        List<Optional<PDStructureElement>> cells = cells("TD");
        int count = tallest(lines);
        double height = height(count, type);
        if (height > pages.left() && height <= pages.room() / 2) {
            turn();
        }
        int done = 0;
        while (done < count) {
            int fits = (int) Math.floor((pages.left() - 2 * PAD) / type.lead());
            if (fits < 1) {
                turn();
                continue;
            }
            int upTo = Math.min(count, done + fits);
            slice(lines, done, upTo, type, cells, false);
            done = upTo;
        }
    }

    private void turn() throws IOException {
        pages.turn();
        head(true);
    }

    private void slice(
            List<List<String>> lines,
            int from,
            int upTo,
            Type type,
            List<Optional<PDStructureElement>> cells,
            boolean shaded)
            throws IOException {
        double height = height(upTo - from, type);
        frame(height, shaded);
        double x = INDENT;
        for (int i = 0; i < widths.length; i++) {
            List<String> cell = lines.get(i);
            if (from < cell.size()) {
                pages.begin(cells.get(i));
                for (int line = from; line < Math.min(upTo, cell.size()); line++) {
                    pages.write(cell.get(line), x + PAD, pages.y() + PAD + 1 + (line - from) * type.lead(), type);
                }
                pages.end();
            }
            x += widths[i];
        }
        pages.down(height);
    }

    private void frame(double height, boolean shaded) throws IOException {
        pages.begin(Optional.empty());
        double right = INDENT
                + IntStream.range(0, widths.length).mapToDouble(i -> widths[i]).sum();
        if (shaded) {
            pages.box(INDENT, pages.y(), right - INDENT, height, HEAD_GREY, 0);
        }
        pages.rule(INDENT, pages.y(), right, pages.y(), THIN);
        pages.rule(INDENT, pages.y() + height, right, pages.y() + height, THIN);
        double x = INDENT;
        pages.rule(x, pages.y(), x, pages.y() + height, THIN);
        for (double width : widths) {
            x += width;
            pages.rule(x, pages.y(), x, pages.y() + height, THIN);
        }
        pages.end();
    }

    private static double height(int lines, Type type) {
        return lines * type.lead() + 2 * PAD;
    }

    private List<List<String>> lines(List<String> texts, Type type) throws IOException {
        List<List<String>> lines = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            lines.add(Breaks.broken(pages.fonts(), texts.get(i), type, widths[i] - 2 * PAD));
        }
        return lines;
    }

    private static int tallest(List<List<String>> lines) {
        return lines.stream().mapToInt(List::size).max().orElse(0);
    }
}
