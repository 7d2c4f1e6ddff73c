package railtrim.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.circuit.PinRole.ADJUST;
import static railtrim.circuit.PinRole.CONTROL;
import static railtrim.circuit.PinRole.ENABLE;
import static railtrim.circuit.PinRole.GROUND;
import static railtrim.circuit.PinRole.HELPER;
import static railtrim.circuit.PinRole.INPUT;
import static railtrim.circuit.PinRole.OUTPUT;
import static railtrim.circuit.PinRole.SENSE;
import static railtrim.circuit.PinRole.SWITCH;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.job.BuiltIn;
import railtrim.quantity.BadInput;

class RegulatorFamiliesTest {
    private static final RegulatorFamilies FAMILIES = RegulatorFamilies.of(BuiltIn.text("regulators.json"));

    @Test
    void nineFamiliesAreKnownByName() {
        assertEquals(
                List.of("lm317", "lm1117", "lt1086", "lm337", "mic29302", "lm2596-adj", "tps54331", "tl431", "lt1580"),
                FAMILIES.all().stream().map(RegulatorFamily::id).toList());
        assertTrue(FAMILIES.named("lm999").isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        // National LM117/LM317A/LM317 table; LM317/D
        "lm317, OUT_ADJ, 1.20, 1.25, 1.30, 50e-6, 100e-6",
        // SNOS412 at 25 °C
        "lm1117, OUT_ADJ, 1.238, 1.250, 1.262, 60e-6, 120e-6",
        // LT1086 pages 1 and 4; limits of the reference from memory
        "lt1086, OUT_ADJ, 1.238, 1.250, 1.262, 55e-6, 120e-6",
        // Fairchild LM337 rev 5.0; 65 µA from memory
        "lm337, NEGATIVE_OUT_ADJ, 1.213, 1.250, 1.287, 65e-6, 100e-6",
        // M9999-122012-B, DS20005685A; limits and pin current from memory
        "mic29302, FB_GND, 1.228, 1.240, 1.252, 40e-9, 80e-9",
        // LM2596 electrical tables
        "lm2596-adj, FB_GND, 1.193, 1.230, 1.267, 10e-9, 100e-9",
        // SLVS839D p. 3; no pin current published there
        "tps54331, FB_GND, 0.772, 0.800, 0.828, NaN, NaN",
        // SLVS543P, standard grade; pin current from memory
        "tl431, SHUNT, 2.440, 2.495, 2.550, 2e-6, 4e-6",
        // from memory of the LT1580 sheet
        "lt1580, OUT_ADJ, 1.243, 1.250, 1.257, 60e-6, 120e-6",
    })
    void theReferenceAndThePinCurrentAreThosePublished(
            String id, Place place, double low, double typical, double high, double bias, double biasHigh) {
        RegulatorFamily family = FAMILIES.named(id).orElseThrow();
        assertEquals(place, family.place());
        assertEquals(low, family.referenceLow(), 1e-12);
        assertEquals(typical, family.reference(), 1e-12);
        assertEquals(high, family.referenceHigh(), 1e-12);
        assertEquals(bias, family.bias(), 1e-15);
        assertEquals(biasHigh, family.biasHigh(), 1e-15);
        assertEquals(Double.isNaN(bias) ? 0 : bias, family.biasOrZero(), 1e-15);
    }

    @ParameterizedTest
    @CsvSource({
        // The part tables of the same sheets: largest minimum load, dropout at full load, highest input
        "lm317, 0.010, 2.5, 40",
        "lm1117, 0.005, 1.20, 15",
        "lt1086, 0.010, 1.0, 30",
        "lm337, 0.010, NaN, 40",
        "mic29302, 0.007, 0.350, 26",
        "lm2596-adj, NaN, NaN, 40",
        "tps54331, NaN, NaN, 28",
        "tl431, 0.001, NaN, 36",
        "lt1580, 0.010, 0.54, 6",
    })
    void theLimitsAreThosePublished(String id, double minimumLoad, double dropout, double inputHighest) {
        RegulatorFamily family = FAMILIES.named(id).orElseThrow();
        assertEquals(minimumLoad, family.minimumLoad(), 1e-12);
        assertEquals(dropout, family.dropout(), 1e-12);
        assertEquals(inputHighest, family.inputHighest(), 1e-12);
    }

    @Test
    void theFirstPinIsAdjustOnTheFloatingTypesButInputAndOutputChangePlaces() {
        assertEquals(List.of(ADJUST, OUTPUT, INPUT), pins("lm1117", Outline.SOT_223));
        assertEquals(List.of(ADJUST, OUTPUT, INPUT), pins("lm317", Outline.TO_220));
        assertEquals(OUTPUT, FAMILIES.named("lm317").orElseThrow().tab());
        // LM337 data sheet: 1 ADJ, 2 IN, 3 OUT, tab IN
        assertEquals(List.of(ADJUST, INPUT, OUTPUT), pins("lm337", Outline.TO_220));
        assertEquals(INPUT, FAMILIES.named("lm337").orElseThrow().tab());
    }

    @Test
    void fivePinPartsAreAsReadyAsThreePinOnes() {
        assertEquals(List.of(ENABLE, INPUT, GROUND, OUTPUT, ADJUST), pins("mic29302", Outline.TO_263_5));
        assertEquals(List.of(INPUT, SWITCH, GROUND, ADJUST, ENABLE), pins("lm2596-adj", Outline.TO_220_5));
        // From memory: floating reference between sense and adjust, a control supply of its own, power input on pin 5
        assertEquals(List.of(SENSE, ADJUST, OUTPUT, CONTROL, INPUT), pins("lt1580", Outline.TO_220_5));
        assertEquals(Leg.LOWER, FAMILIES.named("lt1580").orElseThrow().place().loweringLeg());
    }

    /** TPS54331 in SOIC-8: BOOT, VIN, EN, SS, VSENSE, COMP, GND, PH; from memory. */
    @Test
    void theHelperPinsOfASwitchingRegulatorAreNotCalledUnused() {
        assertEquals(
                List.of(HELPER, INPUT, ENABLE, HELPER, ADJUST, HELPER, GROUND, SWITCH),
                pins("tps54331", Outline.SOIC_8));
    }

    @Test
    void theShuntReferenceIsAlwaysAskedForItsPins() {
        assertEquals(Map.of(), FAMILIES.named("tl431").orElseThrow().pinouts());
    }

    @Test
    void everyFamilyHasOneAdjustPinOnEveryOutlineAndSaysItsSources() {
        for (RegulatorFamily family : FAMILIES.all()) {
            assertFalse(family.sources().isEmpty());
            assertTrue(family.referenceLow() <= family.reference() && family.reference() <= family.referenceHigh());
            family.pinouts().forEach((outline, roles) -> {
                assertEquals(outline.pins(), roles.size(), family.id());
                for (PinRole once : List.of(ADJUST, INPUT)) {
                    assertEquals(1, roles.stream().filter(role -> role == once).count(), family.id() + once);
                }
            });
        }
    }

    private static final String GOOD = """
            {"families": [{"id": "lm317", "name": "LM317", "place": "out-adj",
            "reference": ["1.20 V", "1.25 V", "1.30 V"], "bias": ["50 uA", null], "minimumLoad": null,
            "dropout": "2.5 V", "inputHighest": "40 V", "otherLeg": [null, "240 R"],
            "pinouts": {"TO-220": ["adjust", "output", "input"]}, "tab": null, "sources": ["a sheet"]}]}""";

    @Test
    void aFigureThatIsNotPublishedIsNull() {
        RegulatorFamily family = RegulatorFamilies.of(GOOD).all().get(0);
        assertTrue(Double.isNaN(family.minimumLoad()));
        assertTrue(Double.isNaN(family.biasHigh()));
        assertTrue(Double.isNaN(family.otherLegLow()));
        assertEquals(240, family.otherLegHigh());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "\"id\": \"lm317\"; \"id\": \"LM 317!\"; id",
                "\"name\": \"LM317\"; \"name\": \"\"; name",
                "\"name\": \"LM317\"; \"name\": 317; name",
                "out-adj; out-gnd; place",
                "\"1.25 V\"; \"1.25\"; reference",
                "\"1.25 V\"; \"1.25 Ohm\"; reference",
                "\"1.25 V\"; 1.25; reference",
                "\"1.25 V\"; null; reference",
                "\"1.25 V\"; \"1.35 V\"; reference",
                "\"1.25 V\"; \"-1.25 V\"; reference",
                "\"1.20 V\", \"1.25 V\"; \"1.25 V\"; reference",
                "\"reference\"; \"referrence\"; referrence",
                "\"dropout\": \"2.5 V\", ; ''; dropout",
                "\"50 uA\"; \"50 u\"; bias",
                "TO-220; TO-999; pinouts",
                "\"output\", \"input\"; \"output\"; pinouts",
                "\"output\", \"input\"; \"output\", \"inptu\"; pinouts",
                "\"tab\": null; \"tab\": \"tap\"; tab",
                "\"pinouts\": {; \"pinouts\": [{; ",
                "[\"a sheet\"]; []; sources",
                "[\"a sheet\"]; \"a sheet\"; sources",
            })
    void aWrongFieldIsNamedWithItsFamily(String from, String to, String field) {
        String text = GOOD.replace(from, to == null ? "" : to);
        assertFalse(text.equals(GOOD), from);
        BadInput refused = assertThrows(BadInput.class, () -> RegulatorFamilies.of(text));
        if (field == null) {
            assertEquals("circuit.families-unreadable", refused.told().key());
        } else {
            assertEquals("circuit.family-wrong", refused.told().key());
            assertEquals(field, refused.told().values().get(1));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "{", "[]", "{}", "{\"families\": {}}", "{families: []}", "{\"families\": []} // end", "null"
            })
    void textThatIsNoListOfFamiliesIsRefused(String text) {
        BadInput refused = assertThrows(BadInput.class, () -> RegulatorFamilies.of(text));
        assertEquals("circuit.families-unreadable", refused.told().key());
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"families\": [1]}", "{\"families\": [null]}", "{\"families\": [{}]}"})
    void anEntryThatIsNoFamilyIsRefused(String text) {
        BadInput refused = assertThrows(BadInput.class, () -> RegulatorFamilies.of(text));
        assertEquals("circuit.family-wrong", refused.told().key());
    }

    @Test
    void oneNameForTwoFamiliesIsRefused() {
        String family = GOOD.substring(GOOD.indexOf('[') + 1, GOOD.lastIndexOf(']'));
        BadInput refused = assertThrows(
                BadInput.class, () -> RegulatorFamilies.of("{\"families\": [" + family + "," + family + "]}"));
        assertEquals(List.of("lm317", "id", "used twice"), refused.told().values());
    }

    private static List<PinRole> pins(String family, Outline outline) {
        return FAMILIES.named(family).orElseThrow().pinouts().get(outline);
    }
}
