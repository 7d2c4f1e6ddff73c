package railtrim.command;

import railtrim.quantity.BadInput;
import railtrim.quantity.Message;

/** What was typed after an option cannot be used; the message says what was read, what is expected and what to do. */
final class BadOption extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final String option;
    private final transient Message message;

    BadOption(String option, Message message) {
        super(option + ": " + message.key() + message.values());
        this.option = option;
        this.message = message;
    }

    BadOption(String option, BadInput cause) {
        this(option, cause.told());
    }

    String option() {
        return option;
    }

    Message told() {
        return message;
    }
}
