package railtrim.job;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.zip.CRC32C;
import railtrim.procedure.Procedure;
import railtrim.procedure.TakeOver;
import railtrim.procedure.Words;

/**
 * The job reader. With an even first byte the rest is the file; with an odd one each line gets a right tag and check sum first, so that what stands
 * behind those is tried too. It reads a job, or says in words why not; and whatever the job says, its state is worked out.
 */
public final class JobFuzz {
    private static final Path FILE = Path.of("strange.railtrim");
    private static final Mark MARK = Mark.forShow();
    private static final Words WORDS = Words.english();
    private static final Procedure PROCEDURE = Procedure.builtIn();
    /** Working out a job takes a hundred times as long as reading it; it is done where the first byte asks for it. */
    private static final int WORK_OUT = 2;

    private static final int LONGEST_WORKED_OUT = 40;

    private JobFuzz() {}

    public static void fuzzerTestOneInput(byte[] data) {
        if (data.length == 0) {
            return;
        }
        byte[] file = Arrays.copyOfRange(data, 1, data.length);
        try {
            JobFile found = JobFile.of(FILE, data[0] % 2 == 0 ? file : sealed(file), MARK);
            found.problems().forEach(WORDS::of);
            Job job = found.job();
            if (data[0] / 2 % 4 == WORK_OUT && job.entries().size() <= LONGEST_WORKED_OUT) {
                PROCEDURE.state(job).figures().budget();
            }
            for (Fact fact : TakeOver.plan(job)) {
                if (!(fact instanceof Fact.Proposed)) {
                    throw new IllegalStateException("taken over: " + fact);
                }
            }
        } catch (JournalProblem problem) {
            WORDS.of(problem.told());
        }
    }

    /** Each line up to its last brace, as if it had been written by this program. */
    private static byte[] sealed(byte[] file) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        String before = "";
        for (String line : new String(file, StandardCharsets.UTF_8).split("\n", -1)) {
            int end = line.indexOf(",\"own\"") >= 0 ? line.indexOf(",\"own\"") : line.lastIndexOf('}');
            if (end < 0) {
                out.writeBytes((line + "\n").getBytes(StandardCharsets.UTF_8));
                continue;
            }
            byte[] open = line.substring(0, end).getBytes(StandardCharsets.UTF_8);
            before = MARK.tag(before, open, open.length);
            byte[] owned = (line.substring(0, end) + ",\"own\":\"" + before + "\"").getBytes(StandardCharsets.UTF_8);
            CRC32C crc = new CRC32C();
            crc.update(owned);
            out.writeBytes(owned);
            out.writeBytes(String.format(Locale.ROOT, ",\"crc\":\"%08x\"}%n", crc.getValue())
                    .getBytes(StandardCharsets.UTF_8));
        }
        return out.toByteArray();
    }
}
