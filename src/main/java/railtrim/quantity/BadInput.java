package railtrim.quantity;

/** What was given cannot be used; the message says what was read, what is expected and what to do. */
public final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Message message;

    public BadInput(Message message) {
        super(message.key() + message.values());
        this.message = message;
    }

    public static BadInput of(String key, String... values) {
        return new BadInput(Message.of(key, values));
    }

    public Message told() {
        return message;
    }
}
