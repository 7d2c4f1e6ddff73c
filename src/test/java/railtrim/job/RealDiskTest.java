package railtrim.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk of 64 KiB that fills up, and one mounted for reading only; both real ones, in a sandbox. Linux only. */
class RealDiskTest {
    @TempDir
    Path folder;

    @BeforeAll
    static void whereADiskCanBeMounted() throws Exception {
        boolean possible = sandboxed("mount -t tmpfs none /mnt && echo yes").contains("yes");
        if (!possible) {
            System.out.println("RealDiskTest skipped: unshare --mount is not there or not allowed");
        }
        assumeTrue(possible);
    }

    @Test
    void aFullDiskIsToldAndWhatWasSavedIsThere() throws Exception {
        Path small = Files.createDirectory(folder.resolve("small"));
        assertEquals(
                List.of("job.disk-nearly-full", "job.not-saved", "copied", "kept", "opens"),
                sandboxed("mount -t tmpfs -o size=64k none " + small + " && " + java("fill", small)));
    }

    @Test
    void aDiskForReadingOnlyIsToldBeforeAnythingIsMeasured() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        Path job = folder.resolve("organ.railtrim");
        try (Journal journal = Journal.create(job, "Organ", Time.system(), Facts.MARK)) {
            journal.append(new Fact.Power("a", true));
        }
        String mount = "mount -t tmpfs none " + disk + " && cp " + job + " " + disk + " && mount -o remount,ro " + disk;
        assertEquals(
                List.of("job.cannot-create", "read only", "job.read-only-folder", "not made"),
                sandboxed(mount + " && " + java("read", disk)));
    }

    private String java(String what, Path disk) {
        return String.join(
                " ",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                "railtrim.job.RealDisk",
                what,
                disk.toString(),
                folder.toString());
    }

    private static List<String> sandboxed(String command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder("unshare", "--user", "--map-root-user", "--mount", "sh", "-c", command)
                    .redirectErrorStream(true)
                    .start();
            List<String> said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            process.waitFor();
            return said;
        } catch (IOException e) {
            return List.of(e.getMessage());
        }
    }
}
