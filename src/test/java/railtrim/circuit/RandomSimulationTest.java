package railtrim.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.circuit.Simulator.number;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.circuit.Faults.Effect;
import railtrim.circuit.Faults.Fault;

/** Boards no data sheet has, whole or with one fault, against a circuit simulator that knows nothing of the law. */
class RandomSimulationTest {
    private static final int BOARDS = 600;
    private static final double RELATIVE = 2e-6;
    /** A short is this many ohms in the simulation: far too little to be seen in the seventh digit. */
    private static final double SHORT = 1e-6;

    private static final double INPUT = 60;
    private static final double DROPOUT = 1;

    @TempDir
    Path folder;

    @BeforeAll
    static void theSimulatorIsThere() {
        Simulator.required();
    }

    /** @param fault null for a sound board; @param added infinity for none */
    private record Drawn(Circuit circuit, double added, Fault fault) {
        static Drawn of(Random random) {
            Circuit circuit = RandomBoards.circuit(random);
            boolean fitted = random.nextInt(4) > 0;
            double added = fitted
                    ? RandomBoards.between(random, circuit.leg() / 20, circuit.leg() * 100)
                    : Double.POSITIVE_INFINITY;
            List<Fault> faults = Faults.table(circuit, added, new Supply(INPUT, DROPOUT), Double.NaN).stream()
                    .map(Effect::fault)
                    .toList();
            int which = random.nextInt(faults.size() + 3);
            return new Drawn(circuit, added, which < faults.size() ? faults.get(which) : null);
        }

        /** The output by the sums, with its sign. */
        double expected() {
            if (fault == null) {
                return circuit.signed(circuit.magnitude(added));
            }
            Effect effect = Faults.table(circuit, added, new Supply(INPUT, DROPOUT), Double.NaN).stream()
                    .filter(each -> each.fault() == fault)
                    .findFirst()
                    .orElseThrow();
            return circuit.signed(effect.voltage().orElseThrow());
        }

        /** Supply, regulator, both resistors and what was added, as the fault leaves them. */
        String elements() {
            boolean negative = circuit.place().negative();
            boolean lowerLeg = circuit.place().loweringLeg() == Leg.LOWER;
            double upper = lowerLeg ? circuit.other() : circuit.leg();
            double lower = lowerLeg ? circuit.leg() : circuit.other();
            // A leg that opens opens whole, the added part with it.
            boolean gone = fault == Fault.ADDED_OPEN || fault == (lowerLeg ? Fault.LOWER_OPEN : Fault.UPPER_OPEN);
            boolean addedIsUpper = lowerLeg == (fault == Fault.ADDED_WRONG_LEG);
            StringBuilder told = new StringBuilder("Vin in 0 " + (negative ? -INPUT : INPUT) + "\nX1 in out adj 0 "
                    + (negative ? "negreg" : lowerLeg ? "floatreg" : "fbreg") + " vref=" + number(circuit.reference())
                    + (lowerLeg ? " iadj=" : " ifb=") + number(circuit.bias()) + " vdo=" + DROPOUT + "\nRL out 0 1k\n");
            resistor(told, "Rupper", "out", "adj", upper, fault == Fault.UPPER_OPEN, fault == Fault.UPPER_SHORT);
            resistor(told, "Rlower", "adj", "0", lower, fault == Fault.LOWER_OPEN, fault == Fault.LOWER_SHORT);
            resistor(
                    told,
                    "Radded",
                    addedIsUpper ? "out" : "adj",
                    addedIsUpper ? "adj" : "0",
                    added,
                    gone || Double.isInfinite(added),
                    fault == Fault.ADDED_SHORT);
            return told.toString();
        }

        private static void resistor(
                StringBuilder told, String name, String from, String to, double ohms, boolean open, boolean shorted) {
            if (!open) {
                told.append(name)
                        .append(' ')
                        .append(from)
                        .append(' ')
                        .append(to)
                        .append(' ');
                told.append(number(shorted ? SHORT : ohms)).append('\n');
            }
        }
    }

    @Test
    void soundAndFaultyBoardsComeOutAsSimulated() {
        long seed = 20260207;
        System.out.println("random simulation seed " + seed);
        Random random = new Random(seed);
        Map<Place, Integer> places = new EnumMap<>(Place.class);
        Map<Fault, Integer> faults = new EnumMap<>(Fault.class);
        List<Drawn> boards = new ArrayList<>();
        for (int i = 0; i < BOARDS; i++) {
            Drawn board = Drawn.of(random);
            boards.add(board);
            places.merge(board.circuit().place(), 1, Integer::sum);
            if (board.fault() != null) {
                faults.merge(board.fault(), 1, Integer::sum);
            }
        }
        List<Double> simulated =
                Simulator.outputs(folder, boards.stream().map(Drawn::elements).toList());
        double worst = 0;
        for (int i = 0; i < BOARDS; i++) {
            double expected = boards.get(i).expected();
            worst = Math.max(worst, Math.abs(simulated.get(i) / expected - 1));
            assertEquals(expected, simulated.get(i), RELATIVE * Math.abs(expected), boards.get(i)::toString);
        }
        System.out.println("worst of " + BOARDS + " boards: " + worst);
        assertEquals(Place.values().length, places.size(), "every place of the reference was drawn");
        assertEquals(Fault.values().length, faults.size(), "every fault was drawn");
        assertTrue(faults.values().stream().mapToInt(Integer::intValue).sum() > BOARDS / 2, faults::toString);
    }
}
