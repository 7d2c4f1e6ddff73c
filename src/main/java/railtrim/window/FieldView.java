package railtrim.window;

import java.util.Optional;
import javafx.scene.Node;
import railtrim.procedure.Field;
import railtrim.procedure.Sum;
import railtrim.procedure.Verdict;

/** One thing a step asks for, in the window; a class for each kind of {@link Field}. */
interface FieldView {
    /**
     * How a field stands now.
     *
     * @param open whether it can be answered
     * @param answer what was answered: the text as typed, the option, the words
     * @param sum behind what is expected
     * @param familiar whether it was answered often enough in this sitting to need no telling how
     * @param hidden whether the answer must not be seen, because an independent second reading is still to come
     */
    record Standing(
            boolean open,
            Optional<String> answer,
            boolean familiar,
            boolean hidden,
            Optional<Field.Expected> expected,
            Optional<Sum> sum,
            Optional<Verdict> verdict) {}

    Node node();

    void show(Standing standing);

    void focus();
}
