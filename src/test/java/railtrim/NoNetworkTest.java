package railtrim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program in a sandbox that has no network at all, not even the loopback: everything works. Linux only. */
class NoNetworkTest {
    private static final List<String> SANDBOX = List.of("unshare", "--user", "--map-root-user", "--net");

    @TempDir
    Path folder;

    @BeforeAll
    static void whereASandboxCanBeMade() {
        boolean possible = run(SANDBOX, "true") == 0;
        if (!possible) {
            System.out.println("NoNetworkTest skipped: unshare --net is not there or not allowed");
        }
        assumeTrue(possible);
    }

    @Test
    void aWholeJobItsReportAndItsCheckNeedNoNetwork() throws IOException {
        assertEquals(
                0,
                railtrim("rehearse", "demo-data/boards/sound-board.json", "--seed", "7", "--out", folder.toString()));
        String job = folder.resolve("sound-board.railtrim").toString();
        assertEquals(0, railtrim("check", job));
        assertEquals(0, railtrim("report", job, "--out", folder.resolve("out").toString(), "--format", "html,md,csv"));
        try (var written = Files.list(folder.resolve("out"))) {
            assertEquals(3, written.count());
        }
    }

    private int railtrim(String... arguments) {
        List<String> java = new ArrayList<>(SANDBOX);
        java.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Drailtrim.home=" + folder,
                "-cp",
                System.getProperty("java.class.path"),
                "railtrim.Main"));
        return run(java, arguments);
    }

    private static int run(List<String> command, String... arguments) {
        List<String> all = new ArrayList<>(command);
        all.addAll(Arrays.asList(arguments));
        try {
            Process process = new ProcessBuilder(all).redirectErrorStream(true).start();
            process.getInputStream().readAllBytes();
            return process.waitFor(60, TimeUnit.SECONDS) ? process.exitValue() : -1;
        } catch (IOException e) {
            return -1;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return -1;
        }
    }
}
