package railtrim.procedure;

/**
 * A caution: its signal word and sign, read from {@code resources/cautions.json}; an incomplete one is refused when read. What it says stands among all
 * other words of the program, in the three parts of a hazard statement in OASIS DITA 1.3.
 */
public record Caution(String id, Level level, String symbol) {
    public enum Level {
        WARNING,
        CAUTION,
        NOTICE
    }

    /** What can happen. */
    public String hazard(Words words) {
        return words.of("caution.hazard." + id);
    }

    /** What that leads to. */
    public String consequence(Words words) {
        return words.of("caution.consequence." + id);
    }

    /** How to keep from it. */
    public String avoidance(Words words) {
        return words.of("caution.avoidance." + id);
    }
}
