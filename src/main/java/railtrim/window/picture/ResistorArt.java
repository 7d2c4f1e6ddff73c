package railtrim.window.picture;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import railtrim.parts.Bands;
import railtrim.parts.Resistors;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.window.picture.ResistorsData.Row;

/** How a resistor, or two that are joined, are drawn with their bands (IEC 60062) and named. */
record ResistorArt(Words words) {
    /** The wire at each end, by the thickness of a body. */
    private static final double WIRE = 0.77;
    /** Two side by side: from the one to the other, by the thickness of a body. */
    private static final double APART = 1.4;

    /**
     * From left to right, with the middle of all on the height {@code y}.
     *
     * @param thick of one body
     */
    void draw(Sheet sheet, Row row, double left, double y, double wide, double thick) {
        if (row.arrangement() == Resistors.Arrangement.PARALLEL) {
            double off = APART * thick / 2;
            join(sheet, left, left + thick * 0.9, y, off);
            join(sheet, left + wide, left + wide - thick * 0.9, y, off);
            for (int i = 0; i < row.bands().size(); i++) {
                part(sheet, row.bands().get(i), left + thick * 0.9, y - off + 2 * off * i, wide - 1.8 * thick, thick);
            }
            return;
        }
        double each = wide / row.bands().size();
        for (int i = 0; i < row.bands().size(); i++) {
            part(sheet, row.bands().get(i), left + i * each, y, each, thick);
        }
    }

    /** The ends of two side by side come together. */
    private static void join(Sheet sheet, double end, double inner, double y, double off) {
        double corner = (end + inner) / 2;
        sheet.line(end, y, corner, y, Ink.WIRE);
        sheet.strokes(Ink.WIRE, inner, y - off, corner, y - off, corner, y + off, inner, y + off);
    }

    private static void part(Sheet sheet, List<Bands.Colour> bands, double x, double y, double wide, double thick) {
        double bodyLeft = x + WIRE * thick;
        double bodyWide = wide - 2 * WIRE * thick;
        sheet.line(x, y, x + wide, y, Ink.WIRE);
        sheet.box(bodyLeft, y - thick / 2, bodyWide, thick, thick * 0.4, Ink.RESISTOR_BODY);
        if (bands.isEmpty()) {
            return;
        }
        int count = bands.size();
        double edge = thick * 0.46;
        double step = (bodyWide - 2.7 * edge) / count;
        double band = Math.min(thick * 0.4, step * 0.6);
        for (int i = 0; i < count; i++) {
            // The last band, the tolerance, stands apart.
            double at = i == count - 1 ? bodyLeft + bodyWide - edge - band : bodyLeft + edge + i * step;
            sheet.box(at, y - thick / 2, band, thick, 0, Ink.valueOf("BAND_" + bands.get(i)));
        }
    }

    /** "680 Ω", "620 Ω + 62 Ω". */
    String named(Row row) {
        String sign = words.of("picture.resistors." + row.arrangement().id());
        return row.values().stream().map(Display::part).collect(Collectors.joining(" " + sign + " "));
    }

    /** The bands of each part in words. */
    String colours(Row row) {
        return row.bands().stream().map(this::colours).collect(Collectors.joining("; "));
    }

    String colours(List<Bands.Colour> bands) {
        if (bands.isEmpty()) {
            return words.of("picture.resistors.printed");
        }
        return bands.stream()
                .map(colour -> words.of("picture.band." + colour.name().toLowerCase(Locale.ROOT)))
                .collect(Collectors.joining(" "));
    }
}
