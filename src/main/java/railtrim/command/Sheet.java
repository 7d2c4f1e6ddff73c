package railtrim.command;

import java.util.ArrayList;
import java.util.List;

/** Plain lines for a terminal: labels with values in one column, tables with aligned columns, sentences. */
final class Sheet {
    private static final String GAP = "   ";
    private final List<String> lines = new ArrayList<>();
    private final List<List<String>> pairs = new ArrayList<>();

    /** A label and its value; neighbouring pairs are aligned with each other. */
    Sheet pair(String label, String value) {
        pairs.add(List.of(label, value));
        return this;
    }

    Sheet say(String sentence) {
        closePairs();
        lines.add(sentence);
        return this;
    }

    Sheet blank() {
        return say("");
    }

    /** Rows under their heads; the first {@code left} columns are words and begin at the left, the others are numbers and end at the right. */
    Sheet table(int left, List<String> heads, List<List<String>> rows) {
        closePairs();
        List<List<String>> all = new ArrayList<>();
        all.add(heads);
        all.addAll(rows);
        align(all, left);
        return this;
    }

    List<String> lines() {
        closePairs();
        return List.copyOf(lines);
    }

    private void closePairs() {
        if (!pairs.isEmpty()) {
            align(List.copyOf(pairs), 2);
            pairs.clear();
        }
    }

    private void align(List<List<String>> rows, int left) {
        int columns = 0;
        for (List<String> row : rows) {
            columns = Math.max(columns, row.size());
        }
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int column = 0; column < row.size(); column++) {
                widths[column] = Math.max(widths[column], width(row.get(column)));
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < row.size(); column++) {
                String cell = row.get(column);
                String space = " ".repeat(widths[column] - width(cell));
                line.append(column == 0 ? "" : GAP).append(column < left ? cell + space : space + cell);
            }
            lines.add(line.toString().stripTrailing());
        }
    }

    private static int width(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
