package railtrim.report;

import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import railtrim.report.Checklist.Block;
import railtrim.report.Checklist.Section;

/** The checklist as Markdown (CommonMark with tables). Text is escaped: it can make no link, no heading and no HTML. */
final class MarkdownReport {
    private final StringBuilder page = new StringBuilder();

    private MarkdownReport() {}

    static String write(Checklist checklist, String missingWords) {
        MarkdownReport report = new MarkdownReport();
        report.heading(1, checklist.title(), checklist.mark());
        if (!checklist.missing().isEmpty()) {
            report.paragraph(missingWords);
            report.list(checklist.missing(), "- ");
        }
        checklist.sections().forEach(report::section);
        return report.page.toString();
    }

    private void section(Section section) {
        heading(section.level(), section.title(), section.mark());
        section.blocks().forEach(this::block);
    }

    private void block(Block block) {
        if (block instanceof Block.Says says) {
            paragraph(says.text());
        } else if (block instanceof Block.Points points) {
            list(points.texts(), "- ");
        } else if (block instanceof Block.Deeds deeds) {
            list(deeds.texts(), "1. ");
        } else if (block instanceof Block.Pairs pairs) {
            list(pairs.pairs(), pair -> "- **" + escape(pair.name()) + "**: " + escape(pair.value()));
        } else if (block instanceof Block.Grid grid) {
            grid(grid);
        } else if (block instanceof Block.Picture picture) {
            paragraph(picture.inWords());
        }
    }

    private void heading(int level, String title, String mark) {
        page.append("#".repeat(level)).append(' ').append(escape(title));
        if (!mark.isEmpty()) {
            page.append(" (").append(escape(mark)).append(')');
        }
        page.append("\n\n");
    }

    private void paragraph(String text) {
        page.append(escape(text)).append("\n\n");
    }

    private void list(List<String> texts, String bullet) {
        list(texts, text -> bullet + escape(text));
    }

    private <T> void list(List<T> items, Function<T, String> written) {
        items.forEach(item -> page.append(written.apply(item)).append('\n'));
        page.append('\n');
    }

    private void grid(Block.Grid grid) {
        row(grid.head());
        page.append(grid.head().stream().map(column -> "---").collect(Collectors.joining(" | ", "| ", " |\n")));
        grid.rows().forEach(this::row);
        page.append('\n');
    }

    private void row(List<String> cells) {
        page.append(cells.stream().map(MarkdownReport::escape).collect(Collectors.joining(" | ", "| ", " |\n")));
    }

    /** Where many readers make a link by themselves, even of escaped text: an address, a name in the web, a mailbox. */
    private static final Pattern LINK_START = Pattern.compile("://|(?i:www)(?=\\.)|(?<=\\S)(?=@)");

    /**
     * So that the text reads as itself wherever it stands: marks that mean something to Markdown get a backslash, the three HTML ones become
     * references, and where a reader would make a link by itself a space is put in, as no mark keeps it from doing so.
     */
    static String escape(String text) {
        String unlinked = LINK_START.matcher(text).replaceAll("$0 ");
        StringBuilder escaped = new StringBuilder(unlinked.length() + 16);
        for (int i = 0; i < unlinked.length(); i++) {
            char mark = unlinked.charAt(i);
            switch (mark) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '\\', '`', '*', '_', '{', '}', '[', ']', '#', '|', '~', '!', '$', '^' ->
                    escaped.append('\\').append(mark);
                case '.', ')' ->
                    escaped.append(listNumber(unlinked, i) ? "\\" : "").append(mark);
                case '-', '+', '=' -> escaped.append(i == 0 ? "\\" : "").append(mark);
                default -> escaped.append(mark);
            }
        }
        return escaped.toString();
    }

    /** "1. " or "1) " at the beginning would start a list. */
    private static boolean listNumber(String text, int index) {
        return index > 0
                && text.substring(0, index).chars().allMatch(Character::isDigit)
                && (index + 1 == text.length() || text.charAt(index + 1) == ' ');
    }
}
