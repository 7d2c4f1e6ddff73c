package railtrim.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import railtrim.quantity.BadInput;

class PlaceTellingTest {
    /** Published spreads: LM1117 1.238–1.262 V (SNOS412), MIC29302 1.228–1.252 V (from memory). */
    private static PlaceTelling told(double outAdjust, double adjustGround) {
        return PlaceTelling.of(outAdjust, 0.005, adjustGround, 0.005, 1.228, 1.262);
    }

    @Test
    void theReferenceSitsWhereItsVoltageIs() {
        // LM1117 120/220 Ω: 1.25 V and 2.305 V; MIC29302 1.65 k/1 k: 2.046 V and 1.24 V
        assertEquals(PlaceTelling.OUT_ADJUST, told(1.25, 2.305));
        assertEquals(PlaceTelling.ADJUST_GROUND, told(2.046, 1.24));
        assertEquals(Optional.of(Place.OUT_ADJ), told(1.25, 2.305).place(false));
        assertEquals(Optional.of(Place.NEGATIVE_OUT_ADJ), told(1.25, 3.826).place(true));
        assertEquals(Optional.of(Place.FB_GND), told(2.046, 1.24).place(false));
    }

    @Test
    void whereTheOutputIsTwiceTheReferenceNothingIsDecided() {
        assertEquals(PlaceTelling.BOTH, told(1.251, 1.243));
        assertEquals(Optional.empty(), told(1.251, 1.243).place(false));
    }

    @Test
    void whereNeitherIsTheReferenceAReadingOrThePartIsWrong() {
        assertEquals(PlaceTelling.NEITHER, told(0.6, 2.7));
        assertEquals(PlaceTelling.NEITHER, told(0, 0));
        // A little outside the spread is within what the meter may be off.
        assertEquals(PlaceTelling.OUT_ADJUST, told(1.270, 2.3));
    }

    @Test
    void readingsThatCannotBeAreRefused() {
        assertThrows(BadInput.class, () -> told(-1.25, 2.3));
        assertThrows(BadInput.class, () -> told(Double.NaN, 2.3));
        assertThrows(BadInput.class, () -> PlaceTelling.of(1.25, 0, 2.3, 0, 1.3, 1.2));
        assertThrows(BadInput.class, () -> PlaceTelling.of(1.25, 0, 2.3, 0, 0, 1.2));
    }

    /** Property: on no board is the wrong place told; near twice the reference none is. */
    @Test
    void theWrongPlaceIsNeverTold() {
        long seed = 20260204;
        System.out.println("place seed " + seed);
        Random random = new Random(seed);
        int undecided = 0;
        for (int i = 0; i < 5000; i++) {
            Circuit circuit = RandomBoards.circuit(random);
            double above = circuit.stock() - circuit.reference();
            boolean upper = circuit.place().loweringLeg() == Leg.LOWER;
            double u = 0.003 * circuit.stock() / Math.sqrt(3);
            double outAdjust = (upper ? circuit.reference() : above) + u * (2 * random.nextDouble() - 1);
            double adjustGround = (upper ? above : circuit.reference()) + u * (2 * random.nextDouble() - 1);
            PlaceTelling told = PlaceTelling.of(
                    outAdjust, u, adjustGround, u, 0.99 * circuit.reference(), 1.01 * circuit.reference());
            PlaceTelling right = upper ? PlaceTelling.OUT_ADJUST : PlaceTelling.ADJUST_GROUND;
            assertEquals(true, told == right || told == PlaceTelling.BOTH, () -> circuit + " told as " + told);
            undecided += told == PlaceTelling.BOTH ? 1 : 0;
        }
        assertEquals(true, undecided > 10, "boards at twice the reference were among them");
    }
}
