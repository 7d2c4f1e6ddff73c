package railtrim.parts;

import java.util.Random;
import railtrim.circuit.Circuit;
import railtrim.circuit.Place;

/** Circuits the tests of this package share. */
final class Boards {
    private Boards() {}

    /** LM1117-type, 120/220 Ω, 1.25 V, 60 µA: 3.554867 V by the formula of the data sheet (SNOS412Q 8.1); 10.476667 mA in the leg. */
    static Circuit floating() {
        return Circuit.fromResistors(Place.OUT_ADJ, 1.25, 120, 220, 60e-6);
    }

    /** Feedback to ground, 1.65 kΩ over 1 kΩ, 1.240 V, 40 nA: 3.286066 V by the formula of the data sheet (DS20006068A). */
    static Circuit feedback() {
        return Circuit.fromResistors(Place.FB_GND, 1.24, 1650, 1000, 40e-9);
    }

    /** Any board a person may have: reference 0.6 to 2.5 V, stock up to seven times that, leg 100 Ω to 30 kΩ. */
    static Circuit any(Random random) {
        Place place = Place.values()[random.nextInt(Place.values().length)];
        double reference = 0.6 + 1.9 * random.nextDouble();
        double stock = reference * (1.3 + 5 * random.nextDouble());
        double leg = 100 * Math.pow(300, random.nextDouble());
        return Circuit.fromStock(place, reference, stock, leg, 0);
    }
}
