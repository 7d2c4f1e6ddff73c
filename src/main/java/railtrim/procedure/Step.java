package railtrim.procedure;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import railtrim.quantity.Message;

/**
 * One screen: cautions, one action, what to enter. Words in the bundle: {@code step.ID.title}, {@code .why}, {@code .action}, {@code .outside}
 * (what to do when a reading is out of range).
 *
 * @param hold a hold point: cannot be passed or skipped without its readings
 * @param restsOn ids of earlier steps; a newer fact in one of them makes this step stale
 * @param needed false where the job so far makes the step pointless (then it counts as done)
 * @param checks what is wrong or worth saying about the readings of this step together
 * @param dwellSeconds least time between the step's first appearance as current and its last answer, 0 for none
 * @param pictureBefore stands in its place while cautions of the step are still to be read
 * @param spots what to touch in this step: pins and places for the picture, e.g. {@code "red:OUTPUT"}, {@code "black:GROUND"}
 */
public record Step(
        String id,
        Phase phase,
        PowerNeed power,
        boolean hold,
        boolean skippable,
        List<String> cautions,
        List<Field> fields,
        Set<String> restsOn,
        Predicate<Figures> needed,
        Function<Figures, List<Finding>> checks,
        int dwellSeconds,
        Picture picture,
        Optional<Picture> pictureBefore,
        List<String> spots) {
    /** The same step asking for these fields instead. */
    Step with(List<Field> others) {
        return with(skippable, cautions, others, dwellSeconds);
    }

    Step with(boolean leftOut, List<String> warned, List<Field> others, int wait) {
        return new Step(
                id,
                phase,
                power,
                hold,
                leftOut,
                warned,
                others,
                restsOn,
                needed,
                checks,
                wait,
                picture,
                pictureBefore,
                spots);
    }

    /**
     * What has to be read before the deed, where a step with the power off begins with the rail: that it is dead, and then whatever is measured anew to
     * show that the probes are at the right place. Nothing else is done or answered before.
     */
    public List<Field> proofs() {
        boolean begins = power == PowerNeed.OFF
                && fields.size() > 1
                && RailFields.isDead(fields.get(0).id());
        if (!begins) {
            return List.of();
        }
        return Stream.concat(
                        Stream.of(fields.get(0)),
                        fields.stream()
                                .skip(1)
                                .takeWhile(field -> field instanceof Field.Number number
                                        && number.again().isPresent()))
                .toList();
    }

    /** Which picture belongs beside the step. */
    public enum Picture {
        BOARD,
        METER,
        PACKAGE,
        DIVIDER,
        LADDER,
        LINE,
        TRIMMER,
        BUDGET,
        RESISTORS,
        HEAT,
        FAULTS,
        LOG
    }

    /**
     * Something to say about the readings of a step.
     *
     * @param blocks whether the step cannot be passed while this stands
     * @param backTo id of the step where the mend is likely to be, "" for this one
     */
    public record Finding(Kind kind, Message message, String backTo) {
        public enum Kind {
            /** Good to know; does not block. */
            SAYS,
            /** Odd; does not block but is in the export. */
            WARNS,
            /** Does not add up: the step stays open. */
            BLOCKS,
            /** This board cannot be done: the stop card, with the reason. */
            STOPS
        }

        public boolean blocks() {
            return kind == Kind.BLOCKS || kind == Kind.STOPS;
        }
    }
}
