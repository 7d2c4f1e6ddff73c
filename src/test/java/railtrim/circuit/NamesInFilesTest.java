package railtrim.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import railtrim.quantity.BadInput;

/** Places, roles and outlines are written into jobs and typed on the command line: a name once given stays. */
class NamesInFilesTest {
    @Test
    void aPlaceIsFoundByTheNameItIsWrittenWith() {
        assertNames(
                List.of("out-adj", "fb-gnd", "negative-out-adj", "shunt"),
                Place.values(),
                Place::id,
                Place::of,
                "circuit.place-unknown");
    }

    @Test
    void aPinRoleIsFoundByTheNameItIsWrittenWith() {
        assertNames(
                List.of(
                        "input",
                        "output",
                        "adjust",
                        "ground",
                        "sense",
                        "control",
                        "enable",
                        "switch",
                        "helper",
                        "not-connected"),
                PinRole.values(),
                PinRole::id,
                PinRole::of,
                "circuit.pin-role-unknown");
    }

    /** The makers' names of the packages; any other by its pins. */
    @Test
    void anOutlineIsFoundByTheNameItIsWrittenWith() {
        assertNames(
                List.of(
                        "TO-92",
                        "TO-220",
                        "TO-220-5",
                        "TO-252",
                        "TO-263",
                        "TO-263-5",
                        "SOT-223",
                        "SOT-23",
                        "SOT-23-5",
                        "SOIC-8",
                        "3-pin",
                        "4-pin",
                        "5-pin",
                        "6-pin",
                        "7-pin",
                        "8-pin"),
                Outline.values(),
                Outline::id,
                Outline::of,
                "circuit.outline-unknown");
    }

    private static <T> void assertNames(
            List<String> names, T[] values, Function<T, String> id, Function<String, T> of, String refusal) {
        assertEquals(names, Arrays.stream(values).map(id).toList());
        names.forEach(name -> assertEquals(name, id.apply(of.apply(name))));
        assertEquals(
                refusal,
                assertThrows(BadInput.class, () -> of.apply("nothing such"))
                        .told()
                        .key());
    }

    /** From memory of data sheets: a tab soldered to the die leads heat out better than a small plastic body. */
    @Test
    void aPackageWithATabIsCoolerInsideThanOneWithout() {
        double worstTab = Arrays.stream(Outline.values())
                .filter(Outline::hasTab)
                .flatMapToDouble(outline -> outline.junctionToCase().stream())
                .max()
                .orElseThrow();
        double bestBody = Arrays.stream(Outline.values())
                .filter(outline -> !outline.hasTab())
                .flatMapToDouble(outline -> outline.junctionToCase().stream())
                .min()
                .orElseThrow();
        assertTrue(worstTab < bestBody, worstTab + " " + bestBody);
        assertEquals(6, Arrays.stream(Outline.values()).filter(Outline::hasTab).count());
    }

    /** The law: the added resistor goes across the leg that is not the reference’s. */
    @Test
    void theOtherLegIsTheOtherLeg() {
        assertEquals(Leg.LOWER, Leg.UPPER.other());
        assertEquals(Leg.UPPER, Leg.LOWER.other());
        assertEquals(2, new HashSet<>(Arrays.asList(Leg.values())).size());
    }
}
