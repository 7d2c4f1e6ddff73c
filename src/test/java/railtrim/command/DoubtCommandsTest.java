package railtrim.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How sure a figure is, on the command line. Circuit: LM1117 120/220 Ω, 60 µA (SNOS412Q 8.1). */
class DoubtCommandsTest {
    private static final String FLOATING = "--place out-adj --reference 1.25V --upper 120R --lower 220R --bias 60uA";
    private static final String SOLVE = "solve --json --place out-adj --reference 1.25V --meter fine ";

    @Test
    void theLegComesWithItsUncertainty() {
        Ran ran = Ran.line(SOLVE + "--point open:3.5549V --point 1k:3.1392V --point 400R:2.7354V");
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(220, ran.number("leg"), 1);
        double u = ran.number("legStandardUncertainty");
        assertTrue(u > 0.1 && u < 5, ran.out());
        assertEquals(2 * u, ran.number("legExpanded"), 1e-12);
        assertTrue(ran.number("legCurrentStandardUncertainty") > 0);
        assertFalse(ran.json().has("suspect"));
        Ran told = Ran.line(
                "solve --place out-adj --reference 1.25V --meter fine --point open:3.5549V --point 1k:3.1392V");
        assertTrue(told.out().contains("220.0 Ω ± "), told.out());
    }

    @Test
    void aLegTooCoarseToUseIsCalledThat() {
        Ran ran = Ran.line("solve --place out-adj --reference 1.25V --point open:3.555V --point 10k:3.505V");
        assertTrue(ran.out().contains("too coarse to use"), ran.out());
        assertTrue(ran.out().contains("voltage at point"), ran.out());
    }

    /** The sizing formula gives 693.860 Ω for 3.000 V; its doubt is more than the relative one of the leg, as two readings subtract. */
    @Test
    void theResistorForATargetHasItsDoubt() {
        Ran ran = Ran.line(SOLVE + "--point open:3.55487V --point 1k:3.13923V --target 3.0V");
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(693.86, ran.number("added"), 0.2);
        assertTrue(
                ran.number("addedStandardUncertainty") > 1 && ran.number("addedStandardUncertainty") < 30, ran.out());
        assertEquals(
                2,
                Ran.line(SOLVE + "--point open:3.55487V --point 1k:3.13923V --target 3.6V")
                        .exit());
    }

    /** 4 % of stock away from it, a plain meter cannot tell the resistor; the message says how far a finer one would. */
    @Test
    void aResistorTooCoarseToBuyByNamesTheReadingAndWhatItWouldReach() {
        Ran ran = Ran.line(
                "solve --place out-adj --reference 1.25V --point open:3.555V --point 10k:3.505V --target 3.45V");
        assertTrue(ran.out().contains("too coarse to buy by"), ran.out());
        assertTrue(ran.out().contains("With a fine meter"), ran.out());
    }

    /** Leads of 0.3 Ω: 87.573, 110.3 and 77.573 Ω are the worked example of 120, 220 and 100 Ω; 1.0003 kΩ is 1 kΩ. */
    @Test
    void theLeadsAreTakenOffEveryResistance() {
        Ran ran = Ran.line("solve --json --meter fine --leads 0.3R --ohms out-adj:87.573R --ohms adj-gnd:110.3R"
                + " --ohms out-gnd:77.573R");
        assertEquals(120, ran.number("upper"), 0.01);
        assertEquals(220, ran.number("lower"), 0.01);
        Ran line = Ran.line(SOLVE + "--leads 0.3R --point open:3.55486667V --point 1000.3R:3.13923497V");
        assertEquals(220, line.number("leg"), 1e-3);
        Ran touching = Ran.line("solve --leads 0.3R --ohms out-adj:0.2R --ohms adj-gnd:110R --ohms out-gnd:77R");
        assertEquals(2, touching.exit());
        assertTrue(touching.err().contains("probes on the part"), touching.err());
    }

    @Test
    void theReadingOffTheLineIsNamed() {
        // 1 k, 400 Ω, 2.2 k by the formula; the third point misread by 60 mV
        Ran ran = Ran.line(SOLVE + "--point open:3.5549V --point 1k:3.1392V --point 400R:2.7954V --point 2.2k:3.3453V"
                + " --point 680R:2.9914V");
        assertEquals(1, ran.exit(), ran.out());
        assertEquals(3, ran.number("suspect"));
        assertTrue(ran.json().get("suspectSure").getAsBoolean());
        assertTrue(ran.number("suspectOff") > 4, ran.out());
    }

    @Test
    void threeResistancesOnTheBoardGiveBothResistorsAndTheLoad() {
        // Worked example: 87.273 and 110 Ω with a load of 100 Ω; out–ground reads 100 ∥ 340 = 77.273 Ω
        Ran ran =
                Ran.line("solve --json --meter fine --ohms out-adj:87.273R --ohms adj-gnd:110R --ohms out-gnd:77.273R");
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(120, ran.number("upper"), 0.01);
        assertEquals(220, ran.number("lower"), 0.01);
        assertEquals(100, ran.number("load"), 0.01);
        assertTrue(ran.number("upperStandardUncertainty") < 1);
    }

    @Test
    void aLoadOfAnOhmHidesBothResistors() {
        // Worked example: with 1 Ω the solved resistors are unusable
        Ran ran = Ran.line("solve --json --ohms out-adj:77.771R --ohms adj-gnd:78.065R --ohms out-gnd:1R");
        assertEquals(2, ran.exit(), ran.out());
        assertTrue(ran.err().contains("Use the voltages instead"), ran.err());
    }

    @ParameterizedTest
    @CsvSource({
        "1.25V, 2.305V, 0, out-adj",
        "2.046V, 1.24V, 0, fb-gnd",
        "-1.25V, -3.826V, 0, negative-out-adj",
        "1.25V, 1.24V, 1, ''",
        "0.6V, 2.9V, 1, ''",
    })
    void theReferencesPlaceIsToldOrRefused(String outAdjust, String adjustGround, int exit, String place) {
        Ran ran = Ran.of("solve", "--json", "--reference", "1.25V", "--out-adj", outAdjust, "--adj-gnd", adjustGround);
        assertEquals(exit, ran.exit(), ran.err());
        assertEquals(place, ran.json().get("place").getAsString());
    }

    @Test
    void predictShowsTheWorstCaseOfItsTolerances() {
        // LM1117 1.238–1.262 V, 1 %, pin current left out: 3.462723 V to 3.622407 V
        Ran ran = Ran.line("predict --json --place out-adj --reference 1.25V --upper 120R --lower 220R --added 100M"
                + " --tolerance 1% --reference-tolerance 0.96%");
        assertEquals(3.462723, ran.number("lowest"), 2e-5);
        assertEquals(3.622407, ran.number("highest"), 2e-5);
        assertEquals(0.02712, ran.number("standardSpread"), 1e-5);
    }

    @Test
    void predictShowsWhatTheMeterLeavesOpen() {
        Ran ran = Ran.line("predict --json " + FLOATING + " --added 1k --meter basic");
        assertEquals(3.139235, ran.number("voltage"), 1e-6);
        assertEquals(2 * ran.number("standardUncertainty"), ran.number("expanded"), 1e-12);
        assertEquals("stock", ran.json().get("mostFrom").getAsString());
        assertTrue(Ran.line("predict " + FLOATING + " --added 1k --meter basic")
                .out()
                .contains("3.139 V ± 0.0"));
    }

    @Test
    void faultsTellsWhatBridgedPinsDo() {
        Ran ran = Ran.line("faults --json " + FLOATING
                + " --input 12V --dropout 1.2V --added 1k --package SOT-223 --pins adjust,output,input");
        assertEquals(7, ran.json().getAsJsonArray("faults").size());
        JsonObject first = ran.json().getAsJsonArray("bridges").get(0).getAsJsonObject();
        assertEquals(10.8, first.get("voltage").getAsDouble(), 1e-9);
        assertTrue(first.get("harmful").getAsBoolean());
        assertEquals(2, ran.json().getAsJsonArray("bridges").size());
    }

    @Test
    void accuracyTakesAClassOfMeterInPlaceOfItsManual() {
        // basic: DC volts ±(0.5 % + 2) at 2000 counts, so 3.555 V on the 20 V range: 0.017775 + 0.02
        Ran ran = Ran.line("accuracy 3.555V --meter basic --json");
        assertEquals(0.037775, ran.number("halfWidth"), 1e-9);
        assertEquals(3.555 - 0.037775, ran.number("low"), 1e-9);
        assertEquals(0.043618, ran.number("expanded"), 1e-6);
    }

    @Test
    void heatTellsThermalResistanceAndJunction() {
        // 5 V, 3.3 V, 2 A: load 6.6 W, regulator 3.4 W → 3.6364 W at 3.0 V
        Ran ran = Ran.line("heat --json --input 5V --stock 3.3V --target 3.0V --current 2A --ambient 25C --chip 70C"
                + " --chip-after 62C --regulator 59C --package TO-220");
        assertEquals(45 / 6.6, ran.number("chipThermalResistance"), 1e-9);
        assertEquals(37 / 5.454545, ran.number("chipThermalResistanceAfter"), 1e-5);
        assertEquals(10, ran.number("regulatorThermalResistance"), 1e-9);
        assertEquals(25 + 10 * 3.636364, ran.number("regulatorTemperatureAfter"), 1e-5);
        // 5 K/W from junction to case for the outline, from memory
        assertEquals(59 + 5 * 3.4, ran.number("junctionBefore"), 1e-9);
        assertFalse(ran.json().get("junctionTooHot").getAsBoolean());
    }

    @Test
    void leakageLiesBetweenADigitalAndAConstantLoad() {
        String circuit = "heat --json --input 5V --stock 3.3V --target 3.0V --current 2A ";
        double digital = Ran.line(circuit).number("loadAfter");
        double leaking = Ran.line(circuit + "--leakage 30%").number("loadAfter");
        double constant = Ran.line(circuit + "--load constant-current").number("loadAfter");
        assertEquals(0.7 * digital + 0.3 * constant, leaking, 1e-9);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "solve --reference 1.25V",
                "solve --place out-adj --point open:3V --point 1k:2V",
                "solve --ohms out-adj:78.9R --ohms adj-gnd:81.7R",
                "solve --ohms out-adj:78.9R --ohms out-adj:81.7R --ohms out-gnd:9R",
                "solve --ohms 78.9R --ohms adj-gnd:81.7R --ohms out-gnd:9R",
                "solve --reference 1.25V --ohms out-adj:78.9R",
                "solve --reference 1.25V --out-adj 1.25V",
                "solve --reference 1.25V --out-adj 1.25V --adj-gnd -2V",
                "solve --reference 1.25V --place out-adj --out-adj 1.25V --adj-gnd 2V",
                "solve --place out-adj --reference 1.25V --point open:3V --point 1k:2V --meter best",
                "accuracy 3.555V",
                "accuracy 3.555V --meter basic --rdg 1%",
                "accuracy 3.555V --rdg 1%",
                "accuracy 3.555A --meter basic",
                "heat --input 5V --stock 3.3V --target 3.0V --leakage 10% --load digital",
                "heat --input 5V --stock 3.3V --target 3.0V --ambient 25C --chip-after 60C",
                "heat --input 5V --stock 3.3V --target 3.0V --ambient 25C --regulator 60C --package SOT-223",
                "faults --place out-adj --reference 1.25V --upper 120R --lower 220R --package SOT-223",
                "faults --place out-adj --reference 1.25V --upper 120R --lower 220R --package SOT-9 --pins adjust",
                "faults --place out-adj --reference 1.25V --upper 120R --lower 220R --package SOT-223 --pins adjust,input",
                "faults --place out-adj --reference 1.25V --upper 120R --lower 220R --package SOT-223 --pins adjust,output,in",
            })
    void whatDoesNotBelongTogetherIsRefusedInOneLine(String line) {
        Ran ran = Ran.line(line);
        assertEquals(2, ran.exit(), line + ran.out());
        assertEquals(1, ran.err().strip().lines().count(), ran.err());
    }

    /** A basic meter shows 3.555 V as 3.55 or 3.56 V: one who types 3.5549 V has a better one. */
    @Test
    void whoTypesMoreDigitsThanABasicMeterShowsIsAskedWhichMeterItWas() {
        String points = "solve --place out-adj --reference 1.25V --point open:3.5549V --point 1k:3.1392V";
        assertTrue(Ran.line(points).out().contains("--meter"), Ran.line(points)::out);
        assertFalse(Ran.line(points + " --meter fine").out().contains("--meter"));
        assertFalse(Ran.line("solve --place out-adj --reference 1.25V --point open:3.55V --point 1k:3.14V")
                .out()
                .contains("--meter"));
    }

    /** What one more reading is said to reach is what it does reach, once it is there: 1.5 kΩ gives 1.25 V + 2.305 V · 1.5/1.72 = 3.260 V. */
    @Test
    void whatOneMorePointWouldReachIsWhatItReaches() {
        String two = "solve --json --place out-adj --reference 1.25V --point open:3.555V --point 10k:3.505V";
        Ran coarse = Ran.line(two);
        assertEquals(1500, coarse.number("furtherAdded"), 1e-9);
        Ran three = Ran.line(two + " --point 1k5:3.2602V");
        assertEquals(
                three.number("legExpanded"), coarse.number("furtherLegExpanded"), 0.02 * three.number("legExpanded"));
        assertTrue(coarse.number("furtherLegExpanded") < coarse.number("legExpanded") / 3);
    }
}
