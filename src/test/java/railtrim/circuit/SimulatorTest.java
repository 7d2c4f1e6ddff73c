package railtrim.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static railtrim.circuit.Simulator.number;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.circuit.Faults.Effect;
import railtrim.circuit.Faults.Fault;

/** The sums of this package against a circuit simulator, case by case, to two microvolts. */
class SimulatorTest {
    private static final double MICROVOLTS = 2e-6;

    private static final Circuit FLOATING = Circuit.fromResistors(Place.OUT_ADJ, 1.25, 120, 220, 60e-6);
    private static final Circuit FEEDBACK = Circuit.fromResistors(Place.FB_GND, 1.24, 1650, 1000, 40e-9);

    private static final String FLOATING_ON_12_V = """
            Vin in 0 12
            X1 in out adj 0 floatreg vref=1.25 iadj=60u vdo=1.2
            RL out 0 100
            """;
    private static final String FEEDBACK_ON_5_V = """
            Vin in 0 5
            X1 in out fb 0 fbreg vref=1.24 ifb=40n vdo=0.5
            RL out 0 100
            """;

    @TempDir
    Path folder;

    @BeforeAll
    static void theSimulatorIsThere() {
        Simulator.required();
    }

    @ParameterizedTest
    @CsvSource({"Infinity, 3.55487", "10000, 3.50525", "1000, 3.13923", "2, 1.27076"})
    void aFloatingRegulatorWithAResistorAcrossItsLowerLeg(double added, double printed) {
        String across = Double.isInfinite(added) ? "" : "RT adj 0 " + number(added) + "\n";
        double simulated = out(FLOATING_ON_12_V + "R1 out adj 120\nR2 adj 0 220\n" + across);
        assertEquals(simulated, FLOATING.magnitude(added), MICROVOLTS);
        assertEquals(printed, simulated, 5.1e-6);
    }

    @ParameterizedTest
    @CsvSource({"Infinity, 3.28607", "20000, 3.13013", "2, 1.24248"})
    void aFeedbackRegulatorWithAResistorAcrossItsUpperLeg(double added, double printed) {
        String across = Double.isInfinite(added) ? "" : "RP out fb " + number(added) + "\n";
        double simulated = out(FEEDBACK_ON_5_V + "RT out fb 1.65k\nRB fb 0 1k\n" + across);
        assertEquals(simulated, FEEDBACK.magnitude(added), MICROVOLTS);
        assertEquals(printed, simulated, 5.1e-6);
    }

    @ParameterizedTest
    @CsvSource({
        "OUT_ADJ, floatreg, 12, 1.25, 240, 720, 50e-6, 5.03600", // LM317
        "OUT_ADJ, floatreg, 12, 1.25, 121, 365, 55e-6, 5.040736", // LT1086
        "NEGATIVE_OUT_ADJ, negreg, -12, 1.25, 120, 365, 65e-6, -5.07581", // LM337
        "FB_GND, fbreg, 12, 0.8, 10200, 1960, 0, 4.96327", // TPS54531
        "FB_GND, fbreg, 24, 1.23, 15400, 1000, 10e-9, 20.1722", // LM2596
        "FB_GND, fbreg, 5, 0.6, 10000, 10000, 0, 1.2", // 0.6 V converter
        "SHUNT, fbreg, 12, 2.495, 10000, 10000, 2e-6, 5.01000", // TL431
    })
    void theOtherFamilies(
            Place place, String part, double in, double reference, double upper, double lower, double bias, double v) {
        String biasName = part.equals("fbreg") ? "ifb" : "iadj";
        double simulated = out("Vin in 0 " + in + "\nX1 in out adj 0 " + part + " vref=" + number(reference) + " "
                + biasName + "=" + number(bias) + " vdo=0.5\nRL out 0 100\nR1 out adj " + number(upper)
                + "\nR2 adj 0 " + number(lower));
        Circuit circuit = Circuit.fromResistors(place, reference, upper, lower, bias);
        assertEquals(simulated, circuit.signed(circuit.stock()), MICROVOLTS);
        assertEquals(v, simulated, 5.1e-5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "ADDED_OPEN; 1000; R1 out adj 120,R2 adj 0 220; 3.55487",
                "ADDED_SHORT; 1000; R1 out adj 120,R2 adj 0 220,RT adj 0 1u; 1.25",
                "ADDED_WRONG_LEG; 1000; R1 out adj 120,R2 adj 0 220,RT out adj 1k; 3.830",
                "UPPER_OPEN; Infinity; R2 adj 0 220; 1.26320",
                "UPPER_OPEN; 1000; R2 adj 0 220,RT adj 0 1k; 1.26082",
                "UPPER_SHORT; Infinity; R1 out adj 1u,R2 adj 0 220; 10.8",
                "LOWER_OPEN; Infinity; R1 out adj 120; 10.8",
                "LOWER_SHORT; Infinity; R1 out adj 120,R2 adj 0 1u; 1.25",
            })
    void theFaultsOfAFloatingRegulator(Fault fault, double added, String elements, double printed) {
        assertFault(FLOATING, new Supply(12, 1.2), FLOATING_ON_12_V, fault, added, elements, printed);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "ADDED_OPEN; 20000; RT out fb 1.65k,RB fb 0 1k; 3.28607",
                "ADDED_SHORT; 20000; RT out fb 1.65k,RB fb 0 1k,RP out fb 1u; 1.24",
                "ADDED_WRONG_LEG; 20000; RT out fb 1.65k,RB fb 0 1k,RP fb 0 20k; 3.388",
                "UPPER_OPEN; Infinity; RB fb 0 1k; 4.5",
                "UPPER_SHORT; Infinity; RT out fb 1u,RB fb 0 1k; 1.24",
                "LOWER_OPEN; Infinity; RT out fb 1.65k; 1.24007",
                "LOWER_SHORT; Infinity; RT out fb 1.65k,RB fb 0 1u; 4.5",
            })
    void theFaultsOfAFeedbackRegulator(Fault fault, double added, String elements, double printed) {
        assertFault(FEEDBACK, new Supply(5, 0.5), FEEDBACK_ON_5_V, fault, added, elements, printed);
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 100, 1000, 10_000})
    void readingsOnABoardWithItsLoadGiveTheLegsBack(double load) {
        // One milliampere through each pair in turn, as an ohmmeter does; power off.
        double upper = ohms("out", "adj", load);
        double lower = ohms("adj", "0", load);
        InCircuit.Delta delta = InCircuit.solve(upper, lower, ohms("out", "0", load));
        assertEquals(120, delta.outAdjust(), 1e-4);
        assertEquals(220, delta.adjustGround(), 1e-4);
        assertEquals(load, delta.outGround(), load * 1e-5);
        InCircuit.Agreement agreement =
                InCircuit.check(1.25, 0.01, 60e-6, FLOATING.stock(), 0.01, lower, lower * 0.005, upper, upper * 0.005);
        assertEquals(220, agreement.leg(), 1);
    }

    private double ohms(String from, String to, double load) {
        String network = "R1 out adj 120\nR2 adj 0 220\nRL out 0 " + number(load) + "\nI1 " + to + " " + from + " 1m\n";
        if (to.equals("0")) {
            return Simulator.voltages(folder, network, from).get(from) / 1e-3;
        }
        Map<String, Double> volts = Simulator.voltages(folder, network, from, to);
        return (volts.get(from) - volts.get(to)) / 1e-3;
    }

    private void assertFault(
            Circuit circuit, Supply supply, String frame, Fault fault, double added, String elements, double printed) {
        double simulated = out(frame + elements.replace(',', '\n'));
        Effect effect = Faults.table(circuit, added, supply, Double.NaN).stream()
                .filter(told -> told.fault() == fault)
                .findFirst()
                .orElseThrow();
        assertEquals(simulated, effect.voltage().orElseThrow(), MICROVOLTS, effect::toString);
        assertEquals(printed, simulated, 5e-4);
    }

    private double out(String elements) {
        return Simulator.voltages(folder, elements, "out").get("out");
    }
}
