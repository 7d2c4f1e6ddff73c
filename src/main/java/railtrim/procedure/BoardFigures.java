package railtrim.procedure;

import static railtrim.procedure.Figures.anyEmpty;
import static railtrim.procedure.Figures.attempt;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.InCircuit;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;
import railtrim.circuit.RegulatorFamilies;
import railtrim.circuit.RegulatorFamily;
import railtrim.quantity.Meter;

/** What the meter, the regulator and the readings before anything was changed say about the board. */
final class BoardFigures {
    private final Figures figures;
    private final RegulatorFamilies families;
    private final Recall recall;

    BoardFigures(Figures figures, RegulatorFamilies families, Recall recall) {
        this.figures = figures;
        this.families = families;
        this.recall = recall;
    }

    Meter meter() {
        return figures.memo("meter", () -> {
            String named = figures.choice("meter.class").orElse("basic");
            return switch (named) {
                case "middle" -> Meter.middle();
                case "fine" -> Meter.fine();
                case MeterRows.CLASS ->
                    recall.once(MeterRows.typed(figures), () -> MeterRows.meter(figures))
                            .orElseGet(Meter::basic);
                default ->
                    Choices.TYPED_METERS.containsKey(named) ? typed(Choices.TYPED_METERS.get(named)) : Meter.basic();
            };
        });
    }

    private Meter typed(int counts) {
        return Meter.typed(
                counts,
                figures.number("meter.volt.percent").orElse(1),
                figures.number("meter.volt.digits").orElse(5),
                figures.number("meter.ohm.percent").orElse(1),
                figures.number("meter.ohm.digits").orElse(5));
    }

    Optional<RegulatorFamily> family() {
        return figures.memo(
                "family",
                () -> figures.chose("reg.family", "other")
                        ? typedFamily()
                        : figures.choice("reg.family").flatMap(families::named));
    }

    private Optional<RegulatorFamily> typedFamily() {
        OptionalDouble reference = figures.number("sheet.reference");
        Optional<Place> place = figures.choice("sheet.place").flatMap(id -> attempt(() -> Place.of(id)));
        if (reference.isEmpty() || place.isEmpty()) {
            return Optional.empty();
        }
        double nominal = reference.getAsDouble();
        double bias = figures.number("sheet.bias").orElse(0);
        return Optional.of(new RegulatorFamily(
                "other",
                figures.text("reg.marking").orElse("other"),
                place.get(),
                figures.number("sheet.reference.low").orElse(nominal),
                nominal,
                figures.number("sheet.reference.high").orElse(nominal),
                bias,
                bias,
                figures.number("sheet.minimum-load").orElse(Double.NaN),
                figures.number("sheet.dropout").orElse(Double.NaN),
                figures.number("sheet.input.highest").orElse(Double.NaN),
                Double.NaN,
                Double.NaN,
                Map.of(),
                null,
                List.of()));
    }

    List<Optional<PinRole>> pins() {
        List<Optional<PinRole>> pins = new ArrayList<>();
        figures.outline().ifPresent(outline -> {
            for (int pin = 1; pin <= outline.pins(); pin++) {
                pins.add(role("pin." + pin));
            }
            if (outline.hasTab()) {
                pins.add(role("pin.tab"));
            }
        });
        return pins;
    }

    private Optional<PinRole> role(String field) {
        return figures.choice(field).flatMap(id -> attempt(() -> PinRole.of(id)));
    }

    Optional<InCircuit.Agreement> agreement() {
        return figures.memo("agreement", () -> {
            if (figures.place().isEmpty()
                    || anyEmpty(figures.reference(), figures.stock(), figures.readLeg(), figures.readOther())) {
                return Optional.empty();
            }
            double leg = figures.readLeg().getAsDouble();
            double other = figures.readOther().getAsDouble();
            double stock = figures.stock().getAsDouble();
            double reference = figures.reference().getAsDouble();
            if (stock <= reference) {
                return Optional.empty();
            }
            double referenceHalfWidth = 1.8 * figures.voltUncertainty(reference);
            return recall.once(
                    List.of(
                            "agreement",
                            reference,
                            figures.bias(),
                            stock,
                            leg,
                            other,
                            figures.voltAccuracy(reference),
                            figures.voltAccuracy(stock),
                            figures.ohmUncertainty(leg),
                            figures.ohmUncertainty(other)),
                    () -> attempt(() -> InCircuit.check(
                            reference,
                            referenceHalfWidth,
                            figures.bias(),
                            stock,
                            figures.voltUncertainty(stock),
                            leg,
                            figures.ohmUncertainty(leg),
                            other,
                            figures.ohmUncertainty(other))));
        });
    }
}
