package railtrim.window.picture;

import java.util.List;
import railtrim.procedure.Slip;
import railtrim.procedure.Words;
import railtrim.window.picture.Detail.Area;

/** A table of slips in two groups, harmful ones first; each row has a sign of its own shape and the voltage it leads to. */
record FaultsDrawing(FaultsData data, Words words) implements Drawing {
    private static final double TOP = 46;
    private static final double SIGN = 17;
    private static final double NAME = 32;
    private static final double MOST_ROW = 33;
    private static final double TWO_LINES = 32;
    private static final double GAP = 8;

    @Override
    public void drawOn(Sheet sheet) {
        sheet.write(words.of("picture.faults.title"), 8, 13, Align.LEFT, Type.STRONG, Ink.TEXT);
        if (data.slips().isEmpty()) {
            sheet.writeLines(
                    words.of("picture.faults.empty"), 8, 38, sheet.width() - 16, 4, Align.LEFT, Type.PLAIN, Ink.QUIET);
            return;
        }
        sheet.writeWithin(limit(), 8, 31, sheet.width() - 16, Align.LEFT, Type.PLAIN, Ink.QUIET);
        int groups = (data.harmful().isEmpty() ? 0 : 1) + (data.harmless().isEmpty() ? 0 : 1);
        double room = sheet.height() - TOP - 8 - GAP;
        double row = Math.min(MOST_ROW, room / (data.slips().size() + groups));
        double y = group(sheet, "picture.faults.harm", data.harmful(), TOP, row);
        group(sheet, "picture.faults.fine", data.harmless(), y + GAP, row);
    }

    private String limit() {
        String key = data.rated() ? "picture.faults.limit.rated" : "picture.faults.limit.stock";
        return data.limit().isPresent() ? words.of(key, volts(data.limit().getAsDouble())) : "";
    }

    /** @return where the next group begins */
    private double group(Sheet sheet, String head, List<Slip> slips, double top, double row) {
        if (slips.isEmpty()) {
            return top - GAP;
        }
        double right = sheet.width() - 8;
        double y = top + row / 2;
        sheet.writeWithin(words.of(head), 8, y, right - 8, Align.LEFT, Type.STRONG, Ink.TEXT);
        sheet.line(8, y + Math.min(row / 2, 10), right, y + Math.min(row / 2, 10), Ink.FINE);
        for (Slip slip : slips) {
            y += row;
            sign(sheet, slip.harmful(), y);
            String output = output(slip);
            sheet.write(output, right, y, Align.RIGHT, Type.STRONG, Ink.TEXT);
            name(sheet, slip.told(words), y, right - NAME - sheet.widthOf(output, Type.STRONG) - 8, row);
            sheet.detail(said(slip), new Area(SIGN - 10, y - row / 2 + 1, right + 2 - SIGN + 10, row - 2));
        }
        return y + row / 2;
    }

    private static void name(Sheet sheet, String told, double y, double room, double row) {
        int most = row >= TWO_LINES ? 2 : 1;
        int lines = sheet.linesOf(told, room, most, Type.PLAIN);
        double first = y - (lines - 1) * Type.PLAIN.lead() / 2;
        sheet.writeLines(told, NAME, first, room, most, Align.LEFT, Type.PLAIN, Ink.TEXT);
    }

    private static void sign(Sheet sheet, boolean harmful, double y) {
        if (harmful) {
            sheet.polygon(Ink.BAD, SIGN, y - 7, SIGN + 8, y + 6, SIGN - 8, y + 6);
            sheet.line(SIGN, y - 2, SIGN, y + 1, Ink.BAD);
            sheet.line(SIGN, y + 4, SIGN, y + 4, Ink.BAD);
        } else {
            sheet.disc(SIGN, y, 6.5, Ink.GOOD_FILL);
            sheet.strokes(Ink.GOOD, SIGN - 3, y, SIGN - 1, y + 3, SIGN + 4, y - 3);
        }
    }

    private String output(Slip slip) {
        return slip.output(words).orElseGet(() -> volts(slip.volts().getAsDouble()));
    }

    private String volts(double magnitude) {
        return data.sign().volts(magnitude);
    }

    @Override
    public String says() {
        if (data.slips().isEmpty()) {
            return words.of("picture.faults.empty");
        }
        StringBuilder said = new StringBuilder(words.of("picture.faults.says"));
        if (data.limit().isPresent()) {
            said.append(' ').append(limit());
        }
        for (Slip slip : data.slips()) {
            said.append(' ').append(said(slip));
        }
        return said.toString();
    }

    private String said(Slip slip) {
        String key = slip.harmful() ? "picture.faults.says.harm" : "picture.faults.says.fine";
        return words.of(key, slip.told(words), output(slip));
    }
}
