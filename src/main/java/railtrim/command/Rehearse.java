package railtrim.command;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import railtrim.practice.Board;
import railtrim.practice.Outcome;
import railtrim.practice.Rehearsal;
import railtrim.practice.Tally;
import railtrim.procedure.Procedure;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Meter;

/** {@code rehearse}: a hand goes through the whole job on a practice board, once or many times, and what only the board knows judges the end. */
@Command(name = "rehearse", description = "${bundle:command.rehearse.about}")
final class Rehearse implements Asked {
    private final Words words;

    @Parameters(index = "0", paramLabel = "BOARD.json", description = "${bundle:command.option.board}")
    private String board;

    @Option(names = "--boards", paramLabel = "1", description = "${bundle:command.option.boards}")
    private String boards;

    @Option(names = "--seed", paramLabel = "1", description = "${bundle:command.option.seed}")
    private String seed;

    Rehearse(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Board given = board();
        int count = boards == null ? 1 : (int) Typed.whole("--boards", boards, 1, 100_000);
        long first = seed == null ? 1 : Typed.whole("--seed", seed, 0, Long.MAX_VALUE / 10);
        Tally tally =
                new Rehearsal(Procedure.builtIn(), Meter.basic()).playAll(Collections.nCopies(count, given), first);
        return count == 1 ? one(tally, tally.outcomes().get(0)) : many(tally);
    }

    private Board board() {
        String text = TextFile.read("BOARD.json", board);
        try {
            return Board.of(text);
        } catch (BadInput e) {
            throw new BadOption("BOARD.json", e);
        }
    }

    private Answer one(Tally tally, Outcome outcome) {
        Map<String, Object> json = tally.values();
        json.put("outcomes", List.of(outcome.values()));
        Sheet sheet = new Sheet()
                .pair(words.of("command.rehearse.board"), outcome.board())
                .pair(
                        words.of("command.rehearse.ending"),
                        words.of("command.rehearse." + Named.word(outcome.ending())));
        volts(sheet, "command.rehearse.stock", OptionalDouble.of(outcome.stock()));
        volts(sheet, "command.rehearse.fail", OptionalDouble.of(outcome.fail()));
        volts(sheet, "command.rehearse.fitted", outcome.fitted());
        volts(sheet, "command.rehearse.lowest", outcome.lowest());
        if (outcome.highestSeen() > 0) {
            volts(sheet, "command.rehearse.highest-seen", OptionalDouble.of(outcome.highestSeen()));
        }
        sheet.pair(
                words.of("command.check.facts"),
                Integer.toString(outcome.job().entries().size()));
        if (!outcome.reason().isEmpty()) {
            sheet.say(outcome.reason());
        }
        warn(sheet, tally);
        return Answer.of(outcome.finished() && unharmed(tally), json, sheet);
    }

    private Answer many(Tally tally) {
        int stuck = tally.boards() - tally.finished() - tally.stopped();
        Map<String, Object> json = tally.values();
        json.put("stuck", stuck);
        Sheet sheet = new Sheet();
        for (Map.Entry<String, Object> figure : json.entrySet()) {
            sheet.pair(words.of("command.rehearse.many." + figure.getKey()), String.valueOf(figure.getValue()));
        }
        json.put("outcomes", tally.outcomes().stream().map(Outcome::values).toList());
        warn(sheet, tally);
        return Answer.of(stuck == 0 && unharmed(tally), json, sheet);
    }

    private void volts(Sheet sheet, String key, OptionalDouble magnitude) {
        magnitude.ifPresent(volts -> sheet.pair(words.of(key), Display.volts(volts)));
    }

    private void warn(Sheet sheet, Tally tally) {
        if (tally.aboveStock() > 0) {
            sheet.say(words.of("command.rehearse.above-stock"));
        }
        if (tally.belowFail() > 0) {
            sheet.say(words.of("command.rehearse.below-fail"));
        }
    }

    private static boolean unharmed(Tally tally) {
        return tally.aboveStock() == 0 && tally.belowFail() == 0;
    }
}
