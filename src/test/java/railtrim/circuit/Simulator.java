package railtrim.circuit;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The circuit simulator ngspice as a second opinion on the sums: it solves the network and knows nothing of the law in {@link Circuit}. It
 * proves the algebra and not the part: no minimum load, no heat, no real open pin, and the dropouts are fixed numbers.
 */
public final class Simulator {
    /** Regulators as ideal sources: floating, feedback to ground, negative. The output is held between 0 and the input less the dropout. */
    private static final String PARTS = """
            .subckt floatreg in out adj gnd vref=1.25 iadj=50u vdo=1.2
            Bo out gnd V = max(0, min(V(adj,gnd)+vref, V(in,gnd)-vdo))
            Ia in adj DC {iadj}
            .ends
            .subckt fbreg in out fb gnd vref=1.24 ifb=0 vdo=0.5
            Bo out gnd V = max(0, min((1-1e-9)*V(out,gnd)+(vref-V(fb,gnd)), V(in,gnd)-vdo))
            If fb gnd DC {ifb}
            .ends
            .subckt negreg in out adj gnd vref=1.25 iadj=65u vdo=1.5
            Bo out gnd V = min(0, max(V(adj,gnd)-vref, V(in,gnd)+vdo))
            Ia adj in DC {iadj}
            .ends
            .options reltol=1e-9 vntol=1e-12 abstol=1e-15 gmin=1e-15
            """;

    private static final Pattern PRINTED = Pattern.compile("(?m)^v\\(([a-z0-9]+)\\) = (\\S+)$");

    private Simulator() {}

    /** Skips the test, saying why, where ngspice is not installed; on the build server (CI=true) that is a failure. */
    public static void required() {
        if (installed()) {
            return;
        }
        String reason = "ngspice is not installed, so the sums have no second opinion (Debian package: ngspice)";
        System.out.println(reason);
        if ("true".equals(System.getenv("CI"))) {
            fail(reason);
        }
        assumeTrue(false, reason);
    }

    /**
     * @param elements the circuit's lines
     * @param nodes those whose voltage is wanted
     * @return volts by node. Fails where one was not printed: ngspice ends with 0 even where it found no solution.
     */
    public static Map<String, Double> voltages(Path folder, String elements, String... nodes) {
        StringBuilder netlist = new StringBuilder("second opinion\n" + PARTS + elements.strip() + "\n");
        netlist.append(".control\nset numdgt=12\nop\n");
        for (String node : nodes) {
            netlist.append("print v(").append(node).append(")\n");
        }
        netlist.append("quit\n.endc\n.end\n");
        String told = run(folder, netlist.toString());
        Map<String, Double> voltages = new HashMap<>();
        Matcher line = PRINTED.matcher(told);
        while (line.find()) {
            voltages.put(line.group(1), Double.parseDouble(line.group(2)));
        }
        for (String node : nodes) {
            assertTrue(voltages.containsKey(node), () -> "no v(" + node + ") = line in:\n" + told + "\n" + netlist);
        }
        return voltages;
    }

    /**
     * Many circuits, each solved on its own, in one run: a fault that is hard to solve does not trouble its neighbours.
     *
     * @param circuits each with the node {@code out}
     * @return volts of {@code out}, circuit by circuit
     */
    public static List<Double> outputs(Path folder, List<String> circuits) {
        StringBuilder orders = new StringBuilder("many circuits\n.control\nset numdgt=12\n");
        try {
            for (int i = 0; i < circuits.size(); i++) {
                Path file = folder.resolve("c" + i + ".cir");
                Files.writeString(file, "c" + i + "\n" + PARTS + circuits.get(i).strip() + "\n.end\n");
                orders.append("source ").append(file).append("\nop\nprint v(out)\nremcirc\n");
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        String told = run(folder, orders.append("quit\n.endc\n.end\n").toString());
        List<Double> voltages = new ArrayList<>();
        Matcher line = PRINTED.matcher(told);
        while (line.find()) {
            voltages.add(Double.parseDouble(line.group(2)));
        }
        assertTrue(voltages.size() == circuits.size(), () -> voltages.size() + " v(out) lines in:\n" + told);
        return voltages;
    }

    /** A number as the simulator reads it, whatever the country. */
    public static String number(double value) {
        return String.format(Locale.ROOT, "%.12e", value);
    }

    private static boolean installed() {
        try {
            Process process = new ProcessBuilder("ngspice", "--version")
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(20, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException absent) {
            return false;
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static String run(Path folder, String netlist) {
        try {
            Path file = folder.resolve("case.cir");
            Path told = folder.resolve("told.txt");
            Files.writeString(file, netlist, StandardCharsets.UTF_8);
            Process process = new ProcessBuilder("ngspice", "-b", file.toString())
                    .redirectError(folder.resolve("warned.txt").toFile())
                    .redirectOutput(told.toFile())
                    .start();
            if (!process.waitFor(30, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                fail("ngspice did not end within 30 s:\n" + netlist);
            }
            // Apart, so that a warning cannot fall into the middle of a printed line.
            return Files.readString(told, StandardCharsets.ISO_8859_1)
                    + Files.readString(folder.resolve("warned.txt"), StandardCharsets.ISO_8859_1);
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(e);
        }
    }
}
