package railtrim.command;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import railtrim.job.Entry;
import railtrim.job.JobCheck;
import railtrim.job.Mark;
import railtrim.job.OwnFolder;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Words;

/**
 * {@code check}: what is in a job file, for whoever helps with it: its version, whose it is, its facts, damage, and what no longer counts. The file
 * is not touched. The answer is no where it is not sound.
 */
@Command(name = "check", description = "${bundle:command.check.about}")
final class Check implements Asked {
    private final Words words;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:command.option.job}")
    private String job;

    @Option(names = "--facts", description = "${bundle:command.option.facts}")
    private boolean all;

    Check(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        JobCheck found = JobCheck.of(TextFile.path("JOB", job), Mark.lookUp(OwnFolder.path()));
        State state = Procedure.builtIn().state(found.job());
        List<String> problems = found.problems().stream().map(words::of).toList();
        String step = state.current().step().id();
        List<String> stale = steps(state, State.Status.STALE);
        Json json = Json.object()
                .put("name", found.name())
                .put("version", found.version())
                .put("elsewhere", found.elsewhere())
                .put("complete", state.complete())
                .put("facts", found.facts())
                .put("kinds", kinds(found))
                .put("problems", problems)
                .put("step", step)
                .put("stale", stale)
                .put("stopped", stopped(state));
        return Answer.of(problems.isEmpty(), json.map(), sheet(found, state, stale, problems));
    }

    private Sheet sheet(JobCheck found, State state, List<String> stale, List<String> problems) {
        Sheet sheet = new Sheet()
                .pair(words.of("command.check.name"), Typed.shown(found.name()))
                .pair(words.of("command.check.version"), Long.toString(found.version()))
                .pair(
                        words.of("command.check.made"),
                        words.of(found.elsewhere() ? "command.check.elsewhere" : "command.check.here"))
                .pair(words.of("command.check.facts"), Integer.toString(found.facts()));
        kinds(found)
                .forEach((kind, count) ->
                        sheet.pair("  " + words.of("command.check.kind." + kind), String.valueOf(count)));
        found.first().ifPresent(when -> sheet.pair(words.of("command.check.first"), shown(when)));
        found.last().ifPresent(when -> sheet.pair(words.of("command.check.last"), shown(when)));
        sheet.pair(
                words.of("command.check.complete"),
                words.of(state.complete() ? "command.check.yes" : "command.check.no"));
        if (!state.complete()) {
            sheet.pair(
                    words.of("command.check.step"),
                    words.of("step." + state.current().step().id() + ".title"));
        }
        stale.forEach(step -> sheet.pair(words.of("command.check.stale"), words.of("step." + step + ".title")));
        if (state.card().orElse(null) instanceof State.Card.Stop stop) {
            sheet.say(words.of(stop.reason()));
        }
        problems.forEach(sheet::say);
        if (all) {
            sheet.blank().table(4, heads(), rows(found));
        }
        return sheet;
    }

    private static List<String> steps(State state, State.Status status) {
        return state.steps().stream()
                .filter(step -> step.status() == status)
                .map(step -> step.step().id())
                .toList();
    }

    /** How many of each kind, in the order they first came up. */
    private static Map<String, Object> kinds(JobCheck found) {
        Map<String, Object> kinds = new LinkedHashMap<>();
        found.job().entries().forEach(entry -> kinds.merge(kind(entry), 1, (one, more) -> (int) one + (int) more));
        return kinds;
    }

    private static String kind(Entry entry) {
        return entry.fact().getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }

    private List<String> heads() {
        List<String> heads = new ArrayList<>();
        for (String column : List.of("number", "when", "kind", "says")) {
            heads.add(words.of("command.check.column." + column));
        }
        return heads;
    }

    private List<List<String>> rows(JobCheck found) {
        return found.job().entries().stream()
                .map(entry -> List.of(
                        Long.toString(entry.sequence()),
                        shown(entry.time()),
                        words.of("command.check.kind." + kind(entry)),
                        FactText.of(entry.fact())))
                .toList();
    }

    private static String shown(Instant when) {
        return when.truncatedTo(ChronoUnit.SECONDS).toString();
    }

    private static boolean stopped(State state) {
        return state.card().orElse(null) instanceof State.Card.Stop;
    }
}
