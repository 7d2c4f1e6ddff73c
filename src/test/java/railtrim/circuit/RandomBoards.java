package railtrim.circuit;

import java.util.Random;

/** Divider circuits as boards have them: 0.6 V to 2.5 V references, legs from 47 Ω to 47 kΩ, outputs up to ten references. */
final class RandomBoards {
    private static final double[] REFERENCES = {0.6, 0.8, 1.23, 1.24, 1.25, 2.495};

    private RandomBoards() {}

    static Circuit circuit(Random random) {
        Place place = Place.values()[random.nextInt(Place.values().length)];
        double reference = REFERENCES[random.nextInt(REFERENCES.length)];
        double other = between(random, 47, 4700);
        double leg = other * between(random, 0.1, 9);
        // Pin currents up to a fiftieth of the divider's own, as the makers ask for.
        double bias = random.nextDouble() * 0.02 * reference / other;
        return place.loweringLeg() == Leg.UPPER
                ? Circuit.fromResistors(place, reference, leg, other, bias)
                : Circuit.fromResistors(place, reference, other, leg, bias);
    }

    /** Evenly spread over the decades. */
    static double between(Random random, double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }
}
