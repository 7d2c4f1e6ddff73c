package railtrim.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicReference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import railtrim.circuit.RegulatorFamilies;
import railtrim.job.BuiltIn;
import railtrim.job.Journal;
import railtrim.job.Mark;
import railtrim.job.OwnFolder;
import railtrim.practice.Board;
import railtrim.practice.Outcome;
import railtrim.practice.RandomBoards;
import railtrim.practice.Rehearsal;
import railtrim.practice.Specimens;
import railtrim.practice.Tally;
import railtrim.procedure.Procedure;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Meter;
import railtrim.report.Format;
import railtrim.report.Paper;
import railtrim.report.ReportWriter;

/** {@code rehearse}: a hand goes through the whole job on a practice board, once or many times, and what only the board knows judges the end. */
@Command(name = "rehearse", description = "${bundle:command.rehearse.about}")
final class Rehearse implements Asked {
    private static final String BOARD = "BOARD.json";

    private final Words words;

    @Parameters(index = "0", arity = "0..1", paramLabel = BOARD, description = "${bundle:command.option.board}")
    private String board;

    @Option(names = "--boards", paramLabel = "1", description = "${bundle:command.option.boards}")
    private String boards;

    @Option(names = "--seed", paramLabel = "1", description = "${bundle:command.option.seed}")
    private String seed;

    @Option(names = "--out", paramLabel = "FOLDER", description = "${bundle:command.option.rehearse-out}")
    private String out;

    Rehearse(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        int count = boards == null ? 1 : (int) Typed.whole("--boards", boards, 1, 100_000);
        long first = seed == null ? 1 : Typed.whole("--seed", seed, 0, Long.MAX_VALUE / 10);
        if (board == null && boards == null) {
            throw BadInput.of("command.wrong.no-board");
        }
        if (out != null && (board == null || boards != null)) {
            throw BadInput.of("command.wrong.out-of-many");
        }
        Procedure procedure = Procedure.builtIn();
        if (out != null) {
            return kept(procedure, board(), first);
        }
        List<Board> all = board == null ? drawn(count, first) : Specimens.of(board(), count, first);
        Tally tally = rehearsal(procedure).playAll(all, first);
        return boards == null ? one(tally, List.of()) : many(tally);
    }

    private static Rehearsal rehearsal(Procedure procedure) {
        return new Rehearsal(procedure, Meter.basic());
    }

    private static List<Board> drawn(int count, long luck) {
        RegulatorFamilies families = RegulatorFamilies.of(BuiltIn.text("regulators.json"));
        return new RandomBoards(families.all(), Rehearsal.chance(luck)).draw(count);
    }

    /** One rehearsal whose job is kept on disk, with its checklist beside it, as if it had been a real board. */
    private Answer kept(Procedure procedure, Board given, long luck) {
        Path folder = TextFile.folder("--out", out);
        Path job = folder.resolve(title() + Journal.ENDING);
        AtomicReference<Journal> journal = new AtomicReference<>();
        try {
            Outcome outcome = rehearsal(procedure).play(given, luck, time -> {
                journal.set(Journal.create(job, given.label().name(), time, Mark.keptIn(OwnFolder.path())));
                return journal.get();
            });
            List<String> files = new ArrayList<>(List.of(job.toString()));
            ReportWriter.write(
                            procedure.state(outcome.job()),
                            procedure,
                            words,
                            folder,
                            EnumSet.allOf(Format.class),
                            Paper.A4)
                    .forEach(file -> files.add(file.toString()));
            return one(new Tally(List.of(outcome)), files);
        } finally {
            if (journal.get() != null) {
                journal.get().close();
            }
        }
    }

    /** The board file's name without its ending. */
    private String title() {
        return TextFile.path(BOARD, board).getFileName().toString().replaceFirst("\\.json$", "");
    }

    private Board board() {
        String text = TextFile.read(BOARD, board);
        try {
            return Board.of(text);
        } catch (BadInput e) {
            throw new BadOption(BOARD, e);
        }
    }

    private Answer one(Tally tally, List<String> files) {
        Outcome outcome = tally.outcomes().get(0);
        Map<String, Object> json = tally.values();
        if (!files.isEmpty()) {
            json.put("files", files);
        }
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
        files.forEach(sheet::say);
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
