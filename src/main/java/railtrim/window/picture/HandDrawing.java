package railtrim.window.picture;

import java.util.OptionalDouble;
import railtrim.parts.Resistors;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.RailSign;
import railtrim.window.picture.Detail.Area;
import railtrim.window.picture.ResistorsData.Row;

/**
 * The resistor that was chosen as it lies on the table, the probes at its ends, and its bands to hold against the one in hand.
 *
 * @param measured ohms, once they are read
 * @param sign how the meter shows the voltages
 */
record HandDrawing(Row row, OptionalDouble measured, RailSign sign, Words words) implements Drawing {
    private static final double LEFT = 20;
    private static final double BODY = 30;
    private static final double MIDDLE = 92;
    /** From the middle of the parts to the probes’ tags. */
    private static final double TO_TAGS = 76;

    @Override
    public void drawOn(Sheet sheet) {
        double wide = sheet.width() - 2 * LEFT;
        sheet.writeWithin(words.of("picture.hand.title"), 8, 14, sheet.width() - 16, Align.LEFT, Type.STRONG, Ink.TEXT);
        ResistorArt art = new ResistorArt(words);
        art.draw(sheet, row, LEFT, MIDDLE, wide, thick());
        ProbeTag tag = new ProbeTag(words);
        tag.draw(sheet, Spot.Probe.RED, LEFT + 22, MIDDLE + TO_TAGS, LEFT, MIDDLE);
        tag.draw(sheet, Spot.Probe.BLACK, LEFT + wide - 26, MIDDLE + TO_TAGS, LEFT + wide, MIDDLE);
        sheet.detail(says(), new Area(LEFT, MIDDLE - 1.4 * BODY, wide, 2.8 * BODY));
        double y = MIDDLE + TO_TAGS + 44;
        for (int i = 0; i < row.values().size(); i++) {
            y = named(sheet, art, i, y);
        }
        if (measured.isPresent()) {
            String ohms = Display.ohms(measured.getAsDouble());
            line(sheet, words.of("picture.hand.measured", ohms), y, Type.STRONG, Ink.TEXT);
            y += Type.STRONG.lead() + 4;
        }
        sheet.writeLines(
                words.of(
                        "picture.hand.gives",
                        sign.volts(row.voltage()),
                        sign.volts(row.lowest()),
                        sign.volts(row.highest())),
                LEFT,
                y,
                wide,
                3,
                Align.LEFT,
                Type.SMALL,
                Ink.QUIET);
    }

    /** Two in a row have half the room each. */
    private double thick() {
        return row.arrangement() == Resistors.Arrangement.SERIES ? BODY * 0.7 : BODY;
    }

    /** The value of one part, with its bands below it. @return where the next line goes */
    private double named(Sheet sheet, ResistorArt art, int part, double y) {
        double wide = sheet.width() - 2 * LEFT;
        String colours = art.colours(row.bands().get(part));
        line(sheet, Display.part(row.values().get(part)), y, Type.STRONG, Ink.TEXT);
        double below = y + Type.PLAIN.lead();
        sheet.writeLines(colours, LEFT, below, wide, 2, Align.LEFT, Type.PLAIN, Ink.TEXT);
        return below + sheet.linesOf(colours, wide, 2, Type.PLAIN) * Type.PLAIN.lead() + 8;
    }

    private void line(Sheet sheet, String text, double y, Type type, Ink ink) {
        sheet.writeWithin(text, LEFT, y, sheet.width() - 2 * LEFT, Align.LEFT, type, ink);
    }

    @Override
    public String says() {
        ResistorArt art = new ResistorArt(words);
        String part = words.of("picture.hand.says", art.named(row), art.colours(row));
        return measured.isEmpty()
                ? part
                : part + " " + words.of("picture.hand.measured", Display.ohms(measured.getAsDouble())) + ".";
    }
}
