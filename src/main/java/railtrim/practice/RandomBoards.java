package railtrim.practice;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;
import railtrim.circuit.RegulatorFamily;
import railtrim.heat.Heat;

/**
 * Practice boards drawn by chance: a known regulator family, a divider that gives a rail of the years in question, parts off nominal
 * within their tolerance, a load, and a fail voltage the hand does not know. The same generator state gives the same boards.
 */
public final class RandomBoards {
    private final List<RegulatorFamily> families;
    private final RandomGenerator chance;

    public RandomBoards(List<RegulatorFamily> families, RandomGenerator chance) {
        this.families = List.copyOf(families);
        this.chance = chance;
    }

    /** So many boards, with the places taken in turn so that each is as frequent as the others; each is drawn when it is asked for. */
    public Iterator<Board> some(int boards) {
        Place[] places = Place.values();
        return IntStream.range(0, boards)
                .mapToObj(i -> draw("Practice board " + (i + 1), places[i % places.length]))
                .iterator();
    }

    /** The same, all at once. */
    public List<Board> draw(int boards) {
        List<Board> drawn = new ArrayList<>();
        some(boards).forEachRemaining(drawn::add);
        return drawn;
    }

    /** One board with its reference in a given place. @throws railtrim.quantity.BadInput where no family has it there */
    public Board draw(String name, Place place) {
        RegulatorFamily family =
                oneOf(families.stream().filter(known -> known.place() == place).toList());
        Board.Divider divider = divider(family);
        // Where a family's pins vary by maker, this maker has the small three-pin package.
        Map<Outline, List<PinRole>> pinouts = family.pinouts().isEmpty()
                ? Map.of(Outline.TO_92, List.of(PinRole.ADJUST, PinRole.GROUND, PinRole.OUTPUT))
                : family.pinouts();
        Outline outline = oneOf(pinouts.keySet().stream().sorted().toList());
        List<PinRole> pins = pinouts.get(outline);
        return new Board(
                new Board.Label(name, "Chance", "A board drawn by chance.", "Whatever it has in store."),
                new Board.Feed("bench", 12),
                new Board.Chip("Chip of " + name, Optional.empty()),
                new Board.Regulator(
                        family.name(),
                        family.id(),
                        Optional.empty(),
                        outline,
                        pins,
                        outline.hasTab()
                                ? Optional.of(family.tab() == null ? PinRole.OUTPUT : family.tab())
                                : Optional.empty(),
                        Board.Control.ADJUSTABLE,
                        family.otherLegHigh() > 0
                                && family.pinouts().get(outline).contains(PinRole.SWITCH)),
                divider,
                load(divider),
                new Board.Warmth(between(5, 12), between(5, 12), between(40, 180), between(40, 180), between(18, 26)),
                failing(divider));
    }

    /** The other leg as the data sheet advises, the adjusted leg for the wished rail, both of the E96 kind: three digits. */
    private Board.Divider divider(RegulatorFamily family) {
        double reference = family.reference();
        double low = known(family.otherLegLow(), 100);
        double high = known(family.otherLegHigh(), Math.max(10 * low, 1000));
        double other = threeDigits(low * Math.pow(high / low, chance.nextDouble()));
        double bias = known(family.bias(), 0);
        double stock = reference * between(1.7, 3.2);
        double leg = threeDigits((stock - reference) / (reference / other + bias));
        boolean lowerAdjusted = family.place() == Place.OUT_ADJ || family.place() == Place.NEGATIVE_OUT_ADJ;
        double dropout = known(family.dropout(), 1);
        double input = Math.max(stock + dropout + 0.35 * stock, 1.4 * stock);
        return new Board.Divider(
                family.place(),
                new Board.Real(reference, off(family)),
                new Board.Real(lowerAdjusted ? other : leg, between(-0.01, 0.01)),
                new Board.Real(lowerAdjusted ? leg : other, between(-0.01, 0.01)),
                bias * between(0.8, 1.3),
                Math.min(input, known(family.inputHighest(), 60)),
                dropout,
                between(0, 0.05),
                0,
                0,
                OptionalDouble.empty(),
                between(0, 0.003),
                40 * Math.pow(50, chance.nextDouble()),
                between(0.3, 4));
    }

    private double off(RegulatorFamily family) {
        double lowest = known(family.referenceLow(), family.reference()) / family.reference() - 1;
        double highest = known(family.referenceHigh(), family.reference()) / family.reference() - 1;
        // Real parts crowd round the middle: the mean of two draws.
        return (between(lowest, highest) + between(lowest, highest)) / 2;
    }

    private Board.Load load(Board.Divider divider) {
        return new Board.Load(
                "the longest test there is",
                between(0.3, 1.5),
                between(0.4, 0.8),
                chance.nextDouble() < 0.8 ? Heat.LoadKind.DIGITAL : Heat.LoadKind.CONSTANT_CURRENT,
                between(0, 0.15),
                1,
                Optional.of(new Board.Other(
                        "another test that works the chip in another way",
                        between(0.6, 1),
                        stock(divider) * between(-0.012, 0.006))));
    }

    /** Fails at 75 to 92 % of stock; usually warm, now and then cold. */
    private Board.Failing failing(Board.Divider divider) {
        double stock = stock(divider);
        double hot = stock * between(0.75, 0.92);
        double cold = hot + stock * between(-0.025, 0.012);
        Seen[] shows = {Seen.GLITCH, Seen.RESET, Seen.ERRORS};
        return new Board.Failing(
                hot,
                cold,
                stock * between(0.001, 0.005),
                stock * between(1.15, 1.4),
                shows[chance.nextInt(shows.length)]);
    }

    private static double stock(Board.Divider divider) {
        return divider.magnitude(divider.upper().value(), divider.lower().value());
    }

    private double between(double low, double high) {
        return low + (high - low) * chance.nextDouble();
    }

    private <T> T oneOf(List<T> list) {
        if (list.isEmpty()) {
            throw railtrim.quantity.BadInput.of("practice.no-family-for-place");
        }
        return list.get(chance.nextInt(list.size()));
    }

    private static double known(double value, double otherwise) {
        return Double.isNaN(value) ? otherwise : value;
    }

    private static double threeDigits(double ohms) {
        double scale = Math.pow(10, Math.floor(Math.log10(ohms)) - 2);
        return Math.rint(ohms / scale) * scale;
    }
}
