package railtrim.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Values: 120 Ω and 220 Ω with 60 µA and 1.25 V by the formula of the LM1117 data sheet (SNOS412Q 8.1), 1.65 kΩ and 1 kΩ with 40 nA and
 * 1.24 V by that of the MIC29302 (DS20006068A), each also run in ngspice with an ideal amplifier.
 */
class CircuitCommandsTest {
    private static final String FLOATING = "--place out-adj --reference 1.25V --upper 120R --lower 220R --bias 60uA";
    private static final String FEEDBACK = "--place fb-gnd --reference 1.24V --upper 1.65k --lower 1k --bias 40nA";
    private static final double SPICE = 2e-6 * 5;

    @ParameterizedTest
    @CsvSource({
        // ngspice with an ideal regulator, six digits
        FLOATING + ", 10k, 3.50525",
        FLOATING + ", 1k, 3.13923",
        FLOATING + ", 2R, 1.27076",
        FEEDBACK + ", 20k, 3.13013",
        FEEDBACK + ", 2R, 1.24248",
    })
    void predictsTheOutputWithAResistorAdded(String circuit, String added, double volts) {
        Ran ran = Ran.line("predict " + circuit + " --json --added " + added);
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(volts, ran.number("voltage"), SPICE);
    }

    @ParameterizedTest
    @CsvSource({
        // exact values of the data sheets' formulas: LM317 SLVS044, LM1117 SNOS412Q, LT1086 p9, LM337 SNVSAX3, MIC29302
        // DS20006068A,
        // TPS54531 SLVSBI5B (printed 4.96), LM2596 SNVS124C, TL431 SLVS543R
        "out-adj, 1.25V, 240R, 720R, 50uA, 5.036000",
        "out-adj, 1.25V, 120R, 220R, 60uA, 3.554867",
        "out-adj, 1.25V, 121R, 365R, 55uA, 5.040736",
        "negative-out-adj, 1.25V, 120R, 365R, 65uA, -5.075808",
        "fb-gnd, 1.24V, 1.65k, 1k, 40nA, 3.286066",
        "fb-gnd, 0.8V, 10.2k, 1.96k, 0A, 4.963265",
        "fb-gnd, 1.23V, 15.4k, 1k, 10nA, 20.172154",
        "shunt, 2.495V, 10k, 10k, 2uA, 5.010000",
    })
    void knowsTheStockVoltageOfPublishedDividers(
            String place, String reference, String upper, String lower, String bias, double stock) {
        Ran ran = Ran.of(
                "predict",
                "--json",
                "--added",
                "100k",
                "--place",
                place,
                "--reference",
                reference,
                "--upper",
                upper,
                "--lower",
                lower,
                "--bias",
                bias);
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(stock, ran.number("stock"), 1e-6);
    }

    @Test
    void whatWasMeasuredGivesTheSameCircuitAsBothResistors() {
        Ran ran = Ran.line(
                "predict --json --place out-adj --reference 1.25V --stock 3.554866667V --leg 220R --bias 60uA --added 1k");
        assertEquals(3.139235, ran.number("voltage"), 1e-6);
        assertEquals(120.0, ran.number("other"), 1e-4);
        assertEquals(0.010476667, ran.number("legCurrent"), 1e-9);
        // 220 Ω beside 1 kΩ
        assertEquals(220.0 * 1000 / 1220, ran.number("legTotal"), 1e-9);
    }

    @Test
    void aNegativeRegulatorIsTypedWithOrWithoutItsSignAndAnsweredWithIt() {
        String rest = " --leg 365R --added 1k --json";
        String circuit = "predict --place negative-out-adj --reference 1.25V --stock ";
        Ran plain = Ran.line(circuit + "5.08V" + rest);
        Ran minus = Ran.line(circuit + "-5.08V" + rest);
        Ran longMinus = Ran.line(circuit + "−5.08V" + rest);
        assertEquals(plain.out(), minus.out());
        assertEquals(plain.out(), longMinus.out());
        // −(1.25 + 3.83/365 · 365·1000/1365)
        assertEquals(-(1.25 + 3.83 / 365 * (365.0 * 1000 / 1365)), plain.number("voltage"), 1e-9);
    }

    @Test
    void everyFaultOfAFloatingRegulatorIsTold() {
        Map<String, JsonObject> faults = faults("faults " + FLOATING + " --input 12V --dropout 1.2V --added 1k --json");
        // ngspice; the wrong leg by the same formula with 120 Ω beside 1 kΩ (printed 3.830 V)
        fault(faults, "added-open", 3.55487, false);
        fault(faults, "added-short", 1.25, false);
        fault(faults, "added-wrong-leg", 3.830, true, 5e-4);
        fault(faults, "lower-open", 10.8, true);
        fault(faults, "upper-short", 10.8, true);
        fault(faults, "lower-short", 1.25, false);
        // with the upper resistor gone only the adjust current is left; the simple model leaves the 1 kΩ in place
        assertFalse(faults.get("upper-open").get("harmful").getAsBoolean());
        assertEquals(7, faults.size());
    }

    @Test
    void everyFaultOfARegulatorWithFeedbackToGroundIsTold() {
        Map<String, JsonObject> faults = faults("faults " + FEEDBACK + " --input 5V --dropout 0.5V --added 20k --json");
        fault(faults, "added-open", 3.28607, false);
        fault(faults, "added-short", 1.24, false);
        fault(faults, "added-wrong-leg", 3.388, true, 5e-4);
        fault(faults, "lower-open", 1.24007, false, 1e-4);
        fault(faults, "lower-short", 4.5, true);
        fault(faults, "upper-short", 1.24, false);
        assertEquals(
                Set.of(
                        "added-open",
                        "added-short",
                        "added-wrong-leg",
                        "upper-open",
                        "upper-short",
                        "lower-open",
                        "lower-short"),
                faults.keySet());
    }

    @Test
    void withoutAnInputVoltageAFaultTowardsTheInputHasNoVoltageButIsHarmful() {
        JsonObject open = faults("faults --json " + FLOATING).get("lower-open");
        assertTrue(open.get("voltage").isJsonNull());
        assertTrue(open.get("harmful").getAsBoolean());
    }

    @Test
    void solvesTheTrueLegFromReadings() {
        // three points of the LM1117 circuit, exact
        Ran ran = Ran.line("solve --json --place out-adj --reference 1.25V --bias 60uA --point open:3.55486667V"
                + " --point 1k:3.13923497V --point 10k:3.50525114V");
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(220.0, ran.number("leg"), 0.01);
        assertEquals(0.010476667, ran.number("legCurrent"), 1e-6);
        assertEquals(120.0, ran.number("other"), 0.01);
        assertEquals(0, ran.number("worstResidual"), 1e-6);
    }

    @Test
    void aReadingThatIsNotOfThisCircuitMakesTheAnswerNo() {
        Ran ran = Ran.line("solve --json --place out-adj --reference 1.25V --point open:3.555V --point 1k:3.139V"
                + " --point 10k:3.2V");
        assertEquals(1, ran.exit());
        assertFalse(ran.json().get("fits").getAsBoolean());
        assertTrue(ran.number("worstResidual") > 0.05);
    }

    @Test
    void ranksTrimmersWithTheirStopResistor() {
        Ran ran = Ran.line("trimmer --json " + FLOATING + " --start-drop 2% --lowest 2.9V --turns 25");
        assertEquals(0, ran.exit(), ran.err());
        JsonObject ten = list(ran, "trimmers").stream()
                .filter(trimmer -> trimmer.get("nominal").getAsDouble() == 10_000)
                .findFirst()
                .orElseThrow();
        assertEquals(3.505251, ten.get("start").getAsDouble(), 1e-6);
        // a 10 kΩ trimmer at −10 %, by the law
        assertEquals(3.49987, ten.get("startWorst").getAsDouble(), 1e-5);
        assertTrue(ten.get("lowest").getAsDouble() >= 2.9);
        // by the law 1/(x/(2.9−1.25) − 1/220) is 556 Ω; the next value of E24 is 560 Ω
        assertEquals(560, ten.get("stopResistor").getAsDouble(), 1e-9);
        // x·R²/(R+Rt)² is 0.00485 mV/Ω at 10 kΩ, times 400 Ω a turn
        assertEquals(1.94, ten.get("millivoltsPerTurnStart").getAsDouble(), 0.02);
        assertTrue(ten.get("millivoltsPerTurn").getAsDouble() > 100);
        assertTrue(ten.get("reasons").getAsJsonArray().size() > 0);
    }

    @Test
    void whereEveryTrimmerStartsTooLowTheAnswerIsNo() {
        Ran ran = Ran.line("trimmer --json " + FLOATING + " --start-drop 0.1% --lowest 1.3V --tolerance 30% --turns 1");
        List<JsonObject> trimmers = list(ran, "trimmers");
        boolean any = trimmers.stream()
                .anyMatch(trimmer -> !trimmer.get("verdict").getAsString().equals("refused"));
        assertEquals(any ? 0 : 1, ran.exit());
        assertFalse(trimmers.isEmpty());
    }

    @Test
    void judgesTheTrimmerInHandByItsMeasuredMaximum() {
        Ran good = Ran.line("trimmer --json " + FLOATING + " --start-drop 2% --lowest 2.9V --measured-max 9.8k");
        assertEquals(0, good.exit(), good.err());
        assertEquals(9800, list(good, "trimmers").get(0).get("nominal").getAsDouble(), 1e-9);
        // 1 kΩ starts at 3.139 V, 12 % below stock
        Ran low = Ran.line(
                "trimmer --json " + FLOATING + " --start-drop 2% --lowest 2.9V --measured-max 1k --measured-min 560R");
        assertEquals(1, low.exit());
        assertEquals(3.139235, list(low, "trimmers").get(0).get("start").getAsDouble(), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({
        // Rt = 1/(x/(Vtarget − Vref) − 1/R) worked out for both circuits
        FLOATING + ", 3.3V, 1769.553",
        FLOATING + ", 3.0V, 693.860",
        FEEDBACK + ", 3.0V, 10151.50",
    })
    void sizesTheFixedResistor(String circuit, String target, double ohms) {
        Ran ran = Ran.line("resistor --json " + circuit + " --target " + target);
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(ohms, ran.number("exact"), ohms * 1e-6);
    }

    @Test
    void noWorstCaseOfACandidateFallsBelowTheLimit() {
        Ran ran = Ran.line(
                "resistor --json " + FLOATING + " --target 3.0V --at-least 2.97V --series E96 --tolerance 5% --most 2");
        List<JsonObject> candidates = list(ran, "candidates");
        assertFalse(candidates.isEmpty());
        for (JsonObject candidate : candidates) {
            assertTrue(candidate.get("lowest").getAsDouble() >= 2.97);
            assertTrue(candidate.get("highest").getAsDouble() <= 3.554867);
            assertTrue(candidate.get("values").getAsJsonArray().size() <= 2);
            assertTrue(Set.of("single", "series", "parallel")
                    .contains(candidate.get("arrangement").getAsString()));
            assertTrue(candidate.get("power").getAsDouble() > 0);
        }
    }

    @Test
    void aPartsBoxGivesOnlyWhatIsInIt() {
        Ran ran = Ran.line("resistor --json " + FLOATING
                + " --target 3.0V --at-least 2.9V --most 1 --parts demo-data/parts-box.csv");
        assertEquals(0, ran.exit(), ran.err());
        List<Double> values = list(ran, "candidates").stream()
                .map(candidate ->
                        candidate.get("values").getAsJsonArray().get(0).getAsDouble())
                .toList();
        assertTrue(values.contains(820.0), values.toString());
        assertFalse(values.contains(750.0), values.toString());
    }

    @Test
    void whereNoResistorFitsTheAnswerIsNo() {
        // 0.9 mV below stock needs over 500 kΩ; the largest in the box is 100 kΩ
        Ran box = Ran.line("resistor --json " + FLOATING
                + " --target 3.554V --at-least 3.554V --most 1 --parts demo-data/parts-box.csv");
        assertEquals(0, list(box, "candidates").size());
        assertEquals(1, box.exit());
    }

    private static Map<String, JsonObject> faults(String line) {
        Ran ran = Ran.line(line);
        assertEquals(0, ran.exit(), ran.err());
        Map<String, JsonObject> byName = new HashMap<>();
        list(ran, "faults").forEach(fault -> byName.put(fault.get("fault").getAsString(), fault));
        return byName;
    }

    private static void fault(Map<String, JsonObject> faults, String name, double volts, boolean harmful) {
        fault(faults, name, volts, harmful, SPICE);
    }

    private static void fault(
            Map<String, JsonObject> faults, String name, double volts, boolean harmful, double within) {
        assertEquals(volts, faults.get(name).get("voltage").getAsDouble(), within, name);
        assertEquals(harmful, faults.get(name).get("harmful").getAsBoolean(), name);
    }

    static List<JsonObject> list(Ran ran, String key) {
        JsonArray array = ran.json().getAsJsonArray(key);
        return array.asList().stream().map(JsonElement::getAsJsonObject).collect(Collectors.toList());
    }

    /** By the law 560 Ω across 220 Ω leaves 1.65478 V over 560 Ω: 2.955 mA, 4.890 mW; a 10 kΩ track of half a watt carries 7.07 mA. */
    @Test
    void theEndOfTravelSaysWhatWiperAndStopTake() {
        Ran ran = Ran.line("trimmer --place out-adj --reference 1.25V --upper 120R --lower 220R --bias 60uA"
                + " --start-drop 2% --lowest 2.9V --json");
        com.google.gson.JsonObject ten = ran.json().getAsJsonArray("trimmers").asList().stream()
                .map(each -> each.getAsJsonObject())
                .filter(each -> each.get("nominal").getAsDouble() == 10_000)
                .findFirst()
                .orElseThrow();
        assertEquals(0.002955, ten.get("endCurrent").getAsDouble(), 5e-7);
        assertEquals(0.00489, ten.get("endPower").getAsDouble(), 5e-6);
        assertEquals(0.00707, ten.get("wiperLimit").getAsDouble(), 5e-6);
        assertEquals(1.25, ten.get("lowestBare").getAsDouble(), 1e-9);
    }
}
