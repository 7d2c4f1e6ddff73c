package railtrim.window.picture;

import java.util.Locale;
import java.util.OptionalDouble;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.window.picture.Detail.Area;
import railtrim.window.picture.TrimmerData.At;

/** The trimmer as it lies in the hand, which two pins to use, and its travel from maximum to minimum with what the output does. */
record TrimmerDrawing(TrimmerData data, Words words) implements Drawing {
    private static final double BODY_LEFT = 40;
    private static final double BODY_TOP = 44;
    private static final double BODY_WIDTH = 132;
    private static final double BODY_HEIGHT = 50;
    /** The two wires below the pins. */
    private static final double FIRST = BODY_TOP + BODY_HEIGHT + 40;

    private static final double SECOND = FIRST + 30;
    /** From the second wire to the travel at most, so that the two stay together. */
    private static final double TO_TRAVEL = 110;

    @Override
    public void drawOn(Sheet sheet) {
        sheet.writeWithin(title(), 8, 14, sheet.width() - 16, Align.LEFT, Type.STRONG, Ink.TEXT);
        body(sheet);
        wiring(sheet);
        travel(sheet);
    }

    private String title() {
        if (data.nominal().isEmpty()) {
            return words.of("picture.trimmer.title");
        }
        String ohms = Display.part(data.nominal().getAsDouble());
        if (data.fine().isPresent()) {
            return words.of(
                    "picture.trimmer.title.pair",
                    ohms,
                    Display.part(data.fine().getAsDouble()),
                    String.valueOf(data.turns().orElse(1)));
        }
        return data.turns()
                .map(turns -> turns > 1
                        ? words.of("picture.trimmer.title.turns", ohms, String.valueOf(turns))
                        : words.of("picture.trimmer.title.single", ohms))
                .orElse(ohms);
    }

    private void body(Sheet sheet) {
        boolean many = data.turns().filter(turns -> turns > 1).isPresent();
        double middle = BODY_LEFT + BODY_WIDTH / 2;
        for (int pin = 0; pin < 3; pin++) {
            sheet.box(pinX(pin) - 3, BODY_TOP + BODY_HEIGHT - 2, 6, 26, 1, Ink.METAL);
        }
        if (many) {
            sheet.box(BODY_LEFT - 14, BODY_TOP + 14, 18, 22, 2, Ink.METAL);
            sheet.line(BODY_LEFT - 14, BODY_TOP + 25, BODY_LEFT - 4, BODY_TOP + 25, Ink.WIRE);
        }
        sheet.box(BODY_LEFT, BODY_TOP, BODY_WIDTH, BODY_HEIGHT, 4, Ink.ADDED);
        if (!many) {
            sheet.disc(middle, BODY_TOP + 17, 12, Ink.METAL);
            sheet.line(middle - 8, BODY_TOP + 17, middle + 8, BODY_TOP + 17, Ink.WIRE);
        }
        for (int pin = 0; pin < 3; pin++) {
            sheet.write(
                    String.valueOf(pin + 1),
                    pinX(pin),
                    BODY_TOP + BODY_HEIGHT - 9,
                    Align.CENTRE,
                    Type.STRONG,
                    Ink.TEXT);
        }
        String screw = words.of(many ? "picture.trimmer.screw" : "picture.trimmer.slot");
        sheet.writeLines(
                screw,
                BODY_LEFT + BODY_WIDTH + 12,
                BODY_TOP + 8,
                sheet.width() - BODY_LEFT - BODY_WIDTH - 18,
                4,
                Align.LEFT,
                Type.SMALL,
                Ink.QUIET);
    }

    private static double pinX(int pin) {
        return BODY_LEFT + BODY_WIDTH * (0.2 + 0.3 * pin);
    }

    /** From the wiper, through the stop resistor where there is one, and from one end pin, to the leg. */
    private void wiring(Sheet sheet) {
        double foot = BODY_TOP + BODY_HEIGHT + 24;
        double first = FIRST;
        double second = SECOND;
        double right = sheet.width() - 88;
        sheet.writeLines(
                words.of("picture.trimmer.free"), 8, foot + 12, pinX(0) + 6, 3, Align.LEFT, Type.SMALL, Ink.QUIET);
        sheet.strokes(Ink.ADDED_WIRE, pinX(2), foot, pinX(2), first, right, first);
        sheet.strokes(Ink.ADDED_WIRE, pinX(1), foot, pinX(1), second, right, second);
        sheet.disc(right, first, 3, Ink.ADDED_FILL);
        sheet.disc(right, second, 3, Ink.ADDED_FILL);
        if (data.probed()) {
            ProbeTag tag = new ProbeTag(words);
            tag.draw(sheet, Spot.Probe.RED, right + 46, first - 8, right, first);
            tag.draw(sheet, Spot.Probe.BLACK, right + 46, second + 8, right, second);
        } else {
            sheet.writeLines(
                    words.of("picture.trimmer.to-leg"), right + 10, first + 4, 76, 2, Align.LEFT, Type.PLAIN, Ink.TEXT);
        }
        data.fine().ifPresent(ohms -> {
            double x = (pinX(2) + right) / 2;
            double wide = Math.min(104, 2 * (right - 8 - x));
            sheet.box(x - wide / 2, first - 10, wide, 20, 3, Ink.ADDED);
            String named = words.of("picture.trimmer.fine", Display.part(ohms));
            boolean fits = sheet.widthOf(named, Type.SMALL) <= wide - 6;
            sheet.writeWithin(
                    fits ? named : Display.part(ohms), x, first, wide - 6, Align.CENTRE, Type.SMALL, Ink.TEXT);
        });
        data.stop().ifPresent(ohms -> {
            double x = (pinX(1) + right) / 2;
            sheet.box(x - 22, second - 8, 44, 16, 2, Ink.ADDED);
            sheet.write(
                    words.of("picture.trimmer.stop", Display.ohms(ohms)),
                    x,
                    second + 18,
                    Align.CENTRE,
                    Type.SMALL,
                    Ink.TEXT);
        });
    }

    /** A wedge, thick where the ohms are many. */
    private void travel(Sheet sheet) {
        double left = 20;
        double right = sheet.width() - 20;
        double y = Math.min(sheet.height() - 92, SECOND + TO_TRAVEL);
        sheet.polygon(Ink.GOOD_FILL, left, y - 13, right, y - 2, right, y + 2, left, y + 13);
        double[] places = {left + 6, (left + right) / 2, right - 6};
        if (data.at() != At.UNKNOWN) {
            double x = places[data.at().ordinal() - 1];
            sheet.polygon(Ink.ADDED_FILL, x, y - 15, x - 7, y - 27, x + 7, y - 27);
            Align align = data.at() == At.MAXIMUM ? Align.LEFT : data.at() == At.BETWEEN ? Align.CENTRE : Align.RIGHT;
            double wordX = data.at() == At.MAXIMUM ? left : data.at() == At.BETWEEN ? x : right;
            sheet.write(words.of("picture.trimmer.now"), wordX, y - 36, align, Type.STRONG, Ink.TEXT);
        }
        double line = y + 28;
        end(sheet, "picture.trimmer.maximum", data.most(), data.highest(), left, line, Align.LEFT);
        end(sheet, "picture.trimmer.minimum", data.least(), data.lowest(), right, line, Align.RIGHT);
        double middle = (left + right) / 2;
        sheet.line(middle - 38, line + 8, middle + 30, line + 8, Ink.WIRE);
        sheet.polygon(Ink.TEXT, middle + 38, line + 8, middle + 29, line + 4, middle + 29, line + 12);
        sheet.writeLines(
                words.of("picture.trimmer.falls"), middle, line - 6, 110, 1, Align.CENTRE, Type.SMALL, Ink.TEXT);
        sheet.writeLines(
                words.of(data.measured() ? "picture.trimmer.measured" : "picture.trimmer.nominal"),
                left,
                y + 80,
                right - left,
                2,
                Align.LEFT,
                Type.SMALL,
                Ink.QUIET);
    }

    private void end(
            Sheet sheet, String key, OptionalDouble ohms, OptionalDouble volts, double x, double y, Align align) {
        sheet.write(words.of(key), x, y, align, Type.STRONG, Ink.TEXT);
        StringBuilder detail = new StringBuilder();
        said(detail, key, ohms, volts);
        if (!detail.isEmpty()) {
            sheet.detail(detail.toString().strip(), new Area(align == Align.LEFT ? x - 4 : x - 86, y - 10, 90, 50));
        }
        ohms.ifPresent(
                value -> sheet.write(Display.ohms(value), x, y + Type.PLAIN.lead(), align, Type.PLAIN, Ink.TEXT));
        volts.ifPresent(value ->
                sheet.write(data.sign().volts(value), x, y + 2 * Type.PLAIN.lead(), align, Type.PLAIN, Ink.TEXT));
    }

    @Override
    public String says() {
        StringBuilder said = new StringBuilder(words.of("picture.trimmer.says", title()));
        said(said, "picture.trimmer.maximum", data.most(), data.highest());
        said(said, "picture.trimmer.minimum", data.least(), data.lowest());
        data.stop()
                .ifPresent(ohms -> said.append(' ')
                        .append(words.of("picture.trimmer.stop", Display.ohms(ohms)))
                        .append('.'));
        if (data.at() != At.UNKNOWN) {
            said.append(' ')
                    .append(words.of("picture.trimmer.at." + data.at().name().toLowerCase(Locale.ROOT)));
        }
        return said.toString();
    }

    private void said(StringBuilder said, String key, OptionalDouble ohms, OptionalDouble volts) {
        ohms.ifPresent(
                value -> said.append(' ').append(words.of("picture.says.value", words.of(key), Display.ohms(value))));
        volts.ifPresent(value -> said.append(' ')
                .append(words.of(
                        "picture.says.value", words.of(key), data.sign().volts(value))));
    }
}
