package railtrim.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import railtrim.circuit.RegulatorFamilies;
import railtrim.job.BuiltIn;
import railtrim.job.Journal;
import railtrim.job.Log;
import railtrim.job.Mark;
import railtrim.job.OwnFolder;
import railtrim.job.Time;
import railtrim.practice.Board;
import railtrim.practice.Logs;
import railtrim.practice.Outcome;
import railtrim.practice.RandomBoards;
import railtrim.practice.Rehearsal;
import railtrim.practice.Rehearsals;
import railtrim.practice.Specimens;
import railtrim.practice.Tally;
import railtrim.procedure.Procedure;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Meter;
import railtrim.report.Format;
import railtrim.report.Paper;
import railtrim.report.ReportWriter;

/** {@code rehearse}: a hand goes through the whole job on a practice board, once or many times, and what only the board knows judges the end. */
@Command(name = "rehearse", description = "${bundle:command.rehearse.about}")
final class Rehearse implements Asked {
    private static final String BOARD = "BOARD.json";

    private final Words words;
    private final Terminal terminal;

    @Parameters(index = "0", arity = "0..1", paramLabel = BOARD, description = "${bundle:command.option.board}")
    private String board;

    @Option(names = "--boards", paramLabel = "1", description = "${bundle:command.option.boards}")
    private String boards;

    @Option(names = "--seed", paramLabel = "1", description = "${bundle:command.option.seed}")
    private String seed;

    @Option(names = "--out", paramLabel = "FOLDER", description = "${bundle:command.option.rehearse-out}")
    private String out;

    @Option(names = "--slips", paramLabel = "0%", description = "${bundle:command.option.slips}")
    private String slips;

    @Option(names = "--meter", paramLabel = "basic", description = "${bundle:command.option.rehearse-meter}")
    private String meter;

    Rehearse(Words words, Terminal terminal) {
        this.words = words;
        this.terminal = terminal;
    }

    @Override
    public Answer answer() {
        int count = boards == null ? 1 : (int) Typed.whole("--boards", boards, 1, 100_000);
        long first = seed == null ? 1 : Typed.whole("--seed", seed, 0, Long.MAX_VALUE / 10);
        double slipping = slips == null ? 0 : Typed.fraction("--slips", slips, 0, 100);
        if (board == null && boards == null) {
            throw BadInput.of("command.wrong.no-board");
        }
        if (out != null && (board == null || boards != null)) {
            throw BadInput.of("command.wrong.out-of-many");
        }
        Procedure procedure = Procedure.builtIn();
        List<Rehearsal> rehearsals = meters().stream()
                .map(each -> new Rehearsal(procedure, each, slipping))
                .toList();
        if (out != null) {
            return kept(rehearsals.get(0), procedure, board(), first);
        }
        if (boards == null) {
            Board given = board();
            return one(rehearsals.get(0).play(given, first), given, List.of());
        }
        Progress progress = new Progress(terminal, count);
        Tally tally = new Rehearsals(rehearsals).play(drawn(count, first), first, progress::done);
        progress.over();
        return new OutcomeSheet(words).of(tally);
    }

    /** The meter asked for. Without one: the basic one for a board of one's own, the basic and the middle one in turn for boards drawn by chance. */
    private List<Meter> meters() {
        if (meter == null) {
            return board == null ? List.of(Meter.basic(), Meter.middle()) : List.of(Meter.basic());
        }
        return List.of(NamedMeter.of("--meter", meter));
    }

    private Iterator<Board> drawn(int count, long luck) {
        if (board != null) {
            return Specimens.some(board(), count, luck);
        }
        RegulatorFamilies families = RegulatorFamilies.of(BuiltIn.text("regulators.json"));
        return new RandomBoards(families.all(), Rehearsal.chance(luck)).some(count);
    }

    /** One rehearsal whose job is kept on disk, with its checklist beside it, as if it had been a real board. */
    private Answer kept(Rehearsal rehearsal, Procedure procedure, Board given, long luck) {
        Path folder = TextFile.folder("--out", out);
        Path job = folder.resolve(title() + Journal.ENDING);
        try (OnDisk journal = new OnDisk(job, given.label().name())) {
            Outcome outcome = rehearsal.play(given, luck, journal);
            List<String> files = new ArrayList<>(List.of(job.toString()));
            ReportWriter.write(
                            procedure.state(outcome.job()),
                            procedure,
                            words,
                            folder,
                            EnumSet.allOf(Format.class),
                            Paper.A4)
                    .forEach(file -> files.add(file.toString()));
            return one(outcome, given, files);
        }
    }

    /** A rehearsal's job in a file of its own. */
    private static final class OnDisk implements Logs, AutoCloseable {
        private final Path file;
        private final String name;
        private Optional<Journal> journal = Optional.empty();

        OnDisk(Path file, String name) {
            this.file = file;
            this.name = name;
        }

        @Override
        public Log begin(Time time) {
            return keep(Journal.create(file, name, time, Mark.keptIn(OwnFolder.path())));
        }

        /** The journal itself notes how long it was closed. */
        @Override
        public Log again(Log log, Time time, long gapSeconds) {
            close();
            return keep(Journal.open(file, time, Mark.keptIn(OwnFolder.path())));
        }

        private Journal keep(Journal opened) {
            journal = Optional.of(opened);
            return opened;
        }

        @Override
        public void close() {
            journal.ifPresent(Journal::close);
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

    /** How it went, and at its end what the board is there to teach. */
    private Answer one(Outcome outcome, Board given, List<String> files) {
        Map<String, Object> json = Tally.of(outcome).values();
        if (!files.isEmpty()) {
            json.put("files", files);
        }
        json.put("outcomes", List.of(outcome.values()));
        json.put("teaches", given.label().teaches());
        Sheet sheet = new OutcomeSheet(words).of(outcome);
        sheet.say(words.of("practice.lesson", given.label().teaches()));
        files.forEach(sheet::say);
        return Answer.of(outcome.finished() && !outcome.harmed(), json, sheet);
    }
}
