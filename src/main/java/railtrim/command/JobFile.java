package railtrim.command;

import java.nio.file.Path;
import railtrim.job.Journal;
import railtrim.quantity.Message;

/** Names of job files as they are typed. */
final class JobFile {
    private JobFile() {}

    static Path named(String name) {
        Path file = TextFile.path("JOB", name);
        if (!name.endsWith(Journal.ENDING) || title(file).isEmpty()) {
            throw new BadOption("JOB", Message.of("command.wrong.job-name", Typed.shown(name), Journal.ENDING));
        }
        return file;
    }

    /** The name of the job: that of its file without the ending. */
    static String title(Path file) {
        String name = file.getFileName().toString();
        return name.substring(0, name.length() - Journal.ENDING.length());
    }
}
