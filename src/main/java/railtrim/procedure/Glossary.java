package railtrim.procedure;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Plain words for the terms of the trade, found where a text uses them: {@code glossary.TERM} in the bundle, "Term: what it is." */
public final class Glossary {
    private static final List<String> TERMS = List.of(
            "regulator",
            "reference",
            "adjust-pin",
            "feedback",
            "divider",
            "leg",
            "trimmer",
            "wiper",
            "dropout",
            "minimum-load",
            "preferred-value",
            "fault",
            "margin",
            "soak",
            "dwell",
            "hold-point",
            "read-back",
            "lead-zero",
            "in-circuit",
            "load",
            "rail");

    private final List<Gloss> glosses;

    /** One term: its name as spoken, and its explanation. */
    public record Gloss(String term, String meaning) {}

    public Glossary(Words words) {
        this.glosses = TERMS.stream()
                .map(term -> words.of("glossary." + term))
                .map(Glossary::split)
                .toList();
    }

    private static Gloss split(String text) {
        int colon = text.indexOf(": ");
        return new Gloss(text.substring(0, colon), text.substring(colon + 2));
    }

    public List<Gloss> all() {
        return glosses;
    }

    /** The terms that occur in these texts, in the order in which they are first met. */
    public List<Gloss> in(String... texts) {
        String text = Arrays.stream(texts)
                .reduce("", (left, right) -> left + "\n" + right)
                .toLowerCase(Locale.ROOT);
        return glosses.stream()
                .filter(gloss -> met(gloss, text) >= 0)
                .sorted(Comparator.comparingInt(gloss -> met(gloss, text)))
                .toList();
    }

    /** Where the term stands as a word of its own, singular or plural, −1 where it does not. */
    private static int met(Gloss gloss, String text) {
        var found = Pattern.compile(
                        "(?<!\\p{L})" + Pattern.quote(gloss.term().toLowerCase(Locale.ROOT)) + "s?(?!\\p{L})")
                .matcher(text);
        return found.find() ? found.start() : -1;
    }
}
