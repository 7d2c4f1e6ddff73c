package railtrim.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import railtrim.report.Checklist.Entry;

/** Boxes to write in and squares to tick, large enough for a pencil. */
final class FormSheet {
    private static final double ASKED = 0.46;
    private static final double TICKED = 0.88;
    private static final double BOX = 22;
    private static final double PAD = 3;
    private static final double SQUARE = 7;
    private static final double EMPTY_ROW = 17;
    private static final double HEAD_GREY = 0.92;

    private FormSheet() {}

    static void write(Pages pages, List<Entry> entries) throws IOException {
        PDStructureElement table = pages.structure().in(pages.structure().whole(), "Table");
        for (Entry entry : entries) {
            entry(pages, entry, pages.structure().in(table, "TR"));
        }
        pages.down(5);
    }

    private static void entry(Pages pages, Entry entry, PDStructureElement row) throws IOException {
        // A text to be read and ticked needs its room on the left, and no heavy letters.
        boolean toTick = entry.choices().size() == 1;
        Type type = toTick ? Type.TEXT : Type.STRONG;
        double asked = pages.width() * (toTick ? TICKED : ASKED);
        double room = pages.width() - asked;
        List<String> question = Breaks.broken(pages.fonts(), entry.asked(), type, asked - 8);
        List<String> hint =
                entry.hint().isEmpty() ? List.of() : Breaks.broken(pages.fonts(), entry.hint(), Type.CELL, asked - 8);
        List<List<String>> choices = new ArrayList<>();
        int choiceLines = 0;
        for (String choice : entry.choices()) {
            List<String> lines = Breaks.broken(pages.fonts(), choice, Type.NOTE, room - 2 * PAD - SQUARE - 6);
            choices.add(lines);
            choiceLines += lines.size();
        }
        double left = question.size() * type.lead() + hint.size() * Type.CELL.lead() + 2 * PAD;
        double right = choiceLines == 0 ? BOX : choiceLines * (Type.NOTE.lead() + 1.5) + 2 * PAD;
        double height = Math.max(left, right);
        pages.need(height + 1);
        double top = pages.y();
        pages.begin(Optional.empty());
        pages.rule(Pages.LEFT, top, Pages.LEFT + pages.width(), top, 0.3);
        if (choiceLines == 0) {
            pages.rule(Pages.LEFT + asked, top + 2, Pages.LEFT + asked, top + height - 2, 0.8);
            pages.rule(Pages.LEFT + pages.width(), top + 2, Pages.LEFT + pages.width(), top + height - 2, 0.8);
            pages.rule(Pages.LEFT + asked, top + height - 2, Pages.LEFT + pages.width(), top + height - 2, 0.8);
            pages.rule(Pages.LEFT + asked, top + 2, Pages.LEFT + pages.width(), top + 2, 0.8);
        }
        pages.end();
        pages.begin(Optional.of(pages.structure().in(row, "TH")));
        double y = top + PAD;
        for (String line : question) {
            pages.write(line, Pages.LEFT, y, type);
            y += type.lead();
        }
        for (String line : hint) {
            pages.write(line, Pages.LEFT, y, Type.CELL);
            y += Type.CELL.lead();
        }
        pages.end();
        choices(
                pages,
                choices,
                Pages.LEFT + asked + PAD,
                top + PAD,
                pages.structure().in(row, "TD"));
        pages.down(height);
    }

    private static void choices(Pages pages, List<List<String>> choices, double x, double top, PDStructureElement cell)
            throws IOException {
        double y = top;
        for (List<String> lines : choices) {
            pages.begin(Optional.empty());
            pages.box(x, y + 2, SQUARE, SQUARE, 1, 0.7);
            pages.end();
            pages.begin(Optional.of(cell));
            for (String line : lines) {
                pages.write(line, x + SQUARE + 6, y, Type.NOTE);
                y += Type.NOTE.lead() + 1.5;
            }
            pages.end();
        }
    }

    static void blank(Pages pages, List<String> head, int rows) throws IOException {
        double each = pages.width() / head.size();
        for (int row = -1; row < rows; row++) {
            if (row >= 0 && pages.left() < EMPTY_ROW) {
                pages.turn();
                row(pages, head, each);
            }
            row(pages, row < 0 ? head : List.of(), each);
        }
        pages.down(6);
    }

    private static void row(Pages pages, List<String> texts, double each) throws IOException {
        double right = Pages.LEFT + pages.width();
        pages.begin(Optional.empty());
        if (!texts.isEmpty()) {
            pages.box(Pages.LEFT, pages.y(), pages.width(), EMPTY_ROW, HEAD_GREY, 0);
        }
        pages.rule(Pages.LEFT, pages.y(), right, pages.y(), 0.5);
        pages.rule(Pages.LEFT, pages.y() + EMPTY_ROW, right, pages.y() + EMPTY_ROW, 0.5);
        for (double x = Pages.LEFT; x <= right + 0.1; x += each) {
            pages.rule(x, pages.y(), x, pages.y() + EMPTY_ROW, 0.5);
        }
        pages.end();
        PDStructureElement line = pages.structure().in(pages.structure().whole(), "P");
        pages.begin(Optional.of(line));
        for (int i = 0; i < texts.size(); i++) {
            pages.write(texts.get(i), Pages.LEFT + i * each + PAD, pages.y() + PAD, Type.HEAD);
        }
        pages.end();
        pages.down(EMPTY_ROW);
    }
}
