package railtrim.procedure;

import java.util.List;
import railtrim.quantity.Message;

/**
 * How a number came about: the formula, the same with the numbers put in, and where they are from. All numbers are written with their unit.
 *
 * @param what was worked out
 * @param lines in the order they are worked out; a later one may use the result of an earlier one
 * @param given the numbers it starts from
 * @param sources where the formula is from, and what else has to be known about it
 */
public record Sum(Message what, List<Line> lines, List<Given> given, List<Message> sources) {
    public Sum {
        lines = List.copyOf(lines);
        given = List.copyOf(given);
        sources = List.copyOf(sources);
    }

    /**
     * {@code symbol = formula = putIn = result}: "V", "Vref + x · Re", "1.250 V + 17.34 mA · 111.6 Ω", "3.185 V". ∥ stands for two resistances
     * side by side.
     */
    public record Line(String symbol, String formula, String putIn, String result) {}

    /** @param says what it is and where it was read */
    public record Given(String symbol, String value, Message says) {}
}
