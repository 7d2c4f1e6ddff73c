package railtrim.window.picture;

import java.util.Optional;
import railtrim.procedure.Words;
import railtrim.window.picture.Detail.Area;

/** The meter in its two trials: volts on a fresh cell, ohms with the tips pressed together, each with what it showed. */
record MeterDrawing(MeterData data, Words words) implements Drawing {
    private static final double LEFT = 10;
    private static final double WIDTH = 108;
    private static final double HEIGHT = 116;
    private static final double RIGHT = LEFT + WIDTH;

    @Override
    public void drawOn(Sheet sheet) {
        sheet.writeWithin(
                words.of("picture.meter.title"), 8, 14, sheet.width() - 16, Align.LEFT, Type.STRONG, Ink.TEXT);
        double half = (sheet.height() - 28) / 2;
        cell(sheet, 28);
        tips(sheet, 28 + half);
    }

    private void cell(Sheet sheet, double top) {
        double y = trial(sheet, top, "picture.meter.cell", true, data.cell());
        double x = sheet.width() - 40;
        sheet.box(x - 7, y + 10, 14, 10, 1, Ink.METAL);
        sheet.box(x - 20, y + 18, 40, 78, 3, Ink.PART);
        sheet.write("+", x, y + 34, Align.CENTRE, Type.BIG, Ink.TEXT);
        sheet.write("−", x, y + 80, Align.CENTRE, Type.BIG, Ink.TEXT);
        lead(sheet, Spot.Probe.RED, y + 30, x - 72, y + 10, x + 5, y + 13);
        lead(sheet, Spot.Probe.BLACK, y + 86, x - 72, y + 106, x - 8, y + 97);
    }

    private void tips(Sheet sheet, double top) {
        double y = trial(sheet, top, "picture.meter.tips", false, data.tips());
        double x = sheet.width() - 40;
        lead(sheet, Spot.Probe.RED, y + 30, x - 72, y + 24, x + 12, y + 63);
        lead(sheet, Spot.Probe.BLACK, y + 86, x - 72, y + 92, x, y + 58);
    }

    /** The meter with its switch, its display and what is tried. @return its upper edge */
    private double trial(Sheet sheet, double top, String name, boolean volts, Optional<String> shows) {
        sheet.writeWithin(words.of(name), LEFT, top + 10, sheet.width() - 20, Align.LEFT, Type.PLAIN, Ink.TEXT);
        double y = top + 24;
        sheet.box(LEFT, y, WIDTH, HEIGHT, 8, Ink.BODY);
        sheet.box(LEFT + 10, y + 10, WIDTH - 20, 28, 3, Ink.PART);
        double middle = LEFT + WIDTH / 2;
        sheet.writeWithin(shows.orElse("– – –"), middle, y + 24, WIDTH - 28, Align.CENTRE, Type.STRONG, Ink.TEXT);
        sheet.detail(says(name, shows), new Area(LEFT, y, WIDTH, HEIGHT));
        double dial = y + 78;
        sheet.disc(middle, dial, 20, Ink.METAL);
        double side = volts ? -1 : 1;
        sheet.line(middle, dial, middle + side * 14, dial - 14, Ink.WIRE);
        sheet.write("V", middle - 30, dial - 22, Align.CENTRE, volts ? Type.STRONG : Type.SMALL, ink(volts));
        sheet.write("Ω", middle + 30, dial - 22, Align.CENTRE, volts ? Type.SMALL : Type.STRONG, ink(!volts));
        return y;
    }

    private static Ink ink(boolean chosen) {
        return chosen ? Ink.TEXT : Ink.QUIET;
    }

    /** From the meter’s side at {@code from} to the probe, whose needle comes to its point at {@code x, y}. */
    private void lead(Sheet sheet, Spot.Probe probe, double from, double tagX, double tagY, double x, double y) {
        ProbeTag tag = new ProbeTag(words);
        double end = tagX - tag.width(sheet, probe) / 2;
        double bend = (RIGHT + end) / 2;
        Ink ink = probe == Spot.Probe.RED ? Ink.RED_PROBE_RING : Ink.BLACK_PROBE_RING;
        sheet.strokes(ink, RIGHT, from, bend, from, bend, tagY, end, tagY);
        ProbeTag.needle(sheet, probe, tagX, tagY, x, y);
        tag.tag(sheet, probe, tagX, tagY);
    }

    @Override
    public String says() {
        return words.of("picture.meter.says") + " " + says("picture.meter.cell", data.cell()) + " "
                + says("picture.meter.tips", data.tips());
    }

    private String says(String name, Optional<String> shows) {
        return words.of("picture.says.value", words.of(name), shows.orElse(words.of("picture.divider.detail.unknown")));
    }
}
