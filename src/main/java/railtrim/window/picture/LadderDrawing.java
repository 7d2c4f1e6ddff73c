package railtrim.window.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;
import railtrim.window.picture.Detail.Area;
import railtrim.window.picture.LadderData.Kind;
import railtrim.window.picture.LadderData.Rung;

/** The voltage ladder: one upright scale with every voltage that matters at its height, each with its sign and its name. */
record LadderDrawing(LadderData data, Words words) implements Drawing {
    private static final double TOP = 34;
    private static final double AXIS = 58;
    private static final double AXIS_WIDTH = 10;
    private static final double BRACKET = AXIS + AXIS_WIDTH + 5;
    private static final double SIGN = 108;
    private static final double NAME = 122;
    private static final double GAP = 21;
    private static final double BELOW_BREAK = 40;

    /** A label beside the scale; {@code y} is the height it speaks of. */
    private record Tag(String name, double volts, double y, Kind kind) {}

    @Override
    public void drawOn(Sheet sheet) {
        sheet.write(words.of("picture.ladder.title"), 8, 13, Align.LEFT, Type.STRONG, Ink.TEXT);
        if (data.rungs().isEmpty()) {
            sheet.writeLines(
                    words.of("picture.ladder.empty"), 8, 38, sheet.width() - 16, 4, Align.LEFT, Type.PLAIN, Ink.QUIET);
            return;
        }
        boolean broken = broken();
        double bottom = sheet.height() - 12;
        VoltScale scale = VoltScale.holding(shown(broken), TOP, broken ? bottom - BELOW_BREAK : bottom);
        axis(sheet, scale);
        rated(sheet, scale);
        if (broken) {
            brokenEnd(sheet, scale, bottom);
        }
        labels(sheet, tags(scale, broken, bottom), bottom);
    }

    /** Whether the reference is so far below that the rest would be squeezed together. */
    private boolean broken() {
        OptionalDouble reference = data.volts(Kind.REFERENCE);
        double[] rest = rest().toArray();
        if (reference.isEmpty() || rest.length == 0) {
            return false;
        }
        double low = DoubleStream.of(rest).min().getAsDouble();
        double high = DoubleStream.of(rest).max().getAsDouble();
        return low - reference.getAsDouble() > 0.6 * Math.max(high - low, 0.03 * high);
    }

    private DoubleStream rest() {
        return data.rungs().stream()
                .filter(rung -> rung.kind() != Kind.REFERENCE)
                .mapToDouble(Rung::volts);
    }

    private DoubleStream shown(boolean broken) {
        DoubleStream rungs = broken ? rest() : data.rungs().stream().mapToDouble(Rung::volts);
        double[] all = rungs.toArray();
        double low = DoubleStream.of(all).min().orElse(0);
        double high = DoubleStream.of(all).max().orElse(0);
        double near = Math.max(high - low, 0.06 * high);
        DoubleStream limits = DoubleStream.concat(stream(data.ratedLow()), stream(data.ratedHigh()))
                .filter(volts -> volts > low - near && volts < high + near);
        // The reference by itself says little; a scale of millivolts around it would say that it is what matters.
        boolean alone = !broken && all.length == 1 && data.volts(Kind.REFERENCE).isPresent();
        DoubleStream around = alone ? DoubleStream.of(0, 3 * high) : DoubleStream.empty();
        return DoubleStream.concat(DoubleStream.concat(DoubleStream.of(all), limits), around);
    }

    private static DoubleStream stream(OptionalDouble value) {
        return value.isPresent() ? DoubleStream.of(value.getAsDouble()) : DoubleStream.empty();
    }

    private void axis(Sheet sheet, VoltScale scale) {
        sheet.box(AXIS, scale.top(), AXIS_WIDTH, scale.bottom() - scale.top(), 3, Ink.PART);
        data.volts(Kind.FAULT).ifPresent(fault -> {
            double y = scale.at(fault);
            sheet.box(AXIS + 1, y, AXIS_WIDTH - 2, scale.bottom() - y - 1, 0, Ink.BAD_FILL);
        });
        List<Double> ticks = Ticks.between(scale.low(), scale.high(), (int) ((scale.bottom() - scale.top()) / 34));
        String form = "%." + Ticks.decimals(ticks) + "f";
        for (double tick : ticks) {
            double y = scale.at(tick);
            sheet.line(AXIS - 5, y, AXIS, y, Ink.FINE);
            sheet.write(Ticks.written(form, data.sign().shown(tick)), AXIS - 8, y, Align.RIGHT, Type.SMALL, Ink.QUIET);
        }
        data.volts(Kind.NOW).ifPresent(now -> {
            double y = scale.at(now);
            sheet.box(AXIS - 3, y - 2, AXIS_WIDTH + 6, 4, 1, Ink.ADDED_FILL);
        });
    }

    /** A bracket over the range the chip's maker allows, open at an end that is off the scale or not known. */
    private void rated(Sheet sheet, VoltScale scale) {
        if (data.ratedLow().isEmpty() && data.ratedHigh().isEmpty()) {
            return;
        }
        double top = data.ratedHigh().isPresent() ? scale.at(data.ratedHigh().getAsDouble()) : scale.top();
        double bottom = data.ratedLow().isPresent() ? scale.at(data.ratedLow().getAsDouble()) : scale.bottom();
        if (bottom - top < 1) {
            return;
        }
        sheet.line(BRACKET, top, BRACKET, bottom, Ink.GOOD);
        end(sheet, scale, data.ratedHigh(), top);
        end(sheet, scale, data.ratedLow(), bottom);
    }

    private static void end(Sheet sheet, VoltScale scale, OptionalDouble limit, double y) {
        if (limit.isPresent() && scale.holds(limit.getAsDouble())) {
            sheet.line(BRACKET - 4, y, BRACKET, y, Ink.GOOD);
        }
    }

    private static void brokenEnd(Sheet sheet, VoltScale scale, double bottom) {
        double y = scale.bottom() + 8;
        double middle = AXIS + AXIS_WIDTH / 2;
        sheet.strokes(Ink.FINE, middle - 9, y, middle - 3, y - 4, middle + 3, y + 4, middle + 9, y);
        sheet.strokes(Ink.FINE, middle - 9, y + 6, middle - 3, y + 2, middle + 3, y + 10, middle + 9, y + 6);
        sheet.box(AXIS, y + 14, AXIS_WIDTH, bottom - y - 14, 3, Ink.PART);
    }

    private List<Tag> tags(VoltScale scale, boolean broken, double bottom) {
        List<Tag> tags = new ArrayList<>();
        for (Rung rung : data.rungs()) {
            boolean below = broken && rung.kind() == Kind.REFERENCE;
            tags.add(
                    new Tag(name(rung.kind()), rung.volts(), below ? bottom - 8 : scale.at(rung.volts()), rung.kind()));
        }
        limit(tags, scale, "picture.ladder.rated.high", data.ratedHigh());
        limit(tags, scale, "picture.ladder.rated.low", data.ratedLow());
        tags.sort(Comparator.comparingDouble(Tag::y).thenComparing(tag -> -tag.volts()));
        return tags;
    }

    private void limit(List<Tag> tags, VoltScale scale, String key, OptionalDouble limit) {
        limit.ifPresent(volts -> {
            String beyond = scale.holds(volts) ? "" : volts > scale.high() ? " ↑" : " ↓";
            tags.add(new Tag(words.of(key) + beyond, volts, scale.at(volts), null));
        });
    }

    private String name(Kind kind) {
        return words.of("picture.ladder." + kind.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    private void labels(Sheet sheet, List<Tag> tags, double bottom) {
        double[] heights = Spread.apart(tags.stream().mapToDouble(Tag::y).toArray(), GAP, TOP, bottom - 8);
        double right = sheet.width() - 8;
        for (int i = 0; i < tags.size(); i++) {
            Tag tag = tags.get(i);
            double y = heights[i];
            boolean limit = tag.kind() == null;
            double from = limit ? BRACKET + 2 : AXIS + AXIS_WIDTH + 1;
            sheet.strokes(Ink.FINE, from, tag.y(), BRACKET + 6, tag.y(), SIGN - 12, y, SIGN - 8, y);
            sign(sheet, tag, y);
            String value = shown(tag);
            double room = right - NAME - sheet.widthOf(value, Type.STRONG) - 8;
            sheet.writeWithin(tag.name(), NAME, y, room, Align.LEFT, Type.PLAIN, Ink.TEXT);
            sheet.write(value, right, y, Align.RIGHT, Type.STRONG, Ink.TEXT);
            Area label = new Area(SIGN - 10, y - GAP / 2, right + 2 - SIGN + 10, GAP);
            sheet.detail(detail(tag), label, new Area(AXIS - 6, tag.y() - 4, SIGN - AXIS, 8));
        }
    }

    private String shown(Tag tag) {
        return data.sign().volts(tag.volts());
    }

    /** The voltage, and how far it is from what the board had. */
    private String detail(Tag tag) {
        OptionalDouble stock = data.volts(Kind.STOCK);
        String volts = shown(tag);
        if (stock.isEmpty() || tag.kind() == Kind.STOCK || tag.kind() == Kind.REFERENCE) {
            return words.of("picture.says.value", tag.name(), volts);
        }
        double under = stock.getAsDouble() - tag.volts();
        String share = Display.of(Math.round(1000 * Math.abs(under) / stock.getAsDouble()) / 10.0, Unit.PERCENT);
        return words.of(
                under >= 0 ? "picture.ladder.detail.under" : "picture.ladder.detail.over",
                tag.name(),
                volts,
                Display.of(Math.abs(under), Unit.VOLT),
                share);
    }

    /** Each kind has its own shape, so that it can be told without its colour. */
    private void sign(Sheet sheet, Tag tag, double y) {
        double x = SIGN;
        if (tag.kind() == null) {
            sheet.strokes(Ink.GOOD, x - 2, y - 5, x + 3, y - 5, x + 3, y + 5, x - 2, y + 5);
            return;
        }
        switch (tag.kind()) {
            case STOCK -> sheet.box(x - 5, y - 5, 10, 10, 0, Ink.PART);
            case START -> sheet.polygon(Ink.PART, x - 6, y - 5, x + 6, y - 5, x, y + 5);
            case NOW -> sheet.polygon(Ink.ADDED_FILL, x - 7, y, x + 5, y - 6, x + 5, y + 6);
            case LAST_GOOD -> {
                sheet.disc(x, y, 6, Ink.GOOD_FILL);
                sheet.strokes(Ink.GOOD, x - 3, y, x - 1, y + 3, x + 4, y - 3);
            }
            case NEXT -> sheet.disc(x, y, 5.5, Ink.GHOST);
            case FAULT -> {
                sheet.line(x - 5, y - 5, x + 5, y + 5, Ink.BAD);
                sheet.line(x - 5, y + 5, x + 5, y - 5, Ink.BAD);
            }
            case TARGET -> {
                sheet.disc(x, y, 6.5, Ink.ADDED);
                sheet.disc(x, y, 2.5, Ink.ADDED_FILL);
            }
            case FITTED -> sheet.box(x - 7, y - 3.5, 14, 7, 1, Ink.ADDED);
            case FLOOR -> {
                sheet.line(x - 7, y - 3, x + 7, y - 3, Ink.WARM);
                sheet.line(x - 6, y + 3, x - 3, y - 3, Ink.WARM);
                sheet.line(x - 1, y + 3, x + 2, y - 3, Ink.WARM);
                sheet.line(x + 4, y + 3, x + 7, y - 3, Ink.WARM);
            }
            case REFERENCE -> sheet.polygon(Ink.REFERENCE_FILL, x, y - 6, x + 6, y, x, y + 6, x - 6, y);
        }
    }

    @Override
    public String says() {
        if (data.rungs().isEmpty()) {
            return words.of("picture.ladder.empty");
        }
        StringBuilder said = new StringBuilder(words.of("picture.ladder.says"));
        data.rungs().stream()
                .sorted(Comparator.comparingDouble(Rung::volts).reversed())
                .forEach(rung -> said.append(' ')
                        .append(words.of(
                                "picture.says.value",
                                name(rung.kind()),
                                data.sign().volts(rung.volts()))));
        data.ratedHigh()
                .ifPresent(volts -> said.append(' ')
                        .append(words.of(
                                "picture.says.value",
                                words.of("picture.ladder.rated.high"),
                                data.sign().volts(volts))));
        data.ratedLow()
                .ifPresent(volts -> said.append(' ')
                        .append(words.of(
                                "picture.says.value",
                                words.of("picture.ladder.rated.low"),
                                data.sign().volts(volts))));
        return said.toString();
    }
}
