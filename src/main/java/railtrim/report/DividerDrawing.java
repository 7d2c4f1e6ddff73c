package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import railtrim.circuit.Leg;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;
import railtrim.job.Fact;
import railtrim.parts.Resistors;
import railtrim.procedure.Figures;
import railtrim.quantity.PlainText;
import railtrim.report.Checklist.Block;
import railtrim.report.Drawing.Shape;

/** The divider with what was added across its leg, each part with what was read of it. */
final class DividerDrawing {
    private static final int WIDTH = 680;
    private static final int HEIGHT = 250;
    private static final int STEM = 90;
    private static final int ADDED = 250;
    private static final int PACKAGE = 590;
    private static final int TOP = 30;
    private static final int MIDDLE = 120;
    private static final int BOTTOM = 210;

    private final Source source;
    private final Figures figures;
    private final List<Shape> shapes = new ArrayList<>();

    DividerDrawing(Source source) {
        this.source = source;
        this.figures = source.figures();
    }

    Optional<Block.Picture> picture() {
        return figures.place().map(this::draw);
    }

    private Block.Picture draw(Place place) {
        boolean upper = place.loweringLeg() == Leg.UPPER;
        shapes.add(new Shape.Line(STEM, TOP, STEM, BOTTOM, "thick"));
        node(TOP, PinRole.OUTPUT);
        node(MIDDLE, PinRole.ADJUST);
        node(BOTTOM, source.say(place == Place.SHUNT ? "report.divider.anode" : "report.divider.ground"));
        resistor(STEM, TOP, MIDDLE, "part", ownPart(upper));
        resistor(STEM, MIDDLE, BOTTOM, "part", ownPart(!upper));
        int from = upper ? TOP : MIDDLE;
        int to = upper ? MIDDLE : BOTTOM;
        Optional<String> added = added();
        added.ifPresent(text -> {
            shapes.add(new Shape.Line(STEM, from, ADDED, from, "dashed"));
            shapes.add(new Shape.Line(STEM, to, ADDED, to, "dashed"));
            shapes.add(new Shape.Line(ADDED, from, ADDED, to, "dashed"));
            resistor(ADDED, from, to, "added", text);
        });
        shapes.addAll(PackageDrawing.shapes(source, PACKAGE, TOP - 12));
        String inWords = source.say(
                added.isPresent() ? "report.divider.in-words" : "report.divider.in-words-bare",
                source.say("report.leg." + place.id()),
                ownPart(true),
                ownPart(false),
                added.orElse(""));
        return new Block.Picture(new Drawing(WIDTH, HEIGHT, source.say("report.divider"), shapes), inWords);
    }

    private String ownPart(boolean lowering) {
        String read = read(lowering ? "leg.ohms" : "other.ohms").orElseGet(source::notKnown);
        return source.say(lowering ? "report.divider.leg" : "report.divider.other", read);
    }

    private Optional<String> added() {
        if (fitted()) {
            String parts = figures.chosen()
                    .map(Resistors.Candidate::partsInWords)
                    .orElse(source.say("report.divider.resistor"));
            return read("hand.ohms").map(ohms -> source.say("report.divider.added", parts, ohms));
        }
        return figures.choice("solder.pair").isEmpty()
                ? Optional.empty()
                : read("trimmer.max").map(ohms -> source.say("report.divider.trimmer", ohms));
    }

    private boolean fitted() {
        return figures.choice("fit.left").filter("resistor-only"::equals).isPresent();
    }

    private Optional<String> read(String field) {
        return figures.reading(field).map(Fact.Reading::typed).map(PlainText::of);
    }

    private void node(int y, PinRole role) {
        node(y, source.role(role));
        source.pin(role)
                .ifPresent(number -> shapes.add(
                        new Shape.Label(STEM - 14, y + 19, source.say("report.divider.pin", number), "plain", "end")));
    }

    private void node(int y, String name) {
        shapes.add(new Shape.Dot(STEM, y));
        shapes.add(new Shape.Label(STEM - 14, y + 4, name, "strong", "end"));
    }

    private void resistor(int x, int from, int to, String style, String text) {
        double middle = (from + to) / 2.0;
        shapes.add(new Shape.Box(x - 9, middle - 22, 18, 44, style));
        shapes.add(new Shape.Label(x + 16, middle + 4, text, "plain", "start"));
    }
}
