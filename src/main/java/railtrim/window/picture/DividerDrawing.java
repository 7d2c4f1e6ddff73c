package railtrim.window.picture;

import java.util.Locale;
import java.util.OptionalDouble;
import railtrim.circuit.Leg;
import railtrim.circuit.Place;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;
import railtrim.window.picture.Detail.Area;

/** The regulator with its divider: output rail on top, ground below, the two legs between, the added part beside its leg. */
record DividerDrawing(DividerData data, Words words) implements Drawing {
    private static final double RAIL = 68;
    private static final double BLOCK_LEFT = 24;
    private static final double BLOCK_RIGHT = 102;
    private static final double BLOCK_TOP = 52;
    private static final double BLOCK_BOTTOM = 100;
    private static final double ADJUST_X = 74;
    private static final double GROUND_PIN_X = 42;
    private static final double PART_WIDTH = 18;

    /** Where things stand on this sheet. */
    private record Grid(double middle, double ground, double column, double aside) {
        /** @param below lines that are written below it */
        static Grid of(Sheet sheet, int below) {
            double ground = sheet.height() - 84 - Math.max(0, below - 2) * Type.PLAIN.lead();
            double column = Math.round(sheet.width() * 0.51);
            return new Grid(Math.round((RAIL + ground) / 2), ground, column, column + 50);
        }

        double top(Leg leg) {
            return leg == Leg.UPPER ? RAIL : middle;
        }

        double bottom(Leg leg) {
            return leg == Leg.UPPER ? middle : ground;
        }

        double centre(Leg leg) {
            return (top(leg) + bottom(leg)) / 2;
        }
    }

    @Override
    public void drawOn(Sheet sheet) {
        Grid grid = Grid.of(sheet, turningLines(sheet));
        if (data.flows()) {
            current(sheet, grid);
        }
        wires(sheet, grid);
        leg(sheet, grid, Leg.UPPER);
        leg(sheet, grid, Leg.LOWER);
        if (shunt()) {
            shuntBlock(sheet, grid);
        } else {
            regulator(sheet, grid);
        }
        data.place()
                .ifPresent(place -> reference(sheet, grid, place.loweringLeg().other()));
        data.added().ifPresent(added -> added(sheet, grid, added));
        rail(sheet);
        data.spots().forEach(spot -> spot(sheet, grid, spot));
        turning(sheet);
        details(sheet, grid);
    }

    /** A broad band under the wires that carry the divider's current, with arrow heads the way it goes. */
    private void current(Sheet sheet, Grid grid) {
        double start = shunt() ? 74 : BLOCK_RIGHT;
        sheet.strokes(Ink.FLOW, start, RAIL, grid.column(), RAIL, grid.column(), grid.ground());
        boolean branch = data.added()
                .filter(each -> each.kind() != Added.Kind.PLANNED && !each.lifted())
                .isPresent();
        if (branch) {
            Leg leg = loweringLeg();
            double top = grid.top(leg);
            double bottom = grid.bottom(leg);
            sheet.strokes(Ink.FLOW, grid.column(), top, grid.aside(), top, grid.aside(), bottom, grid.column(), bottom);
        }
        double way = data.negative() ? -1 : 1;
        for (Leg leg : Leg.values()) {
            flowArrow(sheet, grid.column(), grid.top(leg) + 16, way);
            flowArrow(sheet, grid.column(), grid.bottom(leg) - 12, way);
        }
    }

    private static void flowArrow(Sheet sheet, double x, double y, double way) {
        sheet.polygon(Ink.FLOW_ARROW, x, y + way * 5, x - 6, y - way * 5, x + 6, y - way * 5);
    }

    private Leg loweringLeg() {
        return data.place().map(Place::loweringLeg).orElse(Leg.LOWER);
    }

    private void details(Sheet sheet, Grid grid) {
        data.rail()
                .ifPresent(volts -> sheet.detail(
                        words.of("picture.says.value", railWords(), Display.volts(volts)),
                        new Area(sheet.width() - 120, 18, 116, 44)));
        detail(sheet, grid, Leg.UPPER);
        detail(sheet, grid, Leg.LOWER);
        data.reference()
                .ifPresent(volts -> data.place().ifPresent(place -> {
                    Leg leg = place.loweringLeg().other();
                    sheet.detail(
                            words.of("picture.divider.detail.reference", Display.volts(volts)),
                            beside(sheet, grid, leg));
                }));
        data.added().ifPresent(added -> sheet.detail(addedDetail(added), beside(sheet, grid, loweringLeg())));
        if (data.flows()) {
            data.current()
                    .ifPresent(amps -> sheet.detail(
                            words.of("picture.divider.detail.current", Display.of(amps, Unit.AMPERE)),
                            new Area(BLOCK_RIGHT, RAIL - 7, grid.column() - BLOCK_RIGHT + 8, 14)));
        }
    }

    private void detail(Sheet sheet, Grid grid, Leg leg) {
        String name = words.of(leg == Leg.UPPER ? "picture.divider.upper" : "picture.divider.lower");
        String value = data.of(leg).isPresent()
                ? Display.ohms(data.of(leg).getAsDouble())
                : words.of("picture.divider.detail.unknown");
        sheet.detail(
                words.of("picture.says.value", name, value),
                new Area(grid.column() - 16, grid.centre(leg) - 26, 32, 52),
                new Area(grid.column() - 90, grid.centre(leg) - 20, 78, 44));
    }

    /** The place right of the column, as high as a leg. */
    private static Area beside(Sheet sheet, Grid grid, Leg leg) {
        double left = grid.aside() - 18;
        return new Area(left, grid.centre(leg) - 34, sheet.width() - 4 - left, 68);
    }

    private String addedDetail(Added added) {
        String name = words.of("picture.divider.added." + added.kind().name().toLowerCase(Locale.ROOT));
        StringBuilder said = new StringBuilder(
                added.ohms().isPresent()
                        ? words.of(
                                "picture.says.value",
                                name,
                                Display.ohms(added.ohms().getAsDouble()))
                        : name + ".");
        added.stop()
                .ifPresent(ohms -> said.append(' ')
                        .append(words.of("picture.says.value", words.of("picture.divider.stop"), Display.ohms(ohms))));
        return said.append(' ').append(turningWords()).toString();
    }

    private boolean shunt() {
        return data.place().filter(place -> place == Place.SHUNT).isPresent();
    }

    private boolean hasGroundPin() {
        return data.place().filter(place -> place == Place.FB_GND).isPresent();
    }

    private void wires(Sheet sheet, Grid grid) {
        sheet.line(8, RAIL, sheet.width() - 16, RAIL, Ink.WIRE);
        arrowRight(sheet, sheet.width() - 10, RAIL);
        sheet.line(24, grid.ground(), sheet.width() - 16, grid.ground(), Ink.WIRE);
        sheet.line(grid.column(), RAIL, grid.column(), grid.ground(), Ink.WIRE);
        groundSign(sheet, grid.column(), grid.ground());
        sheet.write(
                words.of(shunt() ? "picture.divider.ground.shunt" : "picture.divider.ground"),
                grid.column() + 20,
                grid.ground() + 15,
                Align.LEFT,
                Type.SMALL,
                Ink.QUIET);
        double from = shunt() ? BLOCK_RIGHT : ADJUST_X;
        double start = shunt() ? grid.middle() : BLOCK_BOTTOM;
        sheet.strokes(Ink.WIRE, from, start, from, grid.middle(), grid.column(), grid.middle());
        node(sheet, grid.column(), RAIL);
        node(sheet, grid.column(), grid.middle());
        node(sheet, grid.column(), grid.ground());
    }

    private static void node(Sheet sheet, double x, double y) {
        sheet.disc(x, y, 3, Ink.TEXT);
    }

    private static void arrowRight(Sheet sheet, double tip, double y) {
        sheet.polygon(Ink.TEXT, tip, y, tip - 8, y - 4, tip - 8, y + 4);
    }

    private static void groundSign(Sheet sheet, double x, double y) {
        sheet.line(x, y, x, y + 10, Ink.WIRE);
        sheet.line(x - 11, y + 10, x + 11, y + 10, Ink.WIRE);
        sheet.line(x - 7, y + 15, x + 7, y + 15, Ink.WIRE);
        sheet.line(x - 3, y + 20, x + 3, y + 20, Ink.WIRE);
    }

    private void regulator(Sheet sheet, Grid grid) {
        if (hasGroundPin()) {
            sheet.line(GROUND_PIN_X, BLOCK_BOTTOM, GROUND_PIN_X, grid.ground(), Ink.WIRE);
            node(sheet, GROUND_PIN_X, grid.ground());
        }
        sheet.box(BLOCK_LEFT, BLOCK_TOP, BLOCK_RIGHT - BLOCK_LEFT, BLOCK_BOTTOM - BLOCK_TOP, 4, Ink.PART);
        double middle = (BLOCK_LEFT + BLOCK_RIGHT) / 2;
        pinName(sheet, "picture.pin.in", BLOCK_LEFT + 5, RAIL - 5, Align.LEFT);
        pinName(sheet, "picture.pin.out", BLOCK_RIGHT - 5, RAIL - 5, Align.RIGHT);
        sheet.writeWithin(
                words.of("picture.divider.regulator"),
                middle,
                RAIL + 9,
                BLOCK_RIGHT - BLOCK_LEFT - 6,
                Align.CENTRE,
                Type.SMALL,
                Ink.TEXT);
        pinName(
                sheet,
                hasGroundPin() ? "picture.pin.feedback" : "picture.pin.adjust",
                ADJUST_X,
                BLOCK_BOTTOM - 9,
                Align.CENTRE);
        if (hasGroundPin()) {
            pinName(sheet, "picture.pin.ground", GROUND_PIN_X, BLOCK_BOTTOM - 9, Align.CENTRE);
        }
    }

    /** A shunt reference hangs between rail and ground, fed through a resistor. */
    private void shuntBlock(Sheet sheet, Grid grid) {
        double left = 46;
        double top = grid.middle() - 32;
        double middle = (left + BLOCK_RIGHT) / 2;
        sheet.line(middle, RAIL, middle, grid.ground(), Ink.WIRE);
        node(sheet, middle, RAIL);
        node(sheet, middle, grid.ground());
        sheet.box(left, top, BLOCK_RIGHT - left, 64, 4, Ink.PART);
        sheet.write(words.of("picture.divider.shunt"), middle, top + 24, Align.CENTRE, Type.SMALL, Ink.TEXT);
        pinName(sheet, "picture.pin.cathode", middle, top + 9, Align.CENTRE);
        pinName(sheet, "picture.pin.anode", middle, top + 55, Align.CENTRE);
        pinName(sheet, "picture.pin.ref", BLOCK_RIGHT - 4, top + 39, Align.RIGHT);
        sheet.box(18, RAIL - PART_WIDTH / 2, 40, PART_WIDTH, 2, Ink.PART);
        sheet.writeLines(words.of("picture.divider.feeding"), 8, RAIL + 20, 62, 2, Align.LEFT, Type.SMALL, Ink.QUIET);
    }

    private void pinName(Sheet sheet, String key, double x, double y, Align align) {
        sheet.write(words.of(key), x, y, align, Type.SMALL, Ink.QUIET);
    }

    private void leg(Sheet sheet, Grid grid, Leg leg) {
        double centre = grid.centre(leg);
        sheet.box(grid.column() - PART_WIDTH / 2, centre - 22, PART_WIDTH, 44, 2, Ink.PART);
        double x = grid.column() - 16;
        // The upper leg stands beside the wire to the adjust pin, the lower one beside the wire to the ground pin.
        double left = shunt() && leg == Leg.UPPER ? 82 : (leg == Leg.UPPER ? ADJUST_X : GROUND_PIN_X) + 8;
        double y = leg == Leg.UPPER && !shunt() ? Math.max(BLOCK_BOTTOM + 11, centre - 8) : centre - 2;
        String name = words.of(leg == Leg.UPPER ? "picture.divider.upper" : "picture.divider.lower");
        double next = sheet.writeLines(name, x, y, x - left, 1, Align.RIGHT, Type.PLAIN, Ink.TEXT);
        data.of(leg).ifPresent(ohms -> sheet.write(Display.ohms(ohms), x, next, Align.RIGHT, Type.STRONG, Ink.TEXT));
    }

    /** A span with arrow heads across the leg that the reference holds at its own voltage. */
    private void reference(Sheet sheet, Grid grid, Leg leg) {
        double x = grid.aside();
        double top = grid.top(leg) + 8;
        double bottom = grid.bottom(leg) - 8;
        sheet.line(grid.column() + 4, top - 4, x + 5, top - 4, Ink.FINE);
        sheet.line(grid.column() + 4, bottom + 4, x + 5, bottom + 4, Ink.FINE);
        sheet.line(x, top + 4, x, bottom - 4, Ink.REFERENCE);
        sheet.polygon(Ink.REFERENCE_FILL, x, top - 3, x - 4, top + 6, x + 4, top + 6);
        sheet.polygon(Ink.REFERENCE_FILL, x, bottom + 3, x - 4, bottom - 6, x + 4, bottom - 6);
        double at = besideAside(grid);
        double y = grid.centre(leg) - 8;
        double next = sheet.writeLines(
                words.of("picture.divider.reference"),
                at,
                y,
                sheet.width() - 6 - at,
                2,
                Align.LEFT,
                Type.PLAIN,
                Ink.TEXT);
        data.reference()
                .ifPresent(volts -> sheet.write(Display.volts(volts), at, next, Align.LEFT, Type.STRONG, Ink.TEXT));
    }

    private static double besideAside(Grid grid) {
        return grid.aside() + 20;
    }

    private void added(Sheet sheet, Grid grid, Added added) {
        Leg leg = loweringLeg();
        double x = grid.aside();
        double top = grid.top(leg) == RAIL ? RAIL : grid.middle();
        double bottom = grid.bottom(leg);
        boolean planned = added.kind() == Added.Kind.PLANNED;
        Ink wire = planned ? Ink.GHOST : Ink.ADDED_WIRE;
        double centre = grid.centre(leg);
        if (leg == Leg.LOWER) {
            sheet.line(grid.column(), top, x, top, wire);
        }
        if (added.lifted()) {
            sheet.line(x, top, x, centre + 24, wire);
            sheet.strokes(wire, x, centre + 22, x + 10, bottom - 10);
            sheet.disc(x, bottom, 3, Ink.ADDED_FILL);
        } else {
            sheet.line(x, top, x, bottom, wire);
        }
        if (leg == Leg.UPPER) {
            sheet.line(grid.column(), bottom, x, bottom, wire);
        }
        addedBody(sheet, added, x, centre);
        if (data.solder()) {
            double way = leg == Leg.LOWER ? -1 : 1;
            solder(sheet, x, top, way);
            solder(sheet, x, bottom, way);
        }
        addedWords(sheet, grid, added, centre);
    }

    /** A drop of solder where it goes, with its word. */
    private void solder(Sheet sheet, double x, double y, double way) {
        sheet.disc(x, y, 6, Ink.WARM_FILL);
        sheet.disc(x, y, 2.5, Ink.ADDED_FILL);
        sheet.write(words.of("picture.divider.solder"), x + 12, y + way * 11, Align.LEFT, Type.SMALL, Ink.TEXT);
    }

    private void addedBody(Sheet sheet, Added added, double x, double centre) {
        boolean stopped = added.stop().isPresent();
        double top = centre - (stopped ? 30 : 22);
        double high = stopped ? 32 : 44;
        Ink ink = added.kind() == Added.Kind.PLANNED ? Ink.GHOST : Ink.ADDED;
        sheet.box(x - PART_WIDTH / 2, top, PART_WIDTH, high, 2, ink);
        if (added.kind() == Added.Kind.TRIMMER) {
            double middle = top + high / 2;
            sheet.line(x - 15, middle + 12, x + 13, middle - 12, Ink.ADDED_WIRE);
            sheet.polygon(Ink.ADDED_FILL, x + 15, middle - 14, x + 7, middle - 12, x + 11, middle - 5);
        }
        if (stopped) {
            sheet.box(x - PART_WIDTH / 2, centre + 8, PART_WIDTH, 20, 2, ink);
        }
    }

    private void addedWords(Sheet sheet, Grid grid, Added added, double centre) {
        double x = besideAside(grid);
        double room = sheet.width() - 4 - x;
        boolean planned = added.kind() == Added.Kind.PLANNED;
        String name = words.of("picture.divider.added." + added.kind().name().toLowerCase(Locale.ROOT));
        String lifted = added.lifted() ? words.of("picture.divider.lifted") : "";
        String stop = added.stop().isPresent() ? words.of("picture.divider.stop") : "";
        boolean valued = added.ohms().isPresent() && !planned;
        int lines = sheet.linesOf(name, room, 3, Type.PLAIN)
                + (valued ? 1 : 0)
                + (stop.isEmpty() ? 0 : 2)
                + (lifted.isEmpty() ? 0 : sheet.linesOf(lifted, room, 2, Type.SMALL));
        double y = centre - (lines - 1) * Type.SMALL.lead() / 2;
        y = sheet.writeLines(name, x, y, room, 3, Align.LEFT, Type.PLAIN, Ink.TEXT);
        if (valued) {
            y = sheet.writeLines(
                    Display.ohms(added.ohms().getAsDouble()), x, y, room, 1, Align.LEFT, Type.STRONG, Ink.TEXT);
        }
        if (!stop.isEmpty()) {
            y = sheet.writeLines(stop, x, y, room, 1, Align.LEFT, Type.SMALL, Ink.TEXT);
            y = sheet.writeLines(
                    Display.ohms(added.stop().getAsDouble()), x, y, room, 1, Align.LEFT, Type.SMALL, Ink.TEXT);
        }
        if (!lifted.isEmpty()) {
            sheet.writeLines(lifted, x, y, room, 2, Align.LEFT, Type.SMALL, Ink.TEXT);
        }
    }

    private void rail(Sheet sheet) {
        double right = sheet.width() - 8;
        double y = RAIL - 14;
        if (data.rail().isEmpty()) {
            sheet.write(outputWords(), right, y, Align.RIGHT, Type.PLAIN, Ink.TEXT);
            return;
        }
        double room = right - Math.round(sheet.width() * 0.51) - 26;
        sheet.writeWithin(railWords(), right, y - Type.STRONG.lead(), room, Align.RIGHT, Type.SMALL, Ink.QUIET);
        sheet.write(Display.volts(data.rail().getAsDouble()), right, y, Align.RIGHT, Type.STRONG, Ink.TEXT);
    }

    private String outputWords() {
        return words.of(data.negative() ? "picture.divider.output.negative" : "picture.divider.output");
    }

    private String railWords() {
        return outputWords() + ", "
                + words.of("picture.rail." + data.railIs().name().toLowerCase(Locale.ROOT));
    }

    private void spot(Sheet sheet, Grid grid, Spot spot) {
        Spot.Probe probe = spot.probe();
        ProbeTag tag = new ProbeTag(words);
        switch (spot.role()) {
            case INPUT -> tag.draw(sheet, probe, 30, RAIL - 34, 13, RAIL);
            case OUTPUT, SENSE -> tag.draw(sheet, probe, grid.column() - 10, RAIL - 34, grid.column() - 26, RAIL);
            case ADJUST ->
                tag.draw(
                        sheet,
                        probe,
                        grid.column() - 22 - tag.width(sheet, probe) / 2,
                        grid.middle() + 24,
                        grid.column() - 30,
                        grid.middle());
            case GROUND -> tag.draw(sheet, probe, 92, grid.ground() + 24, 76, grid.ground());
            default -> {
                // The other pins have no place in this drawing.
            }
        }
    }

    private void turning(Sheet sheet) {
        double y = sheet.height() - 8 - (turningLines(sheet) - 0.5) * Type.PLAIN.lead() + 4;
        sheet.writeLines(turningWords(), 8, y, sheet.width() - 16, 3, Align.LEFT, Type.PLAIN, Ink.TEXT);
    }

    private int turningLines(Sheet sheet) {
        return sheet.linesOf(turningWords(), sheet.width() - 16, 3, Type.PLAIN);
    }

    private String turningWords() {
        if (data.clips()) {
            return words.of("picture.divider.clips");
        }
        boolean trimmer =
                data.added().filter(added -> added.kind() == Added.Kind.TRIMMER).isPresent();
        String key = trimmer ? "picture.divider.turn" : "picture.divider.smaller";
        return data.place().isEmpty() || data.added().isEmpty()
                ? words.of("picture.divider.unknown")
                : words.of(data.negative() ? key + ".negative" : key);
    }

    @Override
    public String says() {
        StringBuilder said = new StringBuilder(words.of("picture.divider.says"));
        say(said, "picture.divider.says.output", data.rail(), true);
        say(said, "picture.divider.says.upper", data.upper(), false);
        say(said, "picture.divider.says.lower", data.lower(), false);
        data.place().ifPresent(place -> {
            boolean lower = place.loweringLeg() == Leg.LOWER;
            said.append(' ')
                    .append(words.of(
                            lower ? "picture.divider.says.reference.upper" : "picture.divider.says.reference.lower"));
            data.added()
                    .ifPresent(added -> said.append(' ')
                            .append(words.of(
                                    lower ? "picture.divider.says.added.lower" : "picture.divider.says.added.upper")));
        });
        said.append(SpotWords.of(data.spots(), words));
        return said.append(' ').append(turningWords()).toString();
    }

    private void say(StringBuilder said, String key, OptionalDouble value, boolean volts) {
        value.ifPresent(
                number -> said.append(' ').append(words.of(key, volts ? Display.volts(number) : Display.ohms(number))));
    }
}
