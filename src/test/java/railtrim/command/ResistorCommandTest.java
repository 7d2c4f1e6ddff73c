package railtrim.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResistorCommandTest {
    private static final String BOARD =
            "resistor --place out-adj --reference 1.25V --upper 120R --lower 220R --bias 60uA --target 3.0V --at-least 2.9V ";

    private static JsonObject first(Ran ran) {
        return ran.json().getAsJsonArray("candidates").get(0).getAsJsonObject();
    }

    @Test
    void threeResistorsComeNearerThanTwo() {
        Ran three = Ran.line(BOARD + "--json --most 3");
        assertEquals(0, three.exit(), three.err());
        double nearest = first(three).get("voltage").getAsDouble() - 3.0;
        assertTrue(nearest >= -1e-9);
        assertTrue(nearest <= first(Ran.line(BOARD + "--json")).get("voltage").getAsDouble() - 3.0);
        assertTrue(List.of("series", "parallel", "series-parallel", "parallel-series")
                .contains(first(three).get("arrangement").getAsString()));
        assertEquals(2, Ran.line(BOARD + "--most 4").exit());
        assertTrue(Ran.line(BOARD + "--most 3").out().contains("safe side"));
    }

    @Test
    void aWarmOrUncertainBoardHasAWiderWorstCase() {
        String one = BOARD + "--json --most 1 ";
        double plain = first(Ran.line(one)).get("lowest").getAsDouble();
        double warm = first(Ran.line(one + "--tempco 100 --warming 40C"))
                .get("lowest")
                .getAsDouble();
        double unsure =
                first(Ran.line(one + "--leg-tolerance 1%")).get("lowest").getAsDouble();
        assertTrue(warm < plain && unsure < plain, plain + " " + warm + " " + unsure);
    }

    /** 750 Ω: 1.782 V across it at 3.0321 V make 4.2 mW (computed); any size takes that. */
    @Test
    void powerSizeAndYieldStandBesideEachCandidate() {
        JsonObject single = first(Ran.line(BOARD + "--json --most 1 --seed 7"));
        assertEquals(750, single.getAsJsonArray("values").get(0).getAsDouble());
        assertEquals("0402", single.get("chip").getAsString());
        assertEquals("0204", single.get("leaded").getAsString());
        // 32.11 mV above the target ± 4.04 mV (7.5 Ω at 0.539 mV/Ω, computed), where ±1 % is 30 mV: 0.239 of the boards
        // hit
        assertEquals(0.239, single.get("yield").getAsDouble(), 0.02);
        assertEquals(
                1,
                first(Ran.line(BOARD + "--json --most 1 --seed 7 --within 3%"))
                        .get("yield")
                        .getAsDouble());
        assertEquals(3, single.getAsJsonArray("reasons").size());
        assertEquals(
                Ran.line(BOARD + "--json --seed 7").out(),
                Ran.line(BOARD + "--json --seed 7").out());
    }

    @Test
    void aPartsBoxCanGiveThree(@TempDir Path folder) throws IOException {
        Path box = folder.resolve("box.csv");
        Files.writeString(box, "value,tolerance,count\n1k,5%,1\n2k2,1%,1\n150R,1%,1\n");
        Ran ran = Ran.line(BOARD + "--json --most 3 --parts " + box);
        assertEquals(0, ran.exit(), ran.out() + ran.err());
        assertTrue(ran.json().getAsJsonArray("candidates").asList().stream()
                .anyMatch(
                        each -> each.getAsJsonObject().getAsJsonArray("values").size() == 3));
    }
}
