package railtrim.procedure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.quantity.PlainText;

/**
 * What of a job made elsewhere may be taken over into one’s own: only what is printed on the parts or in their data sheets, and that as a proposal
 * the person holds against the board in front of them. No acknowledgement, no reading, no switching, no alarm, no choice that opens a step.
 */
public final class TakeOver {
    /** Longest proposal; a marking or a figure is far shorter. */
    static final int LONGEST = 120;

    private static final Set<String> PRINTED = Set.of(
            "board.name",
            "chip.name",
            "rated.low",
            "rated.high",
            "reg.marking",
            "reg.family",
            "reg.outline",
            "sheet.place",
            "sheet.reference.low",
            "sheet.reference",
            "sheet.reference.high",
            "sheet.bias",
            "sheet.dropout",
            "sheet.minimum-load",
            "sheet.input.highest",
            "load.name");

    private TakeOver() {}

    /** The last word of {@code job} on each field that is printed somewhere, in the order the fields first came up. */
    public static List<Fact> plan(Job job) {
        Map<String, Fact> plan = new LinkedHashMap<>();
        for (Entry entry : Withdrawals.counting(job).entries()) {
            Fact fact = entry.fact();
            Optional<String> field = Figures.fieldOf(fact).filter(TakeOver::printed);
            Optional<String> value = said(fact).map(PlainText::of).filter(said -> !said.isEmpty());
            if (field.isPresent() && value.isPresent() && value.get().length() <= LONGEST) {
                plan.put(field.get(), new Fact.Proposed("plan", field.get(), value.get()));
            }
        }
        return List.copyOf(plan.values());
    }

    /** What the other job says about a field, as a sentence to stand beside it; an answer as it is offered, where it still is. */
    public static Optional<String> inWords(Field field, Figures figures, Words words) {
        return figures.proposed(field.id())
                .map(value -> field instanceof Field.Choice choice ? label(choice, value, figures, words) : value)
                .map(value -> words.of("take-over.says", PlainText.of(value)));
    }

    private static String label(Field.Choice field, String id, Figures figures, Words words) {
        return field.options().apply(figures).stream()
                .filter(option -> option.id().equals(id))
                .map(option -> words.of(option.label()))
                .findFirst()
                .orElse(id);
    }

    private static boolean printed(String field) {
        return PRINTED.contains(field) || field.matches("pin\\.([1-8]|tab)");
    }

    private static Optional<String> said(Fact fact) {
        if (fact instanceof Fact.Reading reading) {
            return Optional.of(reading.typed());
        } else if (fact instanceof Fact.Choice choice) {
            return Optional.of(choice.option());
        } else if (fact instanceof Fact.Note note) {
            return Optional.of(note.text());
        }
        return Optional.empty();
    }
}
