package railtrim.window.picture;

import java.util.Locale;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.window.picture.Detail.Area;

/** Board, chip, regulator, supply and plug: the plug is in or out as the power is on or off. */
record BoardDrawing(BoardData data, Words words) implements Drawing {
    private static final double LEFT = 14;
    private static final double TOP = 14;
    private static final double PLUG_X = 64;

    @Override
    public void drawOn(Sheet sheet) {
        double right = sheet.width() - 14;
        double bottom = Math.round(sheet.height() * 0.58);
        sheet.box(LEFT, TOP, right - LEFT, bottom - TOP, 8, Ink.BODY);
        for (double x : new double[] {LEFT + 12, right - 12}) {
            sheet.disc(x, TOP + 12, 4, Ink.PART);
            sheet.disc(x, bottom - 12, 4, Ink.PART);
        }
        String name = data.board().orElse(words.of("picture.board.board"));
        sheet.writeWithin(name, LEFT + 26, TOP + 14, right - LEFT - 52, Align.LEFT, Type.STRONG, Ink.TEXT);
        double middle = (TOP + bottom) / 2 + 6;
        chip(sheet, right - 74, middle);
        regulator(sheet, right, middle);
        supply(sheet, bottom);
        state(sheet, bottom);
    }

    private void chip(Sheet sheet, double x, double y) {
        double half = 44;
        for (int i = -3; i <= 3; i++) {
            double at = i * 11;
            sheet.line(x + at, y - half - 7, x + at, y + half + 7, Ink.FINE);
            sheet.line(x - half - 7, y + at, x + half + 7, y + at, Ink.FINE);
        }
        sheet.box(x - half, y - half, 2 * half, 2 * half, 3, Ink.PART);
        sheet.disc(x - half + 9, y - half + 9, 3, Ink.TEXT);
        double next = sheet.writeLines(
                words.of("picture.board.chip"), x, y - 8, 2 * half - 8, 1, Align.CENTRE, Type.STRONG, Ink.TEXT);
        data.chip()
                .ifPresent(
                        chip -> sheet.writeLines(chip, x, next, 2 * half - 8, 2, Align.CENTRE, Type.SMALL, Ink.QUIET));
    }

    private void regulator(Sheet sheet, double right, double middle) {
        double x = 72;
        sheet.line(x, middle, right - 74 - 44, middle, Ink.WIRE);
        OutlineShape.of(railtrim.circuit.Outline.TO_263).draw(sheet, x, middle, 0.52);
        sheet.write(words.of("picture.divider.regulator"), x, middle + 46, Align.CENTRE, Type.PLAIN, Ink.TEXT);
        double from = x + 28;
        double room = right - 74 - 52 - from;
        double at = from + room / 2;
        sheet.writeWithin(words.of("picture.board.rail"), at, middle - 10, room, Align.CENTRE, Type.SMALL, Ink.QUIET);
        data.rail().ifPresent(volts -> {
            sheet.writeWithin(Display.volts(volts), at, middle + 12, room, Align.CENTRE, Type.STRONG, Ink.TEXT);
            sheet.detail(railSays(volts), new Area(from, middle - 20, room, 42));
        });
    }

    /** As long as the power is not known, the plug is drawn as in: the worse case. */
    private boolean plugged() {
        return data.power() != State.Power.OFF;
    }

    /** The socket on the board's edge, the plug in it or pulled out of it, and the supply at the cable's end. */
    private void supply(Sheet sheet, double bottom) {
        double gap = plugged() ? 4 : 26;
        double plugTop = bottom + gap;
        double supplyTop = bottom + 44;
        sheet.box(PLUG_X - 16, bottom - 12, 32, 16, 2, Ink.METAL);
        double boxLeft = sheet.width() - 124;
        sheet.strokes(Ink.WIRE, PLUG_X, plugTop + 22, PLUG_X, supplyTop + 16, boxLeft, supplyTop + 16);
        if (!plugged()) {
            sheet.line(PLUG_X - 5, plugTop, PLUG_X - 5, plugTop - 9, Ink.WIRE);
            sheet.line(PLUG_X + 5, plugTop, PLUG_X + 5, plugTop - 9, Ink.WIRE);
        }
        sheet.box(PLUG_X - 12, plugTop, 24, 22, 3, Ink.PART);
        sheet.box(boxLeft, supplyTop, 110, 32, 4, Ink.PART);
        sheet.writeWithin(
                words.of("picture.board.supply"),
                boxLeft + 55,
                supplyTop + 16,
                100,
                Align.CENTRE,
                Type.PLAIN,
                Ink.TEXT);
        sheet.writeLines(
                plugWords(),
                PLUG_X + 26,
                bottom + 16,
                sheet.width() - PLUG_X - 36,
                1,
                Align.LEFT,
                Type.PLAIN,
                Ink.TEXT);
    }

    private String plugWords() {
        return words.of("picture.board.plug." + data.power().name().toLowerCase(Locale.ROOT));
    }

    /** The power as a word, with an open or closed switch beside it. */
    private void state(Sheet sheet, double bottom) {
        double y = Math.min(sheet.height() - 26, bottom + 44 + 32 + 44);
        double x = 20;
        sheet.disc(x, y, 3, Ink.TEXT);
        sheet.disc(x + 34, y, 3, Ink.TEXT);
        switch (data.power()) {
            case ON -> sheet.line(x, y, x + 34, y, Ink.WARM);
            case OFF -> sheet.line(x, y, x + 30, y - 14, Ink.WIRE);
            case UNKNOWN -> sheet.write("?", x + 17, y - 2, Align.CENTRE, Type.BIG, Ink.TEXT);
        }
        String power = data.power().name().toLowerCase(Locale.ROOT);
        sheet.writeWithin(
                words.of("picture.board.power." + power),
                x + 50,
                y - 9,
                sheet.width() - x - 58,
                Align.LEFT,
                Type.BIG,
                Ink.TEXT);
        String todo = data.turn()
                .filter(on -> data.power() != State.Power.UNKNOWN)
                .map(on -> words.of(on ? "picture.board.turn.on" : "picture.board.turn.off"))
                .orElse(words.of("picture.board.stays." + power));
        sheet.writeLines(todo, x + 50, y + 11, sheet.width() - x - 58, 1, Align.LEFT, Type.PLAIN, Ink.TEXT);
    }

    @Override
    public String says() {
        StringBuilder said = new StringBuilder(words.of("picture.board.says"));
        String power = data.power().name().toLowerCase(Locale.ROOT);
        said.append(' ').append(words.of("picture.board.power." + power)).append('.');
        said.append(' ').append(plugWords()).append('.');
        data.rail().ifPresent(volts -> said.append(' ').append(railSays(volts)));
        return said.toString();
    }

    private String railSays(double volts) {
        return words.of("picture.says.value", words.of("picture.board.rail"), Display.volts(volts));
    }
}
