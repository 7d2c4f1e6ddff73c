package railtrim.job;

import railtrim.quantity.Message;

/** A job file that cannot be made, read or written; the message says what and what to do. */
public final class JournalProblem extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Message message;

    public JournalProblem(Message message, Throwable cause) {
        super(message.key() + message.values(), cause);
        this.message = message;
    }

    public Message told() {
        return message;
    }
}
