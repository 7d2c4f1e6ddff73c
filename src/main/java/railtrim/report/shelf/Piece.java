package railtrim.report.shelf;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import railtrim.heat.Heat;
import railtrim.job.Job;
import railtrim.job.JobCheck;
import railtrim.job.JournalProblem;
import railtrim.job.Mark;
import railtrim.procedure.Figures;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.quantity.Message;
import railtrim.quantity.RailSign;
import railtrim.threshold.FailVoltage;

/**
 * One job on the shelf, at a glance. Voltages are magnitudes in volts, powers in watts; what is not known is empty.
 *
 * @param step the step the job is at
 * @param fitted with the fixed resistor, as read; {@code fail} where it fails and how sure that is
 * @param wattsSaved by the load, worked out; empty where the current was not measured
 * @param clock in hertz, where the name of the load, the chip, the board or the job says one
 * @param sign how the meter shows its voltages
 * @param elsewhere whether it was made by another installation
 * @param problems with the file, in words
 */
public record Piece(
        Path file,
        String name,
        Standing standing,
        String step,
        String board,
        String chip,
        String load,
        OptionalDouble stock,
        OptionalDouble fitted,
        Optional<FailVoltage> fail,
        OptionalDouble recommended,
        OptionalDouble wattsSaved,
        OptionalDouble current,
        OptionalDouble clock,
        RailSign sign,
        boolean elsewhere,
        List<Message> problems) {
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,6}(?:[.,]\\d{1,6})?)\\s?([kMG])Hz\\b");

    public Piece {
        problems = List.copyOf(problems);
    }

    public enum Standing {
        FINISHED,
        UNDER_WAY,
        STOPPED,
        UNREADABLE;

        /** Part of its keys in the text bundle. */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    static Piece read(Path file, Procedure procedure, Mark mark) {
        try {
            JobCheck found = JobCheck.of(file, mark);
            return of(file, procedure.state(found.job()), found);
        } catch (JournalProblem e) {
            return unreadable(file, e.told());
        }
    }

    private static Piece of(Path file, State state, JobCheck found) {
        Figures figures = state.figures();
        Job job = state.job();
        String board = figures.text("board.name").orElse("");
        String chip = figures.text("chip.name").orElse("");
        String load = figures.text("load.name").orElse("");
        return new Piece(
                file,
                job.name(),
                standing(state),
                state.current().step().id(),
                board,
                chip,
                load,
                figures.stock(),
                figures.fitted(),
                figures.failVoltage(),
                figures.budget()
                        .map(budget -> OptionalDouble.of(budget.recommended()))
                        .orElse(OptionalDouble.empty()),
                saved(figures),
                figures.magnitude("load.current"),
                clock(List.of(load, chip, board, job.name())),
                figures.sign(),
                found.elsewhere(),
                found.problems());
    }

    private static Piece unreadable(Path file, Message why) {
        OptionalDouble none = OptionalDouble.empty();
        return new Piece(
                file,
                file.getFileName().toString(),
                Standing.UNREADABLE,
                "",
                "",
                "",
                "",
                none,
                none,
                Optional.empty(),
                none,
                none,
                none,
                none,
                new RailSign(false),
                false,
                List.of(why));
    }

    private static Standing standing(State state) {
        if (state.card().orElse(null) instanceof State.Card.Stop) {
            return Standing.STOPPED;
        }
        return state.complete() ? Standing.FINISHED : Standing.UNDER_WAY;
    }

    private static OptionalDouble saved(Figures figures) {
        if (figures.fitted().isEmpty()) {
            return OptionalDouble.empty();
        }
        return figures.powers()
                .filter(powers -> !powers.relative())
                .map(Piece::saved)
                .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble saved(Heat.Powers powers) {
        return OptionalDouble.of(powers.loadBefore() - powers.loadAfter());
    }

    /** The first clock that one of the texts names: "12.5 MHz" is 12.5e6. */
    static OptionalDouble clock(List<String> texts) {
        for (String text : texts) {
            Matcher found = CLOCK.matcher(text);
            if (found.find()) {
                double number = Double.parseDouble(found.group(1).replace(',', '.'));
                double factor = switch (found.group(2)) {
                    case "k" -> 1e3;
                    case "M" -> 1e6;
                    default -> 1e9;
                };
                return OptionalDouble.of(number * factor);
            }
        }
        return OptionalDouble.empty();
    }

    /** How far the voltage it was left at is above the fault, volts. */
    public OptionalDouble margin() {
        return fitted.isPresent() && fail.isPresent()
                ? OptionalDouble.of(fitted.getAsDouble() - fail.get().fail())
                : OptionalDouble.empty();
    }

    boolean mentions(String words) {
        String wanted = words.toLowerCase(Locale.ROOT).strip();
        return List.of(name, board, chip, load, file.getFileName().toString()).stream()
                .anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(wanted));
    }
}
