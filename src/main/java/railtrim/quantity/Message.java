package railtrim.quantity;

import java.util.List;

/**
 * Something to tell the person, as a key into the text bundle and the values that go into it. Numbers in {@code values}
 * are already written out with their unit, so that the same message reads the same on the screen, on paper and in a terminal.
 */
public record Message(String key, List<String> values) {
    public Message {
        values = List.copyOf(values);
    }

    public static Message of(String key, String... values) {
        return new Message(key, List.of(values));
    }
}
