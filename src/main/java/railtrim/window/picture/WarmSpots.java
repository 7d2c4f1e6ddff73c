package railtrim.window.picture;

import railtrim.circuit.Outline;
import railtrim.procedure.Words;

/** Where a temperature is taken: matt tape in the middle of the chip and on the regulator's metal, wider than what the meter sees. */
record WarmSpots(Words words) {
    private static final double HALF = 46;
    private static final double TAPE = 17;
    private static final double SEEN = 8;

    /** For those who do not see it. */
    String says() {
        return words.of("picture.heat.where")
                + ". " + said("picture.board.chip", "picture.heat.spot.chip")
                + " " + said("picture.divider.regulator", "picture.heat.spot.regulator");
    }

    private String said(String name, String how) {
        return words.of("picture.says.value", words.of(name), words.of(how));
    }

    void drawOn(Sheet sheet, double top, double bottom) {
        double part = (bottom - top) / 2;
        double x = Math.max(HALF + 24, sheet.width() * 0.27);
        chip(sheet, x, top + part / 2);
        regulator(sheet, x, top + part * 1.5);
    }

    private void chip(Sheet sheet, double x, double y) {
        for (int i = -3; i <= 3; i++) {
            double at = i * 11.5;
            sheet.line(x + at, y - HALF - 7, x + at, y + HALF + 7, Ink.FINE);
            sheet.line(x - HALF - 7, y + at, x + HALF + 7, y + at, Ink.FINE);
        }
        sheet.box(x - HALF, y - HALF, 2 * HALF, 2 * HALF, 3, Ink.PART);
        spot(sheet, x, y);
        told(sheet, x, y, "picture.board.chip", "picture.heat.spot.chip");
    }

    private void regulator(Sheet sheet, double x, double y) {
        OutlineShape.of(Outline.TO_263).draw(sheet, x, y + 8, 0.95);
        spot(sheet, x, y - 2);
        told(sheet, x, y - 2, "picture.divider.regulator", "picture.heat.spot.regulator");
    }

    private static void spot(Sheet sheet, double x, double y) {
        sheet.box(x - TAPE, y - TAPE, 2 * TAPE, 2 * TAPE, 2, Ink.WARM_FILL);
        sheet.disc(x, y, SEEN, Ink.RED_PROBE_RING);
    }

    private void told(Sheet sheet, double x, double y, String name, String how) {
        double left = x + HALF + 26;
        sheet.line(x + SEEN, y, left - 6, y, Ink.FINE);
        double next = sheet.writeLines(
                words.of(name), left, y, sheet.width() - left - 4, 1, Align.LEFT, Type.STRONG, Ink.TEXT);
        sheet.writeLines(words.of(how), left, next, sheet.width() - left - 4, 5, Align.LEFT, Type.SMALL, Ink.TEXT);
        sheet.detail(said(name, how), new Detail.Area(x - TAPE, y - TAPE, 2 * TAPE, 2 * TAPE));
    }
}
