package railtrim.procedure;

/** A caution as data, read from {@code resources/cautions.json}; an incomplete one is refused when read. */
public record Caution(String id, Level level, String symbol, String hazard, String consequence, String avoidance) {
    public enum Level {
        WARNING,
        CAUTION,
        NOTICE
    }
}
