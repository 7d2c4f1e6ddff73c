package railtrim.window.picture;

import java.util.List;
import java.util.Optional;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.procedure.Words;
import railtrim.window.picture.Detail.Area;

/** The package as it lies on the bench, with its pin numbers and what each pin is for; all packages side by side while none is chosen. */
record PackageDrawing(PackageData data, Words words) implements Drawing {
    private static final double LABEL_DROP = 26;

    @Override
    public void drawOn(Sheet sheet) {
        if (data.outline().isEmpty()) {
            gallery(sheet);
            return;
        }
        Outline outline = data.outline().get();
        OutlineShape shape = OutlineShape.of(outline);
        String seen = words.of(shape.fromFront() ? "picture.package.front" : "picture.package.above");
        sheet.write(outline.id(), 8, 13, Align.LEFT, Type.BIG, Ink.TEXT);
        sheet.writeLines(seen, 8, 33, sheet.width() - 16, 1, Align.LEFT, Type.PLAIN, Ink.QUIET);
        String note = note(shape);
        double noteTop =
                sheet.height() - 8 - sheet.linesOf(note, sheet.width() - 16, 3, Type.PLAIN) * Type.PLAIN.lead();
        sheet.writeLines(
                note, 8, noteTop + Type.PLAIN.lead() / 2, sheet.width() - 16, 3, Align.LEFT, Type.PLAIN, Ink.TEXT);
        whole(sheet, shape, 44, noteTop - 6);
    }

    private ProbeTag tag() {
        return new ProbeTag(words);
    }

    private String note(OutlineShape shape) {
        if (data.clips()) {
            return words.of("picture.package.clips");
        }
        if (data.asked()) {
            return words.of(shape.fromFront() ? "picture.package.first.front" : "picture.package.first") + " "
                    + words.of("picture.package.press");
        }
        if (data.groundElsewhere()) {
            return words.of("picture.package.ground");
        }
        if (shape.pins().stream().anyMatch(OutlineShape.Pin::cut)) {
            return words.of("picture.package.cut");
        }
        return words.of(shape.fromFront() ? "picture.package.first.front" : "picture.package.first");
    }

    /** The package between {@code top} and {@code bottom}, with room above and below it for what its pins are called. */
    private void whole(Sheet sheet, OutlineShape shape, double top, double bottom) {
        boolean above = shape.pins().stream().anyMatch(pin -> pin.side() == OutlineShape.Side.TOP);
        boolean below = shape.pins().stream().anyMatch(pin -> pin.side() == OutlineShape.Side.BOTTOM);
        double headroom = above ? 64 : shape.tab().isPresent() ? 24 : 10;
        double footroom = below ? 64 : 10;
        double high = bottom - top - headroom - footroom;
        double scale = Math.min(1.9, high / (shape.bottom() - shape.top()));
        double middleX = sheet.width() / 2;
        double slack = high - scale * (shape.bottom() - shape.top());
        double middleY = top + headroom + slack / 2 - shape.top() * scale;
        shape.draw(sheet, middleX, middleY, scale);
        for (int pin = 1; pin <= shape.pins().size(); pin++) {
            pin(sheet, shape, pin, middleX, middleY, scale);
        }
        tab(sheet, shape, middleX, middleY, scale);
    }

    private void tab(Sheet sheet, OutlineShape shape, double middleX, double middleY, double scale) {
        shape.tab().ifPresent(bounds -> {
            double y = middleY + bounds.y() * scale - 11;
            String said =
                    words.of("picture.package.tab", data.tab().map(this::role).orElse("?"));
            sheet.write(said, middleX, y, Align.CENTRE, Type.PLAIN, Ink.TEXT);
            Area metal = new Area(
                    middleX + bounds.x() * scale,
                    middleY + bounds.y() * scale,
                    bounds.width() * scale,
                    Math.min(bounds.height(), shape.body().y() - bounds.y()) * scale);
            sheet.asks("pin.tab", Optional.empty(), asked(said, data.tab()), metal, label(sheet, said, middleX, y));
            data.spotAtTab().ifPresent(spot -> {
                double x = middleX + (bounds.x() + bounds.width() - 10) * scale;
                double spotY = middleY + (bounds.y() + 8) * scale;
                tag().draw(sheet, spot.probe(), Math.min(x + 52, sheet.width() - 34), y, x, spotY);
            });
        });
    }

    private static Area label(Sheet sheet, String said, double middle, double y) {
        double wide = Math.max(24, sheet.widthOf(said, Type.PLAIN) + 8);
        return new Area(middle - wide / 2, y - 12, wide, 24);
    }

    /** What a pin is, and where that is not said yet, how to say it. */
    private String asked(String said, Optional<PinRole> role) {
        return role.isPresent() || !data.asked() ? said : words.of("picture.package.detail.ask", said);
    }

    private String role(PinRole role) {
        return SpotWords.role(role, words);
    }

    private void pin(Sheet sheet, OutlineShape shape, int number, double middleX, double middleY, double scale) {
        OutlineShape.Pin pin = shape.pins().get(number - 1);
        double x = middleX + pin.x() * scale;
        double y = middleY + pin.y() * scale;
        double tipX = middleX + pin.tipX() * scale;
        double tipY = middleY + pin.tipY() * scale;
        double inX = pin.side() == OutlineShape.Side.LEFT ? 14 : pin.side() == OutlineShape.Side.RIGHT ? -14 : 0;
        double inY = pin.side() == OutlineShape.Side.TOP ? 12 : pin.side() == OutlineShape.Side.BOTTOM ? -12 : 0;
        sheet.write(String.valueOf(number), x + inX, y + inY, Align.CENTRE, Type.STRONG, Ink.TEXT);
        if (number == 1) {
            sheet.disc(x + inX * 2, y + inY * 2, 3, Ink.TEXT);
        }
        Optional<PinRole> role = data.role(number);
        String said = role.map(this::role).orElse("?");
        Ink ink = role.isPresent() ? Ink.TEXT : Ink.QUIET;
        Area label = switch (pin.side()) {
            case BOTTOM -> upright(sheet, shape, pin, number, tipX, tipY, middleY + shape.bottom() * scale, said, ink);
            case TOP -> upright(sheet, shape, pin, number, tipX, tipY, tipY, said, ink);
            case LEFT, RIGHT -> sideways(sheet, pin, number, tipX, tipY, said, ink);
        };
        String says = words.of("picture.package.detail.pin", String.valueOf(number), said);
        sheet.asks("pin." + number, Optional.empty(), asked(says, role), metal(x + inX, y + inY, tipX, tipY), label);
    }

    /** From the pin's number on the body to its tip, wide enough to be hit. */
    private static Area metal(double x, double y, double tipX, double tipY) {
        double wide = Math.max(24, Math.abs(tipX - x) + 8);
        double high = Math.max(24, Math.abs(tipY - y) + 8);
        return new Area((x + tipX - wide) / 2, (y + tipY - high) / 2, wide, high);
    }

    /** Names fan out so that those of five narrow pins stay apart; a cut leg's name stands in line with the others. */
    private Area upright(
            Sheet sheet,
            OutlineShape shape,
            OutlineShape.Pin pin,
            int number,
            double tipX,
            double tipY,
            double longestTip,
            String said,
            Ink ink) {
        List<OutlineShape.Pin> row =
                shape.pins().stream().filter(each -> each.side() == pin.side()).toList();
        long before = row.stream().filter(each -> each.x() < pin.x()).count();
        double step = (sheet.width() - 12) / Math.max(3, row.size());
        double x = row.size() < 3 ? tipX : sheet.width() / 2 + (before - (row.size() - 1) / 2.0) * step;
        double way = pin.side() == OutlineShape.Side.BOTTOM ? 1 : -1;
        double y = longestTip + way * LABEL_DROP;
        sheet.line(tipX, tipY + way * 2, x, y - way * 9, Ink.FINE);
        sheet.writeWithin(said, x, y, step - 4, Align.CENTRE, Type.PLAIN, ink);
        double tipMark = tipY - way * Math.min(8, pin.length() / 2);
        data.spotAt(number).ifPresent(spot -> {
            ProbeTag.ring(sheet, spot.probe(), tipX, tipMark);
            tag().tag(sheet, spot.probe(), x, y + way * 20);
        });
        return label(sheet, said, x, y);
    }

    private Area sideways(
            Sheet sheet, OutlineShape.Pin pin, int number, double tipX, double tipY, String said, Ink ink) {
        boolean left = pin.side() == OutlineShape.Side.LEFT;
        double way = left ? -1 : 1;
        double room = (left ? tipX : sheet.width() - tipX) - 14;
        Optional<Spot> spot = data.spotAt(number);
        double y = spot.isPresent() ? tipY - 9 : tipY;
        sheet.writeWithin(said, tipX + way * 8, y, room, left ? Align.RIGHT : Align.LEFT, Type.PLAIN, ink);
        spot.ifPresent(each -> {
            double wide = tag().width(sheet, each.probe());
            ProbeTag.ring(sheet, each.probe(), tipX - way * 8, tipY);
            tag().tag(sheet, each.probe(), tipX + way * (10 + wide / 2), tipY + 10);
        });
        double wide = Math.min(room, Math.max(24, sheet.widthOf(said, Type.PLAIN) + 8));
        return new Area(left ? tipX - 8 - wide : tipX + 8, y - 12, wide, 24);
    }

    private void gallery(Sheet sheet) {
        sheet.writeLines(
                words.of("picture.package.which"), 8, 14, sheet.width() - 16, 1, Align.LEFT, Type.STRONG, Ink.TEXT);
        Outline[] outlines = Outline.values();
        int columns = 4;
        double wide = (sheet.width() - 8) / columns;
        int rows = (outlines.length + columns - 1) / columns;
        double high = Math.min(130, (sheet.height() - 28) / rows);
        for (int i = 0; i < outlines.length; i++) {
            OutlineShape shape = OutlineShape.of(outlines[i]);
            double x = 4 + wide * (i % columns + 0.5);
            double top = 28 + high * (i / columns);
            double scale = Math.min((high - 30) / (shape.bottom() - shape.top()), (wide - 14) / 98);
            double middle = top + (high - 22) / 2;
            shape.draw(sheet, x, middle - scale * (shape.top() + shape.bottom()) / 2, scale);
            String id = outlines[i].id();
            sheet.write(id, x, top + high - 10, Align.CENTRE, Type.SMALL, Ink.TEXT);
            sheet.asks(
                    "reg.outline",
                    Optional.of(id),
                    says(outlines[i]),
                    new Area(x - wide / 2 + 3, top, wide - 6, high - 2));
        }
    }

    private String says(Outline outline) {
        String pins = String.valueOf(outline.pins());
        return words.of(
                outline.hasTab() ? "picture.package.detail.tabbed" : "picture.package.detail.plain",
                outline.id(),
                pins);
    }

    @Override
    public String says() {
        if (data.outline().isEmpty()) {
            return words.of("picture.package.says.gallery");
        }
        Outline outline = data.outline().get();
        StringBuilder said = new StringBuilder(words.of("picture.package.says", outline.id()));
        for (int pin = 1; pin <= outline.pins(); pin++) {
            int number = pin;
            data.role(pin)
                    .ifPresent(role -> said.append(' ')
                            .append(words.of("picture.package.says.pin", String.valueOf(number), role(role))));
        }
        data.tab().ifPresent(role -> said.append(' ').append(words.of("picture.package.says.tab", role(role))));
        return said.append(SpotWords.of(data.spots(), words)).toString();
    }
}
