package railtrim.command;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import railtrim.job.JobCheck;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Words;

/** {@code check}: reads a job file without touching it. The answer is no where the file is not sound. */
@Command(name = "check", description = "${bundle:command.check.about}")
final class Check implements Asked {
    private final Words words;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:command.option.job}")
    private String job;

    Check(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        JobCheck found = JobCheck.of(TextFile.path("JOB", job));
        State state = Procedure.builtIn().state(found.job());
        List<String> problems = found.problems().stream().map(words::of).toList();
        String step = state.current().step().id();
        Json json = Json.object()
                .put("name", found.name())
                .put("complete", state.complete())
                .put("facts", found.facts())
                .put("problems", problems)
                .put("step", step)
                .put("stopped", stopped(state));
        Sheet sheet = new Sheet()
                .pair(words.of("command.check.name"), found.name())
                .pair(words.of("command.check.facts"), Integer.toString(found.facts()))
                .pair(
                        words.of("command.check.complete"),
                        words.of(state.complete() ? "command.check.yes" : "command.check.no"));
        if (!state.complete()) {
            sheet.pair(words.of("command.check.step"), words.of("step." + step + ".title"));
        }
        if (state.card().orElse(null) instanceof State.Card.Stop stop) {
            sheet.say(words.of(stop.reason()));
        }
        problems.forEach(sheet::say);
        return Answer.of(problems.isEmpty(), json.map(), sheet);
    }

    private static boolean stopped(State state) {
        return state.card().orElse(null) instanceof State.Card.Stop;
    }
}
