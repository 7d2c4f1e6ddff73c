package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.Fact;
import railtrim.job.Journal;
import railtrim.job.Mark;
import railtrim.job.Time;

/** The window on a disk of 64 KiB that fills up, on one that is pulled out, and on one for reading only; real ones, in a sandbox. Linux only. */
class FailingDiskWindowTest {
    @TempDir
    Path folder;

    @BeforeAll
    static void whereADiskCanBeMounted() throws Exception {
        boolean possible = sandboxed("mount -t tmpfs none /mnt && echo - yes").contains("- yes");
        if (!possible) {
            System.out.println("FailingDiskWindowTest skipped: unshare --mount is not there or not allowed");
        }
        assumeTrue(possible);
    }

    @Test
    void aFullDiskIsToldAndTheJobGoesOnElsewhereWithNothingLost() throws Exception {
        Path jobs = Files.createDirectory(folder.resolve("jobs"));
        assertEquals(
                List.of(
                        "- before anything is measured: true",
                        "- full",
                        "- told: true",
                        "- band: true",
                        "- refused there in words: true",
                        "- nothing lost: true",
                        "- still typed: true",
                        "- goes on: true"),
                sandboxed("mount -t tmpfs -o size=64k none " + jobs + " && " + java("full")));
    }

    @Test
    void aDriveThatIsPulledOutIsToldAndTheJobGoesOnElsewhereWithNothingLost() throws Exception {
        Path jobs = Files.createDirectory(folder.resolve("jobs"));
        assertEquals(
                List.of(
                        "- told: true",
                        "- band: true",
                        "- nothing lost: true",
                        "- still typed: true",
                        "- goes on: true"),
                sandboxed("mount -t tmpfs none " + jobs + " && " + java("gone")));
    }

    @Test
    void aDiskForReadingOnlyIsToldBeforeAnythingIsMeasured() throws Exception {
        Path jobs = Files.createDirectory(folder.resolve("jobs"));
        Path job = folder.resolve("organ.railtrim");
        try (Journal journal = Journal.create(job, "organ", Time.system(), Mark.keptIn(folder.resolve("own")))) {
            journal.append(new Fact.Note("scope", "board.name", "voice board"));
        }
        String mount = "mount -t tmpfs none " + jobs + " && cp " + job + " " + jobs + " && mount -o remount,ro " + jobs;
        assertEquals(
                List.of(
                        "- before anything is measured: true",
                        "- save elsewhere: true",
                        "- on the same disk: true",
                        "- nothing lost: true",
                        "- still typed: true",
                        "- goes on: true"),
                sandboxed(mount + " && " + java("read")));
    }

    /** On the same screen as this test. */
    private String java(String what) {
        String screen = ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
                .filter(argument -> argument.matches("-D(testfx|glass|monocle|prism|java\\.awt)\\..*"))
                .collect(Collectors.joining(" "));
        return String.join(
                " ",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1 -XX:+UseSerialGC",
                screen,
                "-cp",
                System.getProperty("java.class.path"),
                "railtrim.window.WindowOnADisk",
                what,
                folder.toString());
    }

    private static List<String> sandboxed(String command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder("unshare", "--user", "--map-root-user", "--mount", "sh", "-c", command)
                    .redirectErrorStream(true)
                    .start();
            List<String> said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.startsWith("- ") || line.contains("Exception") || line.contains("Error"))
                    .toList();
            process.waitFor();
            return said;
        } catch (IOException e) {
            return List.of(e.getMessage());
        }
    }
}
