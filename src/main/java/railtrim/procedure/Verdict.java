package railtrim.procedure;

import java.util.List;
import railtrim.job.Fact;
import railtrim.quantity.Message;

/** What the procedure says to an offered fact. Only an accepted one may be written to the job. */
public sealed interface Verdict {
    /** Write {@code fact} (it may differ from the offered one by the lead zero taken off). */
    record Accept(Fact fact, List<Message> says) implements Verdict {}

    /** Outside what was expected: measure again. Offering the same value with {@code sure} writes it. {@code slip} names the likely slip, if any. */
    record AskAgain(List<Message> says) implements Verdict {}

    /** Cannot be taken; says what was read, what is expected, what to do. */
    record Refuse(List<Message> says) implements Verdict {}
}
