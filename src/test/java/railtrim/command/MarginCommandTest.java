package railtrim.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MarginCommandTest {
    @TempDir
    Path folder;

    private Ran margin(String csv, String... more) throws IOException {
        Path file = folder.resolve("trials.csv");
        Files.writeString(file, csv);
        return Ran.line("margin " + file + " --json", more);
    }

    private static JsonObject estimate(Ran ran, String method) {
        return ran.json().getAsJsonArray("estimates").asList().stream()
                .map(each -> each.getAsJsonObject())
                .filter(each -> each.get("method").getAsString().equals(method))
                .findFirst()
                .orElseThrow();
    }

    private static final String STAIRS = """
            run,volts,fault,dwell
            1,2.84V,no,60s
            2,2.82V,no,60s
            3,2.80V,yes,20s
            4,2.82V,yes,60s
            5,2.84V,no,60s
            6,2.82V,no,60s
            7,2.80V,yes,60s
            8,2.82V,no,60s
            9,2.80V,yes,60s
            """;

    /** Dixon and Mood by hand: see the estimator’s own test; 2.815 V and 0.53·20 mV. */
    @Test
    void anUpAndDownListIsAlsoEvaluatedAsOne() throws IOException {
        Ran ran = margin(STAIRS, "--stock", "3.3V");
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(2.815, estimate(ran, "up-down").get("middle").getAsDouble(), 1e-9);
        assertEquals(0.0106, estimate(ran, "up-down").get("spread").getAsDouble(), 1e-9);
        assertEquals(20, ran.number("shortestDwell"), 1e-9);
    }

    /** Shares of 0, 1/4, 3/4 and 1, symmetric about 2.83 V: both curves have their middle there, and 1 % fail at a higher voltage. */
    @Test
    void whereGoodAndFaultOverlapTheCurvesAreFitted() throws IOException {
        StringBuilder csv = new StringBuilder("run,volts,fault\n");
        int[] faults = {0, 1, 3, 4};
        for (int level = 0; level < 4; level++) {
            for (int i = 0; i < 4; i++) {
                csv.append(i + 1).append(",2.").append(86 - 2 * level);
                csv.append(i < faults[level] ? "V,yes\n" : "V,no\n");
            }
        }
        Ran ran = margin(csv.toString(), "--stock", "3.3V");
        for (String method : List.of("logit", "probit")) {
            JsonObject curve = estimate(ran, method);
            assertEquals(2.83, curve.get("middle").getAsDouble(), 1e-6);
            assertTrue(curve.get("onePercent").getAsDouble() > 2.85);
        }
        assertEquals(2.83, estimate(ran, "spearman-kaerber").get("middle").getAsDouble(), 1e-9);
    }

    @Test
    void aPlainWayDownHasNoCurveAndSaysThatOneRunKnowsNoScatter() throws IOException {
        Ran ran = margin("run,volts,fault\n1,3.0V,no\n1,2.95V,no\n1,2.9V,yes\n", "--stock", "3.3V");
        assertEquals(0, ran.exit(), ran.err());
        List<String> methods = ran.json().getAsJsonArray("estimates").asList().stream()
                .map(each -> each.getAsJsonObject().get("method").getAsString())
                .toList();
        assertEquals(List.of("spearman-kaerber"), methods);
        assertTrue(ran.json().get("spread").isJsonNull());
        JsonObject next = ran.json().getAsJsonObject("nextRun");
        // the cold-start allowance is 1 % of stock, our own choice
        assertEquals(0.033, next.get("cold").getAsDouble() - next.get("warm").getAsDouble(), 1e-9);
        Ran plain = Ran.line("margin " + folder.resolve("trials.csv") + " --stock 3.3V");
        assertTrue(plain.out().contains("One run only"), plain.out());
    }

    /** Ten clean starts show 0.05^(1/10) = 74.1 % at 95 %; 59 are needed for 95 %. */
    @Test
    void cleanStartsSayHowMuchTheyShow() throws IOException {
        Ran ran = margin(STAIRS, "--stock", "3.3V", "--starts", "10");
        JsonObject starts = ran.json().getAsJsonObject("starts");
        assertEquals(0.7411, starts.get("reliability").getAsDouble(), 1e-4);
        assertEquals(59, starts.get("neededFor95").getAsInt());
        Ran plain = Ran.line("margin " + folder.resolve("trials.csv") + " --stock 3.3V --starts 10");
        assertTrue(
                plain.out().contains("10 clean starts show that at least 74 % of starts are clean, at 95 % confidence"),
                plain.out());
    }

    @Test
    void lessConfidenceOrCoverageNeedsLessMargin() throws IOException {
        StringBuilder runs = new StringBuilder("run,volts,fault\n");
        for (int run = 1; run <= 6; run++) {
            runs.append(run).append(",2.9").append(run).append("V,no\n");
            runs.append(run).append(",2.8").append(run).append("V,yes\n");
        }
        double usual = margin(runs.toString(), "--stock", "3.6V").number("sum");
        double lessSure = margin(runs.toString(), "--stock", "3.6V", "--confidence", "75%")
                .number("sum");
        double fewer =
                margin(runs.toString(), "--stock", "3.6V", "--coverage", "90%").number("sum");
        assertTrue(lessSure < usual && fewer < usual, usual + " " + lessSure + " " + fewer);
        assertTrue(margin(runs.toString(), "--stock", "3.6V").number("rootSumSquare") < usual);
        assertEquals(2, margin(runs.toString(), "--confidence", "40%").exit());
    }

    @Test
    void aTimeThatIsNoneIsRefusedWithItsLine() throws IOException {
        for (String dwell : List.of("soon", "0s", "3V", "-5s")) {
            Ran ran = margin("run,volts,fault,dwell\n1,3.0V,no,60s\n1,2.9V,yes," + dwell + "\n");
            assertEquals(2, ran.exit(), dwell);
            assertTrue(ran.err().contains("Line 3"), ran.err());
        }
        assertFalse(
                margin("run,volts,fault,dwell\n1,3.0V,no,\n1,2.9V,yes,60 s\n").exit() == 2);
    }
}
