package railtrim.window.picture;

import java.util.List;
import java.util.Locale;
import railtrim.parts.Bands;
import railtrim.parts.Bands.Colour;
import railtrim.procedure.Words;

/** How the bands of a resistor are read (IEC 60062): one that is worked through, and the digit of each colour. */
record BandGuide(Words words) {
    private static final double OHMS = 680;
    private static final double TOLERANCE = 0.05;
    private static final double BODY = 30;
    private static final double ROW = 20;
    /** From the middle of the example to what is said of its bands, clear of its body. */
    private static final double INNER = 22;

    private static final double OUTER = 40;
    private static final List<String> MEANINGS = List.of("first", "second", "zeros", "tolerance");
    private static final List<Colour> DIGITS = List.of(
            Colour.BLACK,
            Colour.BROWN,
            Colour.RED,
            Colour.ORANGE,
            Colour.YELLOW,
            Colour.GREEN,
            Colour.BLUE,
            Colour.VIOLET,
            Colour.GREY,
            Colour.WHITE);

    /** @param top where it begins; what has no room below is left out */
    void drawOn(Sheet sheet, double top) {
        sheet.writeWithin(
                words.of("picture.bands.title"), 8, top, sheet.width() - 16, Align.LEFT, Type.STRONG, Ink.TEXT);
        double chart = example(sheet, top + 24) + 16;
        if (chart + 5 * ROW + 3 * Type.SMALL.lead() <= sheet.height()) {
            digits(sheet, chart);
            sheet.writeLines(
                    words.of("picture.bands.five"),
                    8,
                    chart + 5 * ROW + 12,
                    sheet.width() - 16,
                    3,
                    Align.LEFT,
                    Type.SMALL,
                    Ink.QUIET);
        }
    }

    /** @return the middle of the line below it */
    private double example(Sheet sheet, double y) {
        double left = 18;
        double wide = 92;
        double middle = y + OUTER;
        sheet.line(left - 10, middle, left + wide + 10, middle, Ink.WIRE);
        sheet.box(left, middle - BODY / 2, wide, BODY, 8, Ink.RESISTOR_BODY);
        List<Colour> bands = Bands.of(OHMS, TOLERANCE);
        double[] lines = {middle - OUTER, middle - INNER, middle + INNER, middle + OUTER};
        for (int i = 0; i < bands.size(); i++) {
            double x = left + (i == bands.size() - 1 ? wide - 22 : 12 + i * 18);
            sheet.box(x, middle - BODY / 2, 9, BODY, 0, ink(bands.get(i)));
            double at = lines[i];
            double edge = i < 2 ? middle - BODY / 2 : middle + BODY / 2;
            sheet.strokes(Ink.FINE, x + 4.5, edge, x + 4.5, at, left + wide + 18, at);
            sheet.writeWithin(
                    words.of("picture.bands." + MEANINGS.get(i), name(bands.get(i))),
                    left + wide + 22,
                    at,
                    sheet.width() - left - wide - 28,
                    Align.LEFT,
                    Type.SMALL,
                    Ink.TEXT);
        }
        return lines[lines.length - 1] + ROW;
    }

    private void digits(Sheet sheet, double top) {
        double column = (sheet.width() - 16) / 2;
        for (int i = 0; i < DIGITS.size(); i++) {
            double x = 12 + (i / 5) * column;
            double y = top + (i % 5) * ROW;
            sheet.box(x - 1, y - 8, 16, 16, 3, Ink.PART);
            sheet.box(x, y - 7, 14, 14, 2, ink(DIGITS.get(i)));
            sheet.write(String.valueOf(i), x + 24, y, Align.LEFT, Type.STRONG, Ink.TEXT);
            sheet.write(name(DIGITS.get(i)), x + 40, y, Align.LEFT, Type.PLAIN, Ink.TEXT);
        }
    }

    private static Ink ink(Colour colour) {
        return Ink.valueOf("BAND_" + colour);
    }

    private String name(Colour colour) {
        return words.of("picture.band." + colour.name().toLowerCase(Locale.ROOT));
    }
}
