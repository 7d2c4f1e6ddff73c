package railtrim.window.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;
import railtrim.procedure.Words;
import railtrim.window.picture.BudgetData.Piece;
import railtrim.window.picture.Detail.Area;

/** The margin, one piece on the other, from the fault up to the recommended voltage, with the stock voltage above. */
record BudgetDrawing(Optional<BudgetData> budget, Words words) implements Drawing {
    private static final double TOP = 36;
    private static final double PILE = 10;
    private static final double PILE_WIDTH = 22;
    private static final double NAME = 64;
    private static final double GAP = 20;

    private enum Sign {
        PIECE,
        FAIL,
        RECOMMENDED,
        TARGET,
        STOCK
    }

    private record Tag(Sign sign, String name, String value, double y, boolean strong) {}

    @Override
    public void drawOn(Sheet sheet) {
        sheet.write(words.of("picture.budget.title"), 8, 13, Align.LEFT, Type.STRONG, Ink.TEXT);
        if (budget.isEmpty()) {
            sheet.writeLines(
                    words.of("picture.budget.empty"), 8, 38, sheet.width() - 16, 4, Align.LEFT, Type.PLAIN, Ink.QUIET);
            return;
        }
        BudgetData data = budget.get();
        double bottom = sheet.height() - 40;
        DoubleStream known = DoubleStream.concat(
                DoubleStream.of(data.fail(), data.recommended()),
                DoubleStream.concat(data.target().stream(), data.stock().stream()));
        VoltScale scale = VoltScale.holding(known, TOP, bottom);
        List<Tag> tags = new ArrayList<>();
        pile(sheet, data, scale, tags);
        levels(sheet, data, scale, tags);
        labels(sheet, tags, bottom);
        legend(sheet);
    }

    private void pile(Sheet sheet, BudgetData data, VoltScale scale, List<Tag> tags) {
        double from = data.fail();
        for (Piece piece : data.pieces()) {
            double bottom = scale.at(from);
            double top = scale.at(from + piece.volts());
            block(sheet, top, bottom - top, piece.measured());
            String value = "+" + millivolts(piece.volts());
            tags.add(new Tag(Sign.PIECE, words.of("threshold.line." + piece.id()), value, (top + bottom) / 2, false));
            from += piece.volts();
        }
    }

    private static String millivolts(double volts) {
        return String.format(Locale.ROOT, volts < 0.01 ? "%.1f mV" : "%.0f mV", volts * 1000);
    }

    /** Measured pieces are full, allowances are hatched. */
    private static void block(Sheet sheet, double top, double high, boolean measured) {
        sheet.box(PILE, top, PILE_WIDTH, high, 0, measured ? Ink.GOOD_FILL : Ink.WARM_FILL);
        if (measured) {
            return;
        }
        for (double y = top + 5; y < top + high - 1; y += 6) {
            double rise = Math.min(10, top + high - y);
            sheet.line(PILE + 4, y + Math.min(4, rise - 1), PILE + PILE_WIDTH - 4, y, Ink.FINE);
        }
    }

    private void levels(Sheet sheet, BudgetData data, VoltScale scale, List<Tag> tags) {
        level(sheet, scale, data.fail(), Ink.BAD);
        String fail = words.of(data.faultSeen() ? "picture.budget.fail" : "picture.budget.lowest");
        tags.add(new Tag(Sign.FAIL, fail, data.sign().volts(data.fail()), scale.at(data.fail()), true));
        level(sheet, scale, data.recommended(), Ink.GOOD);
        tags.add(new Tag(
                Sign.RECOMMENDED,
                words.of("picture.budget.recommended"),
                data.sign().volts(data.recommended()),
                scale.at(data.recommended()),
                true));
        data.target().ifPresent(volts -> {
            level(sheet, scale, volts, Ink.ADDED_WIRE);
            tags.add(new Tag(
                    Sign.TARGET, words.of("picture.ladder.target"), data.sign().volts(volts), scale.at(volts), true));
        });
        data.stock().ifPresent(volts -> {
            level(sheet, scale, volts, Ink.WIRE);
            tags.add(new Tag(
                    Sign.STOCK, words.of("picture.ladder.stock"), data.sign().volts(volts), scale.at(volts), true));
        });
        data.stock()
                .ifPresent(volts -> sheet.line(
                        PILE + PILE_WIDTH / 2,
                        scale.at(volts) + 3,
                        PILE + PILE_WIDTH / 2,
                        scale.at(data.recommended()) - 3,
                        Ink.DASH));
    }

    private static void level(Sheet sheet, VoltScale scale, double volts, Ink ink) {
        double y = scale.at(volts);
        sheet.line(PILE - 6, y, PILE + PILE_WIDTH + 6, y, ink);
    }

    private void labels(Sheet sheet, List<Tag> tags, double bottom) {
        tags.sort(Comparator.comparingDouble(Tag::y));
        double[] heights = Spread.apart(tags.stream().mapToDouble(Tag::y).toArray(), GAP, TOP, bottom);
        double right = sheet.width() - 8;
        for (int i = 0; i < tags.size(); i++) {
            Tag tag = tags.get(i);
            double y = heights[i];
            Type type = tag.strong() ? Type.STRONG : Type.SMALL;
            double from = PILE + PILE_WIDTH + (tag.strong() ? 7 : 2);
            sheet.strokes(Ink.FINE, from, tag.y(), from + 4, tag.y(), NAME - 22, y, NAME - 18, y);
            sign(sheet, tag.sign(), NAME - 10, y);
            double room = right - NAME - sheet.widthOf(tag.value(), type) - 6;
            sheet.writeWithin(tag.name(), NAME, y, room, Align.LEFT, type, Ink.TEXT);
            sheet.write(tag.value(), right, y, Align.RIGHT, type, Ink.TEXT);
            sheet.detail(
                    words.of("picture.says.value", tag.name(), tag.value()),
                    new Area(NAME - 18, y - GAP / 2, right + 2 - NAME + 18, GAP),
                    new Area(PILE - 6, tag.y() - 4, PILE_WIDTH + 12, 8));
        }
    }

    private static void sign(Sheet sheet, Sign sign, double x, double y) {
        switch (sign) {
            case PIECE -> sheet.line(x - 8, y, x + 5, y, Ink.FINE);
            case FAIL -> {
                sheet.line(x - 5, y - 5, x + 5, y + 5, Ink.BAD);
                sheet.line(x - 5, y + 5, x + 5, y - 5, Ink.BAD);
            }
            case RECOMMENDED -> {
                sheet.disc(x, y, 6, Ink.GOOD_FILL);
                sheet.strokes(Ink.GOOD, x - 3, y, x - 1, y + 3, x + 4, y - 3);
            }
            case TARGET -> {
                sheet.disc(x, y, 6.5, Ink.ADDED);
                sheet.disc(x, y, 2.5, Ink.ADDED_FILL);
            }
            case STOCK -> sheet.box(x - 5, y - 5, 10, 10, 0, Ink.PART);
        }
    }

    private void legend(Sheet sheet) {
        double y = sheet.height() - 13;
        sheet.box(PILE, y - 6, 14, 12, 0, Ink.GOOD_FILL);
        String measured = words.of("picture.budget.measured");
        sheet.write(measured, PILE + 20, y, Align.LEFT, Type.SMALL, Ink.TEXT);
        double x = PILE + 20 + sheet.widthOf(measured, Type.SMALL) + 18;
        sheet.box(x, y - 6, 14, 12, 0, Ink.WARM_FILL);
        sheet.line(x + 2, y + 1, x + 12, y - 3, Ink.FINE);
        sheet.line(x + 2, y + 5, x + 12, y + 1, Ink.FINE);
        sheet.writeWithin(
                words.of("picture.budget.allowance"),
                x + 20,
                y,
                sheet.width() - x - 24,
                Align.LEFT,
                Type.SMALL,
                Ink.TEXT);
    }

    @Override
    public String says() {
        if (budget.isEmpty()) {
            return words.of("picture.budget.empty");
        }
        BudgetData data = budget.get();
        StringBuilder said = new StringBuilder(words.of("picture.budget.says"));
        String fail = words.of(data.faultSeen() ? "picture.budget.fail" : "picture.budget.lowest");
        say(said, fail, data.sign().volts(data.fail()));
        for (Piece piece : data.pieces()) {
            String value = millivolts(piece.volts());
            say(said, words.of("threshold.line." + piece.id()), value);
        }
        say(said, words.of("picture.budget.recommended"), data.sign().volts(data.recommended()));
        data.target()
                .ifPresent(volts ->
                        say(said, words.of("picture.ladder.target"), data.sign().volts(volts)));
        data.stock()
                .ifPresent(volts ->
                        say(said, words.of("picture.ladder.stock"), data.sign().volts(volts)));
        return said.toString();
    }

    private void say(StringBuilder said, String name, String value) {
        said.append(' ').append(words.of("picture.says.value", name, value));
    }
}
