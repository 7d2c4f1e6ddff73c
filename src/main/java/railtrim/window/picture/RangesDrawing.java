package railtrim.window.picture;

import java.util.List;
import railtrim.procedure.Words;
import railtrim.window.picture.Detail.Area;

/** The table in the meter’s manual: what to look for in it, and the rows copied so far. */
record RangesDrawing(RangesData data, Words words) implements Drawing {
    private static final double LEFT = 10;
    private static final double ROW = 22;
    private static final double TOP = 40;
    private static final int MOST = 3;
    private static final List<String> COLUMNS = List.of("range", "digit", "accuracy");

    @Override
    public void drawOn(Sheet sheet) {
        double room = sheet.width() - 2 * LEFT;
        sheet.writeWithin(words.of("picture.ranges.title"), 8, 14, room, Align.LEFT, Type.STRONG, Ink.TEXT);
        double y = table(sheet, "picture.ranges.volts", data.volts(), "6 V, 1 mV, ±(0.5 % + 3)", TOP);
        y = table(sheet, "picture.ranges.ohms", data.ohms(), "600 Ω, 0.1 Ω, ±(0.9 % + 2)", y + 14);
        for (String column : COLUMNS) {
            if (y + 2 * Type.SMALL.lead() < sheet.height()) {
                y = sheet.writeLines(
                                words.of("picture.ranges.says." + column),
                                LEFT,
                                y + 14,
                                room,
                                2,
                                Align.LEFT,
                                Type.SMALL,
                                Ink.QUIET)
                        - 6;
            }
        }
    }

    /** @return below it */
    private double table(Sheet sheet, String name, List<List<String>> rows, String example, double top) {
        double wide = sheet.width() - 2 * LEFT;
        sheet.writeWithin(words.of(name), LEFT, top, wide, Align.LEFT, Type.PLAIN, Ink.TEXT);
        double y = top + 14;
        int shown = Math.max(1, Math.min(MOST, rows.size()));
        sheet.box(LEFT, y, wide, ROW * (shown + 1), 3, Ink.PART);
        for (int i = 0; i < COLUMNS.size(); i++) {
            write(sheet, i, words.of("picture.ranges." + COLUMNS.get(i)), y + ROW / 2, Type.SMALL, Ink.QUIET);
        }
        if (rows.isEmpty()) {
            sheet.line(LEFT, y + ROW, LEFT + wide, y + ROW, Ink.FINE);
            String[] cells = example.split(", ");
            for (int i = 0; i < cells.length; i++) {
                write(sheet, i, cells[i], y + 1.5 * ROW, Type.PLAIN, Ink.QUIET);
            }
            sheet.writeWithin(
                    words.of("picture.ranges.example"), LEFT + wide, top, wide / 2, Align.RIGHT, Type.SMALL, Ink.QUIET);
        }
        for (int row = 0; row < Math.min(MOST, rows.size()); row++) {
            double at = y + ROW * (row + 1);
            sheet.line(LEFT, at, LEFT + wide, at, Ink.FINE);
            for (int i = 0; i < COLUMNS.size(); i++) {
                write(sheet, i, rows.get(row).get(i), at + ROW / 2, Type.STRONG, Ink.TEXT);
            }
            sheet.detail(String.join(", ", rows.get(row)), new Area(LEFT, at, wide, ROW));
        }
        return y + ROW * (shown + 1);
    }

    private static void write(Sheet sheet, int column, String text, double y, Type type, Ink ink) {
        double wide = sheet.width() - 2 * LEFT;
        double[] starts = {0.03, 0.3, 0.55, 0.99};
        double room = (starts[column + 1] - starts[column]) * wide - 4;
        sheet.writeWithin(text, LEFT + starts[column] * wide, y, room, Align.LEFT, type, ink);
    }

    @Override
    public String says() {
        StringBuilder said = new StringBuilder(words.of("picture.ranges.says"));
        data.volts()
                .forEach(row -> said.append(' ').append(String.join(", ", row)).append('.'));
        data.ohms()
                .forEach(row -> said.append(' ').append(String.join(", ", row)).append('.'));
        return said.toString();
    }
}
