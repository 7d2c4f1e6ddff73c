package railtrim.job;

import static railtrim.job.Facts.MARK;

import java.nio.file.Files;
import java.nio.file.Path;

/** Run in a sandbox of its own, where a small disk was mounted: fills it, or finds it for reading only, and says what happened. */
final class RealDisk {
    private static final String FILLER = "x".repeat(500);

    private RealDisk() {}

    /** @param arguments what to do, the folder on the small disk, and one on another */
    public static void main(String[] arguments) {
        Path small = Path.of(arguments[1]);
        Path other = Path.of(arguments[2]);
        if (arguments[0].equals("fill")) {
            fill(small.resolve("organ" + Journal.ENDING), other);
        } else {
            readOnly(small);
        }
    }

    private static void fill(Path file, Path other) {
        long told = 0;
        try (Journal journal = Journal.create(file, "Organ", Time.system(), MARK)) {
            journal.problems().forEach(problem -> say(problem.key()));
            try {
                while (true) {
                    told = journal.append(new Fact.Note("a", "b", FILLER)).sequence();
                }
            } catch (JournalProblem problem) {
                say(problem.told().key());
            }
            Path elsewhere = other.resolve("copy" + Journal.ENDING);
            try (Journal copy = Journal.copy(journal, elsewhere, Time.system(), MARK)) {
                copy.append(new Fact.Note("a", "b", FILLER));
            }
            say(JobCheck.of(elsewhere, MARK).facts() == told + 1 ? "copied" : "copy lost something");
        }
        say(told > 20 && JobCheck.of(file, MARK).facts() >= told ? "kept" : "lost");
        try (Journal again = Journal.open(file, Time.system(), MARK)) {
            say("opens");
        }
    }

    private static void readOnly(Path folder) {
        try {
            Journal.create(folder.resolve("new" + Journal.ENDING), "New", Time.system(), MARK);
        } catch (JournalProblem problem) {
            say(problem.told().key());
        }
        try (Journal journal = Journal.open(folder.resolve("organ" + Journal.ENDING), Time.system(), MARK)) {
            say(journal.readOnly() ? "read only" : "writable");
            journal.problems().forEach(problem -> say(problem.key()));
        }
        say(Files.exists(folder.resolve("new" + Journal.ENDING)) ? "made" : "not made");
    }

    private static void say(String line) {
        System.out.println(line);
    }
}
