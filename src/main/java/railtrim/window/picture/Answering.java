package railtrim.window.picture;

import java.util.List;

/** What can be answered in a picture, such as the role of a pin that is clicked. */
public interface Answering {
    /** @param id of the answer; {@code name} in words */
    record Choice(String id, String name) {}

    /** The answers a field takes now; none where it is not open. */
    List<Choice> choices(String field);

    void choose(String field, String answer);

    /** For pictures that only show. */
    static Answering none() {
        return new Answering() {
            @Override
            public List<Choice> choices(String field) {
                return List.of();
            }

            @Override
            public void choose(String field, String answer) {
                throw new IllegalStateException("nothing can be answered here");
            }
        };
    }
}
