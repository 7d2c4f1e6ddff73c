package railtrim.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.job.Facts.MARK;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A job written in a process of its own under {@code strace}, which sees each call that touches the job’s folder and can kill the process there, or
 * let the call fail. Linux only.
 */
final class SystemCalls {
    /** Those by which something gets onto the disk. */
    static final List<String> WRITING = List.of("write", "pwrite64", "fsync", "ftruncate", "rename", "unlink");

    private static final int SECONDS = 60;

    private SystemCalls() {}

    /** Why these tests cannot run here, empty where they can. */
    static Optional<String> missing() {
        try {
            Process process = new ProcessBuilder("strace", "-f", "-qq", "-o", "/dev/null", "-e", "trace=fsync", "true")
                    .redirectErrorStream(true)
                    .start();
            process.getInputStream().readAllBytes();
            return process.waitFor(10, TimeUnit.SECONDS) && process.exitValue() == 0
                    ? Optional.empty()
                    : Optional.of("strace is here but may not trace");
        } catch (IOException e) {
            return Optional.of("there is no strace (on Debian: apt install strace)");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.of("interrupted");
        }
    }

    /** @param said what the process wrote, line by line; @param calls one line each, as strace writes them */
    record Run(int exit, List<String> said, List<String> calls) {
        boolean killed() {
            return exit != 0;
        }

        /** The highest sequence told to be saved. */
        long told() {
            return said.stream()
                    .filter(line -> line.matches("\\d+"))
                    .mapToLong(Long::parseLong)
                    .max()
                    .orElse(0);
        }
    }

    /** @param inject as strace takes it, e.g. {@code write:error=ENOSPC:when=3}; empty for none */
    static Run run(Path folder, String inject) throws Exception {
        Path real = folder.toRealPath();
        Path calls = real.resolveSibling(real.getFileName() + ".calls");
        List<String> command = new ArrayList<>(List.of("strace", "-f", "-qq", "-y", "-o", calls.toString()));
        command.addAll(List.of("-e", "trace=" + String.join(",", WRITING) + ",openat"));
        if (!inject.isEmpty()) {
            command.addAll(List.of("-e", "inject=" + inject));
        }
        for (Path path : paths(real)) {
            command.addAll(List.of("-P", path.toString()));
        }
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Writer.class.getName(),
                real.toString()));
        Path said = real.resolveSibling(real.getFileName() + ".said");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        boolean ended = process.waitFor(SECONDS, TimeUnit.SECONDS);
        process.destroyForcibly();
        assertTrue(ended, "hung at " + inject);
        return new Run(process.exitValue(), Files.readAllLines(said), Files.readAllLines(calls));
    }

    /** Everything in the folder that the journal may touch, and the folder. */
    private static List<Path> paths(Path folder) {
        List<Path> paths = new ArrayList<>(List.of(folder));
        for (String stem : List.of("organ", "organ-2", "organ-3")) {
            Path job = folder.resolve(stem + Journal.ENDING);
            paths.add(job);
            paths.add(job.resolveSibling(job.getFileName() + ".tmp"));
            paths.add(job.resolveSibling(job.getFileName() + ".lock"));
            IntStream.rangeClosed(1, Generations.KEPT).forEach(age -> {
                paths.add(Generations.of(job, age));
                paths.add(job.resolveSibling(Generations.of(job, age).getFileName() + ".tmp"));
            });
        }
        return paths;
    }

    /** Kills at the first call of a kind, the second, and so on until none is left, or until {@code most}. @return how many kills */
    static int killAtEach(Path folder, String call, int most) throws Exception {
        int kills = 0;
        while (kills < most) {
            Path own = Files.createDirectory(folder.resolve("kill-" + call + "-" + kills));
            Run run = run(own, call + ":signal=KILL:when=" + (kills + 1));
            assertNothingLost(own, run, "killed at " + call + " " + (kills + 1));
            if (!run.killed()) {
                assertTrue(run.said().contains("done"), run.said().toString());
                return kills;
            }
            kills++;
        }
        return kills;
    }

    /** Lets the first call of a kind fail, then the second, and so on. @return how many failures */
    static int failAtEach(Path folder, String call, String error, int most) throws Exception {
        for (int failures = 0; failures < most; failures++) {
            Path own = Files.createDirectory(folder.resolve("fail-" + call + "-" + error + "-" + failures));
            Run run = run(own, call + ":error=" + error + ":when=" + (failures + 1));
            String what = error + " at " + call + " " + (failures + 1);
            assertEquals(0, run.exit(), what + ": " + run.said());
            assertTrue(run.said().contains("done"), what + ": " + run.said());
            assertNothingLost(own, run, what);
            if (run.calls().stream().noneMatch(line -> line.contains("(INJECTED)"))) {
                return failures;
            }
        }
        return most;
    }

    /** Every fact told to be saved stands in the job, or in the one it went on in, and each of them opens. */
    private static void assertNothingLost(Path folder, Run run, String what) throws IOException {
        long kept = 0;
        for (String name : List.of("organ", "organ-2", "organ-3", "copy")) {
            Path file = folder.resolve(name + Journal.ENDING);
            if (Files.exists(file)) {
                JobCheck check = JobCheck.of(file, MARK);
                assertEquals(Origin.OWN, check.job().origin(), what);
                kept = Math.max(kept, check.facts());
                try (Journal journal = Journal.open(file, Time.system(), MARK)) {
                    assertFalse(journal.readOnly(), what + ": " + journal.problems());
                }
            }
        }
        assertTrue(kept >= run.told(), what + ": kept " + kept + " of " + run.said());
    }

    private static final Pattern CALL = Pattern.compile("^\\d+\\s+(\\w+)\\((.*)$");

    /** The calls by which a job gets onto the disk, as {@code write organ.railtrim.tmp}, in their order; for a folder {@code fsync .}. */
    static List<String> order(Path folder, Run run) throws IOException {
        String real = folder.toRealPath().toString();
        List<String> order = new ArrayList<>();
        for (String line : run.calls()) {
            Matcher call = CALL.matcher(line);
            if (call.matches() && WRITING.contains(call.group(1)) && !line.contains("ENOENT")) {
                order.add(call.group(1) + " " + name(real, call.group(2)));
            }
        }
        return order;
    }

    private static String name(String folder, String rest) {
        Matcher path = Pattern.compile(Pattern.quote(folder) + "(/[^\">]*)?").matcher(rest);
        return path.find() && path.group(1) != null ? path.group(1).substring(1) : ".";
    }

    /** Begins a job, adds facts, closes it, tears its end, opens it again and adds more. Says each sequence once it is saved, and in words what went wrong. */
    static final class Writer {
        private Writer() {}

        public static void main(String[] arguments) {
            Path folder = Path.of(arguments[0]);
            Path file = folder.resolve("organ" + Journal.ENDING);
            try (Journal journal = Journal.create(file, "Organ", Time.system(), MARK)) {
                append(folder, journal, 3);
            } catch (JournalProblem problem) {
                say(problem.told().key());
            }
            if (Files.exists(file)) {
                tear(file);
                try (Journal journal = Journal.open(file, Time.system(), MARK)) {
                    journal.problems().forEach(problem -> say(problem.key()));
                    append(folder, journal, 2);
                } catch (JournalProblem problem) {
                    say(problem.told().key());
                }
            }
            say("done");
        }

        /** The beginning of a line, as a power cut would leave it. */
        private static void tear(Path file) {
            try {
                Files.writeString(file, "{\"sequence\":4,", StandardOpenOption.APPEND);
            } catch (IOException e) {
                say("not torn");
            }
        }

        /** Where the disk refuses for good, the person saves a copy elsewhere and goes on there. */
        private static void append(Path folder, Journal journal, int facts) {
            for (int i = 0; i < facts; i++) {
                try {
                    say(Long.toString(
                            journal.append(new Fact.Power("a", i % 2 == 0)).sequence()));
                    journal.news().forEach(news -> say(news.key()));
                } catch (JournalProblem problem) {
                    say(problem.told().key());
                    if (Files.exists(folder.resolve("copy" + Journal.ENDING))) {
                        return;
                    }
                    try (Journal copy =
                            Journal.copy(journal, folder.resolve("copy" + Journal.ENDING), Time.system(), MARK)) {
                        say(Long.toString(copy.append(new Fact.Power("b", true)).sequence()));
                    }
                    return;
                }
            }
        }

        private static void say(String line) {
            System.out.print(line + "\n");
            System.out.flush();
        }
    }

    static List<String> errors() {
        return Arrays.asList("ENOSPC", "EIO", "EROFS", "EACCES");
    }
}
