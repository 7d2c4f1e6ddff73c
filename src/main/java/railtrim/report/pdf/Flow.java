package railtrim.report.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import railtrim.report.Checklist.Block;
import railtrim.report.Checklist.Pair;
import railtrim.report.Checklist.Section;

/** Writes headings, texts, lists, tables and pictures one below the other. */
final class Flow {
    /** Room for a line that leads in a table, the table's head and its first row, points. */
    private static final double LEAD_IN = 80;

    private static final double DRAWN = 0.75;
    private static final double INDENT = 14;
    private static final double NAMES = 0.34;

    private final Pages pages;

    Flow(Pages pages) {
        this.pages = pages;
    }

    /** @param leadsIn whether it says what the table below it is, and must not be left alone at the foot of a page */
    void block(Block block, boolean leadsIn) throws IOException {
        if (leadsIn) {
            pages.need(LEAD_IN);
        }
        if (block instanceof Block.Says says) {
            paragraph(says.text(), Type.TEXT, "P");
        } else if (block instanceof Block.Points points) {
            list(points.texts(), false);
        } else if (block instanceof Block.Deeds deeds) {
            list(deeds.texts(), true);
        } else if (block instanceof Block.Pairs pairs) {
            pairs(pairs.pairs());
        } else if (block instanceof Block.Grid grid) {
            Optional<Table> table = Table.of(pages, grid.head(), grid.rows());
            if (table.isPresent()) {
                table.get().write();
            }
        } else if (block instanceof Block.Picture picture) {
            picture(picture);
        } else if (block instanceof Block.Form form) {
            FormSheet.write(pages, form.entries());
        } else if (block instanceof Block.Blank blank) {
            FormSheet.blank(pages, blank.head(), blank.rows());
        } else if (block instanceof Block.PageEnd) {
            pages.need(pages.room());
        }
    }

    /** What a step takes on paper, its heading too, points; more than there is on any page where it holds what has no fixed height. */
    double height(Section section) throws IOException {
        double height = broken(section.title(), Type.STEP, pages.width()).size() * Type.STEP.lead() + 9;
        for (Block block : section.blocks()) {
            if (block instanceof Block.Says says) {
                height += broken(says.text(), Type.TEXT, pages.width()).size() * Type.TEXT.lead() + 3.5;
            } else if (block instanceof Block.Points points) {
                height += 3;
                for (String text : points.texts()) {
                    height += broken(text, Type.TEXT, pages.width() - INDENT).size() * Type.TEXT.lead() + 1.5;
                }
            } else if (block instanceof Block.Grid grid) {
                Optional<Table> table = Table.of(pages, grid.head(), grid.rows());
                height += table.isPresent() ? table.get().height() : 0;
            } else {
                return Double.MAX_VALUE;
            }
        }
        return height;
    }

    PDStructureElement heading(String text, String mark, Type type, String tag) throws IOException {
        return heading(text, mark, type, tag, List.of());
    }

    /** A heading stays with the first of the blocks that follow; {@code mark} stands after it in a frame. */
    PDStructureElement heading(String text, String mark, Type type, String tag, List<Block> follows)
            throws IOException {
        List<String> lines = broken(text, type, pages.width());
        boolean picture = !follows.isEmpty() && follows.get(0) instanceof Block.Picture;
        double next = picture ? room((Block.Picture) follows.get(0)) : LEAD_IN;
        pages.need(lines.size() * type.lead() + next + 20);
        if (!pages.fresh()) {
            pages.down(type == Type.STEP ? 7 : 11);
        }
        if (type == Type.PART) {
            pages.begin(Optional.empty());
            pages.rule(Pages.LEFT, pages.y(), Pages.LEFT + pages.width(), pages.y(), 1.4);
            pages.end();
            pages.down(3);
        }
        PDStructureElement element = pages.structure().in(pages.structure().whole(), tag);
        lines(lines, type, Pages.LEFT, element);
        if (!mark.isEmpty()) {
            mark(mark, lines.get(lines.size() - 1), type, element);
        }
        pages.down(2);
        return element;
    }

    private void mark(String mark, String after, Type type, PDStructureElement heading) throws IOException {
        double width = Breaks.width(pages.fonts(), mark, Type.HEAD);
        double x = Pages.LEFT + Breaks.width(pages.fonts(), after, type) + 8;
        double top = pages.y() - type.lead() / 2 - Type.HEAD.lead() / 2;
        if (x + width + 6 > Pages.LEFT + pages.width()) {
            x = Pages.LEFT + 3;
            top = pages.y() + 1;
            pages.down(Type.HEAD.lead() + 3);
        }
        pages.begin(Optional.empty());
        pages.box(x - 3, top - 1, width + 6, Type.HEAD.lead() + 1, 1, 0.8);
        pages.end();
        pages.begin(Optional.of(heading));
        pages.write(mark, x, top, Type.HEAD);
        pages.end();
    }

    void paragraph(String text, Type type, String tag) throws IOException {
        PDStructureElement element = pages.structure().in(pages.structure().whole(), tag);
        lines(broken(text, type, pages.width()), type, Pages.LEFT, element);
        pages.down(3.5);
    }

    private void list(List<String> texts, boolean numbered) throws IOException {
        PDStructureElement list = pages.structure().in(pages.structure().whole(), "L");
        for (int i = 0; i < texts.size(); i++) {
            PDStructureElement item = pages.structure().in(list, "LI");
            List<String> lines = broken(texts.get(i), Type.TEXT, pages.width() - INDENT);
            pages.need(Math.min(lines.size(), 3) * Type.TEXT.lead());
            pages.begin(Optional.of(pages.structure().in(item, "Lbl")));
            pages.write(numbered ? (i + 1) + "." : "•", Pages.LEFT + 2, pages.y(), Type.TEXT);
            pages.end();
            lines(lines, Type.TEXT, Pages.LEFT + INDENT, pages.structure().in(item, "LBody"));
            pages.down(1.5);
        }
        pages.down(3);
    }

    private void pairs(List<Pair> pairs) throws IOException {
        PDStructureElement table = pages.structure().in(pages.structure().whole(), "Table");
        double names = pages.width() * NAMES;
        for (Pair pair : pairs) {
            List<String> name = broken(pair.name(), Type.STRONG, names - 8);
            List<String> value = broken(pair.value(), Type.TEXT, pages.width() - names);
            pages.need(Math.min(Math.max(name.size(), value.size()), 6) * Type.TEXT.lead() + 3);
            PDStructureElement row = pages.structure().in(table, "TR");
            pages.begin(Optional.empty());
            pages.rule(Pages.LEFT, pages.y(), Pages.LEFT + pages.width(), pages.y(), 0.3);
            pages.end();
            pages.down(1.5);
            pages.begin(Optional.of(pages.structure().in(row, "TH")));
            for (int i = 0; i < name.size(); i++) {
                pages.write(name.get(i), Pages.LEFT, pages.y() + i * Type.STRONG.lead(), Type.STRONG);
            }
            pages.end();
            double began = pages.y();
            boolean stayed = value.size() * Type.TEXT.lead() <= pages.left();
            lines(value, Type.TEXT, Pages.LEFT + names, pages.structure().in(row, "TD"));
            double nameEnd = began + name.size() * Type.STRONG.lead();
            if (stayed && pages.y() < nameEnd) {
                pages.down(nameEnd - pages.y());
            }
            pages.down(1);
        }
        pages.down(5);
    }

    private double scale(Block.Picture picture) {
        return Math.min(DRAWN, pages.width() / picture.drawing().width());
    }

    /** What a picture and the beginning of its words take. */
    private double room(Block.Picture picture) throws IOException {
        int caption = broken(picture.inWords(), Type.NOTE, pages.width()).size();
        return picture.drawing().height() * scale(picture) + Math.min(caption, 8) * Type.NOTE.lead() + 8;
    }

    private void picture(Block.Picture picture) throws IOException {
        double scale = scale(picture);
        double height = picture.drawing().height() * scale;
        List<String> caption = broken(picture.inWords(), Type.NOTE, pages.width());
        pages.need(room(picture));
        pages.down(2);
        PDStructureElement figure = pages.structure().in(pages.structure().whole(), "Figure");
        figure.setAlternateDescription(picture.inWords());
        pages.begin(Optional.of(figure));
        new Art(pages, Pages.LEFT, pages.y(), scale).draw(picture.drawing());
        pages.end();
        pages.down(height + 2);
        lines(
                caption,
                Type.NOTE,
                Pages.LEFT,
                pages.structure().in(pages.structure().whole(), "Caption"));
        pages.down(5);
    }

    List<String> broken(String text, Type type, double room) throws IOException {
        return Breaks.broken(pages.fonts(), text, type, room);
    }

    private void lines(List<String> lines, Type type, double x, PDStructureElement element) throws IOException {
        for (String line : lines) {
            pages.need(type.lead());
            pages.begin(Optional.of(element));
            pages.write(line, x, pages.y(), type);
            pages.end();
            pages.down(type.lead());
        }
    }
}
